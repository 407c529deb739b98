package club.ascham.backup;

import club.ascham.store.Scrubbing;
import club.ascham.time.ClubTime;
import club.ascham.time.NightlyRound;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.event.Observes;
import java.time.LocalDate;
import java.util.Optional;
import org.jboss.logging.Logger;

/**
 * Looks every few minutes whether the daily backup is due, and once a day lets others do what waits
 * for nobody. No hour is set for it: what is due follows from the backups there are, also after a
 * night without power. While the data folder is being opened, a long migration perhaps, it waits.
 */
@ApplicationScoped
public class NightlyScheduler {
  private static final Logger LOG = Logger.getLogger(NightlyScheduler.class);

  private final Backups backups;
  private final TellBackup tellBackup;
  private final Event<NightlyRound> round;
  private final Scrubbing scrubbing;
  private final ClubTime time;
  private LocalDate lastRound;
  private boolean ended;
  private volatile boolean failed;

  NightlyScheduler(
      Backups backups,
      TellBackup tellBackup,
      Event<NightlyRound> round,
      Scrubbing scrubbing,
      ClubTime time) {
    this.backups = backups;
    this.tellBackup = tellBackup;
    this.round = round;
    this.scrubbing = scrubbing;
    this.time = time;
  }

  void begin(@Observes StartupEvent started) {
    backups.forgetCopies();
  }

  /** A copy that has begun is finished first, which takes seconds; none is begun any more. */
  synchronized void end(@Observes ShutdownEvent ending) {
    ended = true;
  }

  @Scheduled(every = "5m", delayed = "1m", skipExecutionIf = Scheduled.ApplicationNotRunning.class)
  synchronized void look() {
    if (ended) {
      return;
    }
    try {
      scrubbing.again();
      backups.makeIfDue().ifPresent(tellBackup::atNight);
      backups.copyAgain();
      LocalDate today = time.today();
      if (!today.equals(lastRound)) {
        round.fire(new NightlyRound(today));
        lastRound = today;
      }
      failed = false;
    } catch (RuntimeException | Error failure) {
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
