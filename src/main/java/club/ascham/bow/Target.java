package club.ascham.bow;

import club.ascham.units.Length;
import java.util.Optional;

/**
 * What one quantity of one rig should measure.
 *
 * <p>A band holds half the step that it was read in. The gauge, the verdict and its reasons ask
 * {@link #zone} alone, so that they agree.
 *
 * @param inner the band to aim for; null where nothing published or entered speaks
 * @param outer beyond it something is wrong; null where nothing speaks and no set-up figure exists
 * @param basis what the bands rest on, in words for the person at the bench, with its source
 */
public record Target(Band inner, Band outer, String basis) {
  /** 1/16 in: the finest step that the lengths are read and shown in. */
  public static final Length READING_STEP = Length.ofInches(1.0 / 16);

  /**
   * What an adjustment should aim at: the set-up figure where it lies in the inner band, else the
   * point of the band nearest to it, one reading step inside, which costs the fewest turns. Without
   * a set-up figure it is the middle of the inner band; without a band, the set-up figure; with
   * neither, empty.
   *
   * @param setUp the rig's set-up figure; null: none recorded
   */
  public Optional<Length> aim(Length setUp) {
    if (inner == null) {
      return Optional.ofNullable(setUp);
    }
    Length middle = inner.middle();
    if (setUp == null) {
      return Optional.of(middle);
    }
    if (inner.holds(setUp)) {
      return Optional.of(setUp);
    }
    // A band narrower than two steps has no point one step inside both ends: its middle is safest.
    if (setUp.compareTo(inner.low()) < 0) {
      return Optional.of(lesser(inner.low().plus(READING_STEP), middle));
    }
    return Optional.of(greater(inner.high().minus(READING_STEP), middle));
  }

  /** Where a reading lies; empty where no band speaks. */
  public Optional<Zone> zone(Length reading) {
    if (outer != null && !outer.holdsAsRead(reading)) {
      return Optional.of(Zone.BEYOND);
    }
    if (inner != null && inner.holdsAsRead(reading)) {
      return Optional.of(Zone.IN_INNER);
    }
    return outer == null && inner == null ? Optional.empty() : Optional.of(Zone.IN_OUTER);
  }

  private static Length lesser(Length one, Length other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  private static Length greater(Length one, Length other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
