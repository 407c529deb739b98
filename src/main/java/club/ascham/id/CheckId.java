package club.ascham.id;

/** Names a check across features. */
public record CheckId(long value) implements Made {}
