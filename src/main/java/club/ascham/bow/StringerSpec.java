package club.ascham.bow;

/** A stringer and the bow lengths in inches that it serves, both ends included. */
public record StringerSpec(StringerKind kind, int bowFromIn, int bowToIn) {}
