package club.ascham.plan;

import java.util.List;

/**
 * How many hours a week would do for the work that can be foreseen.
 *
 * @param hoursAWeek with so many all of it is done before it is due, if nothing fails, and with a
 *     quarter of an hour less it is not; null: not even {@link #MOST_HOURS} do
 * @param late what was due before today: late whatever the hours
 */
public record EnoughHours(Double hoursAWeek, List<Plan.Job> late) {
  public static final int MOST_HOURS = 200;

  /** Nobody plans an evening more finely. */
  private static final int MINUTES = 15;

  private static final int MINUTES_AN_HOUR = 60;

  public EnoughHours {
    late = List.copyOf(late);
  }

  /** By halving: more hours may, once in a while, move a piece of work into a fuller week. */
  static EnoughHours of(Fleet fleet, Assumptions assumed, List<Plan.Job> jobs) {
    int fewer = -1;
    int enough = MOST_HOURS * MINUTES_AN_HOUR / MINUTES;
    boolean does = allFits(fleet, assumed, enough);
    while (does && enough - fewer > 1) {
      int between = (fewer + enough) / 2;
      if (allFits(fleet, assumed, between)) {
        enough = between;
      } else {
        fewer = between;
      }
    }
    return new EnoughHours(
        does ? hours(enough) : null,
        jobs.stream().filter(job -> job.due().isBefore(fleet.today())).toList());
  }

  private static double hours(int quarters) {
    return (double) quarters * MINUTES / MINUTES_AN_HOUR;
  }

  private static boolean allFits(Fleet fleet, Assumptions assumed, int quarters) {
    Replication course = new Replication(new Numbers(fleet, assumed.withHours(hours(quarters))));
    int[] unfitting = new int[1];
    course.run(Chance.NONE, (routine, due, week) -> unfitting[0] += week < 0 ? 1 : 0);
    return unfitting[0] == 0;
  }
}
