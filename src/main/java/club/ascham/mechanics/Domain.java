package club.ascham.mechanics;

import java.util.Locale;

/** What a number must be before it is reckoned with. */
public final class Domain {
  private Domain() {}

  public static double finite(String quantity, double value) {
    if (!Double.isFinite(value)) {
      throw new OutOfDomain(quantity, "A finite number, please.");
    }
    return value;
  }

  public static double positive(String quantity, double value) {
    if (finite(quantity, value) <= 0) {
      throw new OutOfDomain(quantity, "It must be more than 0.");
    }
    return value;
  }

  public static double within(String quantity, double value, double low, double high) {
    if (finite(quantity, value) < low || value > high) {
      throw new OutOfDomain(
          quantity, "It must lie between %s and %s.".formatted(said(low), said(high)));
    }
    return value;
  }

  private static String said(double value) {
    return value == Math.rint(value)
        ? Long.toString((long) value)
        : String.format(Locale.ROOT, "%.4g", value);
  }
}
