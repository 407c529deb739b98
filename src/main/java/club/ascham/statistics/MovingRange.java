package club.ascham.statistics;

import club.ascham.mechanics.Domain;
import club.ascham.mechanics.OutOfDomain;
import java.util.List;

/**
 * Centre and scatter of readings from themselves alone: their mean, and the mean step from each to
 * the next over 1.128, which a slow drift hardly widens (NIST/SEMATECH e-Handbook 6.3.2.2).
 */
public record MovingRange(double centre, double sigma) {
  /** Mean range of two standard normal values, as the handbook rounds it. */
  private static final double RANGE_OF_TWO = 1.128;

  private static final double WIDTH = 3;

  /**
   * @throws OutOfDomain with fewer than two readings
   */
  public static MovingRange of(List<Double> readings) {
    if (readings.size() < 2) {
      throw new OutOfDomain("readings", "Two readings at least, please.");
    }
    double sum = Domain.within("readings", readings.get(0), -1e9, 1e9);
    double steps = 0;
    for (int i = 1; i < readings.size(); i++) {
      sum += Domain.within("readings", readings.get(i), -1e9, 1e9);
      steps += Math.abs(readings.get(i) - readings.get(i - 1));
    }
    return new MovingRange(sum / readings.size(), steps / (readings.size() - 1) / RANGE_OF_TWO);
  }

  public double upper() {
    return centre + WIDTH * sigma;
  }

  public double lower() {
    return centre - WIDTH * sigma;
  }
}
