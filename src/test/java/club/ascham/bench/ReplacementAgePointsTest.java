package club.ascham.bench;

import club.ascham.bench.Points.Point;
import club.ascham.bench.Points.Within;
import club.ascham.form.Typed;
import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Ages to replace at against {@code points/replacement_age_points.py}. */
class ReplacementAgePointsTest {
  static Stream<Point> replacementAge() throws IOException {
    return Points.of("replacement_age");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("replacementAge")
  @DisplayName(
      "the age to replace at is that at which the cost, integrated and minimised, is least (points/replacement_age_points.py)")
  void age_isWhereTheCostItselfIsLeast(Point point) {
    Typed typed = point.typed();
    point.holds(typed, NumberQuestions.replacementAge(typed), Within.of(1e-7));
  }
}
