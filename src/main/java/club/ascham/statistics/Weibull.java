package club.ascham.statistics;

import club.ascham.mechanics.Domain;
import org.hipparchus.special.Gamma;

/**
 * Lives with survival exp(-(t/scale)^shape): a shape over 1 wears out, one under 1 fails young.
 *
 * @param scale the age that 37 in 100 reach
 */
public record Weibull(double shape, double scale) {
  static final double LEAST_SHAPE = 0.05;
  static final double MOST_SHAPE = 100;
  private static final double LEAST_SCALE = 1e-12;
  private static final double MOST_SCALE = 1e15;

  /**
   * @throws club.ascham.mechanics.OutOfDomain
   */
  public Weibull {
    Domain.within("shape", shape, LEAST_SHAPE, MOST_SHAPE);
    Domain.within("scale", scale, LEAST_SCALE, MOST_SCALE);
  }

  /** The nearest life to these numbers that is one. */
  static Weibull near(double shape, double scale) {
    return new Weibull(
        Math.min(MOST_SHAPE, Math.max(LEAST_SHAPE, shape)),
        Math.min(MOST_SCALE, Math.max(LEAST_SCALE, scale)));
  }

  public double survival(double age) {
    return Math.exp(-cumulativeHazard(age));
  }

  public double cumulativeHazard(double age) {
    return Math.pow(age / scale, shape);
  }

  /** The age by which this share has failed: 0.1 for B10, 0.5 for the median. */
  public double quantile(double failed) {
    return scale * Math.pow(-Math.log1p(-failed), 1 / shape);
  }

  public double mean() {
    return scale * Math.exp(Gamma.logGamma(1 + 1 / shape));
  }

  /** Mean age at the end where every part is taken off at this age if it has not failed. */
  public double meanUpTo(double age) {
    double hazard = cumulativeHazard(age);
    return hazard == 0
        ? age
        : Double.isInfinite(hazard) ? mean() : mean() * Gamma.regularizedGammaP(1 / shape, hazard);
  }
}
