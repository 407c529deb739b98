package club.ascham.id;

/** Names an account across features. */
public record AccountId(long value) implements Made {}
