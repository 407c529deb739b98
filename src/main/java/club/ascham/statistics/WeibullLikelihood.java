package club.ascham.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The likelihood of a Weibull life with right censoring and delayed entry: sum over failures of the
 * log hazard at t, less the hazard that every part went through from its entry e to its end t,
 * (t/c)^k - (e/c)^k. Ages are in units of the greatest one, so that no power overflows.
 */
final class WeibullLikelihood {
  private static final double FLATTEST = 0.1;
  private static final double STEEPEST = 50;
  private static final int GRID = 40;
  private static final double PRECISION = 1e-10;
  private static final int MOST = 200;

  private final double[] logEnds;
  private final double[] logEntries;
  private final int failures;
  private final double sumOfLogs;
  private final double unit;

  WeibullLikelihood(List<Service> services) {
    unit = services.stream().mapToDouble(Service::until).max().orElse(1);
    // An age of 0 went through no hazard: it is left out rather than given the logarithm of 0.
    logEnds = logs(services.stream().mapToDouble(Service::until).toArray());
    logEntries = logs(services.stream().mapToDouble(Service::entered).toArray());
    double[] failed =
        logs(services.stream().filter(Service::failed).mapToDouble(Service::until).toArray());
    failures = failed.length;
    double sum = 0;
    for (double log : failed) {
      sum += log;
    }
    sumOfLogs = sum;
  }

  private double[] logs(double[] ages) {
    double[] logs = new double[ages.length];
    int kept = 0;
    for (double age : ages) {
      if (age > 0) {
        logs[kept++] = Math.log(age / unit);
      }
    }
    return Arrays.copyOf(logs, kept);
  }

  int failures() {
    return failures;
  }

  /** Sum of x^k (ln x)^power over ends less that over entries. */
  private double hazards(double k, int power) {
    return sum(logEnds, k, power) - sum(logEntries, k, power);
  }

  private static double sum(double[] logs, double k, int power) {
    double sum = 0;
    for (double log : logs) {
      double value = Math.exp(k * log);
      sum += power == 0 ? value : power == 1 ? value * log : value * log * log;
    }
    return sum;
  }

  /** Log-likelihood of a shape with the scale that suits it best. */
  private double profile(double k) {
    return failures * (Math.log(k) - Math.log(hazards(k, 0)) + Math.log(failures) - 1)
        + (k - 1) * sumOfLogs
        - failures * Math.log(unit);
  }

  /** Slope of the profile, which falls through 0 at the best shape. */
  private double slope(double k) {
    return failures * (1 / k - hazards(k, 1) / hazards(k, 0)) + sumOfLogs;
  }

  /** The likeliest life; empty where the likelihood has no peak between the bounds of shape. */
  Optional<Weibull> likeliest() {
    OptionalDouble shape = likeliestShape();
    return shape.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Weibull(
                shape.getAsDouble(),
                unit
                    * Math.pow(
                        hazards(shape.getAsDouble(), 0) / failures, 1 / shape.getAsDouble())));
  }

  /** With delayed entry the profile may have more peaks than one, or rise toward an end. */
  private OptionalDouble likeliestShape() {
    List<Double> peaks = new ArrayList<>();
    double step = Math.log(STEEPEST / FLATTEST) / GRID;
    double from = FLATTEST;
    double atFrom = slope(from);
    for (int i = 1; i <= GRID; i++) {
      double to = FLATTEST * Math.exp(i * step);
      double atTo = slope(to);
      if (atFrom > 0 && atTo <= 0) {
        peaks.add(new BrentSolver(PRECISION).solve(MOST, this::slope, from, to));
      }
      from = to;
      atFrom = atTo;
    }
    double atEnds = Math.max(profile(FLATTEST), profile(STEEPEST));
    return peaks.stream()
        .filter(k -> profile(k) > atEnds)
        .mapToDouble(k -> k)
        .reduce((one, other) -> profile(one) >= profile(other) ? one : other);
  }

  double value(Weibull life) {
    double z = Math.log(life.scale() / unit);
    double k = life.shape();
    return failures * (Math.log(k) - k * z - Math.log(unit))
        + (k - 1) * sumOfLogs
        - hazards(k, 0) * Math.exp(-k * z);
  }

  /**
   * Slopes of the log-likelihood: by log shape and by log scale, then the second ones: both by log
   * shape, mixed, both by log scale.
   */
  double[] slopes(double logShape, double logScale) {
    double k = Math.exp(logShape);
    double z = logScale - Math.log(unit);
    double shrink = Math.exp(-k * z);
    // H = (t/c)^k and ln H = k (ln t - ln c).
    double none = hazards(k, 0) * shrink;
    double one = hazards(k, 1) * shrink;
    double two = hazards(k, 2) * shrink;
    double hLogH = k * (one - z * none);
    double hLogH2 = k * k * (two - 2 * z * one + z * z * none);
    double logH = k * (sumOfLogs - failures * z);
    return new double[] {
      failures + logH - hLogH,
      k * (none - failures),
      logH - hLogH - hLogH2,
      k * (none - failures) + k * hLogH,
      -k * k * none
    };
  }
}
