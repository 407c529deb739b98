package club.ascham.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class PlanLawsTest {
  private static final double ONE_PIECE_MINUTES = 15;

  private static Plan plan(PlannedFleet fleet, Assumptions assumed, int threads) {
    return Simulation.of(fleet, assumed, threads, Progress.NOBODY).orElseThrow();
  }

  @Property(tries = 60)
  void whatIsPlanned_isNeverLaterThanDue_norBeforeItsSlack_andNoWeekExceedsItsHours(
      @ForAll @IntRange(min = 1, max = 60) int rigs,
      @ForAll @DoubleRange(min = 0.2, max = 6) double hours,
      @ForAll long seed) {
    PlannedFleet fleet = Fleets.large(rigs, seed);
    Assumptions assumed = Fleets.assumed(1, hours, 0.2);
    Map<String, Integer> slack =
        fleet.parts().stream()
            .flatMap(part -> part.routines().stream())
            .collect(Collectors.toMap(Routine::work, Routine::slackDays, (one, same) -> one));
    Plan plan = plan(fleet, assumed, 1);
    for (Plan.Job job : plan.jobs()) {
      if (job.fits()) {
        assertTrue(!job.week().isAfter(job.due()), job.toString());
        assertTrue(
            !job.week().plusDays(6).isBefore(job.due().minusDays(slack.get(job.work()) + 6L)),
            job.toString());
      }
    }
    for (Plan.Week week : plan.weeks()) {
      assertTrue(week.minutes().high90() <= Math.round(hours * 60), week.toString());
      assertTrue(week.ifNothingFails() <= Math.round(hours * 60), week.toString());
    }
  }

  @Property(tries = 40)
  void everyBand_isInOrder_andHoldsTheFigureInItsMiddle(
      @ForAll @IntRange(min = 1, max = 40) int rigs,
      @ForAll @DoubleRange(min = 0.2, max = 6) double hours,
      @ForAll long seed) {
    Plan plan = plan(Fleets.large(rigs, seed), Fleets.assumed(60, hours, 0.2), 1);
    bands(plan)
        .forEach(
            band ->
                assertTrue(
                    band.low90() <= band.low50()
                        && band.low50() <= band.median()
                        && band.median() <= band.high50()
                        && band.high50() <= band.high90(),
                    band.toString()));
  }

  private static Stream<Spread> bands(Plan plan) {
    return Stream.of(
            Stream.of(plan.mostOut(), plan.lateSafetyMinutes()),
            plan.years().stream()
                .flatMap(y -> Stream.of(y.cost(), y.besideParts(), y.replaced(), y.minutes())),
            plan.months().stream().flatMap(m -> Stream.of(m.replaced(), m.cost(), m.costSoFar())),
            plan.weeks().stream()
                .flatMap(w -> Stream.of(w.minutes(), w.lateSafety(), w.lateOther(), w.out())),
            plan.purchases().stream().map(Plan.Purchase::count))
        .flatMap(bands -> bands);
  }

  /**
   * But for a piece of work now and then: what is done sooner is due again sooner, and may then
   * meet a fuller week.
   */
  @Property(tries = 60)
  void moreHours_hardlyEverMeanMoreWorkForSafetyOverdue(
      @ForAll @IntRange(min = 1, max = 60) int rigs,
      @ForAll @DoubleRange(min = 0.2, max = 6) double hours,
      @ForAll long seed) {
    PlannedFleet fleet = Fleets.large(rigs, seed);
    double fewer = plan(fleet, Fleets.assumed(20, hours, 0.2), 1).lateSafetyMinutes().mean();
    double more = plan(fleet, Fleets.assumed(20, hours * 1.3, 0.2), 1).lateSafetyMinutes().mean();
    assertTrue(
        more <= fewer + ONE_PIECE_MINUTES,
        fewer + " with " + hours + " hours, " + more + " with more");
  }

  @Property(tries = 20)
  void theSameSeed_givesTheSamePlan_howeverManyThreads(
      @ForAll @IntRange(min = 1, max = 40) int rigs, @ForAll long seed) {
    PlannedFleet fleet = Fleets.large(rigs, seed);
    Assumptions assumed = Fleets.assumed(50, 3, 0.2);
    Plan alone = plan(fleet, assumed, 1);
    assertEquals(alone, plan(fleet, assumed, 2));
    assertEquals(alone, plan(fleet, assumed, 5));
  }

  @Example
  void anotherSeed_givesAnotherCourse() {
    PlannedFleet fleet = Fleets.large(40, 1);
    Assumptions one = Fleets.assumed(50, 3, 0.2);
    Assumptions other = new Assumptions(8, 50, 3, 0, one.course(), 0.2, Map.of(), Map.of());
    assertNotEquals(
        plan(fleet, one, 1).years().get(0).cost(), plan(fleet, other, 1).years().get(0).cost());
  }
}
