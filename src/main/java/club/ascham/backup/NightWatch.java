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
import java.util.Optional;
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
public class NightWatch {
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
  private volatile boolean failed;

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

  void look() {
    try {
      scrubbing.again();
      makeBackup.ifDue();
      backups.copyAgain();
      LocalDate today = time.today();
      if (!today.equals(lastRound)) {
        round.fire(new NightlyRound(today));
        lastRound = today;
      }
      failed = false;
    } catch (RuntimeException | Error failure) {
      // An error that gets out would end the schedule, and with it every backup to come.
      failed = true;
      LOG.error("the nightly round failed; it is tried again", failure);
    }
  }

  /** What an officer has to know without asking; empty: all went well. */
  public Optional<String> worry() {
    return failed
        ? Optional.of(
            "What is done each night failed, and names whose time is over may still be there. It is"
                + " tried again every five minutes; the server’s log says why.")
        : Optional.empty();
  }
}
