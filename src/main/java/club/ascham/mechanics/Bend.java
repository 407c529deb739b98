package club.ascham.mechanics;

/**
 * One limb bent by a pull along a line: the integration from its root. Used over and over by a
 * solver, so that nothing is allocated while it seeks; what the last {@link #under} found stands in
 * the fields.
 *
 * <p>Fourth-order Runge-Kutta in the angle, place and bending energy. Where the limb runs along the
 * line its distance is smallest and the string leaves it; that place is found within its step on
 * the cubic through both ends of the angle, and what lies beyond does not bear on the rest.
 */
final class Bend {
  final ElasticLimb limb;

  /** Distance to the line where it is smallest; 0 in equilibrium, positive: not reached. */
  double gap;

  /** Along the limb, where the string leaves it; its length where that is the tip. */
  double liftOffIn;

  /**
   * Length of string from the line's point to the limb's end, what lies along the limb included.
   */
  double alongIn;

  double energyInLb;
  double tipAngleRad;

  private double leftX;
  private double leftY;

  Bend(ElasticLimb limb) {
    this.limb = limb;
  }

  /** Bends the limb no farther than it must to know the fields but {@code tipAngleRad}. */
  void under(double lineX, double lineY, double angleRad, double tensionLb) {
    integrate(lineX, lineY, angleRad, tensionLb, null, null);
  }

  ElasticLimb.Shape shape(double lineX, double lineY, double angleRad, double tensionLb) {
    double[] xs = new double[limb.profile().mesh + 1];
    double[] ys = new double[limb.profile().mesh + 1];
    integrate(lineX, lineY, angleRad, tensionLb, xs, ys);
    int leftAt = 0;
    while (leftAt < limb.profile().mesh && limb.profile().nodesIn[leftAt] < liftOffIn) {
      leftAt++;
    }
    return new ElasticLimb.Shape(
        tensionLb, alongIn, liftOffIn, tipAngleRad, energyInLb, leftAt, xs, ys);
  }

  private void integrate(
      double lineX, double lineY, double angleRad, double tension, double[] xs, double[] ys) {
    LimbProfile profile = limb.profile();
    double[] compliance = profile.compliance;
    double[] curvature = profile.curvature;
    double[] nodes = profile.nodesIn;
    double cos = Math.cos(angleRad);
    double sin = Math.sin(angleRad);
    // Distance of (x, y) to the line: c - x cos + y sin.
    double c = lineX * cos - lineY * sin;
    double phi = limb.rootAngleRad();
    double x = limb.rootXIn();
    double y = limb.rootYIn();
    double energy = 0;
    double pull = tension;
    boolean touched = false;
    for (int i = 0; i < profile.mesh; i++) {
      if (xs != null) {
        xs[i] = x;
        ys[i] = y;
      }
      double h = nodes[i + 1] - nodes[i];
      double b0 = compliance[3 * i];
      double b1 = compliance[3 * i + 1];
      double b2 = compliance[3 * i + 2];
      double c1 = curvature[3 * i + 1];
      double m1 = pull * (c - x * cos + y * sin);
      double k1 = curvature[3 * i] + m1 * b0;
      double x1 = Math.sin(phi);
      double y1 = Math.cos(phi);
      double m2 = pull * (c - (x + h / 2 * x1) * cos + (y + h / 2 * y1) * sin);
      double k2 = c1 + m2 * b1;
      double p2 = phi + h / 2 * k1;
      double x2 = Math.sin(p2);
      double y2 = Math.cos(p2);
      double m3 = pull * (c - (x + h / 2 * x2) * cos + (y + h / 2 * y2) * sin);
      double k3 = c1 + m3 * b1;
      double p3 = phi + h / 2 * k2;
      double x3 = Math.sin(p3);
      double y3 = Math.cos(p3);
      double m4 = pull * (c - (x + h * x3) * cos + (y + h * y3) * sin);
      double k4 = curvature[3 * i + 2] + m4 * b2;
      double p4 = phi + h * k3;
      double next = phi + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
      if (!touched && phi > angleRad && next <= angleRad) {
        liftOff(nodes[i], h, phi, next, k1, k4, x, y, angleRad);
        touched = true;
        if (xs == null) {
          break;
        }
        pull = 0;
      } else {
        energy += h / 12 * (m1 * m1 * b0 + 2 * (m2 * m2 + m3 * m3) * b1 + m4 * m4 * b2);
      }
      phi = next;
      x += h / 6 * (x1 + 2 * x2 + 2 * x3 + Math.sin(p4));
      y += h / 6 * (y1 + 2 * y2 + 2 * y3 + Math.cos(p4));
    }
    if (xs != null) {
      xs[profile.mesh] = x;
      ys[profile.mesh] = y;
    }
    tipAngleRad = phi;
    energyInLb = energy;
    if (!touched) {
      liftOffIn = profile.lengthIn;
      leftX = x;
      leftY = y;
    }
    gap = c - leftX * cos + leftY * sin;
    alongIn = Math.hypot(lineX - leftX, lineY - leftY) + profile.lengthIn - liftOffIn;
  }

  /** Within a step: the root of the cubic that has both ends' angles and curvatures. */
  private void liftOff(
      double from,
      double h,
      double phi,
      double next,
      double k1,
      double k4,
      double x,
      double y,
      double angleRad) {
    double part = (phi - angleRad) / (phi - next);
    for (int i = 0; i < 4; i++) {
      double slope = (cubic(part + 1e-6, h, phi, next, k1, k4) - cubic(part, h, phi, next, k1, k4));
      if (slope >= 0) {
        break;
      }
      double change = (cubic(part, h, phi, next, k1, k4) - angleRad) / (slope / 1e-6);
      part = Math.min(1, Math.max(0, part - change));
    }
    double middle = cubic(part / 2, h, phi, next, k1, k4);
    double d = part * h / 6;
    leftX = x + d * (Math.sin(phi) + 4 * Math.sin(middle) + Math.sin(angleRad));
    leftY = y + d * (Math.cos(phi) + 4 * Math.cos(middle) + Math.cos(angleRad));
    liftOffIn = from + part * h;
  }

  private static double cubic(double t, double h, double from, double to, double k1, double k4) {
    double u = 1 - t;
    return u * u * (1 + 2 * t) * from + t * t * (3 - 2 * t) * to + h * t * u * (u * k1 - t * k4);
  }
}
