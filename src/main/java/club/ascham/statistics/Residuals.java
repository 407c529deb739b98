package club.ascham.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * What each reading of a bow differs by from what the readings before it let expect, in standard
 * deviations. Readings of one person are correlated; a Cholesky row at a time makes each
 * independent of those before (whitening), and the unknown level of the bow is estimated by
 * weighted least squares as readings come.
 */
final class Residuals {
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> values = new ArrayList<>();
  private final List<Double> weights = new ArrayList<>();
  private double information;
  private double told;

  /**
   * The next reading's residual; 0 for the first, which nothing was known before.
   *
   * @param variance of the reading
   * @param covariances with the readings before it, oldest first
   */
  double of(double reading, double variance, double[] covariances) {
    double[] row = new double[rows.size() + 1];
    double value = reading;
    double weight = 1;
    double rest = variance;
    for (int j = 0; j < rows.size(); j++) {
      double[] earlier = rows.get(j);
      double entry = covariances[j];
      for (int k = 0; k < j; k++) {
        entry -= row[k] * earlier[k];
      }
      row[j] = entry / earlier[j];
      value -= row[j] * values.get(j);
      weight -= row[j] * weights.get(j);
      rest -= row[j] * row[j];
    }
    row[rows.size()] = Math.sqrt(rest);
    value /= row[rows.size()];
    weight /= row[rows.size()];
    rows.add(row);
    values.add(value);
    weights.add(weight);
    return information == 0
        ? 0
        : (value - weight * level()) / Math.sqrt(1 + weight * weight / information);
  }

  /** Lets the level be learnt from the latest reading too. */
  void believe() {
    double weight = weights.get(weights.size() - 1);
    information += weight * weight;
    told += weight * values.get(values.size() - 1);
  }

  /** The level of the bow by the readings that were believed. */
  double level() {
    return told / information;
  }
}
