package club.ascham.bow;

import club.ascham.bow.Rise.Factor;
import club.ascham.mechanics.CommonRecurve;
import club.ascham.mechanics.OutOfDomain;
import java.util.Locale;

/**
 * What another riser makes of the weight of the same limbs.
 *
 * <p>Makers' labels decide the likeliest, although the elastic limb says less than either; the
 * range holds all three.
 *
 * @param basis in words; empty where nothing changes
 */
record RiserChange(Factor factor, String basis) {
  /**
   * Growth of the weight per inch of riser less, from two labels: 28 lb becomes 30 on a riser 2 in
   * shorter (a label that a German club read out), 26 lb becomes 28 on a bow 4 in shorter (another
   * label). They disagree twofold, so both ends are kept and the middle is used. The elastic limb
   * says less than either: about one in a hundred for an inch.
   */
  private static final double STEEP_PER_IN = Math.sqrt(30.0 / 28);

  private static final double SHALLOW_PER_IN = Math.pow(28.0 / 26, 0.25);
  private static final double MIDDLE_PER_IN = Math.sqrt(STEEP_PER_IN * SHALLOW_PER_IN);

  /** The draw at which the two are compared, beyond the pivot point. */
  private static final double COMPARED_AT_IN = 28 - FingerWeight.AMO_BEYOND_PIVOT_IN;

  /** The riser that slot-in target limbs are marked on if nothing is said: common practice. */
  private static final int USUAL_MARKED_RISER_IN = 25;

  static final RiserChange NONE = new RiserChange(Factor.NONE, "");

  /**
   * @param fromIn the riser that the weight is known on; null: not known, and then the range
   *     reckons both with this riser and with the usual one
   * @param toIn this riser; null: unknown, no correction
   * @param bowIn length of the bow with this riser
   */
  static RiserChange of(Integer fromIn, Integer toIn, double bowIn, double braceIn) {
    if (toIn == null) {
      return NONE;
    }
    if (fromIn == null) {
      Factor usual = of(USUAL_MARKED_RISER_IN, toIn, bowIn, braceIn).factor();
      return new RiserChange(
          Factor.of(1, usual.low(), usual.high()),
          toIn == USUAL_MARKED_RISER_IN
              ? ""
              : " The riser they were marked on is not known; the range allows for one of 25 in.");
    }
    int shorterIn = fromIn - toIn;
    if (shorterIn == 0) {
      return NONE;
    }
    return new RiserChange(
        Factor.of(
            Math.pow(MIDDLE_PER_IN, shorterIn),
            Math.pow(STEEP_PER_IN, shorterIn),
            Math.pow(SHALLOW_PER_IN, shorterIn),
            elastic(fromIn, toIn, bowIn, braceIn)),
        String.format(
            Locale.ROOT,
            " Known on a %d in riser and used on one of %d in: published labels give 2 lb for 2 in"
                + " of riser, or 2 lb for 4 in, an elastic limb gives less; the labels' middle is"
                + " used, and the range holds all three.",
            fromIn,
            toIn));
  }

  private static double elastic(int fromIn, int toIn, double bowIn, double braceIn) {
    try {
      return CommonRecurve.curve(bowIn, toIn, braceIn).forceLb(COMPARED_AT_IN - braceIn)
          / CommonRecurve.curve(bowIn + fromIn - toIn, fromIn, braceIn)
              .forceLb(COMPARED_AT_IN - braceIn);
    } catch (OutOfDomain noSuchRecurve) {
      return Math.pow(MIDDLE_PER_IN, fromIn - toIn);
    }
  }
}
