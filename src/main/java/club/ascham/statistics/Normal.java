package club.ascham.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** The standard normal distribution. */
final class Normal {
  private static final NormalDistribution STANDARD = new NormalDistribution(0, 1);

  private Normal() {}

  static double quantile(double probability) {
    return STANDARD.inverseCumulativeProbability(probability);
  }

  static double cumulative(double x) {
    return STANDARD.cumulativeProbability(x);
  }

  static double density(double x, double mean, double variance) {
    return Math.exp(-(x - mean) * (x - mean) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
  }
}
