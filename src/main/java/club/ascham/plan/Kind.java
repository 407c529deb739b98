package club.ascham.plan;

/** The kinds of part that are inspected or replaced. */
public enum Kind {
  RISER,
  LIMBS,
  BOW,
  STRING,
  STRINGER,
  ARROWS
}
