package club.ascham.id;

/** Names a loan across features. */
public record LoanId(long value) implements Made {}
