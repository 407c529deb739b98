package club.ascham.upkeep;

import club.ascham.form.Words;

/** How pressing a piece of work is on some day, the most pressing first. */
public enum Urgency {
  /** The day it was due lies behind, or it was asked for and is waited for. */
  OVERDUE,
  /** Due within the days that its rule calls soon. */
  DUE_SOON,
  LATER;

  /** As people say it: {@code due soon}. */
  public String said() {
    return Words.said(this);
  }

  /** Its word in addresses and JSON: {@code due-soon}. */
  public String word() {
    return Words.of(this);
  }
}
