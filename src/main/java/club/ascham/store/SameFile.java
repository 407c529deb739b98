package club.ascham.store;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Optional;

/**
 * Whether the club's file is still the one that was opened: a program goes on writing into a file
 * that was moved or deleted under it, and nobody would find again what it saved there.
 */
@ApplicationScoped
public class SameFile {
  /**
   * @param key what the file system tells files apart by; null: it tells none
   * @param bytes its size, which only scrubbing makes smaller
   */
  private record Known(Path file, Object key, long bytes) {}

  private volatile Known known;

  /** It is this one from now on, as large as it is. */
  public void is(Path file) throws IOException {
    BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
    known = new Known(file, found.fileKey(), found.size());
  }

  /** Why it is not; empty: it is, or none was opened yet. */
  public Optional<String> trouble() {
    Known opened = known;
    if (opened == null) {
      return Optional.empty();
    }
    try {
      BasicFileAttributes found = Files.readAttributes(opened.file(), BasicFileAttributes.class);
      if (!Objects.equals(found.fileKey(), opened.key())) {
        return Optional.of("another file stands in its place");
      }
      if (found.size() < opened.bytes()) {
        return Optional.of("it was cut short");
      }
      if (found.size() > opened.bytes()) {
        known = new Known(opened.file(), opened.key(), found.size());
      }
      return Optional.empty();
    } catch (IOException gone) {
      return Optional.of("it is gone from its folder");
    }
  }

  /**
   * Asked before a transaction begins, and again before its save is acknowledged.
   *
   * @throws FileTrouble it is another, or smaller than it was
   */
  void mustBe() {
    trouble()
        .ifPresent(
            why -> {
              throw new FileTrouble(FileTrouble.Kind.ANOTHER, new IOException(why));
            });
  }

  /** Scrubbed, it may be smaller. */
  void scrubbed() throws IOException {
    Known opened = known;
    if (opened != null) {
      is(opened.file());
    }
  }
}
