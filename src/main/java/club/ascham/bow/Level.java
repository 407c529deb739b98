package club.ascham.bow;

/** How far a rig is set up. */
public enum Level {
  /** Stops after the nocking point: what a first course needs and nothing that distracts. */
  BEGINNER,
  /** With sight, stabilisers and, months later, a clicker. */
  FULLER
}
