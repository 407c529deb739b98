package club.ascham.standing;

import club.ascham.form.Words;

/** What may be done with a rig or an item now; the first that is true, in this order. */
public enum State {
  RETIRED,
  WITHDRAWN,
  ON_LOAN,
  IN_THE_WORKSHOP,
  TO_BE_CHECKED,
  READY;

  /** As people say it: {@code to be checked}. */
  public String said() {
    return Words.said(this);
  }

  /** The name of its drawing, and its word in addresses, JSON and CSV: {@code to-be-checked}. */
  public String word() {
    return Words.of(this);
  }
}
