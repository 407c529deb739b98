package club.ascham.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.bench.NumberQuestions.LifeTold;
import club.ascham.bench.Points.Point;
import club.ascham.bench.Points.Within;
import club.ascham.form.Typed;
import club.ascham.statistics.Interval;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lives against {@code points/life_points.R}. */
class LifePointsTest {
  private static final double NINE_IN_TEN = 0.9;

  /** With delayed entry R's curvature is taken from second differences. */
  private static final Within WITHIN = Within.of(1e-6);

  private static final Within RANGES = Within.of(1e-4);

  private static List<Double> ages(Point point, String column) {
    return point.cell(column).isEmpty() ? null : point.numbers(column);
  }

  private static void range(Point point, String of, Interval interval) {
    point.is("own." + of + "Low", interval.low(), RANGES);
    point.is("own." + of + "High", interval.high(), RANGES);
  }

  static Stream<Point> life() throws IOException {
    return Points.of("life");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("life")
  @DisplayName(
      "lives, their ranges and survival agree with survfit and survreg (points/life_points.R)")
  void lives_areThoseOfR(Point point) {
    Typed typed = Typed.nothing();
    Optional<LifeTold> told =
        NumberQuestions.life(
            typed, point.numbers("failed"), ages(point, "suspended"), ages(point, "entered"));
    point.holds(typed, told.map(NumbersApi.LifeAnswer::of), WITHIN);
    told.ifPresent(
        life -> assertEquals(life.fit() == null, life.refusal() != null, "refused in words"));
    told.map(LifeTold::fit)
        .ifPresent(
            fit -> {
              range(point, "shape", fit.shape(NINE_IN_TEN));
              range(point, "scale", fit.scale(NINE_IN_TEN));
              range(point, "median", fit.quantile(0.5, NINE_IN_TEN));
              range(point, "b10", fit.quantile(0.1, NINE_IN_TEN));
            });
  }
}
