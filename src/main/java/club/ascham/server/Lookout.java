package club.ascham.server;

import club.ascham.Settings;
import club.ascham.story.HighWater;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;

/**
 * Lets the high-water mark follow the record each second, and once a minute tells the log what the
 * first page begins to tell officers, since nobody may look there for weeks.
 */
@ApplicationScoped
class Lookout {
  private static final Logger LOG = Logger.getLogger(Lookout.class);
  private static final int FOLLOW_SECONDS = 1;
  private static final int LOOK_SECONDS = 60;
  private static final int ENDS_WITHIN_SECONDS = 10;

  /** After the night's last backup is told, before the data folder is given up. */
  private static final int NEARLY_LAST = Integer.MAX_VALUE - 1;

  private final HighWater highWater;
  private final Worries worries;
  private final Settings settings;
  private final Set<Worries.About> told = EnumSet.noneOf(Worries.About.class);
  private ScheduledExecutorService thread;

  Lookout(HighWater highWater, Worries worries, Settings settings) {
    this.highWater = highWater;
    this.worries = worries;
    this.settings = settings;
  }

  void begin(@Observes StartupEvent started) {
    look();
    highWater.follow();
    if (!settings.nightlyRound()) {
      return;
    }
    thread =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              Thread made = new Thread(work, "lookout");
              made.setDaemon(true);
              return made;
            });
    thread.scheduleWithFixedDelay(
        () -> go(highWater::follow), FOLLOW_SECONDS, FOLLOW_SECONDS, TimeUnit.SECONDS);
    thread.scheduleWithFixedDelay(
        () -> go(this::look), LOOK_SECONDS, LOOK_SECONDS, TimeUnit.SECONDS);
  }

  /** A clean stop leaves a mark that is behind by nothing. */
  void end(@Observes @Priority(NEARLY_LAST) ShutdownEvent ending) throws InterruptedException {
    if (thread != null) {
      thread.shutdownNow();
      thread.awaitTermination(ENDS_WITHIN_SECONDS, TimeUnit.SECONDS);
    }
    highWater.follow();
  }

  /** What a schedule throws at it would end the schedule, and nobody would know. */
  private static void go(Runnable work) {
    try {
      work.run();
    } catch (RuntimeException | Error failure) {
      LOG.error("the lookout failed; it looks again", failure);
    }
  }

  void look() {
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
