package club.ascham.id;

/** Names a report across features. */
public record ReportId(long value) implements Made {}
