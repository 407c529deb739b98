package club.ascham.people;

/** What an account is for. */
public enum Role {
  /** Everything. */
  OFFICER,
  /** Receives, checks, and inspects within the permit; no rules, people or prices. */
  VOLUNTEER,
  /** Reads only. */
  COMMITTEE;

  /** Names for {@code @RolesAllowed}, which needs constants. */
  public static final String OFFICERS = "OFFICER";

  public static final String VOLUNTEERS = "VOLUNTEER";
  public static final String COMMITTEES = "COMMITTEE";
}
