package club.ascham.id;

/** Names a press that moved things, across features. */
public record MoveId(long value) implements Made {}
