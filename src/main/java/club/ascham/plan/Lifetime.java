package club.ascham.plan;

import java.util.Objects;

/**
 * How long parts of one sort last until they fail of themselves: Weibull, in days of service.
 *
 * @param shape over 1: the older the likelier to fail; 1: age does not matter
 * @param scaleDays the age that 63.2 % have failed by
 * @param basis what it rests on, in words
 */
public record Lifetime(double shape, double scaleDays, String basis) {
  public Lifetime {
    if (!(shape > 0 && Double.isFinite(shape) && scaleDays > 0 && Double.isFinite(scaleDays))) {
      throw new IllegalArgumentException("no life: shape " + shape + ", scale " + scaleDays);
    }
    Objects.requireNonNull(basis);
  }

  /** The life of which a share (over 0, under 1) has failed by the given age. */
  public static Lifetime failing(double share, double byDays, double shape, String basis) {
    return new Lifetime(shape, byDays / Math.pow(-Math.log1p(-share), 1 / shape), basis);
  }

  /** The probability that a new part lasts longer than so many days. */
  public double lasting(double days) {
    return Math.exp(-Math.pow(days / scaleDays, shape));
  }
}
