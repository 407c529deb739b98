package club.ascham.statistics;

import club.ascham.mechanics.Domain;
import java.util.Map;

/**
 * How far the club's readings of one quantity lie from what is there, all as standard deviations in
 * the quantity's unit.
 *
 * @param repeatability of one person who measures again; more than 0
 * @param between of the readers' own offsets; 0 where they read alike
 * @param offsets how much more each known reader reads than the readers' common mean
 */
public record Scatter(double repeatability, double between, Map<String, Offset> offsets) {
  /** False alarms a check that are put up with: one in 200. */
  public static final double FALSE_ALARMS = 1 / 200.0;

  /**
   * One reader's offset as far as it is known; shrunk toward 0 while that reader's readings are
   * few.
   *
   * @param sd what is not known of it
   */
  public record Offset(double mean, double sd) {}

  public Scatter {
    Domain.positive("repeatability", repeatability);
    if (Domain.finite("between", between) < 0) {
      throw new IllegalArgumentException("between " + between);
    }
    offsets = Map.copyOf(offsets);
  }

  /** Of one reading by anybody: s_R, with s_R^2 = s_r^2 + s_L^2. */
  public double reproducibility() {
    return Math.hypot(repeatability, between);
  }

  /** Of a reader by name; someone unknown, or null, may have any offset that readers have. */
  public Offset offsetOf(String reader) {
    Offset known = reader == null ? null : offsets.get(reader);
    return known == null ? new Offset(0, between) : known;
  }

  /**
   * How far two readings by two people may differ before it counts as a change: k sqrt(s_R^2 +
   * s_base^2).
   *
   * @param base standard deviation of the figure that is compared with
   * @param falseAlarms the share of comparisons of an unchanged bow that may say otherwise
   */
  public double allowedChange(double base, double falseAlarms) {
    return k(falseAlarms) * Math.hypot(reproducibility(), base);
  }

  /** The two-sided normal limit of a false-alarm rate: 2.807 for one in 200. */
  public static double k(double falseAlarms) {
    return Normal.quantile(1 - Domain.within("falseAlarms", falseAlarms, 1e-12, 1) / 2);
  }
}
