package club.ascham.bow;

import club.ascham.units.Length;

/**
 * An archer's draw length by the AMO measure: from the string to the pivot point of the grip, and 1
 * 3/4 in beyond it.
 *
 * @param estimated reckoned from the arm span rather than measured with a bow in the hand
 */
public record DrawLength(Length amo, boolean estimated) {
  /** The draws in inches that bows of 48 to 72 in serve (the published tables begin at 14 in). */
  public static final double SHORTEST_IN = 14;

  public static final double LONGEST_IN = 36;

  private static final Length BEYOND_PIVOT = Length.ofInches(FingerWeight.AMO_BEYOND_PIVOT_IN);

  /** A draw measured with a long arrow, as AMO draw. */
  public static DrawLength measured(Length amo) {
    return new DrawLength(amo, false);
  }

  /** A draw measured to the pivot point: AMO draw is 1 3/4 in more (AMO standard FP-3, 2000). */
  public static DrawLength measuredToPivot(Length pivot) {
    return new DrawLength(pivot.plus(BEYOND_PIVOT), false);
  }

  /**
   * An estimate: arm span, fingertip to fingertip, divided by 2.5 (published by several dealers).
   */
  public static DrawLength ofArmSpan(Length span) {
    return new DrawLength(new Length(Math.round(span.units() / 2.5)), true);
  }

  /** Whether bows of the lengths a club owns are drawn to it at all. */
  public boolean plausible() {
    return SHORTEST_IN <= amo.inches() && amo.inches() <= LONGEST_IN;
  }
}
