package club.ascham.loan;

/** Names a loan across features. */
public record LoanId(long value) {}
