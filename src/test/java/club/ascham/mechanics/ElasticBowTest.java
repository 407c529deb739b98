package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.mechanics.ElasticLimb.Line;
import club.ascham.mechanics.ElasticLimb.Shape;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ElasticBowTest {
  // K. Mattiasson, Numerical results from large deflection beam and frame problems analysed by
  // means
  // of elliptic integrals, Int. J. Numer. Methods Eng. 17 (1981), Table 1; the row 0.2, and
  // the others to these digits, by elliptic integrals in elastica.py.
  @ParameterizedTest(name = "PL²/EI {0}")
  @CsvSource({
    "0.2, 0.06636, 0.00265, 0.09964",
    "1, 0.30172, 0.05643, 0.46135",
    "2, 0.49346, 0.16064, 0.78175",
    "5, 0.71379, 0.38763, 1.21537",
    "10, 0.81061, 0.55500, 1.43029"
  })
  @DisplayName("cantilever under a dead load at its tip: Mattiasson 1981, Table 1, to 1e-5")
  void cantilever_bendsAsPublished(double load, double across, double along, double angle) {
    ElasticLimb beam = new ElasticLimb(1, 0, 0, 0, s -> 1, s -> 0, 400);
    // The load's line goes through the tip, wherever that comes to lie.
    double tip =
        new BrentSolver(1e-12)
            .solve(
                200,
                y -> beam.under(new Line(0, y, -Math.PI / 2), load).ys()[400] - y,
                1 - along - 0.05,
                1);
    Shape shape = beam.under(new Line(0, tip, -Math.PI / 2), load);
    assertEquals(across, shape.xs()[400], 1e-5);
    assertEquals(along, 1 - shape.ys()[400], 1e-5);
    assertEquals(angle, shape.tipAngleRad(), 1e-5);
  }

  // The straight bow whose width falls evenly to the tip bends as a circular arc: C. N. Hickman, as
  // told by Tuyn & Kooi, Eur. J. Phys. 13 (1992), section 4; the figures are those of
  // elastica.py.
  private static ElasticBow straight(int mesh) {
    return ElasticBow.symmetric(
        new ElasticLimb(
            32, 0, 4, 0, ElasticBow.linearTaper(1.0001e5, 32, 1e-4 / 1.0001), s -> 0, mesh));
  }

  @Test
  @DisplayName("straight bow of linear taper: string, forces and work as in elastica.py")
  void straightBow_isAsSolvedByOtherMeans() {
    ElasticBow bow = straight(400);
    ElasticBow.Braced braced = bow.bracedAt(6);
    assertEquals(70.3437, braced.stringIn(), 1e-4);
    assertEquals(21.1815, bow.drawn(braced, 10).forceLb(), 1e-4);
    assertEquals(41.5301, bow.drawn(braced, 16).forceLb(), 1e-4);
    ElasticBow.Drawn full = bow.drawn(braced, 28);
    assertEquals(86.8687, full.forceLb(), 1e-4);
    assertEquals(990.838, full.energyInLb(), 1e-3);
  }

  @Test
  @DisplayName("a straight bow of linear taper bends as a circular arc (Hickman)")
  void straightBow_bendsAsAnArc() {
    Shape shape = straight(400).bracedAt(6).upper();
    // Three points give the circle; all others lie on it, but for the very tip's remnant of width.
    double[] circle =
        circle(
            shape.xs()[0],
            shape.ys()[0],
            shape.xs()[150],
            shape.ys()[150],
            shape.xs()[300],
            shape.ys()[300]);
    for (int i = 0; i <= 380; i += 20) {
      double radius = Math.hypot(shape.xs()[i] - circle[0], shape.ys()[i] - circle[1]);
      assertEquals(circle[2], radius, 3e-3 * circle[2], "point " + i);
    }
  }

  private static double[] circle(double x1, double y1, double x2, double y2, double x3, double y3) {
    double d = 2 * (x1 * (y2 - y3) + x2 * (y3 - y1) + x3 * (y1 - y2));
    double s1 = x1 * x1 + y1 * y1;
    double s2 = x2 * x2 + y2 * y2;
    double s3 = x3 * x3 + y3 * y3;
    double x = (s1 * (y2 - y3) + s2 * (y3 - y1) + s3 * (y1 - y2)) / d;
    double y = (s1 * (x3 - x2) + s2 * (x1 - x3) + s3 * (x2 - x1)) / d;
    return new double[] {x, y, Math.hypot(x1 - x, y1 - y)};
  }

  @Test
  void aFinerMesh_changesLessAndLess() {
    double last = Double.NaN;
    double lastChange = Double.NaN;
    for (int mesh : new int[] {50, 100, 200, 400}) {
      ElasticBow bow = straight(mesh);
      double force = bow.drawn(bow.bracedAt(6), 28).forceLb();
      double change = Math.abs(force - last);
      if (!Double.isNaN(lastChange)) {
        assertTrue(change < lastChange, "mesh " + mesh + ": " + change + " after " + lastChange);
      }
      lastChange = change;
      last = force;
    }
    assertTrue(lastChange < 1e-4, "the last doubling changed " + lastChange + " lbf");
  }

  @Test
  void theFingersWork_isTheChangeOfBendingEnergy() {
    ElasticBow bow = straight(400);
    ElasticBow.Braced braced = bow.bracedAt(6);
    int steps = 24;
    double work = 0;
    double width = (28.0 - 6) / steps;
    for (int i = 0; i < steps; i++) {
      double left = 6 + i * width;
      work +=
          width
              / 6
              * (bow.drawn(braced, left).forceLb()
                  + 4 * bow.drawn(braced, left + width / 2).forceLb()
                  + bow.drawn(braced, left + width).forceLb());
    }
    assertEquals(bow.drawn(braced, 28).energyInLb(), work, 1e-4 * work);
  }

  @Test
  void limbsAlike_haveNoTiller_andAreEachOthersMirror() {
    ElasticLimb one = limb(1);
    ElasticBow.Braced alike = new ElasticBow(one, limb(1)).bracedAt(6);
    assertEquals(0, alike.leanRad(), 1e-9);
    assertEquals(alike.distanceIn(0, 6), alike.distanceIn(0, -6), 1e-9);

    ElasticBow.Braced strongLower = new ElasticBow(one, limb(1.1)).bracedAt(6);
    ElasticBow.Braced strongUpper = new ElasticBow(limb(1.1), one).bracedAt(6);
    assertEquals(-strongUpper.leanRad(), strongLower.leanRad(), 1e-9);
    assertTrue(
        strongLower.distanceIn(0, 6) > strongLower.distanceIn(0, -6),
        "tiller is positive when the lower limb is the stiffer");
  }

  private static ElasticLimb limb(double strength) {
    return new ElasticLimb(
        32, 0, 4, 0, ElasticBow.linearTaper(1e5 * strength, 32, 1e-2), s -> 0, 200);
  }

  @Test
  void aStringThatIsTooHighForTheBow_isRefused() {
    assertThrows(OutOfDomain.class, () -> straight(100).bracedAt(31));
    ElasticBow bow = straight(100);
    ElasticBow.Braced braced = bow.bracedAt(6);
    assertThrows(OutOfDomain.class, () -> bow.drawn(braced, 5));
    assertThrows(OutOfDomain.class, () -> bow.drawn(braced, 60));
  }
}
