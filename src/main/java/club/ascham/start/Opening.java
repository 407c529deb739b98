package club.ascham.start;

import club.ascham.Settings;
import club.ascham.backup.Backups;
import club.ascham.backup.TellBackup;
import club.ascham.rules.Club;
import club.ascham.rules.ClubRules;
import club.ascham.store.DataFolder;
import club.ascham.store.InUse;
import club.ascham.store.NativeLeftovers;
import club.ascham.store.OwnerOnly;
import club.ascham.store.SameFile;
import club.ascham.store.Scrubbing;
import club.ascham.store.SqliteFile;
import club.ascham.story.HighWater;
import club.ascham.story.Loss;
import club.ascham.story.Watch;
import club.ascham.upkeep.ClubsDays;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.jboss.logging.Logger;

/** Opens the data folder in order, or refuses with a reason. */
@ApplicationScoped
class Opening {
  private static final Logger LOG = Logger.getLogger(Opening.class);

  private final Settings settings;
  private final ClubsFile clubsFile;
  private final Club club;
  private final FirstStart firstStart;
  private final Watch watch;
  private final TellBackup tellBackup;
  private final ClubsDays clubsDays;
  private final Scrubbing scrubbing;
  private final SameFile sameFile;
  private final HighWater highWater;
  private final Backups backups;
  private InUse held;
  private Connection reader;

  Opening(
      Settings settings,
      ClubsFile clubsFile,
      Club club,
      FirstStart firstStart,
      Watch watch,
      TellBackup tellBackup,
      ClubsDays clubsDays,
      Scrubbing scrubbing,
      SameFile sameFile,
      HighWater highWater,
      Backups backups) {
    this.settings = settings;
    this.clubsFile = clubsFile;
    this.club = club;
    this.firstStart = firstStart;
    this.watch = watch;
    this.tellBackup = tellBackup;
    this.clubsDays = clubsDays;
    this.scrubbing = scrubbing;
    this.sameFile = sameFile;
    this.highWater = highWater;
    this.backups = backups;
  }

  void open(@Observes @Priority(1) StartupEvent starting) {
    DataFolder folder = new DataFolder(settings.dataDir());
    take(folder);
    clubsFile.lookAt(folder);
    highWater.opens(folder, newestBackup());
    Optional<Backups.Backup> backup = clubsFile.migrate();
    scrubbing.atStart();
    clubsDays.keep();
    remember(folder.file());
    Optional<ClubRules> known = club.stored();
    if (known.isEmpty()) {
      firstStart.fill();
    } else if (known.get().demo() != settings.demo()) {
      throw NotStarting.because(
          known.get().demo()
              ? "This data folder holds the demo club. Start with ASCHAM_DEMO=true, or choose another"
                  + " folder with ASCHAM_DATA_DIR."
              : "This data folder holds a real club, not the demo. Start without ASCHAM_DEMO, or choose"
                  + " an empty folder with ASCHAM_DATA_DIR.");
    }
    watch.begin();
    backup.ifPresent(tellBackup::beforeMigration);
    firstStart.offerFirstAccount();
    LOG.infof("Data folder %s is open.", settings.dataDir().toAbsolutePath());
    if (settings.demo()) {
      LOG.infof(
          "Demo club: sign in as officer, volunteer or committee; the password of each is %s.",
          FirstStart.DEMO_PASSWORD);
    }
  }

  /** Null: there is none. */
  private Loss.Backup newestBackup() {
    return backups.all().stream()
        .findFirst()
        .map(newest -> new Loss.Backup(newest.name().fileName(), newest.name().seal()))
        .orElse(null);
  }

  /** Kept open, so that the log and its index lie there as long as this runs. */
  private void remember(Path file) {
    try {
      reader = SqliteFile.open(file);
      try (Statement statement = reader.createStatement()) {
        statement.execute("PRAGMA user_version");
      }
      sameFile.is(file);
    } catch (SQLException | IOException failure) {
      throw NotStarting.because("The club's file " + file.toAbsolutePath() + " can't be read.");
    }
  }

  private void take(DataFolder folder) {
    try {
      Files.createDirectories(folder.path());
      OwnerOnly.make(folder.path());
      ProcessHandle.current()
          .info()
          .startInstant()
          .ifPresent(
              began ->
                  NativeLeftovers.takeAway(Path.of(System.getProperty("java.io.tmpdir")), began));
      held =
          InUse.take(folder)
              .orElseThrow(
                  () ->
                      NotStarting.because(
                          "Another Ascham runs on the data folder "
                              + folder.path().toAbsolutePath()
                              + ": stop that one first, or choose another folder with"
                              + " ASCHAM_DATA_DIR."));
    } catch (IOException failure) {
      throw NotStarting.because(
          "The data folder "
              + folder.path().toAbsolutePath()
              + " can't be written: let the one who runs the server write it.");
    }
  }

  /** After everything else has ended. */
  void close(@Observes @Priority(Integer.MAX_VALUE) ShutdownEvent ending)
      throws IOException, SQLException {
    if (reader != null) {
      reader.close();
    }
    if (held != null) {
      held.close();
    }
  }
}
