package club.ascham.verdict;

import club.ascham.units.Length;

/**
 * How many twists bring brace to its aim.
 *
 * @param turns whole twists expected; positive: put in, negative: take out
 * @param low the fewest that may do it, signed like {@code turns}
 * @param high the most that may be needed, signed like {@code turns}
 * @param reach whether this string can do it at all
 * @param otherLonger how much longer (negative: shorter) another string has to be; null: this one
 *     does it
 * @param expected brace after {@code turns}; 9 times in 10 between {@code expectedLow} and {@code
 *     expectedHigh}
 * @param restsOn on how many of this bow's own adjustments it rests, in a few words
 * @param basis what it rests on, in sentences
 */
public record TwistAdvice(
    int turns,
    int low,
    int high,
    Reach reach,
    Length otherLonger,
    Length expected,
    Length expectedLow,
    Length expectedHigh,
    String restsOn,
    String basis) {

  /** What string the brace aimed for needs. */
  public enum Reach {
    THIS_STRING,
    /** So many twists would have to come out that too few were left to hold the string round. */
    LONGER_STRING,
    /** So many twists would have to go in that the string would be overtwisted. */
    SHORTER_STRING
  }
}
