package club.ascham.server;

import club.ascham.story.HighWater;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.EnumSet;
import java.util.Set;
import org.jboss.logging.Logger;

/**
 * Lets the high-water mark follow the record each second, and once a minute tells the log what the
 * first page begins to tell officers, since nobody may look there for weeks. Not before the data
 * folder is open: the scheduler begins before that.
 */
@ApplicationScoped
class HealthMonitor {
  private static final Logger LOG = Logger.getLogger(HealthMonitor.class);

  /** After the night's last backup is told, before the data folder is given up. */
  private static final int NEARLY_LAST = Integer.MAX_VALUE - 1;

  private final HighWater highWater;
  private final Worries worries;
  private final Set<Worries.About> told = EnumSet.noneOf(Worries.About.class);

  HealthMonitor(HighWater highWater, Worries worries) {
    this.highWater = highWater;
    this.worries = worries;
  }

  void begin(@Observes StartupEvent started) {
    look();
    highWater.follow();
  }

  @Scheduled(every = "1s", skipExecutionIf = Scheduled.ApplicationNotRunning.class)
  void follow() {
    highWater.follow();
  }

  /** A clean stop leaves a mark that is behind by nothing. */
  void end(@Observes @Priority(NEARLY_LAST) ShutdownEvent ending) {
    highWater.follow();
  }

  @Scheduled(every = "1m", delayed = "1m", skipExecutionIf = Scheduled.ApplicationNotRunning.class)
  synchronized void look() {
    Set<Worries.About> now = EnumSet.noneOf(Worries.About.class);
    for (Worries.Worry worry : worries.now()) {
      now.add(worry.about());
      if (told.add(worry.about())) {
        LOG.warn(worry.said());
      }
    }
    told.retainAll(now);
  }
}
