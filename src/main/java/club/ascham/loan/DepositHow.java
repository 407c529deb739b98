package club.ascham.loan;

/** How a deposit was taken. */
public enum DepositHow {
  CASH,
  CARD,
  TRANSFER,
  OTHER
}
