package club.ascham.loan;

/** How one line of a loan ended. */
public enum LineOutcome {
  BACK,
  DAMAGED,
  LOST,
  /** Exchanged for another while the loan went on. */
  CHANGED
}
