package club.ascham.id;

/** Names an accident across features. */
public record AccidentId(long value) implements Made {}
