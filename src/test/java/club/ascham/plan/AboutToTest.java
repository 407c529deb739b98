package club.ascham.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AboutToTest {
  @Test
  void whatIsDue_comesFirstByItsDay_thenWhatIsLikeliestToFail() {
    Lifetime life = new Lifetime(2, 1000, "made up");
    PlannedPart young = part("S1", 100, life);
    PlannedPart old = part("S2", 900, life);
    PlannedPart due = part("S3", 10, life, Fleets.replacement(365, 40));
    PlannedPart overdue = part("S4", 10, life, Fleets.replacement(365, -3));
    PlannedPart never = part("S5", 3000, null);
    PlannedFleet fleet =
        Fleets.fleet(List.of(young, old, due, overdue, never), Map.of(), Fleets.terms(1, 1));
    List<AboutTo> about = AboutTo.within(90, fleet, Fleets.assumed(1, 1, 0));
    assertEquals(
        List.of("S4", "S3", "S2", "S1"), about.stream().map(a -> a.part().code()).toList());
    assertEquals(Fleets.TODAY.minusDays(3), about.get(0).dueOn());
    assertEquals(new AboutTo.Due(AboutTo.By.DAYS, 365), about.get(0).by());
    assertNull(about.get(2).by());
    // 1 - S(990) / S(900) = 1 - exp(0.81 - 0.9801)
    assertEquals(0.15642, about.get(2).failing(), 1e-5);
  }

  /** 30 days by its age, 20 by loans (2 at 0.1 a day), 10 by shots (50 at 5 a day). */
  @Test
  void whatMakesItDue_isTheCountThatIsReachedFirst() {
    assertEquals(new AboutTo.Due(AboutTo.By.SHOTS, 4000), due(30, 2, 50));
    assertEquals(new AboutTo.Due(AboutTo.By.LOANS, 60), due(30, 2, 500));
    assertEquals(new AboutTo.Due(AboutTo.By.DAYS, 730), due(30, 20, 500));
    assertEquals(new AboutTo.Due(AboutTo.By.SHOTS, 4000), due(-9, 20, 0), "reached nine days ago");
  }

  private static AboutTo.Due due(int days, int loans, int shots) {
    PlannedPart part =
        Fleets.usedString(
            new Routine("replacement", 30, 730, 60, 4000, days, loans, shots, 60, false, true));
    PlannedFleet fleet = Fleets.fleet(List.of(part), Map.of(), Fleets.terms(1, 1));
    return AboutTo.within(90, fleet, Fleets.assumed(1, 1, 0)).get(0).by();
  }

  private static PlannedPart part(String code, double age, Lifetime life, Routine... routines) {
    return new PlannedPart(
        code, "string", Kind.STRING, "string", 0, age, 0, 0, life, List.of(routines));
  }
}
