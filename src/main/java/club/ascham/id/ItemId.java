package club.ascham.id;

/** Names an item across features. */
public record ItemId(long value) implements Made {}
