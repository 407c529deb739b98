package club.ascham.measure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.mechanics.CommonRecurve;
import club.ascham.mechanics.DrawCurve;
import club.ascham.mechanics.ElasticBow;
import club.ascham.mechanics.RigidLimb;
import java.util.Collection;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * How long one state of a bow takes on one core, by JMH. Off by default, like all that measures.
 */
@Tag("measure")
public class MechanicsSpeedTest {
  private static final Map<String, Double> MOST_MICROSECONDS =
      Map.of(
          "rigidLimbBraced", 50.0,
          "elasticBowStrung", 2_000.0,
          "unlikeLimbsStrung", 2_000.0,
          "drawCurve", 40_000.0,
          "drawCurveOfUnlikeLimbs", 40_000.0);

  /** Each state differs a little from the last, so that nothing could be kept from it. */
  @State(Scope.Thread)
  public static class Bows {
    private final ElasticBow alike = CommonRecurve.of(68, 25);
    private final ElasticBow unlike = new ElasticBow(alike.upper(), alike.lower().stiffer(1.03));
    private int turn;

    private double little() {
      turn = (turn + 1) % 1_000;
      return turn * 1e-4;
    }

    @Benchmark
    public double rigidLimbBraced() {
      RigidLimb bow = new RigidLimb(15, 17.5, 1.5, 560, -0.10, 30.6 + little());
      return bow.braceIn() + bow.tensionLb();
    }

    @Benchmark
    public ElasticBow.Braced elasticBowStrung() {
      return alike.strung(65 + little());
    }

    @Benchmark
    public ElasticBow.Braced unlikeLimbsStrung() {
      return unlike.strung(65 + little());
    }

    /** Thirty-one states from brace to far beyond full draw. */
    @Benchmark
    public DrawCurve drawCurve() {
      return DrawCurve.of(alike, 8.7 + little());
    }

    @Benchmark
    public DrawCurve drawCurveOfUnlikeLimbs() {
      return DrawCurve.of(unlike, 8.7 + little());
    }
  }

  @Test
  void statesAndCurves_areFastEnough() throws RunnerException {
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .include(Bows.class.getName().replace("$", "\\."))
                    .mode(Mode.AverageTime)
                    .timeUnit(TimeUnit.MICROSECONDS)
                    .warmupIterations(3)
                    .warmupTime(TimeValue.seconds(1))
                    .measurementIterations(5)
                    .measurementTime(TimeValue.seconds(1))
                    .forks(1)
                    .threads(1)
                    .build())
            .run();
    Map<String, Double> microseconds =
        results.stream()
            .map(RunResult::getPrimaryResult)
            .collect(Collectors.toMap(r -> r.getLabel(), r -> r.getScore()));
    System.out.println("Microseconds each: " + microseconds);
    assertTrue(microseconds.keySet().containsAll(MOST_MICROSECONDS.keySet()));
    assertAll(
        MOST_MICROSECONDS.entrySet().stream()
            .map(
                most ->
                    () ->
                        assertTrue(
                            microseconds.get(most.getKey()) < most.getValue(),
                            most.getKey() + ": " + microseconds.get(most.getKey()) + " µs")));
  }
}
