package club.ascham.mechanics;

import java.util.function.ToDoubleFunction;
import org.hipparchus.special.Erf;

/**
 * How many twists bring brace to its aim. The range is told as it is, whatever room the string has;
 * the room bounds what is advised.
 *
 * <p>Under an even chance another string comes first. No advice ends outside the sound limits, and
 * none is expected farther from its aim than the bow is now.
 *
 * @param turns whole turns to put in; negative: to take out; 0 unless {@code reach} is {@link
 *     Reach#THIS_STRING}
 * @param low the fewest that may do it, positive in, negative out; null: no number of them does
 * @param high the most that may be needed, likewise; 9 times in 10 it is between the two
 * @param room how many may go in or come out that way within what is taken as sound; null: the
 *     twists were not counted
 * @param chance that the aim lies within that room, 0 to 1
 * @param stringChangeMm of the string's length that the change of brace asks for; positive: longer
 * @param reach whether anything is to be done, and whether this string can do it
 * @param otherStringMm how much longer (untwisted) another string has to be; null: this one does it
 * @param expectedMm brace with so many turns; 9 times in 10 between {@code lowMm} and {@code
 *     highMm}
 * @param restsOn how many of the bow's own adjustments, in a few words
 * @param basis what the number rests on, in sentences
 */
public record TwistReckoning(
    int turns,
    Integer low,
    Integer high,
    Integer room,
    double chance,
    double stringChangeMm,
    Reach reach,
    Double otherStringMm,
    double expectedMm,
    double lowMm,
    double highMm,
    String restsOn,
    String basis) {

  /** What is done, and whether this string gets there. */
  public enum Reach {
    /** It is off by less than the reading can tell, or than one twist does. */
    LEAVE_IT,
    THIS_STRING,
    /** No: fit a longer string. */
    LONGER_STRING,
    /** No: fit a shorter string. */
    SHORTER_STRING
  }

  /** Below an even chance another string comes first. */
  private static final double EVEN = 0.5;

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
    Search search = new Search(response, direction, Math.abs(wanted));
    Integer count = response.count();
    int room = limits.room(count, direction);
    double chance = search.chance(room);
    int likely = search.likely();
    boolean isThere =
        ReadingScatter.isLess(Math.abs(wanted), ReadingScatter.READABLE_MM)
            || (likely == 0 && search.most() > 0);
    int turns = direction * Math.min(likely, room);
    boolean sound =
        count == null || (count + turns >= limits.fewest() && count + turns <= limits.most());
    Reach reach =
        isThere
            ? Reach.LEAVE_IT
            : chance >= EVEN && sound ? Reach.THIS_STRING : Reach.LONGER_STRING;
    Double other = reach == Reach.LONGER_STRING ? response.otherStringMm(wanted, limits) : null;
    if (other != null && other < 0) {
      reach = Reach.SHORTER_STRING;
    }
    int advised = reach == Reach.THIS_STRING ? turns : 0;
    Posterior change = response.change(advised);
    return new TwistReckoning(
        advised,
        signed(nearer(search.low(), advised), direction),
        signed(search.high(), direction),
        count == null ? null : room,
        chance,
        -wanted / TwistResponse.BRACE_PER_STRING,
        reach,
        other,
        braceMm + change.mean(),
        braceMm + (advised == 0 ? 0 : change.low()),
        braceMm + (advised == 0 ? 0 : change.high()),
        response.restsOn(),
        basis(response, advised, limits)
            + outside(count, limits)
            + switch (reach) {
              case LEAVE_IT -> " It is off by less than a reading can tell.";
              case THIS_STRING ->
                  likely > room
                      ? " It is all that this string has room for; if it is not enough, fit"
                          + " another."
                      : "";
              case LONGER_STRING -> " Not with this string: fit another, longer.";
              case SHORTER_STRING -> " Not with this string: fit another, shorter.";
            });
  }

  /** Rounded to whole turns, what is advised may be the fewer. */
  private static Integer nearer(Integer low, int advised) {
    return low == null || advised == 0 ? low : Integer.valueOf(Math.min(low, Math.abs(advised)));
  }

  private static Integer signed(Integer turns, int direction) {
    return turns == null ? null : direction * turns;
  }

  private static String outside(Integer count, TwistLimits limits) {
    if (count == null || (count >= limits.fewest() && count <= limits.most())) {
      return "";
    }
    return count < limits.fewest()
        ? " It holds %d now, which is fewer.".formatted(count)
        : " It holds %d now, which is more.".formatted(count);
  }

  private static String basis(TwistResponse response, int turns, TwistLimits limits) {
    String beyond =
        response.shown() == 0 || response.tried(turns)
            ? ""
            : " It goes beyond the twists tried so far, so the range is wider.";
    return "%s %s%s %d to %d twists are taken as sound."
        .formatted(
            RestsOn.sentence(response.restsOn()),
            response.basis(),
            beyond,
            limits.fewest(),
            limits.most());
  }

  /** Looks turn by turn; what no number of turns does is null. */
  private record Search(TwistResponse response, int direction, double wanted) {
    Integer low() {
      return fewest(change -> Math.max(change.low() * direction, change.high() * direction));
    }

    Integer high() {
      return fewest(change -> Math.min(change.low() * direction, change.high() * direction));
    }

    /** The number that comes nearest; as many as there are, where none gets there. */
    int likely() {
      if (ReadingScatter.isLess(wanted, ReadingScatter.READABLE_MM)) {
        return 0;
      }
      Integer enough = fewest(change -> change.mean() * direction);
      if (enough == null) {
        return most();
      }
      double over = Math.abs(response.change(direction * enough).mean()) - wanted;
      double under =
          enough == 0
              ? Double.POSITIVE_INFINITY
              : wanted - Math.abs(response.change(direction * (enough - 1)).mean());
      return under < over ? enough - 1 : enough;
    }

    /** That so many turns, or fewer, make the change. */
    double chance(int turns) {
      Posterior change = response.change(direction * Math.min(turns, most()));
      double lacking = wanted - Math.abs(change.mean());
      if (change.sd() == 0) {
        return lacking <= 0 ? 1 : 0;
      }
      return 0.5 * Erf.erfc(lacking / change.sd() / Math.sqrt(2));
    }

    private Integer fewest(ToDoubleFunction<Posterior> towards) {
      for (int turns = 0; turns <= most(); turns++) {
        if (towards.applyAsDouble(response.change(direction * turns)) >= wanted) {
          return turns;
        }
      }
      return null;
    }

    private int most() {
      return response.count() != null && direction < 0 ? response.count() : TwistLimits.MOST_AT_ALL;
    }
  }
}
