package club.ascham.backup;

import club.ascham.Settings;
import club.ascham.store.Scrubbing;
import club.ascham.time.ClubTime;
import club.ascham.time.NightlyRound;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.event.Observes;
import java.time.LocalDate;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;

/**
 * Looks every few minutes whether the daily backup is due, and once a day lets others do what waits
 * for nobody. One thread that sleeps: a scheduler would add to each start and know no better, since
 * what is due follows from the backups there are, also after a night without power.
 */
@ApplicationScoped
class NightWatch {
  private static final Logger LOG = Logger.getLogger(NightWatch.class);
  private static final int FIRST_SECONDS = 60;
  private static final int EVERY_SECONDS = 300;

  private final Backups backups;
  private final MakeBackup makeBackup;
  private final Event<NightlyRound> round;
  private final Scrubbing scrubbing;
  private final ClubTime time;
  private final Settings settings;
  private ScheduledExecutorService thread;
  private LocalDate lastRound;

  NightWatch(
      Backups backups,
      MakeBackup makeBackup,
      Event<NightlyRound> round,
      Scrubbing scrubbing,
      ClubTime time,
      Settings settings) {
    this.backups = backups;
    this.makeBackup = makeBackup;
    this.round = round;
    this.scrubbing = scrubbing;
    this.time = time;
    this.settings = settings;
  }

  void begin(@Observes StartupEvent started) {
    backups.forgetCopies();
    if (!settings.nightlyRound()) {
      return;
    }
    thread =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              Thread made = new Thread(work, "backups");
              made.setDaemon(true);
              return made;
            });
    thread.scheduleWithFixedDelay(this::look, FIRST_SECONDS, EVERY_SECONDS, TimeUnit.SECONDS);
  }

  void end(@Observes ShutdownEvent ending) throws InterruptedException {
    if (thread != null) {
      thread.shutdown();
      // A copy that has begun is finished: it takes seconds.
      thread.awaitTermination(EVERY_SECONDS, TimeUnit.SECONDS);
    }
  }

  private void look() {
    try {
      scrubbing.again();
      makeBackup.ifDue();
      LocalDate today = time.today();
      if (!today.equals(lastRound)) {
        round.fire(new NightlyRound(today));
        lastRound = today;
      }
    } catch (RuntimeException failure) {
      LOG.error("the nightly round failed; it is tried again", failure);
    }
  }
}
