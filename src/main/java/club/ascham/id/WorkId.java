package club.ascham.id;

/** Names a piece of upkeep on record across features. */
public record WorkId(long value) implements Made {}
