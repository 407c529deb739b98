package club.ascham.verdict;

import club.ascham.bow.BracePoint;
import club.ascham.bow.SetUpFigures;
import club.ascham.units.Length;
import java.util.stream.Stream;

/**
 * What a strung bow measured; what is null was not measured.
 *
 * @param brace string height, measured from {@code from}
 * @param tillerUpper from the string to the upper limb, square to the string
 * @param tillerLower from the string to the lower limb, square to the string
 * @throws IllegalArgumentException when a distance is not positive
 */
public record Reading(Length brace, BracePoint from, Length tillerUpper, Length tillerLower) {
  public static final Reading NOTHING = new Reading(null, null, null, null);

  public Reading {
    if (Stream.of(brace, tillerUpper, tillerLower)
        .anyMatch(distance -> distance != null && distance.compareTo(Length.ZERO) <= 0)) {
      throw new IllegalArgumentException("a measured distance is more than nothing");
    }
  }

  /**
   * @param setUp null: none
   */
  public static Reading of(SetUpFigures setUp) {
    return setUp == null
        ? NOTHING
        : new Reading(setUp.brace(), setUp.braceFrom(), setUp.tillerUpper(), setUp.tillerLower());
  }

  /** Whether a bow can be judged by it: all three, and from where. */
  public boolean isWhole() {
    return brace != null && from != null && tiller() != null;
  }

  /** Upper minus lower: positive when the lower limb is the stiffer; null while one is missing. */
  public Length tiller() {
    return tillerUpper == null || tillerLower == null ? null : tillerUpper.minus(tillerLower);
  }
}
