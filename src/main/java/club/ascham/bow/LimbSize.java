package club.ascham.bow;

/** The size marked on limbs that slot into risers of one fitting standard. */
public enum LimbSize {
  SHORT,
  MEDIUM,
  LONG
}
