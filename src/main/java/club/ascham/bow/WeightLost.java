package club.ascham.bow;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether limbs have lost weight: what a bow scale shows now beside what it showed before, brought
 * to the same draw and riser, or, where they were never weighed, beside their mark. Of what the
 * mechanics leaves open the low end counts, so that nothing is called lost that may still be there;
 * of the mark that includes 1 lb for the marking, and 5 % for the bolts where there are any.
 *
 * <p>From {@link #ASKS_LB} on, a limb inspection is asked for, which speaks against the limbs. A
 * loss that was looked at and passed starts anew from what they weighed then.
 *
 * @param reading what was read before; null: the mark speaks
 * @param leastLb what the limbs should pull at least, in lbf
 */
public record WeightLost(ScaleReading now, ScaleReading reading, double leastLb) {
  /** So much lost at one draw asks for a look at the limbs. */
  public static final double ASKS_LB = 2;

  private static final double ROUNDING_LB = 1e-6;

  /**
   * Empty where no 2 lb are lost.
   *
   * @param before earlier readings of the same limbs
   * @throws IllegalArgumentException when the draw does not lie beyond the braced string
   */
  public static Optional<WeightLost> of(
      RigSpec rig, SetUpFigures setUp, List<ScaleReading> before, ScaleReading now) {
    WeightLost most = null;
    for (ScaleReading earlier : before) {
      double least = FingerWeight.leastByReading(rig, setUp, earlier, now.drawIn());
      if (most == null || least > most.leastLb) {
        most = new WeightLost(now, earlier, least);
      }
    }
    if (most == null) {
      most = new WeightLost(now, null, FingerWeight.leastByMark(rig, setUp, now.drawIn()));
    }
    return Optional.of(most).filter(lost -> lost.lb() >= ASKS_LB - ROUNDING_LB);
  }

  /** How much is lost at least, in lbf. */
  public double lb() {
    return leastLb - now.forceLb();
  }

  public String said() {
    return String.format(
        Locale.ROOT,
        "Weighed %s lb at %s in: at least %.1f lb lost %s. Bolts turned out would explain it, too:"
            + " look at both. (From 2 lb: %s.)",
        plain(now.forceLb()),
        plain(now.drawIn()),
        lb(),
        reading == null
            ? String.format(Locale.ROOT, "against its mark, which means %.1f lb there", leastLb)
            : String.format(
                "since it showed %s lb at %s in",
                plain(reading.forceLb()), plain(reading.drawIn())),
        InPrint.WEIGHT_LOST);
  }

  private static String plain(double number) {
    return number == Math.rint(number)
        ? Long.toString((long) number)
        : String.format(Locale.ROOT, "%.2f", number).replaceAll("0$", "");
  }
}
