package club.ascham.bench;

import club.ascham.bench.NumberQuestions.ReadingAsked;
import club.ascham.bench.Points.Point;
import club.ascham.bench.Points.Within;
import club.ascham.form.Typed;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Readers against {@code points/reader_points.py}. */
class ReaderPointsTest {
  static Stream<Point> readers() throws IOException {
    return Points.of("readers");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("readers")
  @DisplayName(
      "readers agree with projections and generalised least squares (points/reader_points.py)")
  void readers_differAsMeanSquaresAndLeastSquaresSay(Point point) {
    Typed typed = Typed.nothing();
    List<ReadingAsked> readings =
        point.cell("readings").isEmpty()
            ? List.of()
            : Arrays.stream(point.cell("readings").split(" "))
                .map(one -> one.split(":"))
                .map(one -> new ReadingAsked(one[0], Double.valueOf(one[1])))
                .toList();
    point.holds(
        typed,
        NumberQuestions.readers(typed, readings).map(NumbersApi.ReadersAnswer::of),
        Within.of(1e-6));
  }
}
