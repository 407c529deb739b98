package club.ascham.id;

/** Names a receipt across features. */
public record ReceiptId(long value) implements Made {}
