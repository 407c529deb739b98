package club.ascham.backup;

import club.ascham.store.OwnerOnly;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;

/** A file copied to another disk, which bears its name only once it was read back the same. */
final class CopyOfFile {
  private static final int AT_A_TIME = 1 << 16;
  private static final Set<StandardOpenOption> NEW_ONLY =
      EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);

  private CopyOfFile() {}

  /** The message is shown: what is in the way, and what helps. */
  static final class NotMade extends Exception {
    private static final long serialVersionUID = 1L;
    private final boolean away;

    NotMade(String message, Throwable cause) {
      this(message, cause, false);
    }

    private NotMade(String message, Throwable cause, boolean away) {
      super(message, cause);
      this.away = away;
    }

    static NotMade away() {
      return new NotMade(
          "The second folder for backups is not there: plug in or mount its disk. Until then backups"
              + " are made in the data folder alone.",
          null,
          true);
    }

    boolean isAway() {
      return away;
    }
  }

  /** What a disk answers when it is asked for a file again. */
  interface ReadBack {
    byte[] digest(Path file) throws IOException;
  }

  static void make(Path file, Path copy, Instant now) throws NotMade {
    make(file, copy, now, CopyOfFile::digest);
  }

  static void make(Path file, Path copy, Instant now, ReadBack disk) throws NotMade {
    Path part = copy.resolveSibling("ascham-" + now.toEpochMilli() + ".part");
    try {
      mindRoom(Files.size(file), copy.toAbsolutePath().getParent());
      byte[] written = write(file, part);
      if (!Arrays.equals(written, disk.digest(part))) {
        throw new NotMade(
            "A copy of a backup did not read back as it was written: its disk may be failing. Take"
                + " another one.",
            null);
      }
      Files.move(part, copy, StandardCopyOption.ATOMIC_MOVE);
      Snapshot.forceFolder(copy.toAbsolutePath().getParent());
    } catch (IOException failure) {
      throw new NotMade(
          "A copy of a backup could not be written into the second folder: look at its disk.",
          failure);
    } finally {
      forget(part);
    }
  }

  private static void mindRoom(long needed, Path folder) throws IOException, NotMade {
    long free = Files.getFileStore(folder).getUsableSpace();
    if (Snapshot.tooLittle(needed, free) != null) {
      throw new NotMade(
          "The disk of the second folder for backups is full: a copy needs %s, and %s are free. Make room there."
              .formatted(Size.said(needed), Size.said(free)),
          null);
    }
  }

  /** The digest of what was read from the file, once it is on the other disk. */
  private static byte[] write(Path file, Path part) throws IOException {
    MessageDigest digest = sha256();
    try (InputStream from = Files.newInputStream(file);
        FileChannel to = FileChannel.open(part, NEW_ONLY, OwnerOnly.ofNewFile(part))) {
      byte[] some = new byte[AT_A_TIME];
      for (int read = from.read(some); read >= 0; read = from.read(some)) {
        digest.update(some, 0, read);
        ByteBuffer out = ByteBuffer.wrap(some, 0, read);
        while (out.hasRemaining()) {
          to.write(out);
        }
      }
      to.force(true);
    }
    return digest.digest();
  }

  private static byte[] digest(Path file) throws IOException {
    MessageDigest digest = sha256();
    try (InputStream from = Files.newInputStream(file)) {
      byte[] some = new byte[AT_A_TIME];
      for (int read = from.read(some); read >= 0; read = from.read(some)) {
        digest.update(some, 0, read);
      }
    }
    return digest.digest();
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** Whatever stays is taken away by the next try. */
  private static void forget(Path part) throws NotMade {
    try {
      Files.deleteIfExists(part);
    } catch (IOException failure) {
      throw new NotMade(
          "A copy of a backup could not be written into the second folder: look at its disk.",
          failure);
    }
  }
}
