package club.ascham.mechanics;

import java.util.function.ToDoubleFunction;

/**
 * How many twists bring brace to its aim.
 *
 * @param turns whole turns to put in; negative: to take out
 * @param low the fewest that may do it, with the sign of {@code turns}, and {@code high} the most;
 *     9 times in 10 it is between them
 * @param stringChangeMm of the string's length that the change of brace asks for; positive: longer
 * @param reach whether this string can do it
 * @param otherStringMm how much longer (untwisted) another string has to be; null: this one does it
 * @param expectedMm brace with so many turns; 9 times in 10 between {@code lowMm} and {@code
 *     highMm}
 * @param restsOn how many of the bow's own adjustments, in a few words
 * @param basis what the number rests on, in sentences
 */
public record TwistReckoning(
    int turns,
    int low,
    int high,
    double stringChangeMm,
    Reach reach,
    Double otherStringMm,
    double expectedMm,
    double lowMm,
    double highMm,
    String restsOn,
    String basis) {

  /** Whether this string gets there. */
  public enum Reach {
    THIS_STRING,
    /** Too few twists are left to take out: fit a longer string. */
    LONGER_STRING,
    /** Too many twists would have to go in: fit a shorter string. */
    SHORTER_STRING
  }

  /** Bows that the prior of brace against string length was made for. */
  private static final double SHORTEST_BOW_IN = 48;

  private static final double LONGEST_BOW_IN = 72;

  /** Of its bow's length: a string is 2 to 5 in shorter than its bow. */
  private static final double SHORTEST_STRING = 0.85;

  /**
   * How this string answers to twists: by its geometry where that is known, else by the trade's
   * rule.
   *
   * @param bowLengthIn 40 to 80; null: unknown
   * @param string null: its strands or their thickness are not known
   * @param twists in it now; null: not counted
   * @throws OutOfDomain for what is no bow
   */
  public static TwistResponse response(
      Double bowLengthIn, TwistedString string, Integer twists, OwnRecord record) {
    if (bowLengthIn != null) {
      Domain.within("bowLengthIn", bowLengthIn, 40, 80);
    }
    if (twists != null && (twists < 0 || twists > TwistLimits.MOST_AT_ALL)) {
      throw new OutOfDomain("twists", "A string holds between 0 and 150 turns.");
    }
    if (twists == null) {
      return TwistResponse.byTheTrade(null, "The twists in this string were not counted.", record);
    }
    if (string == null) {
      return TwistResponse.byTheTrade(
          twists, "Its strands or their thickness are not on record.", record);
    }
    if (bowLengthIn == null || bowLengthIn < SHORTEST_BOW_IN || bowLengthIn > LONGEST_BOW_IN) {
      return TwistResponse.byTheTrade(
          twists, "The geometry is reckoned for bows of 48 to 72 in only.", record);
    }
    double bowMm = bowLengthIn * 25.4;
    if (string.untwistedMm() > bowMm || string.untwistedMm() < SHORTEST_STRING * bowMm) {
      return TwistResponse.byTheTrade(
          twists, "The geometry is not for a string of that length on that bow.", record);
    }
    if (!string.takes(twists)) {
      return TwistResponse.byTheTrade(
          twists, "So many twists don't go into a string of that length and thickness.", record);
    }
    return TwistResponse.of(string, twists, record);
  }

  /**
   * @param braceMm measured
   * @param targetMm aim
   * @throws OutOfDomain for what is no brace height
   */
  public static TwistReckoning of(
      TwistResponse response, double braceMm, double targetMm, TwistLimits limits) {
    Domain.within("braceMm", braceMm, 100, 320);
    Domain.within("targetMm", targetMm, 100, 320);
    double wanted = targetMm - braceMm;
    int direction = wanted < 0 ? -1 : 1;
    int room = limits.room(response.count(), direction);
    Search search = new Search(response, direction, Math.abs(wanted));
    int low = search.low();
    boolean reached = low <= room;
    int likely = reached ? Math.min(search.likely(), room) : search.likely();
    int most = reached ? Math.min(search.high(), room) : search.high();
    int high = Math.max(likely, most);
    low = Math.min(low, likely);
    Belief change = response.change(direction * likely);
    return new TwistReckoning(
        direction * likely,
        direction * low,
        direction * high,
        -wanted / TwistResponse.BRACE_PER_STRING,
        reached ? Reach.THIS_STRING : direction < 0 ? Reach.LONGER_STRING : Reach.SHORTER_STRING,
        reached ? null : response.otherStringMm(wanted, limits),
        braceMm + change.mean(),
        braceMm + change.low(),
        braceMm + change.high(),
        response.restsOn(),
        basis(response, direction * likely, limits)
            + (!reached
                ? " This string has not so many twists to give: fit another, %s."
                    .formatted(direction < 0 ? "longer" : "shorter")
                : search.likely() > room
                    ? " It is all that this string has room for; if it is not enough, fit another."
                    : ""));
  }

  private static String basis(TwistResponse response, int turns, TwistLimits limits) {
    String beyond =
        response.shown() == 0 || response.tried(turns)
            ? ""
            : " It goes beyond the twists tried so far, so the range is wider.";
    return "%s %s%s %d to %d twists are taken as sound."
        .formatted(
            Learnt.sentence(response.restsOn()),
            response.basis(),
            beyond,
            limits.fewest(),
            limits.most());
  }

  /** Looks turn by turn; a change that no turns make is answered by all there are. */
  private record Search(TwistResponse response, int direction, double wanted) {
    int low() {
      return fewest(change -> Math.max(change.low() * direction, change.high() * direction));
    }

    int high() {
      return fewest(change -> Math.min(change.low() * direction, change.high() * direction));
    }

    int likely() {
      if (wanted < ReadingScatter.FINEST_MM) {
        return 0;
      }
      int enough = Math.max(1, fewest(change -> change.mean() * direction));
      double over = Math.abs(response.change(direction * enough).mean()) - wanted;
      double under = wanted - Math.abs(response.change(direction * (enough - 1)).mean());
      return under < over && enough > 1 ? enough - 1 : enough;
    }

    private int fewest(ToDoubleFunction<Belief> towards) {
      int end =
          response.count() != null && direction < 0 ? response.count() : TwistLimits.MOST_AT_ALL;
      for (int turns = 0; turns < end; turns++) {
        if (towards.applyAsDouble(response.change(direction * turns)) >= wanted) {
          return turns;
        }
      }
      return end;
    }
  }
}
