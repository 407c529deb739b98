package club.ascham.bow;

import club.ascham.units.Length;

/**
 * A closed range of a length.
 *
 * @throws IllegalArgumentException when the low end lies above the high end
 */
public record Band(Length low, Length high) {
  public Band {
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException("a band's low end lies above its high end");
    }
  }

  /** Whether the reading lies in the band, its ends included. */
  public boolean holds(Length reading) {
    return low.compareTo(reading) <= 0 && reading.compareTo(high) <= 0;
  }
}
