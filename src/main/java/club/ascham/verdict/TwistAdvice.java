package club.ascham.verdict;

import club.ascham.units.Length;

/**
 * How many twists bring brace to its aim.
 *
 * @param turns whole twists to put in (positive) or take out (negative); 0 unless it is this string
 *     that does it
 * @param low the fewest that may do it, signed; null: no number does
 * @param high the most that may be needed, signed; null: more than a string holds
 * @param room that this string has that way; null: its twists were not counted
 * @param chance that the aim lies within that room, 0 to 1
 * @param reach whether anything is to be done, and whether this string can do it
 * @param otherLonger how much longer (negative: shorter) another string has to be; null: this one
 *     does it
 * @param expected brace after {@code turns}; 9 times in 10 between {@code expectedLow} and {@code
 *     expectedHigh}
 * @param restsOn on how many of this bow's own adjustments it rests, in a few words
 * @param basis what it rests on, in sentences
 */
public record TwistAdvice(
    int turns,
    Integer low,
    Integer high,
    Integer room,
    double chance,
    Reach reach,
    Length otherLonger,
    Length expected,
    Length expectedLow,
    Length expectedHigh,
    String restsOn,
    String basis) {

  /** What string the brace aimed for needs. */
  public enum Reach {
    /** Brace is off by less than a reading can tell. */
    LEAVE_IT,
    THIS_STRING,
    LONGER_STRING,
    SHORTER_STRING
  }
}
