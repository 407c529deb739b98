package club.ascham.rig;

/** Names a rig across features. */
public record RigId(long value) {}
