package club.ascham.mechanics;

import java.util.Locale;

/**
 * How many twists bring brace to its aim.
 *
 * @param turns whole turns to put in; negative: to take out
 * @param low the fewest that may do it, with the sign of {@code turns}, and {@code high} the most
 * @param stringChangeMm of the string's length that the change of brace asks for; positive: longer
 * @param reach whether this string can do it
 * @param basis what the number rests on
 */
public record TwistReckoning(
    int turns, int low, int high, double stringChangeMm, Reach reach, String basis) {

  /** Whether this string gets there. */
  public enum Reach {
    THIS_STRING,
    /** Too few twists are left to take out: fit a longer string. */
    LONGER_STRING,
    /** Too many twists would have to go in: fit a shorter string. */
    SHORTER_STRING
  }

  /**
   * How brace answers to the string's length, from the elastica of a common 68 in, 30 lb recurve
   * (-1.02 to -1.06) and from rigid limbs (-0.9): a judgement between the two, wide enough for
   * both.
   */
  private static final double BRACE_PER_STRING = -1.02;

  private static final double WEAKEST = -0.88;
  private static final double STRONGEST = -1.12;

  /** Between the mean strand (1) and the outermost helix (2), the middle of their logarithms. */
  private static final double FACTOR = Math.sqrt(2);

  /** Common practice: a millimetre of brace for every two to three twists. */
  private static final double TRADE_TWISTS_PER_MM = 2.5;

  private static final double TRADE_FEWEST = 1.5;
  private static final double TRADE_MOST = 4;

  /**
   * @param bowLengthIn 48 to 72
   * @param string untwisted length, strands
   * @param twists in it now; null: not counted
   * @param braceMm measured
   * @param targetMm aim
   * @param fewest twists that hold a string round, and {@code most} that are sound
   * @throws OutOfDomain for what is no bow
   */
  public static TwistReckoning of(
      double bowLengthIn,
      TwistedString string,
      Integer twists,
      double braceMm,
      double targetMm,
      int fewest,
      int most) {
    Domain.within("bowLengthIn", bowLengthIn, 40, 80);
    Domain.within("braceMm", braceMm, 100, 320);
    Domain.within("targetMm", targetMm, 100, 320);
    if (twists != null && (twists < 0 || twists > 150)) {
      throw new OutOfDomain("twists", "A string holds between 0 and 150 turns.");
    }
    double wanted = targetMm - braceMm;
    return twists == null
        ? byTheTrade(wanted, most - fewest)
        : byGeometry(string, twists, wanted, fewest, most);
  }

  private static TwistReckoning byTheTrade(double wanted, int room) {
    int direction = wanted < 0 ? -1 : 1;
    double mm = Math.abs(wanted);
    int low = (int) Math.round(mm * TRADE_FEWEST);
    boolean reached = low <= room;
    return new TwistReckoning(
        direction * (int) Math.round(mm * TRADE_TWISTS_PER_MM),
        direction * low,
        direction * (int) Math.ceil(mm * TRADE_MOST),
        wanted / BRACE_PER_STRING,
        reach(reached, direction),
        "1 mm of brace for 2 to 3 twists: common practice, no published source. The twists in this"
            + " string were not counted, so the range is wide.");
  }

  private static TwistReckoning byGeometry(
      TwistedString string, int twists, double wanted, int fewest, int most) {
    int direction = wanted < 0 ? -1 : 1;
    double middle = turns(string, twists, wanted / BRACE_PER_STRING, FACTOR);
    double one = turns(string, twists, wanted / WEAKEST, 1);
    double other = turns(string, twists, wanted / STRONGEST, 2);
    double few = Math.min(Math.abs(one), Math.abs(other));
    double many = Math.max(Math.abs(one), Math.abs(other));
    int low = (int) Math.floor(few);
    int high = (int) Math.ceil(many);
    int room = Math.max(0, direction < 0 ? twists - fewest : most - twists);
    boolean reached = low <= room;
    int likely = (int) Math.round(Math.abs(middle));
    return new TwistReckoning(
        direction * (reached ? Math.min(likely, room) : likely),
        direction * low,
        direction * (reached ? Math.max(Math.min(high, room), Math.min(likely, room)) : high),
        wanted / BRACE_PER_STRING,
        reach(reached, direction),
        String.format(
            Locale.ROOT,
            "The twisted bundle's geometry, from its mean strand to its outermost helix, and brace"
                + " following the string by %.2f to %.2f mm a millimetre. %d to %d twists are taken as sound.",
            -WEAKEST,
            -STRONGEST,
            fewest,
            most));
  }

  /** Signed turns; where the string would have to be longer than untwisted, all of them. */
  private static double turns(TwistedString string, int twists, double change, double factor) {
    double after = string.shorteningMm(twists, factor) - change;
    return string.turnsFor(after, factor) - twists;
  }

  private static Reach reach(boolean reached, int direction) {
    if (reached) {
      return Reach.THIS_STRING;
    }
    return direction < 0 ? Reach.LONGER_STRING : Reach.SHORTER_STRING;
  }
}
