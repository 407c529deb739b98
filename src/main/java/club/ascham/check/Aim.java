package club.ascham.check;

import club.ascham.bow.Band;
import club.ascham.bow.Target;
import club.ascham.units.Length;

/** The figure that an adjustment aims for. */
public final class Aim {
  /** The finest that a bow square is read to: 1/16 in. */
  public static final Length READING_STEP = Length.ofInches(1.0 / 16);

  private Aim() {}

  /**
   * The set-up figure where it lies in the inner band; else the point nearest to the reading that is
   * one reading step inside the band, which takes the fewest turns; the middle of a band too narrow
   * for that. Where no inner band is known, the outer one stands in for it.
   */
  public static Length of(Target target, Length setUpFigure, Length reading) {
    Band band = target.inner() != null ? target.inner() : target.outer();
    if (band.holds(setUpFigure)) {
      return setUpFigure;
    }
    Length low = band.low().plus(READING_STEP);
    Length high = band.high().minus(READING_STEP);
    if (low.compareTo(high) > 0) {
      return new Length(Math.floorDiv(band.low().units() + band.high().units(), 2L));
    }
    if (reading.compareTo(low) < 0) {
      return low;
    }
    return reading.compareTo(high) > 0 ? high : reading;
  }
}
