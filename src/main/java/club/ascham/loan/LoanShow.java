package club.ascham.loan;

/** Which loans a list shows. */
public enum LoanShow {
  OPEN,
  OVERDUE,
  CLOSED,
  ALL
}
