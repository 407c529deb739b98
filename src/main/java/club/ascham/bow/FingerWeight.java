package club.ascham.bow;

import club.ascham.units.Length;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * The estimate of the weight on an archer's fingers from what is marked on the limbs.
 *
 * <p>Force is taken to rise evenly from nothing at the braced string to the marked weight at the
 * marked draw: marked x (draw - zero) / (marked draw - zero). Draws are AMO draws in inches,
 * weights are in lbf. The rise of a real recurve is steeper at first and again at the very end, so
 * the estimate is for draws around the marked one and, more roughly, for a child's shorter draw.
 */
public final class FingerWeight {
  /** AMO draw is reckoned this far beyond the pivot point (AMO standard FP-3, 2000). */
  public static final double AMO_BEYOND_PIVOT_IN = 1.75;

  /** Limbs are sold in steps of 2 lb and labelled with the nearest (archerycoach.wordpress.com). */
  private static final double MARKING_LB = 1;

  /**
   * What the limb bolts of an adjustable bow make of it, either way: common practice, no source.
   */
  private static final double BOLTS = 0.05;

  /**
   * Growth of the weight per inch of riser less, from two labels: 28 lb becomes 30 on a riser 2 in
   * shorter (bogenschuetzen-esslingen.de), 26 lb becomes 28 on a bow 4 in shorter
   * (archery-howto.com). They disagree twofold, so both ends are kept and the middle is used.
   */
  private static final double STEEP_PER_IN = Math.sqrt(30.0 / 28);

  private static final double SHALLOW_PER_IN = Math.pow(28.0 / 26, 0.25);
  private static final double MIDDLE_PER_IN = Math.sqrt(STEEP_PER_IN * SHALLOW_PER_IN);

  /** The riser that slot-in target limbs are marked on if nothing is said: common practice. */
  private static final int USUAL_MARKED_RISER_IN = 25;

  private static final int USUAL_BOW_IN = 66;

  /** Factors by which another riser changes the marked weight: the likeliest and the two ends. */
  private record RiserChange(double likely, double low, double high, String basis) {}

  private static final RiserChange NO_CHANGE = new RiserChange(1, 1, 1, "");

  private FingerWeight() {}

  /** The AMO draw at which the string stands when the bow is braced: its force there is nothing. */
  public static double zeroIn(Length brace) {
    return brace.inches() + AMO_BEYOND_PIVOT_IN;
  }

  /**
   * The weight on the fingers at a draw, for a bow whose limb bolts can be turned.
   *
   * @param markedLb marked weight
   * @param markedAtIn AMO draw it was marked at
   * @param markedRiserIn riser it was marked on; null: unknown, and then the range reckons both
   *     with this riser and with the usual one
   * @param riserIn this bow's riser; null: unknown, no correction
   * @param drawIn the archer's AMO draw
   * @param zeroIn the AMO draw at which the string stands when braced
   * @throws IllegalArgumentException when the weight is not positive or a draw does not lie beyond
   *     the braced string
   */
  public static WeightOnFingers estimate(
      double markedLb,
      double markedAtIn,
      Integer markedRiserIn,
      Integer riserIn,
      double drawIn,
      double zeroIn) {
    return estimate(
        markedLb, markedAtIn, riserChange(markedRiserIn, riserIn), drawIn, zeroIn, true);
  }

  /**
   * The weight of this rig on the fingers of an archer. Without a measured brace the maker's range,
   * else about an eighth of the bow's length, stands in for it.
   *
   * @param setUp null: not set up yet
   * @param drawIn the archer's AMO draw in inches
   * @throws IllegalArgumentException when the draw does not lie beyond the braced string
   */
  public static WeightOnFingers of(RigSpec rig, SetUpFigures setUp, double drawIn) {
    double zeroIn = zeroIn(brace(rig, setUp));
    WeightOnFingers weight;
    if (rig.onePiece() != null) {
      OnePieceSpec bow = rig.onePiece();
      weight = estimate(bow.markedLb(), bow.markedAtIn(), NO_CHANGE, drawIn, zeroIn, false);
    } else {
      LimbsSpec limbs = rig.limbs();
      boolean bolts = rig.tillerAdjusts();
      // Screw-in limbs belong to one riser and are marked on it.
      RiserChange change =
          bolts || limbs.markedRiserIn() != null
              ? riserChange(limbs.markedRiserIn(), rig.riser().lengthIn())
              : NO_CHANGE;
      weight = estimate(limbs.markedLb(), limbs.markedAtIn(), change, drawIn, zeroIn, bolts);
    }
    if (setUp != null && setUp.brace() != null) {
      return weight;
    }
    return new WeightOnFingers(
        weight.lb(),
        weight.lowLb(),
        weight.highLb(),
        weight.basis() + " The brace height is not measured yet; a usual one is assumed.");
  }

  /** Whether {@link #of} can reckon this rig's weight at this draw, rather than refuse. */
  static boolean reckons(RigSpec rig, SetUpFigures setUp, double drawIn) {
    double zeroIn = zeroIn(brace(rig, setUp));
    double markedLb = rig.onePiece() != null ? rig.onePiece().markedLb() : rig.limbs().markedLb();
    double markedAtIn =
        rig.onePiece() != null ? rig.onePiece().markedAtIn() : rig.limbs().markedAtIn();
    return markedLb > 0 && markedAtIn > zeroIn && drawIn > zeroIn;
  }

  private static Length brace(RigSpec rig, SetUpFigures setUp) {
    if (setUp != null && setUp.brace() != null) {
      return setUp.brace();
    }
    if (rig.makerBrace() != null) {
      return rig.makerBrace().middle();
    }
    OptionalInt bowIn = rig.bowLengthIn();
    // 0.126 to 0.135 of the bow's length in the French federation's table of 2008.
    return Length.ofInches(bowIn.orElse(USUAL_BOW_IN) * 0.13);
  }

  private static RiserChange riserChange(Integer markedRiserIn, Integer riserIn) {
    if (riserIn == null) {
      return NO_CHANGE;
    }
    if (markedRiserIn == null) {
      RiserChange usual = riserChange(USUAL_MARKED_RISER_IN, riserIn);
      return new RiserChange(
          1,
          Math.min(1, usual.low()),
          Math.max(1, usual.high()),
          riserIn == USUAL_MARKED_RISER_IN
              ? ""
              : " The riser they were marked on is not known; the range allows for one of 25 in.");
    }
    int shorterIn = markedRiserIn - riserIn;
    if (shorterIn == 0) {
      return NO_CHANGE;
    }
    double steep = Math.pow(STEEP_PER_IN, shorterIn);
    double shallow = Math.pow(SHALLOW_PER_IN, shorterIn);
    return new RiserChange(
        Math.pow(MIDDLE_PER_IN, shorterIn),
        Math.min(steep, shallow),
        Math.max(steep, shallow),
        String.format(
            Locale.ROOT,
            " Marked on a %d in riser and used on one of %d in: published labels give 2 lb for 2 in"
                + " of riser, or 2 lb for 4 in; the middle is used.",
            markedRiserIn,
            riserIn));
  }

  private static WeightOnFingers estimate(
      double markedLb,
      double markedAtIn,
      RiserChange riser,
      double drawIn,
      double zeroIn,
      boolean bolts) {
    if (!(markedLb > 0)) {
      throw new IllegalArgumentException("a marked weight is more than nothing");
    }
    if (!(markedAtIn > zeroIn)) {
      throw new IllegalArgumentException("the marked draw lies before the braced string");
    }
    if (!(drawIn > zeroIn)) {
      throw new IllegalArgumentException("the draw lies before the braced string");
    }
    double part = (drawIn - zeroIn) / (markedAtIn - zeroIn);
    double setting = bolts ? BOLTS : 0;
    return new WeightOnFingers(
        markedLb * riser.likely() * part,
        Math.max(0, markedLb - MARKING_LB) * riser.low() * part * (1 - setting),
        (markedLb + MARKING_LB) * riser.high() * part * (1 + setting),
        String.format(
            Locale.ROOT,
            "%s lb marked at %s in, rising evenly from the braced string to a draw of %s in.%s The"
                + " range allows 1 lb for the marking%s; only a bow scale tells exactly.",
            short1(markedLb),
            short1(markedAtIn),
            short1(drawIn),
            riser.basis(),
            bolts ? " and 5 % either way for the limb bolts" : ""));
  }

  private static String short1(double number) {
    return String.format(Locale.ROOT, "%.1f", number).replace(".0", "");
  }
}
