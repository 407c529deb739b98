package club.ascham.store;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Whether the club's file, its log of writes and the log's index are still the ones that were
 * opened: a program goes on writing into a file that was moved or deleted under it, and nobody
 * would find again what it saved there.
 */
@ApplicationScoped
public class SameFile {
  /**
   * @param name in a sentence
   * @param key what the file system tells files apart by; null: it tells none
   */
  private record Opened(String name, Path file, Object key) {
    static Opened now(String name, Path file) throws IOException {
      return new Opened(name, file, attributes(file).fileKey());
    }

    /**
     * @return its size in bytes; empty: another lies there
     */
    Optional<Long> bytes() throws IOException {
      BasicFileAttributes found = attributes(file);
      return Objects.equals(found.fileKey(), key) ? Optional.of(found.size()) : Optional.empty();
    }

    private static BasicFileAttributes attributes(Path file) throws IOException {
      return Files.readAttributes(file, BasicFileAttributes.class);
    }
  }

  /** The club's file first; empty: none was opened yet. */
  private volatile List<Opened> opened = List.of();

  /** Of the club's file, which only scrubbing makes smaller. */
  private volatile long bytes;

  /**
   * It is this one from now on, as large as it is, and what SQLite has laid beside it. Whoever says
   * so keeps a connection open: at the last one's end SQLite takes the log away.
   */
  public void is(Path file) throws IOException {
    List<Opened> found = new ArrayList<>();
    found.add(Opened.now("the club’s file", file));
    Path log = Path.of(file + "-wal");
    if (Files.exists(log)) {
      found.add(Opened.now("its log", log));
      found.add(Opened.now("its log’s index", Path.of(file + "-shm")));
    }
    bytes = Files.size(file);
    opened = List.copyOf(found);
  }

  /** Why it is not; empty: it is, or none was opened yet. */
  public Optional<String> trouble() {
    for (Opened each : opened) {
      // Read before the file is looked at: it may grow meanwhile.
      long atLeast = bytes;
      try {
        Optional<Long> found = each.bytes();
        if (found.isEmpty()) {
          return Optional.of("another file stands in the place of " + each.name());
        }
        if (each == opened.get(0)) {
          if (found.get() < atLeast) {
            return Optional.of(each.name() + " was cut short");
          }
          bytes = found.get();
        }
      } catch (IOException gone) {
        return Optional.of(each.name() + " is gone from its folder");
      }
    }
    return Optional.empty();
  }

  /**
   * Asked before a transaction begins, and again before its save is acknowledged.
   *
   * @throws FileTrouble it is another, or smaller than it was
   */
  public void mustBe() {
    trouble()
        .ifPresent(
            why -> {
              throw new FileTrouble(FileTrouble.Kind.ANOTHER, new IOException(why));
            });
  }

  /** Scrubbed, it may be smaller. */
  void scrubbed() throws IOException {
    List<Opened> known = opened;
    if (!known.isEmpty()) {
      bytes = Files.size(known.get(0).file());
    }
  }
}
