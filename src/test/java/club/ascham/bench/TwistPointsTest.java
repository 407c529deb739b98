package club.ascham.bench;

import club.ascham.bench.Points.Point;
import club.ascham.bench.Points.Within;
import club.ascham.form.Typed;
import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Twists against {@code points/twist_points.py}. */
class TwistPointsTest {
  /**
   * The program leaves out the product of two small spreads, which the other tool keeps: 0.2 in 100
   * of the range's width, and so a turn at its ends now and then.
   */
  private static final Within WITHIN =
      Within.of(1e-9)
          .but("chance", 2e-3)
          .but("expectedLowMm", 3e-4)
          .but("expectedHighMm", 3e-4)
          .but("low", 0.02)
          .but("high", 0.02);

  static Stream<Point> twists() throws IOException {
    return Points.of("twists");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("twists")
  @DisplayName(
      "twists agree with roots of the quadratic and whole fractions (points/twist_points.py)")
  void twists_areThoseOfTheFormulas_solvedElsewhere(Point point) {
    Typed typed = point.typed();
    point.holds(
        typed, BenchQuestions.twists(typed, point.club()).map(BenchApi.TwistAnswer::of), WITHIN);
  }
}
