package club.ascham.bow;

import club.ascham.units.Length;
import club.ascham.units.LengthText;

/**
 * The shortest arrow an archer may be given.
 *
 * @param length of the shaft from the floor of the nock to its end, without the point
 * @param why the margins in it, in words, with their sources
 */
public record ShortestArrow(Length length, String why) {
  /** Whether an arrow of this length may be given out. */
  public boolean allows(Length arrow) {
    return arrow.compareTo(length) >= 0;
  }

  /**
   * In both units, rounded up to the next sixteenth of an inch: whoever measures by the figure
   * shown never ends below the rule.
   */
  public String said() {
    long step = Target.READING_STEP.units();
    return LengthText.both(new Length(-Math.floorDiv(-length.units(), step) * step));
  }
}
