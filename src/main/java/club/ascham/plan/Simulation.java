package club.ascham.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Reckons a plan: many possible courses of the fleet's next 24 months, each from a seed of its own,
 * counted into tallies that add up alike however many threads share the work.
 */
public final class Simulation {
  private Simulation() {}

  /** Empty where {@code watch} said that it is not wanted any more. */
  public static Optional<Plan> of(
      PlannedFleet fleet, Assumptions assumed, int threads, Progress watch) {
    Numbers numbers = new Numbers(fleet, assumed);
    Optional<Tallies> tallies = counted(numbers, assumed, threads, watch);
    return tallies.map(all -> plan(fleet, assumed, numbers, all));
  }

  private static Optional<Tallies> counted(
      Numbers numbers, Assumptions assumed, int threads, Progress watch) {
    AtomicInteger next = new AtomicInteger();
    AtomicInteger done = new AtomicInteger();
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Tallies>> shares =
          IntStream.range(0, threads)
              .mapToObj(t -> workers.submit(() -> share(numbers, assumed, next, done, watch)))
              .toList();
      Tallies all = new Tallies(numbers);
      for (Future<Tallies> share : shares) {
        all.add(share.get());
      }
      return done.get() == assumed.replications() ? Optional.of(all) : Optional.empty();
    } catch (ExecutionException failed) {
      throw new IllegalStateException("a replication failed", failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    } finally {
      workers.shutdownNow();
    }
  }

  private static Tallies share(
      Numbers numbers,
      Assumptions assumed,
      AtomicInteger next,
      AtomicInteger done,
      Progress watch) {
    Tallies tallies = new Tallies(numbers);
    Replication replication = new Replication(numbers);
    for (int n = next.getAndIncrement();
        n < assumed.replications() && !watch.stopped() && !Thread.currentThread().isInterrupted();
        n = next.getAndIncrement()) {
      replication.run(Chance.of(assumed.seed(), n, assumed.usageSpread()), null);
      tallies.add(replication.happened);
      watch.reckoned(done.incrementAndGet());
    }
    return tallies;
  }

  private static Plan plan(PlannedFleet fleet, Assumptions assumed, Numbers numbers, Tallies all) {
    Calendar calendar = numbers.calendar;
    List<Plan.Job> jobs = new ArrayList<>();
    int[] ifNothingFails = ifNothingFails(fleet, numbers, jobs);
    return new Plan(
        assumed,
        IntStream.range(0, calendar.weeks())
            .mapToObj(
                w ->
                    new Plan.Week(
                        calendar.week(w),
                        all.minutes[w].band(),
                        ifNothingFails[w],
                        all.lateSafety[w].band(),
                        all.lateOther[w].band(),
                        all.out[w].band()))
            .toList(),
        IntStream.range(0, Calendar.MONTHS)
            .mapToObj(
                m ->
                    new Plan.Month(
                        calendar.month(m),
                        means(all.planned, m),
                        means(all.unplanned, m),
                        all.replaced[m].band(),
                        all.cost[m].band(),
                        all.costSoFar[m].band()))
            .toList(),
        IntStream.range(0, all.costOfYear.length)
            .mapToObj(
                y ->
                    new Plan.Year(
                        calendar.month(y * Calendar.MONTHS_A_YEAR),
                        all.costOfYear[y].band(),
                        all.besideOfYear[y].band(),
                        all.replacedOfYear[y].band(),
                        all.minutesOfYear[y].band()))
            .toList(),
        purchases(fleet, numbers, all),
        List.copyOf(jobs),
        EnoughHours.of(fleet, assumed, jobs),
        all.mostOut.band(),
        all.lateSafetyInAll.band());
  }

  private static Map<Kind, Double> means(Tally[][] byKind, int month) {
    Map<Kind, Double> means = new EnumMap<>(Kind.class);
    for (Kind kind : Kind.values()) {
      means.put(kind, byKind[kind.ordinal()][month].mean());
    }
    return means;
  }

  private static List<Plan.Purchase> purchases(PlannedFleet fleet, Numbers numbers, Tallies all) {
    Kind[] kindOf = new Kind[numbers.alike.size()];
    for (int p = 0; p < numbers.parts; p++) {
      kindOf[numbers.group[p]] = fleet.parts().get(p).kind();
    }
    List<Plan.Purchase> purchases = new ArrayList<>();
    for (int m = 0; m < Calendar.MONTHS; m++) {
      for (int g = 0; g < kindOf.length; g++) {
        Spread count = all.bought[g][m].band();
        if (count.mean() > 0) {
          purchases.add(
              new Plan.Purchase(numbers.calendar.month(m), kindOf[g], numbers.alike.get(g), count));
        }
      }
    }
    return List.copyOf(purchases);
  }

  /**
   * Work as it goes where nothing fails: the minutes of each week, and into {@code jobs} each piece
   * by the week it is done in, what does not fit last.
   */
  private static int[] ifNothingFails(PlannedFleet fleet, Numbers numbers, List<Plan.Job> jobs) {
    Replication asExpected = new Replication(numbers);
    asExpected.run(
        Chance.NONE,
        (r, due, week) -> {
          PlannedPart part = fleet.parts().get(numbers.partOf[r]);
          Routine routine = numbers.routine[r];
          jobs.add(
              new Plan.Job(
                  week < 0 ? null : numbers.calendar.week(week),
                  part.code(),
                  part.name(),
                  routine.work(),
                  fleet.today().plusDays((long) Math.floor(due)),
                  routine.minutes(),
                  routine.safety()));
        });
    jobs.sort(
        Comparator.comparing(
                Plan.Job::week, Comparator.nullsLast(Comparator.<LocalDate>naturalOrder()))
            .thenComparing(Plan.Job::due)
            .thenComparing(Plan.Job::code)
            .thenComparing(Plan.Job::work));
    return asExpected.happened.minutes;
  }
}
