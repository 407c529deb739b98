package club.ascham.people;

import io.quarkus.elytron.security.common.BcryptUtil;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Hashes and verifies passwords and access keys. A verified password is remembered for a few
 * minutes under a key that lives only in this process, so that an API call does not cost a slow
 * hash.
 */
@ApplicationScoped
public class Passwords {
  private static final int COST = 12;
  private static final Duration REMEMBERED = Duration.ofMinutes(5);
  private static final int REMEMBERED_AT_MOST = 1000;

  private final Clock clock;
  private final SecureRandom random = new SecureRandom();
  private final byte[] processKey = new byte[32];
  private final Map<String, Instant> verified = new ConcurrentHashMap<>();

  Passwords(Clock clock) {
    this.clock = clock;
    random.nextBytes(processKey);
  }

  public String hash(String password) {
    return BcryptUtil.bcryptHash(password, COST);
  }

  public boolean matches(String password, String hash) {
    boolean readInFull =
        password.getBytes(StandardCharsets.UTF_8).length <= PasswordRules.LONGEST_BYTES;
    if (hash.isEmpty() || !readInFull) {
      pretendToMatch();
      return false;
    }
    String mark = mark(password, hash);
    Instant now = clock.instant();
    Instant until = verified.get(mark);
    if (until != null && until.isAfter(now)) {
      return true;
    }
    if (!BcryptUtil.matches(password, hash)) {
      return false;
    }
    if (verified.size() >= REMEMBERED_AT_MOST) {
      verified.clear();
    }
    verified.put(mark, now.plus(REMEMBERED));
    return true;
  }

  /** As slow as a real comparison, so that an unknown name takes as long as a wrong password. */
  public void pretendToMatch() {
    BcryptUtil.bcryptHash("nobody's password", COST);
  }

  /** A new random secret, for access keys, links and one-time codes. */
  public String secret() {
    byte[] bytes = new byte[24];
    random.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** Access keys and links are long and random, so that a plain digest is enough. */
  public static String digest(String secret) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private String mark(String password, String hash) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(processKey, "HmacSHA256"));
      mac.update(hash.getBytes(StandardCharsets.UTF_8));
      mac.update((byte) 0);
      return HexFormat.of().formatHex(mac.doFinal(password.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException | InvalidKeyException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
