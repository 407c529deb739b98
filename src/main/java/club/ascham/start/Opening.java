package club.ascham.start;

import club.ascham.Settings;
import club.ascham.rules.Club;
import club.ascham.rules.ClubRules;
import club.ascham.story.Watch;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.jboss.logging.Logger;

/** Opens the data folder in order, or refuses with a reason. */
@ApplicationScoped
class Opening {
  private static final Logger LOG = Logger.getLogger(Opening.class);

  private final Settings settings;
  private final Flyway flyway;
  private final Club club;
  private final FirstStart firstStart;
  private final Watch watch;

  Opening(Settings settings, Flyway flyway, Club club, FirstStart firstStart, Watch watch) {
    this.settings = settings;
    this.flyway = flyway;
    this.club = club;
    this.firstStart = firstStart;
    this.watch = watch;
  }

  void open(@Observes @Priority(1) StartupEvent starting) {
    try {
      Files.createDirectories(settings.dataDir());
    } catch (IOException failure) {
      throw new UncheckedIOException("can't make the data folder " + settings.dataDir(), failure);
    }
    flyway.migrate();
    Optional<ClubRules> known = club.stored();
    if (known.isEmpty()) {
      firstStart.fill();
    } else if (known.get().demo() != settings.demo()) {
      throw new IllegalStateException(
          known.get().demo()
              ? "This data folder holds the demo club. Start with ASCHAM_DEMO=true, or choose another"
                  + " folder with ASCHAM_DATA_DIR."
              : "This data folder holds a real club, not the demo. Start without ASCHAM_DEMO, or choose"
                  + " an empty folder with ASCHAM_DATA_DIR.");
    }
    watch.begin();
    firstStart.offerFirstAccount();
    LOG.infof("Data folder %s is open.", settings.dataDir().toAbsolutePath());
    if (settings.demo()) {
      LOG.infof(
          "Demo club: sign in as officer, volunteer or committee; the password of each is %s.",
          FirstStart.DEMO_PASSWORD);
    }
  }
}
