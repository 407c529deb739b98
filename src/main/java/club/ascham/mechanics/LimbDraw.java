package club.ascham.mechanics;

import club.ascham.mechanics.ElasticLimb.Shape;

/**
 * One limb on its way from brace to a draw: the nock moves along the draw axis, the half of the
 * string keeps its length, and each state begins from the last ones.
 */
final class LimbDraw {
  private static final double LONGEST_STEP_IN = 2;
  private static final double SHORTEST_STEP_IN = 1e-3;

  private final Bend bend;
  private final double halfStringIn;
  private final Newton newton = new Newton(1e-10, 0.2, 40);
  private final double[] unknowns = new double[2];

  private double drawIn;
  private double angleRad;
  private double tensionLb;
  private double angleSlope;
  private double tensionSlope;

  LimbDraw(ElasticLimb limb, double braceIn, double leanRad, Shape braced) {
    this.bend = new Bend(limb);
    this.halfStringIn = braced.alongIn();
    this.drawIn = braceIn;
    this.angleRad = leanRad;
    this.tensionLb = braced.tensionLb();
  }

  /**
   * Goes on to a draw beyond the last.
   *
   * @throws OutOfDomain where string and limb don't reach so far
   */
  void to(double target) {
    double step = LONGEST_STEP_IN;
    while (drawIn < target) {
      double next = Math.min(target, drawIn + step);
      if (!solved(next)) {
        step = Math.min(step, next - drawIn) / 2;
        if (step < SHORTEST_STEP_IN) {
          throw new OutOfDomain("drawsIn", "String and limbs don't reach so far.");
        }
      }
    }
  }

  private boolean solved(double next) {
    double ahead = next - drawIn;
    unknowns[0] = angleRad + angleSlope * ahead;
    unknowns[1] = tensionLb + tensionSlope * ahead;
    boolean solved =
        newton.solve(
            (u, out) -> {
              bend.under(next, 0, u[0], u[1]);
              out[0] = bend.gap;
              out[1] = bend.alongIn - halfStringIn;
            },
            unknowns);
    // A draw only ever raises the string's angle; another state would be another bow.
    if (!solved
        || unknowns[0] >= angleRad
        || unknowns[0] < -Math.PI / 2
        || unknowns[1] <= 0
        || unknowns[1] > ElasticLimb.MOST_TENSION_LB) {
      return false;
    }
    angleSlope = (unknowns[0] - angleRad) / ahead;
    tensionSlope = (unknowns[1] - tensionLb) / ahead;
    drawIn = next;
    angleRad = unknowns[0];
    tensionLb = unknowns[1];
    return true;
  }

  /** This limb's part of the force along the draw axis. */
  double forceLb() {
    return -tensionLb * Math.sin(angleRad);
  }

  Shape shape() {
    return bend.shape(drawIn, 0, angleRad, tensionLb);
  }
}
