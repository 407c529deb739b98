package club.ascham.verdict;

import club.ascham.bow.Target;
import club.ascham.units.Length;

/** Where a reading lies among the bands, the worse the later. */
public enum Place {
  /** Where it should be. */
  IN_INNER,
  /** Outside what is aimed for, or no such band is known; nothing need be wrong. */
  IN_OUTER,
  /** Something is wrong. */
  BEYOND;

  /** The target needs an outer band. */
  static Place of(Length reading, Target target) {
    if (!target.outer().holds(reading)) {
      return BEYOND;
    }
    return target.inner() != null && target.inner().holds(reading) ? IN_INNER : IN_OUTER;
  }
}
