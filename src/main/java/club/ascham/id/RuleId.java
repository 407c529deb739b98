package club.ascham.id;

/** Names a rule of upkeep across features. */
public record RuleId(long value) implements Made {}
