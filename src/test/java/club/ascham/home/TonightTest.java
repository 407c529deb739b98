package club.ascham.home;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Hand;
import club.ascham.concern.Against;
import club.ascham.fleet.Fielding;
import club.ascham.fleet.FleetRig;
import club.ascham.fleet.OpenLoan;
import club.ascham.fleet.Waiting;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TonightTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 2);
  private static final Instant LONG_AGO = Instant.parse("2026-05-20T20:00:00Z");
  private static final Instant YESTERDAY = Instant.parse("2026-06-01T20:00:00Z");

  @Test
  void whatComesBack_hasDueTodayFirst_thenTheLongestLate_andThisWeekApart() {
    Tonight tonight =
        tonight(List.of(), loan(1, -9), loan(2, -1), loan(3, 0), loan(4, 0), loan(5, 1));
    assertEquals(List.of(3L, 4L, 1L, 2L), ids(tonight.backNow().first()));
    assertEquals(List.of(5L), ids(tonight.backThisWeek().first()));
  }

  @Test
  void aLongList_isCutAndSaysHowManyMore() {
    OpenLoan[] many = IntStream.range(0, 20).mapToObj(n -> loan(n, -n)).toArray(OpenLoan[]::new);
    Tonight tonight = tonight(List.of(), many);
    assertEquals(20, tonight.backNow().first().size() + tonight.backNow().more());
    assertEquals(8, tonight.backNow().first().size());
  }

  @Test
  void theBench_isInTheOrderInWhichRigsCameBack_andLeavesInspectionsToTheirOwnList() {
    FleetRig late = rig(1, State.TO_BE_CHECKED, true, null, YESTERDAY);
    FleetRig early = rig(2, State.TO_BE_CHECKED, true, "ADJUST", LONG_AGO);
    FleetRig inspection = rig(3, State.TO_BE_CHECKED, false, null, LONG_AGO);
    FleetRig workshop = rig(4, State.IN_THE_WORKSHOP, false, null, null);
    Tonight tonight = tonight(List.of(late, early, inspection, workshop));
    assertEquals(List.of(early, late), tonight.toCheck().first());
    assertEquals(List.of(workshop), tonight.toSetUp().first());
    assertFalse(tonight.isBenchClear());
  }

  @Test
  void whatIsReady_isSaidByHandAndLength() {
    Tonight tonight =
        tonight(
            List.of(
                rig(1, State.READY, false, null, null),
                rig(2, State.READY, false, "FIT", null),
                rig(3, State.WITHDRAWN, false, null, null)));
    assertEquals(2, tonight.readyCount());
    assertEquals(3, tonight.rigCount());
    assertEquals(1, tonight.withdrawn());
    assertEquals("Right-handed", tonight.ready().get(0).hand());
    assertEquals(List.of("66 in × 2"), tonight.ready().get(0).lengths());
    assertEquals("/fleet/rows?list=rigs&state=ready&hand=right", tonight.ready().get(0).href());
  }

  @Test
  void anEmptyClub_hasNothingOutAndAClearBench() {
    Tonight tonight = tonight(List.of());
    assertTrue(tonight.isNothingOut());
    assertTrue(tonight.isBenchClear());
    assertTrue(tonight.ready().isEmpty());
  }

  private static Tonight tonight(List<FleetRig> rigs, OpenLoan... loans) {
    return Tonight.of(rigs, List.of(loans), List.of(), TODAY);
  }

  private static OpenLoan loan(long id, int dueInDays) {
    return new OpenLoan(
        new LoanId(id),
        false,
        "Rosa",
        "07700 900417",
        null,
        TODAY.plusDays(dueInDays),
        3,
        "R0101E",
        "RISER,LIMBS");
  }

  private static List<Long> ids(List<OpenLoan> loans) {
    return loans.stream().map(loan -> loan.id().value()).toList();
  }

  private static FleetRig rig(
      long id, State state, boolean needsCheck, String verdict, Instant since) {
    return new FleetRig(
        new RigId(id),
        null,
        "",
        Hand.RIGHT,
        true,
        66,
        20.0,
        state,
        null,
        null,
        Waiting.of(state, true, needsCheck, verdict),
        since,
        Fielding.AS_IT_IS,
        null,
        Against.NOTHING);
  }
}
