package club.ascham.register;

/** Names an item across features. */
public record ItemId(long value) {}
