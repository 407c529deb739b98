package club.ascham.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import org.jboss.logging.Logger;

/**
 * Lets nobody but the one who runs the server into the data folder, and so to any file in it.
 *
 * <p>Rights on the folder hold for every file that is ever made in it.
 */
public final class OwnerOnly {
  private static final Logger LOG = Logger.getLogger(OwnerOnly.class);

  private OwnerOnly() {}

  /** What a file is made with, where its file system knows such rights. */
  public static FileAttribute<?>[] ofNewFile(Path file) {
    return Files.getFileAttributeView(
                file.toAbsolutePath().getParent(), PosixFileAttributeView.class)
            == null
        ? new FileAttribute<?>[0]
        : new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
        };
  }

  /** Where the folder is another's, or its file system knows no such rights, the log says so. */
  public static void make(Path folder) {
    PosixFileAttributeView rights =
        Files.getFileAttributeView(folder, PosixFileAttributeView.class);
    try {
      if (rights == null) {
        throw new IOException("no such rights here");
      }
      rights.setPermissions(PosixFilePermissions.fromString("rwx------"));
    } catch (IOException failure) {
      LOG.warnf(
          "The data folder %s may be read by others on this machine: let its owner alone read it.",
          folder.toAbsolutePath());
    }
  }
}
