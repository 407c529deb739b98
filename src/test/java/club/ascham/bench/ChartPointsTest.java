package club.ascham.bench;

import club.ascham.bench.Points.Point;
import club.ascham.bench.Points.Within;
import club.ascham.form.Typed;
import club.ascham.statistics.MovingRange;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Charts against {@code points/chart_points.py}. */
class ChartPointsTest {
  private static final Within WITHIN = Within.of(1e-10);

  static Stream<Point> ewma() throws IOException {
    return Points.of("ewma");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ewma")
  @DisplayName(
      "weighted averages and limits agree with weighted sums of all readings (points/chart_points.py)")
  void averages_areWeightedSumsOfAllReadings(Point point) {
    Typed typed = point.typed();
    List<Double> readings = point.numbers("readings");
    point.holds(typed, NumberQuestions.ewma(typed, readings), WITHIN);
    if (!point.cell("=own.sigma").isEmpty()) {
      MovingRange own = MovingRange.of(readings);
      point.is("own.centre", own.centre(), WITHIN);
      point.is("own.sigma", own.sigma(), WITHIN);
    }
  }

  static Stream<Point> cusum() throws IOException {
    return Points.of("cusum");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cusum")
  @DisplayName(
      "cumulative sums agree with the highest of all sums that end at a reading (points/chart_points.py)")
  void sums_areTheHighestOfAllThatEndThere(Point point) {
    Typed typed = point.typed();
    point.holds(typed, NumberQuestions.cusum(typed, point.numbers("readings")), WITHIN);
  }
}
