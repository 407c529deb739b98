package club.ascham.borrower;

import club.ascham.id.Made;

/** Names a borrower. */
public record BorrowerId(long value) implements Made {}
