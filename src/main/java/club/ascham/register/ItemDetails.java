package club.ascham.register;

/** All that a person tells the register about an item: what it is and where it came from. */
public record ItemDetails(ItemKind kind, Provenance provenance, Particulars particulars) {}
