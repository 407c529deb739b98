package club.ascham.bow;

/** Who may do a step at the bench. */
public enum Who {
  /** Any volunteer of the club. */
  VOLUNTEER,
  /** Whoever holds the club's permit for limb bolts and releases. */
  PERMIT_HOLDER,
  /** A coach, with the archer. */
  COACH
}
