package club.ascham.mechanics;

import club.ascham.mechanics.ElasticLimb.Line;
import club.ascham.mechanics.ElasticLimb.Shape;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * A bow of two elastic limbs, alike or not, and an inextensible string.
 *
 * @param upper with y counted upward from the draw axis
 * @param lower likewise, counted downward
 */
public record ElasticBow(ElasticLimb upper, ElasticLimb lower) {
  private static final int STEPS = 64;
  private static final double FINEST = 1e-13;

  /**
   * The strung bow.
   *
   * @param stringIn length of the string from limb end to limb end
   * @param leanRad of the string toward the upper limb's archer's side; 0 where the limbs are alike
   * @param braceIn of the string's line from x = 0, on the draw axis
   */
  public record Braced(double stringIn, double leanRad, double braceIn, Shape upper, Shape lower) {
    /** Distance, square to the string, of a point on the riser line at this height. */
    public double distanceIn(double xIn, double yIn) {
      return new Line(braceIn, 0, leanRad).beyond(xIn, yIn);
    }
  }

  /** The bow at a draw. */
  public record Drawn(double drawIn, double forceLb, double energyInLb, Shape upper, Shape lower) {}

  /** Two limbs alike. */
  public static ElasticBow symmetric(ElasticLimb limb) {
    return new ElasticBow(limb, limb);
  }

  /**
   * The string that braces the bow so high, with the line of a string between two unlike limbs
   * leaning so that both pull it alike.
   */
  public Braced bracedAt(double braceIn) {
    if (upper == lower) {
      Shape shape = braced(upper, braceIn, 0);
      return new Braced(2 * shape.alongIn(), 0, braceIn, shape, shape);
    }
    UnivariateFunction unequal =
        lean ->
            braced(upper, braceIn, lean).tensionLb() - braced(lower, braceIn, -lean).tensionLb();
    double lean = root(unequal, -0.03, 0.03, "braceIn");
    Shape above = braced(upper, braceIn, lean);
    Shape below = braced(lower, braceIn, -lean);
    return new Braced(above.alongIn() + below.alongIn(), lean, braceIn, above, below);
  }

  private static Shape braced(ElasticLimb limb, double braceIn, double lean) {
    try {
      return limb.against(new Line(braceIn, 0, lean));
    } catch (OutOfDomain outside) {
      throw new OutOfDomain("braceIn", outside.getMessage());
    }
  }

  /**
   * Two limbs alike, drawn with the nock on the draw axis.
   *
   * @param drawIn of the nock from x = 0
   * @throws OutOfDomain where string and limbs don't reach so far
   */
  public Drawn drawn(Braced braced, double drawIn) {
    if (upper != lower) {
      throw new IllegalArgumentException("only two limbs alike are drawn along an axis");
    }
    if (drawIn < braced.braceIn() - 1e-9) {
      throw new OutOfDomain("drawsIn", "A draw lies beyond the braced string.");
    }
    if (drawIn <= braced.braceIn()) {
      return new Drawn(drawIn, 0, 0, braced.upper(), braced.lower());
    }
    double half = braced.stringIn() / 2;
    double angle = stringAngle(drawIn, half);
    Shape shape = upper.against(new Line(drawIn, 0, angle));
    return new Drawn(
        drawIn,
        2 * shape.tensionLb() * Math.abs(Math.sin(angle)),
        2 * (shape.energyInLb() - braced.upper().energyInLb()),
        shape,
        shape);
  }

  /**
   * From the line that the unstrung limb just touches, where the string would be too short, the
   * string's line is raised until it is as long as it is.
   */
  private double stringAngle(double drawIn, double half) {
    Shape rest = upper.unstrung();
    int tip = rest.xs().length - 1;
    double touching = Math.atan2(rest.xs()[tip] - drawIn, rest.ys()[tip]);
    UnivariateFunction over = angle -> upper.against(new Line(drawIn, 0, angle)).alongIn() - half;
    // At the touching line itself the limb is slack by a rounding error.
    double from = touching * (1 - 1e-6);
    for (int i = 1; i < STEPS; i++) {
      double to = touching * (1 - i / (double) STEPS);
      if (over.value(to) <= 0) {
        return root(over, from, to, "drawsIn");
      }
      from = to;
    }
    throw new OutOfDomain("drawsIn", "String and limbs don't reach so far.");
  }

  private static double root(
      UnivariateFunction function, double low, double high, String quantity) {
    try {
      return new BracketingNthOrderBrentSolver(FINEST, FINEST, FINEST, 5)
          .solve(200, function, low, high);
    } catch (MathRuntimeException unsolved) {
      throw new OutOfDomain(quantity, "The bow has no such state.");
    }
  }

  /** W(s) that falls evenly from root to tip, where a little is left. */
  public static DoubleUnaryOperator linearTaper(
      double rootLbIn2, double lengthIn, double leftPart) {
    return s -> rootLbIn2 * ((lengthIn - s) / lengthIn + leftPart);
  }
}
