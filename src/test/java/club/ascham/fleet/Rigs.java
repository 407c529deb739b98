package club.ascham.fleet;

import club.ascham.bow.Hand;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import java.time.LocalDate;
import java.util.List;

/** Rigs for the tests of what is counted, on 2 June with a course a week later. */
final class Rigs {
  static final LocalDate TODAY = LocalDate.of(2026, 6, 2);
  static final LocalDate COURSE = LocalDate.of(2026, 6, 9);

  private Rigs() {}

  static Fleet fleet(List<FleetRig> rigs) {
    return new Fleet(TODAY, COURSE, rigs, List.of(), List.of(), List.of(), List.of(), List.of());
  }

  static FleetRig rig(
      State state,
      Hand hand,
      boolean hasBody,
      Integer lengthIn,
      Double markedLb,
      LocalDate dueOn,
      LocalDate blockedFrom) {
    boolean out = state == State.ON_LOAN;
    return new FleetRig(
        new RigId(1),
        null,
        "",
        hand,
        hasBody,
        lengthIn,
        markedLb,
        state,
        out ? new LoanId(1) : null,
        out ? dueOn : null,
        Waiting.of(state, true, null),
        null,
        Fielding.of(state, out ? dueOn : null, blockedFrom, TODAY, COURSE));
  }

  static FleetRig rig(Hand hand, boolean hasBody, Integer lengthIn, Double markedLb, State state) {
    return rig(state, hand, hasBody, lengthIn, markedLb, null, null);
  }
}
