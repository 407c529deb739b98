package club.ascham.mechanics;

import club.ascham.mechanics.ElasticBow.Braced;
import club.ascham.mechanics.ElasticBow.Drawn;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * The force of one braced bow from brace to the farthest draw that anyone shoots, solved at draws
 * that lie closest near brace and joined by a cubic spline. Draws are counted from the braced
 * string.
 */
public final class DrawCurve {
  private static final double FAR_IN = 27;
  private static final int STEPS = 30;
  private static final double SLOPE_OVER_IN = 0.25;

  private final ElasticBow bow;
  private final Braced braced;
  private final PolynomialSplineFunction force;
  private final PolynomialSplineFunction energy;
  private final double reachIn;

  private DrawCurve(ElasticBow bow, Braced braced, double[] beyond, double[] lb, double[] inLb) {
    this.bow = bow;
    this.braced = braced;
    this.force = new SplineInterpolator().interpolate(beyond, lb);
    this.energy = new SplineInterpolator().interpolate(beyond, inLb);
    this.reachIn = beyond[beyond.length - 1];
  }

  /**
   * @throws OutOfDomain where the bow can't be braced so, or hardly drawn
   */
  public static DrawCurve of(ElasticBow bow, double braceIn) {
    Braced braced = bow.bracedAt(braceIn);
    ElasticBow.Drawing drawing = bow.drawing(braced);
    List<Drawn> states = new ArrayList<>();
    try {
      for (int i = 0; i <= STEPS; i++) {
        states.add(drawing.to(braceIn + FAR_IN * Math.pow(i / (double) STEPS, 1.5)));
      }
    } catch (OutOfDomain beyondReach) {
      // The curve ends at the last draw that string and limbs reach.
      if (states.size() < 4) {
        throw new OutOfDomain("braceIn", "A bow braced so can hardly be drawn.");
      }
    }
    return new DrawCurve(
        bow,
        braced,
        states.stream().mapToDouble(state -> state.drawIn() - braceIn).toArray(),
        states.stream().mapToDouble(Drawn::forceLb).toArray(),
        states.stream().mapToDouble(Drawn::energyInLb).toArray());
  }

  public ElasticBow bow() {
    return bow;
  }

  public Braced braced() {
    return braced;
  }

  /** The farthest that the bow was found to go, beyond the braced string. */
  public double reachIn() {
    return reachIn;
  }

  /**
   * Force on the fingers so far beyond the braced string, 0 up to {@link #reachIn}; farther, on
   * along the last slope.
   */
  public double forceLb(double beyondIn) {
    return beyondIn <= reachIn
        ? force.value(Math.max(0, beyondIn))
        : force.value(reachIn) + slope() * (beyondIn - reachIn);
  }

  /** Energy stored so far beyond the braced string, in inch-pounds. */
  public double energyInLb(double beyondIn) {
    double more = beyondIn - reachIn;
    return more <= 0
        ? energy.value(Math.max(0, beyondIn))
        : energy.value(reachIn) + more * (forceLb(reachIn) + slope() * more / 2);
  }

  private double slope() {
    return (force.value(reachIn) - force.value(reachIn - SLOPE_OVER_IN)) / SLOPE_OVER_IN;
  }
}
