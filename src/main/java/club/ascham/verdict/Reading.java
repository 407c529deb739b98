package club.ascham.verdict;

import club.ascham.bow.BracePoint;
import club.ascham.units.Length;

/**
 * What a strung bow measured.
 *
 * @param brace string height, measured from {@code from}
 * @param tillerUpper from the string to the upper limb, square to the string
 * @param tillerLower from the string to the lower limb, square to the string
 * @throws IllegalArgumentException when a distance is not positive
 */
public record Reading(Length brace, BracePoint from, Length tillerUpper, Length tillerLower) {
  public Reading {
    if (from == null) {
      throw new IllegalArgumentException("brace needs the point it was measured from");
    }
    for (Length distance : new Length[] {brace, tillerUpper, tillerLower}) {
      if (distance.compareTo(Length.ZERO) <= 0) {
        throw new IllegalArgumentException("a measured distance is more than nothing");
      }
    }
  }

  /** Upper minus lower: positive when the lower limb is the stiffer. */
  public Length tiller() {
    return tillerUpper.minus(tillerLower);
  }
}
