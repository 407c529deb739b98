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

  /** The band from one figure in millimetres to another. */
  public static Band ofMm(double lowMm, double highMm) {
    return new Band(Length.ofMm(lowMm), Length.ofMm(highMm));
  }

  /** The band from one figure in inches to another. */
  public static Band ofInches(double lowIn, double highIn) {
    return new Band(Length.ofInches(lowIn), Length.ofInches(highIn));
  }

  /** The band that reaches so far to both sides of a figure. */
  public static Band around(Length figure, Length reach) {
    return new Band(figure.minus(reach), figure.plus(reach));
  }

  /** Whether the reading lies in the band, its ends included. */
  public boolean holds(Length reading) {
    return low.compareTo(reading) <= 0 && reading.compareTo(high) <= 0;
  }

  /**
   * The same for a reading, which tells no more than the step it was read in: half of it belongs to
   * the band.
   */
  public boolean holdsAsRead(Length reading) {
    return widenedBy(new Length(reading.readingStep().units() / 2)).holds(reading);
  }

  /** This band with so much added at both ends. */
  public Band widenedBy(Length margin) {
    return new Band(low.minus(margin), high.plus(margin));
  }

  public Length middle() {
    return new Length(Math.floorDiv(Math.addExact(low.units(), high.units()), 2));
  }
}
