package club.ascham.loan;

/** What was lent. */
public enum LoanKind {
  /** A bow with what goes out beside it, to one borrower. */
  KIT,
  /** Rigs for one evening, to a leader. */
  SESSION
}
