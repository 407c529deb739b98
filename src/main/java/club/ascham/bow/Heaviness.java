package club.ascham.bow;

/** What a bow's weight on an archer's fingers asks before it goes out. */
public enum Heaviness {
  /** Nothing. */
  LIGHT_ENOUGH,
  /** A coach who agreed, and why. */
  WITH_A_COACH,
  /** It does not go out to this archer, whatever the reason. */
  REFUSED
}
