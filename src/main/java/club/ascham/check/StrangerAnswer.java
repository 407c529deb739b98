package club.ascham.check;

/** What to do about a part that is on a bow and not on its list. */
public enum StrangerAnswer {
  /** The right part goes back on. */
  PUT_RIGHT,
  /** Nobody knows which is which: both stay in. */
  WITHDRAW_BOTH,
  /** It stays on this bow, and comes off wherever the record has it. */
  CORRECT_RECORD,
  /** The same, and what the record has here is where it came from. */
  EXCHANGED;

  /** Whether the record is made to say what was found. */
  boolean corrects() {
    return this == CORRECT_RECORD || this == EXCHANGED;
  }
}
