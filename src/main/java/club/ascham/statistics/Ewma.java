package club.ascham.statistics;

import club.ascham.mechanics.Domain;
import java.util.ArrayList;
import java.util.List;

/**
 * A chart of the exponentially weighted moving average E_i = lambda x_i + (1 - lambda) E_(i-1), E_0
 * the centre (NIST/SEMATECH e-Handbook 6.3.2.4), within centre +- width sigma sqrt(lambda / (2 -
 * lambda) (1 - (1 - lambda)^2i)): the limits as they are for the i-th reading and not only in the
 * long run, since histories are short.
 *
 * @param ewma after each reading (likewise {@code upper} and {@code lower})
 * @param signals the readings, counted from 1, after which the average lies outside
 */
public record Ewma(
    List<Double> ewma, List<Double> upper, List<Double> lower, List<Integer> signals) {

  /**
   * @param sigma standard deviation of one reading, more than 0
   * @param lambda weight of the newest, over 0 to 1
   * @param width of the limits, in standard deviations of the average
   * @throws club.ascham.mechanics.OutOfDomain
   */
  public static Ewma of(
      List<Double> readings, double centre, double sigma, double lambda, double width) {
    Domain.within("centre", centre, -1e9, 1e9);
    Domain.within("sigma", sigma, 1e-9, 1e9);
    Domain.within("lambda", lambda, 1e-4, 1);
    Domain.within("width", width, 1e-3, 100);
    List<Double> averages = new ArrayList<>(readings.size());
    List<Double> upper = new ArrayList<>(readings.size());
    List<Double> lower = new ArrayList<>(readings.size());
    List<Integer> signals = new ArrayList<>();
    double average = centre;
    for (int i = 1; i <= readings.size(); i++) {
      average = next(average, Domain.within("readings", readings.get(i - 1), -1e9, 1e9), lambda);
      double reach = width * sigma * spread(i, lambda);
      averages.add(average);
      upper.add(centre + reach);
      lower.add(centre - reach);
      if (Math.abs(average - centre) > reach) {
        signals.add(i);
      }
    }
    return new Ewma(averages, upper, lower, List.copyOf(signals));
  }

  static double next(double average, double reading, double lambda) {
    return lambda * reading + (1 - lambda) * average;
  }

  /** Standard deviation of the average after so many readings, for readings of 1. */
  static double spread(int readings, double lambda) {
    return Math.sqrt(lambda / (2 - lambda) * (1 - Math.pow(1 - lambda, 2.0 * readings)));
  }
}
