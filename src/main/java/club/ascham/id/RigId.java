package club.ascham.id;

/** Names a rig across features. */
public record RigId(long value) implements Made {}
