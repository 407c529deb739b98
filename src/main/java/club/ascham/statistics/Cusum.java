package club.ascham.statistics;

import club.ascham.mechanics.Domain;
import java.util.ArrayList;
import java.util.List;

/**
 * The tabular cumulative sum: high_i = max(0, high_(i-1) + x_i - centre - k), and low_i the same
 * downward (NIST/SEMATECH e-Handbook 6.3.2.3). A signal is a sum above h. Both k and h are in the
 * readings' own unit.
 *
 * @param firstSignal the reading, counted from 1, at which either sum first exceeds h; null: none
 */
public record Cusum(List<Double> high, List<Double> low, Integer firstSignal) {

  /**
   * @param k what a reading may lie off the centre for nothing, 0 or more
   * @param h what the sums may reach, more than 0
   * @throws club.ascham.mechanics.OutOfDomain
   */
  public static Cusum of(List<Double> readings, double centre, double k, double h) {
    Domain.within("centre", centre, -1e9, 1e9);
    Domain.within("k", k, 0, 1e9);
    Domain.within("h", h, 1e-9, 1e9);
    List<Double> high = new ArrayList<>(readings.size());
    List<Double> low = new ArrayList<>(readings.size());
    Integer first = null;
    double up = 0;
    double down = 0;
    for (double reading : readings) {
      double off = Domain.within("readings", reading, -1e9, 1e9) - centre;
      up = next(up, off, k);
      down = next(down, -off, k);
      high.add(up);
      low.add(down);
      if (first == null && Math.max(up, down) > h) {
        first = high.size();
      }
    }
    return new Cusum(high, low, first);
  }

  static double next(double sum, double off, double k) {
    return Math.max(0, sum + off - k);
  }
}
