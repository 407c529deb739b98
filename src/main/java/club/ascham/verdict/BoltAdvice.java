package club.ascham.verdict;

import club.ascham.units.Length;

/**
 * Which limb bolt to turn, which way and how far, to bring tiller to its aim.
 *
 * @param total turns expected in the end
 * @param lowInAll the fewest turns, of both bolts together, that may do it
 * @param highInAll the most that may be needed, of both bolts together
 * @param first what to turn now, before measuring again: at most a quarter turn on each bolt;
 *     {@link Turns#NONE} when nothing may be turned
 * @param expected tiller after the first step; between {@code expectedLow} and {@code expectedHigh}
 * @param basis what it rests on
 * @throws IllegalArgumentException when the first step turns a bolt by more than a quarter
 */
public record BoltAdvice(
    Turns total,
    double lowInAll,
    double highInAll,
    Turns first,
    Length expected,
    Length expectedLow,
    Length expectedHigh,
    String basis) {
  /** Whatever the estimate: how far tiller moves per turn is learnt bow by bow. */
  public static final double MOST_AT_ONCE = 0.25;

  public BoltAdvice {
    if (Math.abs(first.upper()) > MOST_AT_ONCE || Math.abs(first.lower()) > MOST_AT_ONCE) {
      throw new IllegalArgumentException("more than a quarter turn before measuring again");
    }
  }
}
