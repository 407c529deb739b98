package club.ascham.statistics;

import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.special.Gamma;

/**
 * A Weibull life estimated from parts in service, with what is not known of it: a normal spread of
 * log shape and log scale, from the curvature of the likelihood at its peak.
 *
 * @param logLikelihood at the peak; of the parts alone, whatever was believed before
 * @param failures it rests on, out of {@code parts}
 * @param degrees of freedom of its intervals
 */
public record WeibullFit(
    Weibull life,
    double logLikelihood,
    int failures,
    int parts,
    int degrees,
    double varianceOfLogShape,
    double varianceOfLogScale,
    double covariance) {

  /**
   * The curvature at a peak, turned into variances; empty where it is no peak.
   *
   * @param ofShape precision of what was believed of log shape before, {@code ofScale} of log scale
   */
  static Optional<WeibullFit> at(
      Weibull life,
      WeibullLikelihood likelihood,
      int parts,
      int degrees,
      double ofShape,
      double ofScale) {
    double[] slopes = likelihood.slopes(Math.log(life.shape()), Math.log(life.scale()));
    double shape = ofShape - slopes[2];
    double mixed = -slopes[3];
    double scale = ofScale - slopes[4];
    double determinant = shape * scale - mixed * mixed;
    return shape > 0 && determinant > 0
        ? Optional.of(
            new WeibullFit(
                life,
                likelihood.value(life),
                likelihood.failures(),
                parts,
                degrees,
                scale / determinant,
                shape / determinant,
                -mixed / determinant))
        : Optional.empty();
  }

  /** By maximum likelihood; empty where it has no peak. */
  static Optional<WeibullFit> of(List<Service> services) {
    WeibullLikelihood likelihood = new WeibullLikelihood(services);
    return likelihood
        .likeliest()
        .flatMap(life -> at(life, likelihood, services.size(), likelihood.failures() - 1, 0, 0));
  }

  public Interval shape(double level) {
    return interval(life.shape(), Math.sqrt(varianceOfLogShape), level);
  }

  public Interval scale(double level) {
    return interval(life.scale(), Math.sqrt(varianceOfLogScale), level);
  }

  /** The age by which this share has failed. */
  public Interval quantile(double failed, double level) {
    // ln t = ln scale + ln(-ln(1 - p)) / shape.
    double byLogShape = -Math.log(-Math.log1p(-failed)) / life.shape();
    return interval(life.quantile(failed), standardError(byLogShape), level);
  }

  public Interval mean(double level) {
    double by = 1 / life.shape();
    return interval(life.mean(), standardError(-by * Gamma.digamma(1 + by)), level);
  }

  /**
   * On log scale, by Student's t: a normal interval holds the truth a little less often than it
   * says (checked by simulation).
   */
  private Interval interval(double estimate, double standardError, double level) {
    double t = new TDistribution(degrees).inverseCumulativeProbability((1 + level) / 2);
    double reach = Math.exp(t * standardError);
    return new Interval(estimate, estimate / reach, estimate * reach);
  }

  private double standardError(double byLogShape) {
    return Math.sqrt(
        varianceOfLogScale
            + 2 * byLogShape * covariance
            + byLogShape * byLogShape * varianceOfLogShape);
  }
}
