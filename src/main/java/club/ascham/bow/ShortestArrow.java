package club.ascham.bow;

import club.ascham.units.Length;

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
}
