package club.ascham.bow;

import club.ascham.units.Grains;
import java.util.Locale;

/**
 * An arrow's mass against the weight that drives it: too light an arrow leaves its energy in the
 * bow, much as a dry loose does.
 *
 * <p>The least is 5 grains for each pound (lbf) on the fingers, so 200 gr for 40 lb: the figure of
 * recurve makers' warnings and of a competition body ({@link InPrint#ARROW_MASS}). It is held
 * against the high end of the weight's range, since what may well be so must be safe too.
 *
 * <p>Unknown mass refuses nothing, since a club starts without a scale for arrows: it is said where
 * they are given. One rule for the issue, an exchange, an extension with a longer draw, and a
 * session.
 *
 * @param massGr of one whole arrow in grains, the lightest of its set
 * @param weight on the fingers of the archer who shoots it
 */
public record ArrowMass(double massGr, WeightOnFingers weight) {
  /** Grains to the pound. */
  public static final double LEAST_GR_PER_LB = 5;

  /** The rule in words, with its source. */
  public static final String BASIS =
      "An arrow has at least 5 grains for each pound on the fingers"
          + " ("
          + InPrint.ARROW_MASS
          + "), at the high end of the bow’s range: a"
          + " lighter one leaves its energy in the bow, much as a dry loose does.";

  /** Keeps what a sum in binary leaves behind from passing for a missing grain. */
  private static final double ROUNDING = 1e-9;

  /**
   * @throws IllegalArgumentException when either is not positive
   */
  public ArrowMass {
    positive(massGr, "an arrow's mass");
    positive(weight.highLb(), "the weight on the fingers");
  }

  /**
   * The heaviest weight on the fingers, in lbf, that such arrows are sound for.
   *
   * @throws IllegalArgumentException when the mass is not positive
   */
  public static double heaviestLb(double massGr) {
    positive(massGr, "an arrow's mass");
    return massGr / LEAST_GR_PER_LB;
  }

  /** Grains to the pound at the likeliest weight. */
  public double perPound() {
    return massGr / weight.lb();
  }

  /** Grains to the pound at the most that the bow may well weigh. */
  public double lowPerPound() {
    return massGr / weight.highLb();
  }

  /** Grains to the pound at the least that it may well weigh; infinite where that is nothing. */
  public double highPerPound() {
    return massGr / weight.lowLb();
  }

  /** The least mass in grains that is sound whatever in its range the bow weighs. */
  public double leastGr() {
    return LEAST_GR_PER_LB * weight.highLb();
  }

  public boolean isSound() {
    return massGr >= leastGr() - ROUNDING;
  }

  /** {@code 312 gr, which is 12.4 gr to the pound on these fingers (11.5 to 13.4)}. */
  public String said() {
    return String.format(
        Locale.ROOT,
        "%s, which is %.1f gr to the pound on these fingers (%.1f to %.1f)",
        Grains.said(massGr),
        perPound(),
        lowPerPound(),
        highPerPound());
  }

  /** Both figures of arrows that are not sound, rounded so that they never look sound. */
  public String shortfall() {
    return String.format(
        Locale.ROOT,
        "%s an arrow, where up to %.1f lb on these fingers asks for at least %.0f gr (5 gr to the"
            + " pound)",
        Grains.said(massGr),
        Math.ceil(weight.highLb() * 10 - ROUNDING) / 10,
        Math.ceil(leastGr() - ROUNDING));
  }

  private static void positive(double number, String what) {
    if (!(number > 0) || Double.isInfinite(number)) {
      throw new IllegalArgumentException(what + " is more than nothing");
    }
  }
}
