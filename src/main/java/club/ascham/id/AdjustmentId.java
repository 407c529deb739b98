package club.ascham.id;

/** Names what was done at the bench after a check, across features. */
public record AdjustmentId(long value) implements Made {}
