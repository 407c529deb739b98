package club.ascham.bench;

import club.ascham.bench.Points.Point;
import club.ascham.bench.Points.Within;
import club.ascham.form.Typed;
import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Weight on the fingers against {@code points/draw_weight_points.py}. */
class DrawWeightPointsTest {
  /**
   * The program takes the curve of the brace nearest by eighths of an inch, and joins it by a
   * spline.
   */
  private static final double WITHIN = 1.5e-3;

  static Stream<Point> drawWeight() throws IOException {
    return Points.of("draw_weight");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawWeight")
  @DisplayName(
      "weight on the fingers agrees with the recurve solved by adaptive integration (points/draw_weight_points.py)")
  void weight_isThatOfTheRecurve_integratedElsewhere(Point point) {
    Typed typed = point.typed();
    point.holds(
        typed,
        BenchQuestions.drawWeight(typed).map(BenchApi.DrawWeightAnswer::of),
        Within.of(WITHIN));
  }
}
