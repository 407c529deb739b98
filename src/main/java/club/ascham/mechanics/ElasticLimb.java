package club.ascham.mechanics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * One limb as a planar, inextensible elastica, pulled by a string without friction. From the root
 * (s = 0) to the tip, x toward the archer and y away from the draw axis:
 *
 * <pre>phi' = k0(s) + T d(s) / W(s),  x' = sin phi,  y' = cos phi</pre>
 *
 * <p>with d the distance to the string's line, positive while the string lies on the archer's side.
 * A string that would cut through a recurved tip lies along it instead: it leaves the limb where it
 * touches tangentially, and beyond that the limb keeps its unstrung shape. Own derivation.
 *
 * @param lengthIn of the bending limb
 * @param rootXIn of the root from the line that brace is measured from
 * @param rootYIn of the root from the draw axis
 * @param rootAngleRad phi at the root; a limb bolt turned in makes it larger
 * @param stiffnessLbIn2 W(s), bending stiffness
 * @param restCurvaturePerIn k0(s) of the unstrung limb; negative: away from the archer
 * @param mesh steps of the integration (fourth-order Runge-Kutta)
 */
public record ElasticLimb(
    double lengthIn,
    double rootXIn,
    double rootYIn,
    double rootAngleRad,
    DoubleUnaryOperator stiffnessLbIn2,
    DoubleUnaryOperator restCurvaturePerIn,
    int mesh) {
  private static final double MOST_TENSION_LB = 2_000;

  /** A string's line: through a point, at an angle from the y axis toward the archer. */
  public record Line(double x, double y, double angleRad) {
    /** Distance of a point to this line; positive: the line lies on the archer's side. */
    double beyond(double px, double py) {
      return (x - px) * Math.cos(angleRad) - (y - py) * Math.sin(angleRad);
    }
  }

  /**
   * The limb in equilibrium with a string.
   *
   * @param tensionLb of the string
   * @param alongIn length of string from the line's point to the limb's end, what lies along the
   *     limb included
   * @param liftOffIn where along the limb the string leaves it; the limb's length where it leaves
   *     at the tip
   * @param tipAngleRad phi at the tip
   * @param energyInLb bending energy
   * @param xs of the mesh's points, and {@code ys}
   */
  public record Shape(
      double tensionLb,
      double alongIn,
      double liftOffIn,
      double tipAngleRad,
      double energyInLb,
      double[] xs,
      double[] ys) {}

  /**
   * The tension at which this limb just reaches the line, and the shape it then has.
   *
   * @throws OutOfDomain where no tension brings it there
   */
  public Shape against(Line line) {
    UnivariateFunction gap = tension -> bend(line, tension).nearestGap;
    try {
      double slack = gap.value(0);
      if (slack <= 0) {
        throw new OutOfDomain("braceIn", "The limb would be slack: the line lies within its rest.");
      }
      double high = 1;
      while (gap.value(high) > 0) {
        high *= 2;
        if (high > MOST_TENSION_LB) {
          throw new OutOfDomain("drawsIn", "No tension brings the limb to that line.");
        }
      }
      double tension =
          new BracketingNthOrderBrentSolver(1e-13, 1e-11, 1e-14, 5)
              .solve(200, gap, high == 1 ? 0 : high / 2, high);
      return bend(line, tension).shape(line, tension);
    } catch (MathRuntimeException unsolved) {
      throw new OutOfDomain("drawsIn", "The equations of the limb have no solution there.");
    }
  }

  /**
   * The shape under a pull along this line, whether or not the limb reaches it: the line's place
   * says what moment the pull has.
   */
  public Shape under(Line line, double tensionLb) {
    return bend(line, tensionLb).shape(line, tensionLb);
  }

  /** The limb without a string. */
  public Shape unstrung() {
    return under(new Line(rootXIn + 2 * lengthIn, 0, 0), 0);
  }

  private Bent bend(Line line, double tension) {
    Bent bent = new Bent();
    double h = lengthIn / mesh;
    double phi = rootAngleRad;
    double x = rootXIn;
    double y = rootYIn;
    boolean touched = false;
    bent.xs[0] = x;
    bent.ys[0] = y;
    for (int i = 0; i < mesh; i++) {
      double s = i * h;
      double pull = touched ? 0 : tension;
      double fromPhi = phi;
      double fromX = x;
      double fromY = y;
      double w0 = stiffnessLbIn2.applyAsDouble(s);
      double w1 = stiffnessLbIn2.applyAsDouble(s + h / 2);
      double w2 = stiffnessLbIn2.applyAsDouble(s + h);
      double c0 = restCurvaturePerIn.applyAsDouble(s);
      double c1 = restCurvaturePerIn.applyAsDouble(s + h / 2);
      double c2 = restCurvaturePerIn.applyAsDouble(s + h);
      double k1 = c0 + pull * line.beyond(x, y) / w0;
      double a1 = Math.sin(phi);
      double b1 = Math.cos(phi);
      double p2 = phi + h / 2 * k1;
      double k2 = c1 + pull * line.beyond(x + h / 2 * a1, y + h / 2 * b1) / w1;
      double a2 = Math.sin(p2);
      double b2 = Math.cos(p2);
      double p3 = phi + h / 2 * k2;
      double k3 = c1 + pull * line.beyond(x + h / 2 * a2, y + h / 2 * b2) / w1;
      double a3 = Math.sin(p3);
      double b3 = Math.cos(p3);
      double p4 = phi + h * k3;
      double k4 = c2 + pull * line.beyond(x + h * a3, y + h * b3) / w2;
      double a4 = Math.sin(p4);
      double b4 = Math.cos(p4);
      phi += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
      x += h / 6 * (a1 + 2 * a2 + 2 * a3 + a4);
      y += h / 6 * (b1 + 2 * b2 + 2 * b3 + b4);
      bent.xs[i + 1] = x;
      bent.ys[i + 1] = y;
      double bending0 = pull * line.beyond(fromX, fromY);
      double bending1 = pull * line.beyond((fromX + x) / 2, (fromY + y) / 2);
      double bending2 = pull * line.beyond(x, y);
      bent.energy +=
          h
              / 12
              * (bending0 * bending0 / w0
                  + 4 * bending1 * bending1 / w1
                  + bending2 * bending2 / w2);
      if (!touched) {
        double before = fromPhi - line.angleRad();
        double after = phi - line.angleRad();
        if (before > 0 && after <= 0) {
          // The gap is smallest where the limb runs along the line: there the string leaves it.
          double part = before / (before - after);
          double mean = fromPhi - before * part / 2;
          bent.liftOff = s + part * h;
          bent.liftX = fromX + part * h * Math.sin(mean);
          bent.liftY = fromY + part * h * Math.cos(mean);
          bent.nearestGap = line.beyond(bent.liftX, bent.liftY);
          touched = true;
        }
      }
    }
    bent.tipAngle = phi;
    if (!touched) {
      bent.nearestGap = line.beyond(x, y);
      bent.liftOff = lengthIn;
      bent.liftX = x;
      bent.liftY = y;
    }
    return bent;
  }

  private final class Bent {
    private final double[] xs = new double[mesh + 1];
    private final double[] ys = new double[mesh + 1];
    private double nearestGap;
    private double liftOff;
    private double liftX;
    private double liftY;
    private double energy;
    private double tipAngle;

    private Shape shape(Line line, double tension) {
      double free = Math.hypot(line.x() - liftX, line.y() - liftY);
      return new Shape(tension, free + lengthIn - liftOff, liftOff, tipAngle, energy, xs, ys);
    }
  }
}
