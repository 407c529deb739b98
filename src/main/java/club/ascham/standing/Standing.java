package club.ascham.standing;

import java.time.LocalDate;

/**
 * The facts a state follows from. The view {@code item_standing} (and {@code rig_standing}) yields
 * the same facts and the same order; a property test holds them together.
 *
 * @param inWorkshop set-up or adjustment begun, or no complete set-up figures, or parts missing
 * @param needsCheck received, or checked and not put back, since it was last put back
 * @param blockedFrom the last day before a blocking inspection is overdue; null: none planned
 */
public record Standing(
    boolean retired,
    boolean withdrawn,
    boolean onLoan,
    boolean inWorkshop,
    boolean needsCheck,
    LocalDate blockedFrom) {

  /**
   * The state in SQL, for a row of either view named {@code s}, with today as parameter {@code ?1}.
   * Inspections overdue turn a ready thing into one to be checked; all else is today's already. The
   * view's state stands in it once, since the database reckons it anew wherever it is named; to
   * replace nothing leaves it as it is.
   */
  public static final String STATE_TODAY =
      "replace(s.state_if_inspected, CASE WHEN s.blocked_from < ?1 THEN 'READY' ELSE '' END,"
          + " 'TO_BE_CHECKED')";

  public State on(LocalDate today) {
    if (retired) {
      return State.RETIRED;
    }
    if (withdrawn) {
      return State.WITHDRAWN;
    }
    if (onLoan) {
      return State.ON_LOAN;
    }
    if (inWorkshop) {
      return State.IN_THE_WORKSHOP;
    }
    boolean inspectionOverdue = blockedFrom != null && blockedFrom.isBefore(today);
    return needsCheck || inspectionOverdue ? State.TO_BE_CHECKED : State.READY;
  }
}
