package club.ascham.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SimulationTest {
  private static final int DAYS = 731; // 25 November 2026 to 25 November 2028

  private static Plan plan(PlannedFleet fleet, Assumptions assumed) {
    return Simulation.of(fleet, assumed, 2, Progress.NOBODY).orElseThrow();
  }

  private static Spread exactly(long value) {
    return new Spread(value, value, value, value, value, value);
  }

  @Test
  void whatNeverFails_isReplacedWhenDue_andOrderedTheLeadTimeBefore() {
    PlannedFleet fleet =
        Fleets.fleet(
            List.of(Fleets.string(0, null, Fleets.replacement(365, 40))),
            Map.of(),
            Fleets.terms(1150, 14));
    Plan plan = plan(fleet, Fleets.assumed(50, 5, 0));
    // Due 4 January 2027 and, 365 days on, 4 January 2028; ordered 21 December of each year before.
    assertEquals(List.of(1, 13), months(plan, month -> month.replaced().median() > 0));
    assertEquals(List.of(0, 12), months(plan, month -> month.cost().median() > 0));
    assertEquals(exactly(1150), plan.months().get(0).cost());
    assertEquals(exactly(2300), plan.months().get(23).costSoFar());
    assertEquals(exactly(1150), plan.years().get(0).cost());
    assertEquals(exactly(1150), plan.years().get(1).cost());
    assertEquals(
        List.of(LocalDate.of(2027, 1, 4), LocalDate.of(2028, 1, 4)),
        plan.jobs().stream().map(Plan.Job::due).toList());
    assertEquals(exactly(0), plan.mostOut());
    assertEquals(
        List.of(Fleets.TODAY, LocalDate.of(2027, 11, 25)),
        plan.purchases().stream().map(Plan.Purchase::month).toList());
  }

  private static List<Integer> months(Plan plan, Predicate<Plan.Month> holds) {
    return IntStream.range(0, 24).filter(m -> holds.test(plan.months().get(m))).boxed().toList();
  }

  @Test
  void aSpare_isUsedBeforeAnythingIsBought() {
    PlannedFleet fleet =
        Fleets.fleet(
            List.of(Fleets.string(0, null, Fleets.replacement(365, 40))),
            Map.of("string, 68 in", 1),
            Fleets.terms(1150, 14));
    Plan plan = plan(fleet, Fleets.assumed(10, 5, 0));
    assertEquals(exactly(0), plan.years().get(0).cost());
    assertEquals(exactly(1150), plan.years().get(1).cost());
  }

  @Test
  void aWeekTooFull_isRelievedByTheWeeksBefore_asFarAsTheSlackGoes() {
    List<PlannedPart> parts =
        List.of(
            Fleets.string(0, null, Fleets.inspection(1000, 70, 60, 14)),
            Fleets.string(1, null, Fleets.inspection(1000, 71, 60, 14)),
            Fleets.string(2, null, Fleets.inspection(1000, 72, 60, 14)),
            Fleets.string(3, null, Fleets.inspection(1000, 73, 60, 14)));
    Plan plan = plan(Fleets.fleet(parts, Map.of(), Fleets.terms(100, 7)), Fleets.assumed(10, 1, 0));
    assertEquals(
        List.of(56L, 63L, 70L),
        plan.jobs().stream()
            .filter(Plan.Job::fits)
            .map(job -> Fleets.TODAY.until(job.week(), ChronoUnit.DAYS))
            .toList());
    assertEquals(1, plan.unfitting().size());
    assertEquals(exactly(60), plan.weeks().get(10).lateSafety());
    assertEquals(exactly(1), plan.weeks().get(11).out(), "it stays in until it is inspected");
    assertEquals(exactly(0), plan.weeks().get(13).out());
  }

  @Test
  void useOnRecord_bringsACountedIntervalForward_andACourseMoreSo() {
    Routine everyFourThousand =
        new Routine("replacement", 30, 730, null, 4000, 700, null, 1000, 0, false, true);
    PlannedPart string = Fleets.usedString(everyFourThousand);
    PlannedFleet fleet = Fleets.fleet(List.of(string), Map.of(), Fleets.terms(1000, 0));
    Assumptions asOnRecord = Fleets.assumed(1, 5, 0);
    assertEquals(
        Fleets.TODAY.plusDays(200), plan(fleet, asOnRecord).jobs().get(0).due(), "1000 at 5 a day");
    Assumptions oneCourseMore =
        new Assumptions(7, 1, 5, 1, new Assumptions.Course(3, 12, 6, 60), 0, Map.of(), Map.of());
    // 3 x 12 x 6 loans a year of 60 shots, all on the one rig: 35.48 shots a day beside the 5.
    assertEquals(Fleets.TODAY.plusDays(24), plan(fleet, oneCourseMore).jobs().get(0).due());
  }

  @Test
  void anotherInterval_movesTheNextDay_andAnotherPriceTheCost() {
    PlannedFleet fleet =
        Fleets.fleet(
            List.of(Fleets.string(0, null, Fleets.replacement(730, 100))),
            Map.of(),
            Fleets.terms(1000, 0));
    Assumptions whatIf =
        new Assumptions(
            7,
            1,
            5,
            0,
            new Assumptions.Course(3, 12, 6, 60),
            0,
            Map.of(Kind.STRING, 1.25),
            Map.of("replacement", 365));
    Plan plan = plan(fleet, whatIf);
    assertEquals(
        List.of(
            Fleets.TODAY.plusDays(100 - 365), // overdue, and done at once
            Fleets.TODAY.plusDays(365),
            Fleets.TODAY.plusDays(730)),
        plan.jobs().stream().map(Plan.Job::due).toList());
    assertEquals(exactly(3750), plan.months().get(23).costSoFar());
  }

  @Test
  @DisplayName("Weibull of shape 1: failures are a Poisson stream, expected number = time / scale")
  void ofShapeOne_failuresComeAtAConstantRate() {
    List<PlannedPart> parts = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      parts.add(Fleets.string(i, new Lifetime(1, 300, "made up")));
    }
    Plan plan =
        plan(Fleets.fleet(parts, Map.of(), Fleets.terms(100, 0)), Fleets.assumed(2000, 50, 0));
    double expected = 40.0 * DAYS / 300;
    double standardError = Math.sqrt(expected / 2000);
    assertEquals(expected, unplanned(plan), 4 * standardError);
    assertEquals(100 * expected, plan.months().get(23).costSoFar().mean(), 400 * standardError);
    // 90 % band of a Poisson count with mean 97.47: 82 to 114 (normal approximation 81.2 to 113.7)
    double bandLow = plan.months().get(23).costSoFar().low90() / 100.0;
    double bandHigh = plan.months().get(23).costSoFar().high90() / 100.0;
    assertEquals(expected - 1.645 * Math.sqrt(expected), bandLow, 2);
    assertEquals(expected + 1.645 * Math.sqrt(expected), bandHigh, 2);
  }

  @Test
  @DisplayName("renewal equation M(t) = F(t) + integral of M(t - x) dF(x), solved on a grid")
  void ofAWearingPart_asManyFailAsTheRenewalFunctionSays() {
    Lifetime life = new Lifetime(3, 250, "made up");
    List<PlannedPart> parts = IntStream.range(0, 40).mapToObj(i -> Fleets.string(i, life)).toList();
    Plan plan =
        plan(Fleets.fleet(parts, Map.of(), Fleets.terms(100, 0)), Fleets.assumed(1000, 50, 0));
    double expected = 40 * renewals(life, DAYS);
    assertEquals(expected, unplanned(plan), 0.005 * expected);
  }

  private static double renewals(Lifetime life, int days) {
    int steps = 4 * days;
    double step = (double) days / steps;
    double[] m = new double[steps + 1];
    for (int i = 1; i <= steps; i++) {
      double sum = 1 - life.lasting(i * step);
      for (int j = 1; j <= i; j++) {
        double failing = life.lasting((j - 1) * step) - life.lasting(j * step);
        sum += failing * (m[i - j] + m[Math.max(0, i - j + 1)] * (j > 1 ? 1 : 0)) / (j > 1 ? 2 : 1);
      }
      m[i] = sum;
    }
    return m[steps];
  }

  /** By hand: of this life all fail in days 94 to 102, so three times in 365 days. */
  @Test
  void whatFails_costsAsManyTimesItsPrice_asTheRuleSays_aSpareOnlySavesThePart() {
    PlannedPart failing = Fleets.string(0, new Lifetime(200, 99, "made up"));
    PlannedFleet bought = Fleets.fleet(List.of(failing), Map.of(), Fleets.terms(1150, 0, 5));
    Plan plan = plan(bought, Fleets.assumed(200, 50, 0));
    assertEquals(exactly(3 * 1150), plan.years().get(0).cost());
    assertEquals(exactly(3 * 4 * 1150), plan.years().get(0).besideParts());
    assertEquals(exactly(1150), plan.months().get(3).costSoFar());
    assertEquals(exactly(7 * 1150), plan.months().get(23).costSoFar());

    PlannedFleet withASpare =
        Fleets.fleet(List.of(failing), Map.of("string, 68 in", 1), Fleets.terms(1150, 0, 5));
    Plan saving = plan(withASpare, Fleets.assumed(200, 50, 0));
    assertEquals(exactly(2 * 1150), saving.years().get(0).cost());
    assertEquals(exactly(3 * 4 * 1150), saving.years().get(0).besideParts());
  }

  @Test
  void whatIsReplacedInTime_costsItsPrice_whateverAFailureCosts() {
    PlannedFleet fleet =
        Fleets.fleet(
            List.of(Fleets.string(0, null, Fleets.replacement(365, 40))),
            Map.of(),
            Fleets.terms(1150, 14, 5));
    Plan plan = plan(fleet, Fleets.assumed(10, 5, 0));
    assertEquals(exactly(1150), plan.years().get(0).cost());
    assertEquals(exactly(0), plan.years().get(0).besideParts());
  }

  @Test
  @DisplayName("a part of age a fails within t with 1 - S(a + t)/S(a)")
  void anOldPart_isReckonedFromItsAge() {
    Lifetime life = new Lifetime(2, 1000, "made up");
    List<PlannedPart> parts =
        IntStream.range(0, 50)
            .mapToObj(
                i ->
                    new PlannedPart(
                        "S" + i, "string", Kind.STRING, "string", i, 900, 0, 0, life, List.of()))
            .toList();
    // The new one is so long in coming that none fails twice.
    Plan plan =
        plan(Fleets.fleet(parts, Map.of(), Fleets.terms(100, 5000)), Fleets.assumed(1000, 50, 0));
    double failing = 1 - life.lasting(900 + DAYS) / life.lasting(900);
    assertEquals(50 * failing, unplanned(plan), 4 * Math.sqrt(50 * failing / 1000));
  }

  private static double unplanned(Plan plan) {
    return plan.months().stream().mapToDouble(month -> month.unplanned().get(Kind.STRING)).sum();
  }

  @Test
  void aStop_endsItWithoutAPlan_andProgressIsTold() {
    int[] told = new int[1];
    Progress untilTen =
        new Progress() {
          @Override
          public synchronized void reckoned(int replications) {
            told[0] = Math.max(told[0], replications);
          }

          @Override
          public synchronized boolean stopped() {
            return told[0] >= 10;
          }
        };
    assertTrue(
        Simulation.of(Fleets.large(5, 1), Fleets.assumed(100_000, 5, 0.2), 2, untilTen).isEmpty());
    assertTrue(told[0] >= 10 && told[0] <= 12, "stopped at once: " + told[0]);
  }

  /** Of this life one in three fails within two years, and one in ten within two days. */
  @Test
  void whatFailsInTheLastWeek_rightAfterItWasReplaced_isBeyondThePlan() {
    Lifetime young = new Lifetime(0.2, 100_000, "made up");
    PlannedFleet fleet =
        Fleets.fleet(
            List.of(Fleets.string(0, young, Fleets.replacement(1000, 728))),
            Map.of(),
            Fleets.terms(100, 0));
    Plan plan = plan(fleet, Fleets.assumed(500, 5, 0));
    assertEquals(1, plan.months().get(23).replaced().median());
  }

  @Test
  void anEmptyFleet_hasAnEmptyPlan() {
    Plan plan =
        plan(Fleets.fleet(List.of(), Map.of(), Fleets.terms(1, 1)), Fleets.assumed(10, 5, 0.2));
    assertEquals(exactly(0), plan.years().get(0).cost());
    assertTrue(plan.jobs().isEmpty());
    assertEquals(105, plan.weeks().size());
  }
}
