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
 * @param rootXIn of the root from the line that brace is measured from
 * @param rootYIn of the root from the draw axis
 * @param rootAngleRad phi at the root; a limb bolt turned in makes it smaller
 */
public record ElasticLimb(
    LimbProfile profile, double rootXIn, double rootYIn, double rootAngleRad) {
  /** More than any bowstring bears. */
  static final double MOST_TENSION_LB = 800;

  /**
   * @throws OutOfDomain for what is no place or angle
   */
  public ElasticLimb {
    Domain.finite("rootForwardIn", rootXIn);
    Domain.finite("rootHeightIn", rootYIn);
    Domain.within("rootAngleRad", rootAngleRad, -Math.PI / 2, Math.PI / 2);
  }

  /** A limb without a kink: see {@link LimbProfile#of}. */
  public ElasticLimb(
      double lengthIn,
      double rootXIn,
      double rootYIn,
      double rootAngleRad,
      DoubleUnaryOperator stiffnessLbIn2,
      DoubleUnaryOperator restCurvaturePerIn,
      int mesh) {
    this(
        LimbProfile.of(lengthIn, stiffnessLbIn2, restCurvaturePerIn, mesh, 1),
        rootXIn,
        rootYIn,
        rootAngleRad);
  }

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
   * @param leftAt the first of the mesh's points that lies beyond where the string leaves
   * @param xs of the mesh's points, and {@code ys}
   */
  public record Shape(
      double tensionLb,
      double alongIn,
      double liftOffIn,
      double tipAngleRad,
      double energyInLb,
      int leftAt,
      double[] xs,
      double[] ys) {}

  /** The limb with its bolt turned in: its root leans by so much more away from the archer. */
  public ElasticLimb boltIn(double byRad) {
    return new ElasticLimb(profile, rootXIn, rootYIn, rootAngleRad - byRad);
  }

  /** The same limb, so many times as stiff. */
  public ElasticLimb stiffer(double factor) {
    return new ElasticLimb(profile.stiffer(factor), rootXIn, rootYIn, rootAngleRad);
  }

  /**
   * The tension at which this limb just reaches the line, and the shape it then has.
   *
   * @throws OutOfDomain where no tension brings it there
   */
  public Shape against(Line line) {
    return new Bend(this).shape(line.x(), line.y(), line.angleRad(), tensionAgainst(line));
  }

  double tensionAgainst(Line line) {
    Bend bend = new Bend(this);
    UnivariateFunction gap =
        tension -> {
          bend.under(line.x(), line.y(), line.angleRad(), tension);
          return bend.gap;
        };
    try {
      if (gap.value(0) <= 0) {
        throw new OutOfDomain("braceIn", "The limb would be slack: the line lies within its rest.");
      }
      // From far below what the limb is stiff for: pulled harder, it has other shapes at the line
      // too.
      double first = Math.min(1, 1 / (profile.compliance[0] * profile.lengthIn * profile.lengthIn));
      double high = first;
      while (gap.value(high) > 0) {
        high *= 2;
        if (high > 2 * MOST_TENSION_LB) {
          throw new OutOfDomain("drawsIn", "No tension brings the limb to that line.");
        }
      }
      double tension =
          new BracketingNthOrderBrentSolver(1e-13, 1e-11, 1e-14, 5)
              .solve(200, gap, high == first ? 0 : high / 2, high);
      if (tension > MOST_TENSION_LB) {
        throw new OutOfDomain("drawsIn", "No bowstring bears what would bring the limb there.");
      }
      return tension;
    } catch (MathRuntimeException unsolved) {
      throw new OutOfDomain("drawsIn", "The equations of the limb have no solution there.");
    }
  }

  /**
   * The shape under a pull along this line, whether or not the limb reaches it: the line's place
   * says what moment the pull has.
   */
  public Shape under(Line line, double tensionLb) {
    return new Bend(this).shape(line.x(), line.y(), line.angleRad(), tensionLb);
  }

  /** The limb without a string. */
  public Shape unstrung() {
    return under(new Line(rootXIn + 2 * profile.lengthIn, 0, 0), 0);
  }
}
