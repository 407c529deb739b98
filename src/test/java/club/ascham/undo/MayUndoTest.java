package club.ascham.undo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import club.ascham.concern.Weight;
import club.ascham.id.LoanId;
import club.ascham.undo.MayUndo.Press;
import club.ascham.undo.MayUndo.Since;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MayUndoTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 9);
  private static final Concern WITHDRAWN =
      new Concern(
          Weight.BLOCKS,
          Matter.WITHDRAWN,
          DAY,
          null,
          "L-0001-1",
          null,
          null,
          "L-0001-1 is withdrawn: a crack.",
          "a crack",
          "Until the permit holder releases it.",
          "/withdrawals/1/release",
          1);

  @ParameterizedTest(name = "own {0}, officer {1}, {2} days later: may {3}")
  @CsvSource({
    "true,  false, 0, true",
    "true,  false, 1, false",
    "false, false, 0, false",
    "true,  true,  1, true",
    "false, true,  0, true",
    "false, true,  7, true",
    "false, true,  8, false",
    "true,  true,  8, false",
    "true,  false, 8, false"
  })
  void whoPressed_mayTheSameDay_andAnOfficerAWeek(
      boolean own, boolean officer, int later, boolean may) {
    Press press = new Press(MoveKind.RECEIPT, DAY, own, false);
    assertEquals(
        may, MayUndo.refusal(press, officer, DAY.plusDays(later), Since.NOTHING).isEmpty());
  }

  @Test
  void aClockSetBack_refusesNothing() {
    Press press = new Press(MoveKind.RECEIPT, DAY, true, false);
    assertEquals(Optional.empty(), MayUndo.refusal(press, false, DAY.minusDays(2), Since.NOTHING));
  }

  @ParameterizedTest
  @EnumSource(MoveKind.class)
  void whatWasUndone_staysSo_whoeverAsks(MoveKind kind) {
    Press press = new Press(kind, DAY, true, true);
    assertEquals(
        Optional.of("It was undone already."), MayUndo.refusal(press, true, DAY, Since.NOTHING));
  }

  @Test
  void whatBlocksSince_refusesInItsOwnWords_beforeWhatElseRestsOnIt() {
    Since since = new Since(List.of("The bow was adjusted since."), List.of(WITHDRAWN), true);
    assertEquals(
        Optional.of("It would be out again, and since it came in: L-0001-1 is withdrawn: a crack."),
        MayUndo.refusal(new Press(MoveKind.RECEIPT, DAY, true, false), false, DAY, since));
  }

  @Test
  void aPutBack_isUndoneWhateverKeepsTheBowIn_sinceItOnlyStaysInMore() {
    Since since = new Since(List.of(), List.of(WITHDRAWN), true);
    assertEquals(
        Optional.empty(),
        MayUndo.refusal(new Press(MoveKind.PUT_BACK, DAY, true, false), false, DAY, since));
  }

  @Test
  void whatKeptItInAsItCameBack_isAnOfficersToUndo() {
    Since toldWithIt = new Since(List.of(), List.of(), true);
    Press press = new Press(MoveKind.SESSION_RETURN, DAY, true, false);
    assertEquals(
        Optional.of(
            "Something keeps in what would be out again: an officer may undo it, and asks it back."),
        MayUndo.refusal(press, false, DAY, toldWithIt));
    assertEquals(Optional.empty(), MayUndo.refusal(press, true, DAY, toldWithIt));
  }

  @Test
  void whatRestsOnIt_isSaid() {
    Since since =
        new Since(List.of(Resting.LENT.said("R-0001-1", new LoanId(31))), List.of(), false);
    assertEquals(
        Optional.of("R-0001-1 was lent again since, with loan 31."),
        MayUndo.refusal(new Press(MoveKind.RECEIPT, DAY, true, false), false, DAY, since));
  }

  @ParameterizedTest
  @EnumSource(Resting.class)
  void everyFactThatRests_isAWholeSentence(Resting fact) {
    for (String said : List.of(fact.said("R-0001-1", new LoanId(31)), fact.said(null, null))) {
      assertTrue(said.matches("[A-Z].*[.]") && !said.contains("%"), said);
    }
  }

  @Test
  void aRefusalForAnothersPress_saysUntilWhenAnOfficerMay() {
    assertEquals(
        Optional.of(
            "Whoever pressed it may undo it, on the same day: ask an officer, who may until Tue 16"
                + " Jun 2026."),
        MayUndo.refusal(
            new Press(MoveKind.EXCHANGE, DAY, false, false), false, DAY, Since.NOTHING));
  }
}
