package club.ascham.start;

import club.ascham.backup.Snapshot;
import club.ascham.backup.Soundness;
import club.ascham.store.DataFolder;
import club.ascham.store.FileTrouble;
import club.ascham.store.InUse;
import club.ascham.store.Schema;
import club.ascham.store.Scrub;
import club.ascham.store.SqliteFile;
import club.ascham.story.CarriedRecord;
import club.ascham.story.VerifyRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Carries the club’s file from before 1.0.0 over into one of the schema there is now, once: every
 * row with its number, and the record, which is looked through before and sealed anew; the seals of
 * before, on paper and in the names of backups, are known as ever.
 *
 * <p>A command and no part of a start: it takes a while, what it is about is read by a person, and
 * the way back is the file of before, kept beside under a name that says so. All work is done on
 * copies; the new file takes the place of the old in one step, so that a cut leaves either.
 */
final class CarryOver {
  private static final String KEPT = "ascham-before-1.0.0";
  private static final String TOLD =
      "Carried over into the file of Ascham 1.0.0: the record of before was whole, %d entries up to"
          + " seal %s; it is sealed anew, up to seal %s.";

  /** What is done next; a test cuts in here. */
  enum Step {
    COPY,
    LOOK,
    FILL,
    KEEP,
    REPLACE,
    CLEAR
  }

  /** Told before each step. */
  interface Progress {
    void before(Step step);
  }

  /** What became of it. */
  sealed interface Outcome {
    /**
     * @param kept the file of before
     */
    record Done(Path kept, VerifyRecord.Verified now) implements Outcome {}

    /** The file is of the schema there is now. */
    record DoneBefore() implements Outcome {}

    /** Nothing was changed. */
    record Refused(String why) implements Outcome {}
  }

  private final DataFolder folder;
  private final Instant now;
  private final Progress progress;

  private CarryOver(DataFolder folder, Instant now, Progress progress) {
    this.folder = folder;
    this.now = now;
    this.progress = progress;
  }

  /** As whoever starts the program on a folder from before is told to. */
  static String command(DataFolder folder) {
    return "java -jar quarkus-run.jar carry-over " + folder.path().toAbsolutePath();
  }

  static Outcome run(DataFolder folder, Instant now) throws IOException {
    return run(folder, now, step -> {});
  }

  static Outcome run(DataFolder folder, Instant now, Progress progress) throws IOException {
    if (!Files.isRegularFile(folder.file())) {
      return new Outcome.Refused("There is no club’s file " + folder.file().toAbsolutePath() + ".");
    }
    Optional<InUse> held = InUse.take(folder);
    if (held.isEmpty()) {
      return new Outcome.Refused(
          "A server runs on " + folder.path().toAbsolutePath() + ": stop it first.");
    }
    try (InUse ours = held.get()) {
      return new CarryOver(folder, now, progress).carry();
    } catch (SQLException failure) {
      throw new IOException("SQLite can’t carry it over: " + failure.getMessage(), failure);
    }
  }

  private Outcome carry() throws IOException, SQLException {
    Soundness found = Soundness.ofAll(folder.file());
    if (!(found instanceof Soundness.Sound sound)) {
      return new Outcome.Refused(
          "The club’s file is damaged. "
              + ((Soundness.Unsound) found).why()
              + " Restore a backup first, and carry that over.");
    }
    Path copy = beside(".of-before");
    Path work = beside(".carrying");
    Path fresh = beside(".carried");
    try {
      return Schema.isFromBefore(sound.schema())
          ? carry(copy, work, fresh)
          : new Outcome.DoneBefore();
    } finally {
      for (Path one : List.of(copy, work, fresh)) {
        Snapshot.forget(one);
      }
    }
  }

  private Path beside(String ending) {
    return folder.path().resolve(folder.file().getFileName() + ending);
  }

  private Outcome carry(Path copy, Path work, Path fresh) throws IOException, SQLException {
    progress.before(Step.COPY);
    for (Path left : List.of(copy, work, fresh)) {
      Snapshot.forget(left);
    }
    try {
      Snapshot.take(folder.file(), copy);
    } catch (FileTrouble trouble) {
      return new Outcome.Refused(trouble.getMessage());
    }
    Files.copy(copy, work);
    progress.before(Step.LOOK);
    List<String> faults = looked(work);
    if (!faults.isEmpty()) {
      return notWhole(faults);
    }
    BeforeMigrations.bringUpToDate(work);
    progress.before(Step.FILL);
    Schema.make(fresh);
    VerifyRecord.Verified verified = filled(fresh, work);
    if (!verified.whole()) {
      return notWhole(verified.faults());
    }
    if (Soundness.ofAll(fresh) instanceof Soundness.Unsound unsound) {
      return new Outcome.Refused("What was copied is not sound. " + unsound.why());
    }
    if (!isAlone()) {
      return new Outcome.Refused(
          "Another program holds the club’s file " + folder.file().toAbsolutePath() + ": end it.");
    }
    return replaced(copy, fresh, verified);
  }

  private List<String> looked(Path work) throws SQLException {
    try (Connection before = SqliteFile.open(work)) {
      before.setAutoCommit(false);
      List<String> faults = CarriedRecord.looked(before, now);
      before.commit();
      return faults;
    }
  }

  private VerifyRecord.Verified filled(Path fresh, Path work) throws SQLException {
    try (Connection file = SqliteFile.open(fresh);
        CarriedRows rows = CarriedRows.between(file, work)) {
      rows.copy();
      VerifyRecord.Verified verified = CarriedRecord.close(file, now, TOLD);
      rows.done();
      return verified;
    }
  }

  private static Outcome notWhole(List<String> faults) {
    return new Outcome.Refused(
        "The record of the club’s file is not whole: "
            + faults.get(0)
            + (faults.size() > 1 ? " And " + (faults.size() - 1) + " more." : "")
            + " Start the program it was written by, see what Verify says, and carry over a backup"
            + " whose record is whole.");
  }

  /** The log of writes goes into the file and away when the last one closes it. */
  private boolean isAlone() throws SQLException {
    Scrub.emptyLog(folder.file());
    return !Files.exists(folder.writeAheadLog());
  }

  private Outcome replaced(Path copy, Path fresh, VerifyRecord.Verified verified)
      throws IOException {
    progress.before(Step.KEEP);
    Snapshot.force(fresh);
    Path kept = free(folder.path());
    Files.move(copy, kept, StandardCopyOption.ATOMIC_MOVE);
    Snapshot.forceFolder(folder.path());
    progress.before(Step.REPLACE);
    Files.move(
        fresh, folder.file(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    Snapshot.forceFolder(folder.path());
    progress.before(Step.CLEAR);
    return new Outcome.Done(kept, verified);
  }

  private static Path free(Path folder) {
    Path free = folder.resolve(KEPT + ".db");
    for (int n = 2; Files.exists(free); n++) {
      free = folder.resolve(KEPT + "-" + n + ".db");
    }
    return free;
  }
}
