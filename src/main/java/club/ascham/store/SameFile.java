package club.ascham.store;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.sql.SQLException;
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
  /** Work on the file after which it, or its log, may be smaller. */
  interface Shrinking<T> {
    T done() throws SQLException, IOException;
  }

  /** One of the files. */
  private static final class Opened {
    private final String name;
    private final Path file;

    /** What the file system tells files apart by; null: it tells none. */
    private final Object key;

    private volatile long bytes;

    Opened(String name, Path file) throws IOException {
      BasicFileAttributes found = attributes(file);
      this.name = name;
      this.file = file;
      this.key = found.fileKey();
      this.bytes = found.size();
    }

    private static BasicFileAttributes attributes(Path file) throws IOException {
      return Files.readAttributes(file, BasicFileAttributes.class);
    }

    /** Null: it is the same. */
    String trouble(boolean mayShrink) {
      // Read before the file is looked at: it may grow meanwhile.
      long atLeast = bytes;
      try {
        BasicFileAttributes found = attributes(file);
        if (!Objects.equals(found.fileKey(), key)) {
          return "another file stands in the place of " + name;
        }
        if (found.size() < atLeast && !mayShrink) {
          return name + " was cut short";
        }
        bytes = found.size();
        return null;
      } catch (IOException gone) {
        return name + " is gone from its folder";
      }
    }
  }

  /** The club's file first; empty: none was opened yet. */
  private volatile List<Opened> opened = List.of();

  private volatile boolean shrinking;

  private volatile boolean damaged;

  /**
   * It is this one from now on, as large as it is, and what SQLite has laid beside it. Whoever says
   * so keeps a connection open: at the last one's end SQLite takes the log away.
   */
  public void is(Path file) throws IOException {
    List<Opened> found = new ArrayList<>();
    found.add(new Opened("the club’s file", file));
    Path log = Path.of(file + "-wal");
    if (Files.exists(log)) {
      found.add(new Opened("its log", log));
      found.add(new Opened("its log’s index", Path.of(file + "-shm")));
    }
    opened = List.copyOf(found);
    damaged = false;
  }

  /**
   * What SQLite once found damaged stays so until a start has looked through all of it: the next
   * request may well read a page that is whole.
   */
  public void found(FileTrouble trouble) {
    damaged |= trouble.kind() == FileTrouble.Kind.DAMAGED;
  }

  /**
   * What is amiss; empty: nothing, or none was opened yet. SQLite by itself makes neither file nor
   * log smaller: it begins the log again from its first byte.
   */
  public Optional<FileTrouble> trouble() {
    return why()
        .map(why -> FileTrouble.another(why, "Nothing was changed."))
        .or(
            () ->
                damaged
                    ? Optional.of(new FileTrouble(FileTrouble.Kind.DAMAGED, null))
                    : Optional.empty());
  }

  private Optional<String> why() {
    return opened.stream()
        .map(each -> each.trouble(shrinking))
        .filter(Objects::nonNull)
        .findFirst();
  }

  /**
   * Asked before a transaction begins.
   *
   * @throws FileTrouble it is another, smaller than it was, or damaged
   */
  public void mustBe() {
    trouble()
        .ifPresent(
            trouble -> {
              throw trouble;
            });
  }

  /**
   * Asked before a save is acknowledged.
   *
   * @throws FileTrouble it is another or smaller by now; which of the two has the save, nobody
   *     knows
   */
  void mustStillBe() {
    why()
        .ifPresent(
            why -> {
              throw FileTrouble.another(
                  why,
                  "What was sent may be kept or not: look for it then, before it is sent again.");
            });
  }

  /** What only we do to the file: cleaned, it and its log may be smaller. */
  <T> T whileItShrinks(Shrinking<T> work) throws SQLException, IOException {
    shrinking = true;
    try {
      return work.done();
    } finally {
      why();
      shrinking = false;
    }
  }
}
