package club.ascham.fleet;

import club.ascham.standing.State;

/** What a rig on the bench waits for. */
public enum Waiting {
  NOTHING,
  /** Came back, and nobody has looked yet. */
  CHECK,
  /** The last check said: adjust first. */
  ADJUSTMENT,
  /** The last check found it fit; nobody has put it back yet. */
  PUTTING_BACK,
  /** Nothing but an inspection that is overdue. */
  INSPECTION,
  /** Not measured as it now is; a bow on loan whose parts were changed as well. */
  SET_UP;

  /**
   * @param isSetUp whether its figures hold for the parts it has
   * @param needsCheck received or checked since it was last put back
   * @param lastVerdict the verdict that came last, if nothing happened since; null: none
   */
  public static Waiting of(State state, boolean isSetUp, boolean needsCheck, String lastVerdict) {
    return switch (state) {
      case IN_THE_WORKSHOP -> SET_UP;
      case TO_BE_CHECKED -> {
        if (!needsCheck) {
          yield INSPECTION;
        }
        if ("ADJUST".equals(lastVerdict)) {
          yield ADJUSTMENT;
        }
        yield "FIT".equals(lastVerdict) ? PUTTING_BACK : CHECK;
      }
      case ON_LOAN -> isSetUp ? NOTHING : SET_UP;
      case READY, WITHDRAWN, RETIRED -> NOTHING;
    };
  }
}
