package club.ascham.bow;

/** Where a reading lies among the bands, the worse the later. */
public enum Zone {
  /** Where it should be. */
  IN_INNER,
  /** Outside what is aimed for, or no such band is known; nothing need be wrong. */
  IN_OUTER,
  /** Something is wrong. */
  BEYOND
}
