package club.ascham.mechanics;

/**
 * How many twists a bowstring may hold.
 *
 * @param fewest below it a string does not hold together round
 * @param most above it a string is overtwisted
 */
public record TwistLimits(int fewest, int most) {
  /** What a string can hold at all, sound or not. */
  public static final int MOST_AT_ALL = 150;

  /** The lowest and the highest figure in print; a club may set its own. */
  public static final TwistLimits IN_PRINT = new TwistLimits(10, 60);

  public TwistLimits {
    if (fewest < 0 || most <= fewest || most > MOST_AT_ALL) {
      throw new OutOfDomain("fewest", "The fewest twists lie below the most, within 0 to 150.");
    }
  }

  /**
   * How many twists may go in or out.
   *
   * @param now null: not counted, and then as if the string stood at the other end
   * @param direction 1: in, -1: out
   */
  public int room(Integer now, int direction) {
    if (now == null) {
      return most - fewest;
    }
    return Math.max(0, direction < 0 ? now - fewest : most - now);
  }

  /**
   * What a new string is best set up with: a third of the way up leaves room both ways, and more of
   * it for the creep that asks for twists later.
   */
  public int forNewString() {
    return fewest + (most - fewest) / 3;
  }
}
