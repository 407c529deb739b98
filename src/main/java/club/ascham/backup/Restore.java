package club.ascham.backup;

import club.ascham.store.DataFolder;
import club.ascham.store.InUse;
import club.ascham.story.HighWaterMark;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

/**
 * Puts a backup in the place of the club's file. The present file is never deleted: it is set aside
 * with what SQLite keeps beside it, so that it opens there as it would have here.
 *
 * <p>A command and no setting: a setting left behind would bring the backup back at each start.
 */
public final class Restore {
  static final String SET_ASIDE = "set-aside-";

  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss'Z'").withZone(ZoneOffset.UTC);

  private Restore() {}

  /** What became of it. */
  public sealed interface Outcome {
    /**
     * @param setAside the folder that what was there is kept in; null: nothing was there
     */
    record Done(Soundness.Sound now, Path setAside) implements Outcome {}

    /** Nothing was changed. */
    record Refused(String why) implements Outcome {}
  }

  public static Outcome run(DataFolder folder, Path backup, Instant now) throws IOException {
    if (!Files.isRegularFile(backup)) {
      return new Outcome.Refused("There is no file " + backup.toAbsolutePath() + ".");
    }
    Files.createDirectories(folder.path());
    Optional<InUse> held = InUse.take(folder);
    if (held.isEmpty()) {
      return new Outcome.Refused(
          "A server runs on " + folder.path().toAbsolutePath() + ": stop it first.");
    }
    try (InUse ours = held.get()) {
      return replace(folder, backup, now);
    }
  }

  private static Outcome replace(DataFolder folder, Path backup, Instant now) throws IOException {
    Path incoming = folder.restoring();
    Snapshot.forget(incoming);
    Files.copy(backup, incoming);
    // Its own copy is looked through: looking changes nothing of the backup, not even a lock file.
    if (!(Soundness.ofAll(incoming) instanceof Soundness.Sound sound)) {
      String why = ((Soundness.Unsound) Soundness.ofAll(incoming)).why();
      Snapshot.forget(incoming);
      return new Outcome.Refused("That file is not a sound backup. " + why);
    }
    HighWaterMark mark = markOf(folder, incoming);
    Snapshot.force(incoming);
    Snapshot.forceFolder(folder.path());
    Path aside = setAside(folder, now);
    // Before the move: cut off in between, the folder has no file, and nothing starts on it.
    mark.write(folder.highWaterMark());
    Files.move(incoming, folder.file(), StandardCopyOption.ATOMIC_MOVE);
    Snapshot.forceFolder(folder.path());
    return new Outcome.Done(sound, aside);
  }

  /** What the backup lacks is no loss: it was brought back on purpose. */
  private static HighWaterMark markOf(DataFolder folder, Path incoming) throws IOException {
    try {
      String newest =
          new BackupFolder(folder.backups())
              .names().stream().findFirst().map(BackupName::fileName).orElse(null);
      return HighWaterMark.restored(incoming, newest);
    } catch (UncheckedIOException failure) {
      throw failure.getCause();
    } catch (SQLException failure) {
      throw new IOException("the backup's record can't be read", failure);
    }
  }

  /**
   * The file goes first: until the new one is in its place, a server refuses to open the folder
   * without one.
   */
  private static Path setAside(DataFolder folder, Instant now) throws IOException {
    Path aside = null;
    for (Path one : new Path[] {folder.file(), folder.writeAheadLog(), folder.sharedMemory()}) {
      if (Files.exists(one)) {
        if (aside == null) {
          aside = newFolder(folder.path().resolve(SET_ASIDE + MOMENT.format(now)));
        }
        Files.move(one, aside.resolve(one.getFileName()), StandardCopyOption.ATOMIC_MOVE);
      }
    }
    return aside;
  }

  private static Path newFolder(Path wanted) throws IOException {
    Path free = wanted;
    for (int n = 2; Files.exists(free); n++) {
      free = wanted.resolveSibling(wanted.getFileName() + "-" + n);
    }
    return Files.createDirectory(free);
  }
}
