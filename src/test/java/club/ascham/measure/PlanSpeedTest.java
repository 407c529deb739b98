package club.ascham.measure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.plan.Assumptions;
import club.ascham.plan.Fleets;
import club.ascham.plan.Plan;
import club.ascham.plan.PlannedFleet;
import club.ascham.plan.Progress;
import club.ascham.plan.Simulation;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * How long the plan of a very large club takes on two cores, the first time too: each measurement
 * is one plan in a machine that has just begun. Off by default, like all that measures.
 */
@Tag("measure")
public class PlanSpeedTest {
  private static final double MOST_SECONDS = 5;

  /** 500 rigs, with enough hours for the work and with far too few. */
  @State(Scope.Benchmark)
  public static class LargeClub {
    @Param({"25", "10"})
    public double hoursAWeek;

    private final PlannedFleet fleet = Fleets.large(500, 3);

    @Benchmark
    public Plan thousandReplications() {
      Assumptions assumed =
          new Assumptions(
              1,
              1_000,
              hoursAWeek,
              0,
              new Assumptions.Course(3, 12, 6, 60),
              0.2,
              Map.of(),
              Map.of());
      return Simulation.of(fleet, assumed, 2, Progress.NOBODY).orElseThrow();
    }
  }

  @Test
  void fiveHundredRigs_aThousandTimes_inUnderFiveSeconds() throws RunnerException {
    for (RunResult result :
        new Runner(
                new OptionsBuilder()
                    .include(LargeClub.class.getName().replace("$", "\\."))
                    .mode(Mode.SingleShotTime)
                    .timeUnit(TimeUnit.SECONDS)
                    .warmupIterations(0)
                    .measurementIterations(3)
                    .forks(2)
                    .build())
            .run()) {
      double seconds = result.getPrimaryResult().getStatistics().getMax();
      System.out.println(
          "Seconds at most, " + result.getParams().getParam("hoursAWeek") + " h: " + seconds);
      assertTrue(seconds < MOST_SECONDS, seconds + " s");
    }
  }
}
