package club.ascham.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AboutToTest {
  @Test
  void whatIsDue_comesFirstByItsDay_thenWhatIsLikeliestToFail() {
    Life life = new Life(2, 1000, "made up");
    Part young = part("S1", 100, life);
    Part old = part("S2", 900, life);
    Part due = part("S3", 10, life, Fleets.replacement(365, 40));
    Part overdue = part("S4", 10, life, Fleets.replacement(365, -3));
    Part never = part("S5", 3000, null);
    Fleet fleet =
        Fleets.fleet(List.of(young, old, due, overdue, never), Map.of(), Fleets.terms(1, 1));
    List<AboutTo> about = AboutTo.within(90, fleet, Fleets.assumed(1, 1, 0));
    assertEquals(
        List.of("S4", "S3", "S2", "S1"), about.stream().map(a -> a.part().code()).toList());
    assertEquals(Fleets.TODAY.minusDays(3), about.get(0).dueOn());
    // 1 - S(990) / S(900) = 1 - exp(0.81 - 0.9801)
    assertEquals(0.15642, about.get(2).failing(), 1e-5);
  }

  private static Part part(String code, double age, Life life, Routine... routines) {
    return new Part(code, "string", Kind.STRING, "string", 0, age, 0, 0, life, List.of(routines));
  }
}
