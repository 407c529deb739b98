package club.ascham.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The bytes of a file that the server has open. */
public final class OpenFile {
  private OpenFile() {}

  /**
   * Read by a process of its own: closing a channel of ours would give up SQLite's locks.
   *
   * @return as UTF-8; empty: there is no such file
   */
  public static String bytes(Path file) throws IOException, InterruptedException {
    if (!Files.exists(file)) {
      return "";
    }
    Process cat = new ProcessBuilder("cat", file.toString()).start();
    byte[] bytes = cat.getInputStream().readAllBytes();
    if (cat.waitFor() != 0) {
      throw new IOException("can't read " + file);
    }
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
