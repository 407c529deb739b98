package club.ascham.bench;

import club.ascham.bench.Points.Point;
import club.ascham.bench.Points.Within;
import club.ascham.form.Typed;
import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bolt turns against {@code points/bolt_points.py}. */
class BoltPointsTest {
  static Stream<Point> bolts() throws IOException {
    return Points.of("bolts");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bolts")
  @DisplayName(
      "bolt turns agree with a trial of every first step in whole fractions (points/bolt_points.py)")
  void turns_areThoseThatComeNearestOfAllThatAreTried(Point point) {
    Typed typed = point.typed();
    point.holds(typed, BenchQuestions.bolts(typed).map(BenchApi.BoltAnswer::of), Within.of(1e-9));
  }
}
