package club.ascham.people;

/** Names an account across features. */
public record AccountId(long value) {}
