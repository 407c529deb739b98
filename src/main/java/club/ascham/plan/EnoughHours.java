package club.ascham.plan;

import java.util.List;

/**
 * How many hours a week would do for the work that can be foreseen.
 *
 * @param hoursAWeek with so many all that is not late already is done before it is due, if nothing
 *     fails, and with a quarter of an hour less it is not; null: not even {@link #MOST_HOURS} do
 * @param onceCaughtUp the same if what is late already had been done by today
 * @param late what was due before today: late whatever the hours
 */
public record EnoughHours(Double hoursAWeek, Double onceCaughtUp, List<Plan.Job> late) {
  public static final int MOST_HOURS = 200;

  /** Nobody plans an evening more finely. */
  private static final int MINUTES = 15;

  private static final int MINUTES_AN_HOUR = 60;

  public EnoughHours {
    late = List.copyOf(late);
  }

  static EnoughHours of(PlannedFleet fleet, Assumptions assumed, List<Plan.Job> jobs) {
    return new EnoughHours(
        fewest(fleet, assumed),
        fewest(caughtUp(fleet, assumed), assumed),
        jobs.stream().filter(job -> job.due().isBefore(fleet.today())).toList());
  }

  private static PlannedFleet caughtUp(PlannedFleet fleet, Assumptions assumed) {
    return new PlannedFleet(
        fleet.today(),
        fleet.rigs(),
        fleet.parts().stream()
            .map(
                part ->
                    part.with(
                        part.routines().stream()
                            .map(assumed::asAssumed)
                            .filter(each -> !each.late() || each.recurs())
                            .map(each -> each.late() ? each.done() : each)
                            .toList()))
            .toList(),
        fleet.spares(),
        fleet.terms());
  }

  /** By halving: more hours may, once in a while, move a piece of work into a fuller week. */
  private static Double fewest(PlannedFleet fleet, Assumptions assumed) {
    int fewer = -1;
    int enough = MOST_HOURS * MINUTES_AN_HOUR / MINUTES;
    if (!allFits(fleet, assumed, enough)) {
      return null;
    }
    while (enough - fewer > 1) {
      int between = (fewer + enough) / 2;
      if (allFits(fleet, assumed, between)) {
        enough = between;
      } else {
        fewer = between;
      }
    }
    return hours(enough);
  }

  private static double hours(int quarters) {
    return (double) quarters * MINUTES / MINUTES_AN_HOUR;
  }

  private static boolean allFits(PlannedFleet fleet, Assumptions assumed, int quarters) {
    Replication course = new Replication(new Numbers(fleet, assumed.withHours(hours(quarters))));
    int[] unfitting = new int[1];
    course.run(Chance.NONE, (routine, due, week) -> unfitting[0] += week < 0 && due >= 0 ? 1 : 0);
    return unfitting[0] == 0;
  }
}
