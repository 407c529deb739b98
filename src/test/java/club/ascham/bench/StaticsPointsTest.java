package club.ascham.bench;

import club.ascham.bench.Points.Point;
import club.ascham.bench.Points.Within;
import club.ascham.form.Typed;
import java.io.IOException;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Statics against {@code points/rigid_limb_points.py} and {@code points/elastica_points.py}. */
class StaticsPointsTest {
  /** The slope is taken over a thousandth of an inch upward here, and both ways there. */
  private static final Within ELASTICA = Within.of(2e-6).but("dBraceDString", 1e-3);

  static Stream<Point> rigidLimb() throws IOException {
    return Points.of("rigid_limb");
  }

  static Stream<Point> elastica() throws IOException {
    return Points.of("elastica");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rigidLimb")
  @DisplayName(
      "rigid limbs agree with solved states and slopes of the energy (points/rigid_limb_points.py)")
  void rigidLimbs_areInEquilibrium(Point point) {
    holds(point, Within.of(1e-6));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("elastica")
  @DisplayName(
      "elastic limbs agree with adaptive integration and a general solver (points/elastica_points.py)")
  void elasticLimbs_areInEquilibrium(Point point) {
    holds(point, ELASTICA);
  }

  private static void holds(Point point, Within within) {
    StaticsQuestion question = question(point);
    Typed typed = Typed.of(question);
    point.holds(typed, question.reckon(typed), within);
  }

  private static StaticsQuestion question(Point of) {
    return new StaticsQuestion(
        of.cell("model"),
        of.number("limbIn"),
        of.number("hingeHeightIn"),
        of.number("hingeForwardIn"),
        of.number("stiffnessInLbPerRad"),
        of.number("restAngleRad"),
        of.number("halfStringIn"),
        of.number("limbLengthIn"),
        of.number("rootHeightIn"),
        of.number("rootForwardIn"),
        of.number("rootAngleRad"),
        of.number("rootStiffnessLbIn2"),
        of.number("tipFraction"),
        of.number("restCurvaturePerIn"),
        of.number("recurveFromPart"),
        of.number("recurveCurvaturePerIn"),
        lower(of),
        of.number("braceIn"),
        of.number("stringIn"),
        of.cell("drawsIn").isEmpty() ? null : of.numbers("drawsIn"));
  }

  private static StaticsQuestion.Limb lower(Point of) {
    boolean unlike =
        of.cells().entrySet().stream()
            .anyMatch(cell -> cell.getKey().startsWith("lower.") && !cell.getValue().isEmpty());
    return unlike
        ? new StaticsQuestion.Limb(
            of.number("lower.limbLengthIn"),
            of.number("lower.rootHeightIn"),
            of.number("lower.rootForwardIn"),
            of.number("lower.rootAngleRad"),
            of.number("lower.rootStiffnessLbIn2"),
            of.number("lower.tipFraction"),
            of.number("lower.restCurvaturePerIn"),
            of.number("lower.recurveFromPart"),
            of.number("lower.recurveCurvaturePerIn"))
        : null;
  }
}
