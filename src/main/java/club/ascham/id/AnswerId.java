package club.ascham.id;

/** Names the answer to a press that made no one thing, across features. */
public record AnswerId(long value) implements Made {}
