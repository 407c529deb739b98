package club.ascham.people;

import club.ascham.Settings;
import club.ascham.id.AccountId;
import club.ascham.store.DataFolder;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.jboss.logging.Logger;

/**
 * Seals shared secrets for the file, with a key that lies beside it and in no backup or export:
 * whoever is handed the file can't reckon anyone's codes.
 *
 * <p>The secret must be known to reckon the codes, so a hash would not do. Officers may download
 * backups and exports, hence the key is in neither. Without it no code is right, and recovery codes
 * still are.
 */
@ApplicationScoped
class SealedSecrets {
  private static final Logger LOG = Logger.getLogger(SealedSecrets.class);
  private static final int KEY_BYTES = 32;
  private static final int NONCE_BYTES = 12;
  private static final int TAG_BITS = 128;

  private final Path keyFile;
  private final SecureRandom random = new SecureRandom();

  SealedSecrets(Settings settings) {
    this.keyFile = new DataFolder(settings.dataDir()).secondStepKey();
  }

  String seal(SharedSecret secret, AccountId account) {
    byte[] nonce = new byte[NONCE_BYTES];
    random.nextBytes(nonce);
    try {
      byte[] sealed =
          cipher(Cipher.ENCRYPT_MODE, keyMadeIfMissing(), nonce, account).doFinal(secret.bytes());
      return HexFormat.of().formatHex(nonce) + HexFormat.of().formatHex(sealed);
    } catch (GeneralSecurityException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** Empty where the key is gone or another: no code is right then, but recovery codes are. */
  Optional<SharedSecret> open(String sealed, AccountId account) {
    byte[] bytes = HexFormat.of().parseHex(sealed);
    try {
      byte[] nonce = Arrays.copyOf(bytes, NONCE_BYTES);
      Cipher cipher = cipher(Cipher.DECRYPT_MODE, key(), nonce, account);
      return Optional.of(
          SharedSecret.of(cipher.doFinal(bytes, NONCE_BYTES, bytes.length - NONCE_BYTES)));
    } catch (GeneralSecurityException | IOException unreadable) {
      LOG.errorf(
          "A second step can't be read with the key in %s (%s): its holder needs a recovery code,"
              + " or an officer who takes it off.",
          keyFile.getFileName(), unreadable.getClass().getSimpleName());
      return Optional.empty();
    }
  }

  /** Bound to its account, so that a row copied to another opens nothing there. */
  private static Cipher cipher(int mode, byte[] key, byte[] nonce, AccountId account)
      throws GeneralSecurityException {
    Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
    cipher.init(mode, new SecretKeySpec(key, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
    cipher.updateAAD(ByteBuffer.allocate(Long.BYTES).putLong(account.value()).array());
    return cipher;
  }

  /** Asked for behind the write gate alone, so never twice at once. */
  private byte[] keyMadeIfMissing() {
    try {
      if (!Files.exists(keyFile)) {
        make();
      }
      return key();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private byte[] key() throws IOException {
    byte[] key = Files.readAllBytes(keyFile);
    if (key.length != KEY_BYTES) {
      throw new IOException(keyFile + " is no key");
    }
    return key;
  }

  /** Moved to its name when it is whole: half a key would never open what it sealed. */
  private void make() throws IOException {
    byte[] key = new byte[KEY_BYTES];
    random.nextBytes(key);
    Path made = Files.createTempFile(keyFile.getParent(), keyFile.getFileName().toString(), ".new");
    try (FileChannel out = FileChannel.open(made, StandardOpenOption.WRITE)) {
      out.write(ByteBuffer.wrap(key));
      out.force(true);
    }
    Files.move(made, keyFile, StandardCopyOption.ATOMIC_MOVE);
  }
}
