package club.ascham.verdict;

import club.ascham.mechanics.BoltReckoning;
import club.ascham.units.Length;

/**
 * Which limb bolt to turn, which way and how far, to bring tiller to its aim.
 *
 * @param total turns expected in the end
 * @param first what to turn now, before measuring again: at most a quarter turn on each bolt;
 *     {@link Turns#NONE} when nothing may be turned
 * @param expected tiller after the first step; 9 times in 10 between {@code expectedLow} and {@code
 *     expectedHigh}
 * @param restsOn on how many of this bow's own adjustments it rests, in a few words
 * @param basis what it rests on, in sentences
 * @throws IllegalArgumentException when the first step turns a bolt by more than a quarter
 */
public record BoltAdvice(
    Turns total,
    Turns first,
    Length expected,
    Length expectedLow,
    Length expectedHigh,
    String restsOn,
    String basis) {

  public BoltAdvice {
    if (Math.abs(first.upper()) > BoltReckoning.MOST_AT_ONCE
        || Math.abs(first.lower()) > BoltReckoning.MOST_AT_ONCE) {
      throw new IllegalArgumentException("more than a quarter turn before measuring again");
    }
  }
}
