package club.ascham.loan;

/** Names a borrower. */
public record BorrowerId(long value) {}
