package club.ascham.worksheet;

import club.ascham.form.Words;

/** What became of the item that work was done on. */
public enum Result {
  /** Found fit for use, or made so on the spot. */
  PASSED,
  /** Withdrawn. */
  FAILED,
  /** Another item took its place. */
  REPLACED;

  public String word() {
    return Words.of(this);
  }
}
