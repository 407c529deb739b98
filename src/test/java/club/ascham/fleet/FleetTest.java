package club.ascham.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import club.ascham.standing.State;
import club.ascham.upkeep.Work;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FleetTest {
  @ParameterizedTest(name = "{0}, due {1}, blocked after {2}: {3}")
  @CsvSource({
    "READY,           ,           ,           AS_IT_IS",
    "READY,           ,           2026-06-09, AS_IT_IS",
    "READY,           ,           2026-06-08, INSPECT_FIRST",
    "TO_BE_CHECKED,   ,           ,           CHECK_FIRST",
    "TO_BE_CHECKED,   ,           2026-06-08, INSPECT_FIRST",
    "ON_LOAN,         2026-06-08, 2026-06-08, INSPECT_FIRST",
    "ON_LOAN,         2026-06-09, 2026-06-08, OUT_BEYOND",
    "ON_LOAN,         2026-06-08, ,           BACK_BY_THEN",
    "ON_LOAN,         2026-06-02, ,           BACK_BY_THEN",
    "ON_LOAN,         2026-06-09, ,           OUT_BEYOND",
    "ON_LOAN,         2026-06-01, ,           LATE",
    "IN_THE_WORKSHOP, ,           ,           IN_THE_WORKSHOP",
    "WITHDRAWN,       ,           ,           WITHDRAWN",
    "WITHDRAWN,       2026-06-03, ,           WITHDRAWN",
  })
  void whatCanBeFielded_dependsOnStateAndDays(
      State state, LocalDate dueOn, LocalDate blockedFrom, Fielding expected) {
    Against then = CountedRigs.against(state, blockedFrom, CountedRigs.COURSE);
    assertEquals(
        expected, Fielding.of(dueOn, then, CountedRigs.TODAY, CountedRigs.COURSE).fielding());
  }

  @ParameterizedTest(name = "{0} of {1}: {2}")
  @CsvSource({
    "WITHDRAWN,         ,                   WITHDRAWN",
    "RETIRED,           ,                   WITHDRAWN",
    "INSPECTION_FAILED, LIMB_INSPECTION,    NOT_PASSED",
    "REPORTED,          ,                   ANSWER_FIRST",
    "OVERDUE,           BOLT_INSPECTION,    INSPECT_FIRST",
    "OVERDUE,           STRING_REPLACEMENT, STRING_FIRST",
    "ASKED,             LIMB_INSPECTION,    INSPECT_FIRST",
    "CHANGING,          LIMB_INSPECTION,    INSPECT_FIRST",
    "NOT_SET_UP,        ,                   IN_THE_WORKSHOP",
    "NOT_CHECKED,       ,                   CHECK_FIRST",
  })
  void whatKeepsARigFromACourse_isWhatBlocksItThen(Matter matter, Work work, Fielding expected) {
    Concern blocks = CountedRigs.blocks(matter, work, CountedRigs.TODAY);
    assertEquals(
        new Fielding.Reason(expected, blocks),
        Fielding.of(null, new Against(List.of(blocks)), CountedRigs.TODAY, CountedRigs.COURSE));
  }

  @ParameterizedTest(name = "{0} lb is {1}")
  @CsvSource({
    "5, UP_TO_16",
    "16, UP_TO_16",
    "16.5, UP_TO_22",
    "22, UP_TO_22",
    "24, UP_TO_28",
    "28, UP_TO_28",
    "28.5, OVER_28",
    "80, OVER_28"
  })
  void aWeight_isInOneBand(double markedLb, WeightBand expected) {
    assertEquals(expected, WeightBand.of(markedLb));
  }

  @ParameterizedTest(name = "{0}, set up: {1}, needs a check: {2}, last verdict {3}: waits for {4}")
  @CsvSource({
    "TO_BE_CHECKED,   true,  true,  ,         CHECK",
    "TO_BE_CHECKED,   true,  true,  ADJUST,   ADJUSTMENT",
    "TO_BE_CHECKED,   true,  true,  FIT,      PUTTING_BACK",
    "TO_BE_CHECKED,   true,  true,  WITHDRAW, CHECK",
    "TO_BE_CHECKED,   true,  false, FIT,      INSPECTION",
    "IN_THE_WORKSHOP, false, true,  ADJUST,   SET_UP",
    "READY,           true,  false, FIT,      NOTHING",
    "ON_LOAN,         true,  false, ,         NOTHING",
    "ON_LOAN,         false, false, ,         SET_UP",
    "WITHDRAWN,       true,  true,  WITHDRAW, NOTHING",
  })
  void aRigOnTheBench_waitsForOneThing(
      State state, boolean isSetUp, boolean needsCheck, String verdict, Waiting expected) {
    assertEquals(expected, Waiting.of(state, isSetUp, needsCheck, verdict));
  }

  @Test
  void withoutRigs_everyFigureIsNought_andNoTableHasALine() {
    Fleet none = CountedRigs.fleet(List.of());
    assertEquals(0, none.all().count());
    assertEquals(List.of(), none.byLength());
    assertEquals(List.of(), none.courseLines());
    assertEquals(5, none.byState().size());
  }

  @Test
  void aRigWithoutRiser_isCountedAsNotKnown_notAsForEitherHand() {
    FleetRig limbsAlone = CountedRigs.rig(null, false, null, 20.0, State.IN_THE_WORKSHOP);
    FleetRig junior = CountedRigs.rig(null, true, 48, 10.0, State.READY);
    List<String> hands =
        CountedRigs.fleet(List.of(limbsAlone, junior)).byHand().stream()
            .map(Fleet.Line::said)
            .toList();
    assertEquals(List.of("either hand", "hand not known"), hands);
  }
}
