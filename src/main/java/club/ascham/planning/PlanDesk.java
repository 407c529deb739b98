package club.ascham.planning;

import club.ascham.rules.Club;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import io.quarkus.runtime.ShutdownEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;

/**
 * Reckons plans one after another in the background, and keeps the last few: a plan holds for a day
 * and for the record as it is, whose newest entry is part of its key.
 */
@ApplicationScoped
class PlanDesk {
  private static final Logger LOG = Logger.getLogger(PlanDesk.class);
  private static final int KEPT = 12;
  private static final int MOST_THREADS = 2;

  private final Rows rows;
  private final FleetToPlan fleet;
  private final Club club;
  private final ClubTime time;
  private final ExecutorService reckoner =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread made = new Thread(work, "plan");
            made.setDaemon(true);
            return made;
          });
  private final Map<Key, PlanRun> runs = new LinkedHashMap<>();
  private long numbers;

  PlanDesk(Rows rows, FleetToPlan fleet, Club club, ClubTime time) {
    this.rows = rows;
    this.fleet = fleet;
    this.club = club;
    this.time = time;
  }

  private record Key(LocalDate today, long newest, WhatIf whatIf) {}

  /** The run of this what-if, begun unless it is there. */
  PlanRun ask(WhatIf whatIf) {
    Key key = new Key(time.today(), rows.number("SELECT coalesce(max(id), 0) FROM story"), whatIf);
    synchronized (runs) {
      PlanRun there = runs.get(key);
      if (there != null) {
        return there;
      }
      runs.keySet().stream()
          .filter(old -> old.newest() != key.newest())
          .toList()
          .forEach(this::drop);
      while (runs.size() >= KEPT) {
        Iterator<Key> oldest = runs.keySet().iterator();
        drop(oldest.next());
      }
      PlanRun run =
          new PlanRun(++numbers, whatIf, fleet.read(key.today()), club.rules().shotsASession());
      runs.put(key, run);
      reckoner.execute(() -> reckon(run));
      return run;
    }
  }

  private void drop(Key key) {
    runs.remove(key).stop();
  }

  private static void reckon(PlanRun run) {
    try {
      run.reckon(Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
    } catch (RuntimeException failure) {
      LOG.error("a plan could not be reckoned", failure);
    }
  }

  /** Whoever waits for that run waits no longer. */
  void stop(long number) {
    synchronized (runs) {
      runs.entrySet().stream()
          .filter(entry -> entry.getValue().number() == number)
          .map(Map.Entry::getKey)
          .toList()
          .forEach(this::drop);
    }
  }

  void end(@Observes ShutdownEvent ending) throws InterruptedException {
    synchronized (runs) {
      runs.values().forEach(PlanRun::stop);
    }
    reckoner.shutdown();
    reckoner.awaitTermination(5, TimeUnit.SECONDS);
  }
}
