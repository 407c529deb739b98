package club.ascham.start;

import club.ascham.backup.Backups;
import club.ascham.backup.Soundness;
import club.ascham.store.DataFolder;
import club.ascham.store.FileTrouble;
import club.ascham.store.Schema;
import club.ascham.store.SqliteFile;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationInfoService;

/**
 * Looks at the club's file before it is opened, and brings it to the program's own schema.
 *
 * <p>What is in the way is said in one sentence, without a stack trace.
 */
@ApplicationScoped
class ClubsFile {
  private final Flyway flyway;
  private final Backups backups;

  ClubsFile(Flyway flyway, Backups backups) {
    this.flyway = flyway;
    this.backups = backups;
  }

  /** Refuses what can't be worked with, and touches nothing of it. */
  void lookAt(DataFolder folder) {
    Path file = folder.file();
    if (!Files.exists(file)) {
      if (Files.exists(folder.restoring())) {
        throw NotStarting.because(
            "A restore ended half-way: run it again, with the same backup. What was there before is"
                + " in the newest folder set-aside-… of the data folder.");
      }
      refuseIfMissed(folder);
      return;
    }
    if (isEmpty(file)) {
      refuseIfMissed(folder);
      return;
    }
    if (!Files.isWritable(file) || !Files.isWritable(folder.path())) {
      throw readOnly(file);
    }
    Soundness found = Soundness.atAGlance(file);
    if (found instanceof Soundness.Unsound unsound) {
      throw NotStarting.because(
          "The club's file " + file.toAbsolutePath() + " is damaged. " + unsound.why() + wayBack());
    }
    if (Schema.isFromBefore(((Soundness.Sound) found).schema())) {
      throw NotStarting.because(
          "This data folder is from before Ascham 1.0.0: carry it over once with: "
              + CarryOver.command(folder));
    }
    tryWriting(file);
  }

  /** A club whose file is gone is not a new one. */
  private void refuseIfMissed(DataFolder folder) {
    List<String> left = new ArrayList<>();
    if (Files.exists(folder.writeAheadLog())) {
      left.add("the file's log of writes");
    }
    if (Files.exists(folder.secondStepKey())) {
      left.add("the key of the second steps");
    }
    if (Files.exists(folder.highWaterMark())) {
      left.add("the mark of how far its record had come");
    }
    if (!backups.all().isEmpty()) {
      left.add("backups");
    }
    if (!left.isEmpty()) {
      throw NotStarting.because(
          "The data folder holds "
              + String.join(" and ", left)
              + ", but the club's file "
              + folder.file().toAbsolutePath()
              + " is gone or empty. Nothing was made in its place. Move it back, with its log, or for"
              + " a new club choose an empty folder with ASCHAM_DATA_DIR. "
              + newestBackup());
    }
  }

  private String wayBack() {
    return " It was left as it is. " + newestBackup();
  }

  private String newestBackup() {
    return backups
        .newestSound()
        .map(
            backup ->
                "The newest sound backup: "
                    + backup.toAbsolutePath()
                    + " — bring it back with: java -jar quarkus-run.jar restore "
                    + backup.toAbsolutePath())
        .orElse(
            "There is no sound backup in the data folder: look where copies were taken to, and"
                + " bring one back with: java -jar quarkus-run.jar restore <file>");
  }

  private static void tryWriting(Path file) {
    try (Connection connection = SqliteFile.open(file);
        Statement statement = connection.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      statement.execute("ROLLBACK");
    } catch (SQLException failure) {
      FileTrouble.Kind kind =
          FileTrouble.in(failure).map(FileTrouble::kind).orElse(FileTrouble.Kind.UNREACHABLE);
      throw switch (kind) {
        case READ_ONLY -> readOnly(file);
        case LOCKED ->
            NotStarting.because(
                "Another program holds the club's file "
                    + file.toAbsolutePath()
                    + ": end that program first.");
        default ->
            NotStarting.because(
                "The club's file "
                    + file.toAbsolutePath()
                    + " can't be written ("
                    + failure.getMessage()
                    + "). Look at the disk.");
      };
    }
  }

  private static RuntimeException readOnly(Path file) {
    return NotStarting.because(
        "The club's file "
            + file.toAbsolutePath()
            + " can be read but not written: let the one who runs the server write it and its folder.");
  }

  private static boolean isEmpty(Path file) {
    try {
      return Files.size(file) == 0;
    } catch (IOException failure) {
      throw NotStarting.because("The club's file " + file.toAbsolutePath() + " can't be read.");
    }
  }

  /**
   * With a sound backup first where there is anything to lose.
   *
   * @return that backup, to be told once the record can take a sentence; empty: none was made
   */
  Optional<Backups.Backup> migrate() {
    MigrationInfoService info = flyway.info();
    refuseNewer(info);
    MigrationInfo[] pending = info.pending();
    Optional<Backups.Backup> backup = Optional.empty();
    if (pending.length > 0 && info.applied().length > 0) {
      String before = named(pending[0]);
      try {
        backup = Optional.of(backups.makeBefore(before));
      } catch (FileTrouble failed) {
        throw NotStarting.because(
            "The club's file has to be brought up to date ("
                + before
                + "), and no backup could be made before: "
                + failed.getMessage()
                + " Nothing was changed.");
      }
    }
    flyway.migrate();
    return backup;
  }

  private static void refuseNewer(MigrationInfoService info) {
    Arrays.stream(info.all())
        .filter(one -> one.getState().isApplied() && !one.getState().isResolved())
        .filter(MigrationInfo::isVersioned)
        .findFirst()
        .ifPresent(
            one -> {
              throw NotStarting.because(
                  "The club's file was written by a newer Ascham (schema "
                      + one.getVersion()
                      + "): start that one, or bring back a backup from before.");
            });
  }

  /** {@code V011}; R for one that is run again whenever it changes. */
  private static String named(MigrationInfo migration) {
    return migration.isVersioned() ? "V" + migration.getVersion().getVersion() : "R";
  }
}
