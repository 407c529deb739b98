package club.ascham.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DueTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);

  @ParameterizedTest(name = "planned for {0}, blocking {1}: {2}, keeps in {3}, {4}")
  @CsvSource({
    "2026-06-09, true,  OVERDUE,  true,  SAFETY",
    "2026-06-09, false, OVERDUE,  false, OVERDUE",
    "2026-06-10, true,  DUE_SOON, false, THIS_WEEK",
    "2026-06-16, true,  DUE_SOON, false, THIS_WEEK",
    "2026-06-17, true,  DUE_SOON, false, THIS_MONTH",
    "2026-06-24, true,  DUE_SOON, false, THIS_MONTH",
    "2026-06-25, true,  LATER,    false, THIS_MONTH",
    "2026-07-10, true,  LATER,    false, THIS_MONTH",
    "2026-07-11, true,  LATER,    false, LATER",
  })
  void whatARulePlans_isOverdueFromTheDayAfter(
      LocalDate dueOn, boolean blocks, Urgency urgency, boolean keepsIn, Turn turn) {
    Due due = new Due(Work.BOLT_INSPECTION, dueOn, 14, blocks, false, "180 days");
    assertEquals(urgency, due.on(TODAY));
    assertEquals(keepsIn, due.keepsIn(TODAY));
    assertEquals(turn, due.turn(TODAY));
  }

  @ParameterizedTest(name = "asked for on {0}, blocking {1}: {2}, keeps in {3}")
  @CsvSource({
    "2026-06-10, true,  OVERDUE, true",
    "2026-06-10, false, OVERDUE, false",
    "2026-06-01, true,  OVERDUE, true",
  })
  void whatWasAskedFor_isWaitedForAtOnce(
      LocalDate asked, boolean blocks, Urgency urgency, boolean keepsIn) {
    Due due = new Due(Work.LIMB_INSPECTION, asked, 0, blocks, true, "It fell over.");
    assertEquals(urgency, due.on(TODAY));
    assertEquals(keepsIn, due.keepsIn(TODAY));
  }
}
