package club.ascham.server;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;

/** The one place where a disk's room comes from. */
@ApplicationScoped
public class Disk {
  /** In bytes. */
  public record Room(long free, long total) {}

  public Room at(Path folder) throws IOException {
    FileStore store = Files.getFileStore(folder);
    return new Room(store.getUsableSpace(), store.getTotalSpace());
  }
}
