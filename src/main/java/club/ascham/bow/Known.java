package club.ascham.bow;

/** An answer that may honestly be missing. */
public enum Known {
  YES,
  NO,
  UNKNOWN
}
