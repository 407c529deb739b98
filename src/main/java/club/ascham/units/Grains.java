package club.ascham.units;

import java.util.Locale;

/** Masses of arrows: the trade weighs them in grains, a kitchen scale in grams. */
public final class Grains {
  /** 7,000 grains make the pound of 453.59237 g. */
  private static final double GRAMS_PER_GRAIN = 453.59237 / 7000;

  private Grains() {}

  /** To a tenth of a grain, which is finer than any scale a club has. */
  public static double ofGrams(double grams) {
    return Math.round(grams / GRAMS_PER_GRAIN * 10) / 10.0;
  }

  /** {@code 312 gr}, {@code 308.6 gr}. */
  public static String said(double grains) {
    return tenths(grains) + " gr";
  }

  /** {@code 312 gr · 20.2 g}. */
  public static String both(double grains) {
    return said(grains) + " · " + tenths(grains * GRAMS_PER_GRAIN) + " g";
  }

  private static String tenths(double number) {
    return String.format(Locale.ROOT, "%.1f", number).replaceFirst("\\.0$", "");
  }
}
