package club.ascham.backup;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;

/**
 * Looks every few minutes whether the daily backup is due. One thread that sleeps: a scheduler
 * would add to each start and know no better, since what is due follows from the backups there are,
 * also after a night without power.
 */
@ApplicationScoped
class NightWatch {
  private static final Logger LOG = Logger.getLogger(NightWatch.class);
  private static final int FIRST_SECONDS = 60;
  private static final int EVERY_SECONDS = 300;

  private final Backups backups;
  private ScheduledExecutorService thread;

  NightWatch(Backups backups) {
    this.backups = backups;
  }

  void begin(@Observes StartupEvent started) {
    backups.forgetCopies();
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
      backups.makeIfDue();
    } catch (RuntimeException failure) {
      LOG.error("can't look whether a backup is due", failure);
    }
  }
}
