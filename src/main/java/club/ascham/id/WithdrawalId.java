package club.ascham.id;

/** Names a withdrawal across features. */
public record WithdrawalId(long value) implements Made {}
