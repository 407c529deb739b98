package club.ascham.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EnoughHoursTest {
  private static EnoughHours enough(List<PlannedPart> parts) {
    return Simulation.of(
            Fleets.fleet(parts, Map.of(), Fleets.terms(100, 7)),
            Fleets.assumed(1, 1, 0),
            1,
            Progress.NOBODY)
        .orElseThrow()
        .enough();
  }

  /** Four hours of work in week 10, which may be done in weeks 8 to 10: 80 minutes in each. */
  @Test
  void whatOneWeekCannotHold_asksForTheHoursThatItsSlackSpreadsItOver() {
    List<PlannedPart> parts =
        IntStream.range(0, 4)
            .mapToObj(i -> Fleets.string(i, null, Fleets.inspection(1000, 70 + i, 60, 14)))
            .toList();
    assertEquals(1.5, enough(parts).hoursAWeek());
    assertEquals(List.of(), enough(parts).late());
  }

  @Test
  void withoutWork_noHoursDo_andWithoutSlackAWeeksWorkNeedsThemAll() {
    assertEquals(0, enough(List.of()).hoursAWeek());
    assertEquals(
        0.25,
        enough(List.of(Fleets.string(0, null, Fleets.inspection(1000, 70, 10, 0)))).hoursAWeek());
    assertEquals(
        0.75,
        enough(List.of(Fleets.string(0, null, Fleets.inspection(1000, 3, 31, 0)))).hoursAWeek());
  }

  @Test
  void whatWasDueBeforeToday_isLateWhateverTheHours_andNamed() {
    EnoughHours enough =
        enough(
            List.of(
                Fleets.string(0, null, Fleets.inspection(1000, -3, 600, 14)),
                Fleets.string(1, null, Fleets.inspection(1000, 30, 60, 14))));
    assertEquals(2.25, enough.hoursAWeek(), "eleven hours in five weeks");
    assertEquals(0.5, enough.onceCaughtUp(), "an hour in its three weeks");
    assertEquals(List.of("S0"), enough.late().stream().map(Plan.Job::code).toList());
  }

  @Test
  void moreWorkInAWeekThanAnyoneHasHours_saysSo() {
    List<PlannedPart> parts =
        IntStream.range(0, 21)
            .mapToObj(i -> Fleets.string(i, null, Fleets.inspection(1000, 3, 600, 0)))
            .toList();
    assertNull(enough(parts).hoursAWeek());
  }

  @Test
  void ofALargeFleet_soManyDo_andAQuarterOfAnHourLessDoNot() {
    for (int seed = 1; seed <= 20; seed++) {
      PlannedFleet fleet = Fleets.large(30, seed);
      double hours = plan(fleet, 1).enough().hoursAWeek();
      assertTrue(plan(fleet, hours).unfitting().isEmpty(), hours + " hours do");
      assertFalse(plan(fleet, hours - 0.25).unfitting().isEmpty(), hours + " hours are the fewest");
      assertEquals(hours, plan(fleet, hours).enough().hoursAWeek(), "whatever the hours there are");
    }
  }

  private static Plan plan(PlannedFleet fleet, double hours) {
    return Simulation.of(fleet, Fleets.assumed(1, hours, 0), 1, Progress.NOBODY).orElseThrow();
  }
}
