package club.ascham.fleet;

import club.ascham.bow.Hand;
import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import club.ascham.concern.Weight;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import club.ascham.upkeep.Work;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** CountedRigs for the tests of what is counted, on 2 June with a course a week later. */
final class CountedRigs {
  static final LocalDate TODAY = LocalDate.of(2026, 6, 2);
  static final LocalDate COURSE = LocalDate.of(2026, 6, 9);

  private CountedRigs() {}

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
    Against then = against(state, blockedFrom, COURSE);
    Fielding.Reason course = Fielding.of(out ? dueOn : null, then, TODAY, COURSE);
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
        Waiting.of(state, true, true, null),
        null,
        course.fielding(),
        course.by(),
        against(state, blockedFrom, TODAY));
  }

  /**
   * What stands against a rig of that state, with an inspection whose last day in time is given.
   */
  static Against against(State state, LocalDate inspectBy, LocalDate day) {
    List<Concern> all = new ArrayList<>();
    switch (state) {
      case RETIRED -> all.add(blocks(Matter.RETIRED, null, TODAY));
      case WITHDRAWN -> all.add(blocks(Matter.WITHDRAWN, null, TODAY));
      case IN_THE_WORKSHOP -> all.add(blocks(Matter.NOT_SET_UP, null, TODAY));
      case TO_BE_CHECKED -> all.add(blocks(Matter.NOT_CHECKED, null, TODAY));
      case ON_LOAN, READY -> {}
    }
    if (inspectBy != null && inspectBy.isBefore(day)) {
      all.add(blocks(Matter.OVERDUE, Work.BOLT_INSPECTION, inspectBy.plusDays(1)));
    }
    return new Against(all);
  }

  static Concern blocks(Matter matter, Work work, LocalDate since) {
    return new Concern(
        Weight.BLOCKS,
        matter,
        since,
        null,
        "R-0101-E",
        new RigId(1),
        work,
        "As the test wants it.",
        "as wanted",
        "Until then.",
        "/rigs/1",
        1);
  }

  static FleetRig rig(Hand hand, boolean hasBody, Integer lengthIn, Double markedLb, State state) {
    return rig(state, hand, hasBody, lengthIn, markedLb, null, null);
  }
}
