package club.ascham.plan;

import java.util.Map;

/**
 * What a plan takes for granted beside the fleet. Another one of these is a what-if.
 *
 * @param seed of all chance: the same one gives the same plan
 * @param replications possible courses that are reckoned
 * @param hoursAWeek that volunteers have for upkeep
 * @param coursesATerm beginners' courses beyond those on record
 * @param course what one of them does to the fleet
 * @param usageSpread how far a club's use may differ from last year's, as a share: 0.2 for 20 %
 *     either way, all alike
 * @param priceFactors by kind, 1 where none is named
 * @param intervalDays by work, for what comes round after days; the fleet's own where none is named
 */
public record Assumptions(
    long seed,
    int replications,
    double hoursAWeek,
    int coursesATerm,
    Course course,
    double usageSpread,
    Map<Kind, Double> priceFactors,
    Map<String, Integer> intervalDays) {
  public Assumptions {
    priceFactors = Map.copyOf(priceFactors);
    intervalDays = Map.copyOf(intervalDays);
  }

  /** At the interval that is assumed. */
  Routine asAssumed(Routine routine) {
    Integer days = intervalDays.get(routine.work());
    return days == null ? routine : routine.every(days);
  }

  Assumptions withHours(double hours) {
    return new Assumptions(
        seed, replications, hours, coursesATerm, course, usageSpread, priceFactors, intervalDays);
  }

  /**
   * A beginners' course.
   *
   * @param evenings of one course
   */
  public record Course(int termsAYear, int archers, int evenings, int shotsAnEvening) {
    private static final double DAYS_A_YEAR = 365.25;

    /** Loans that one such course a term adds to the whole fleet, a day. */
    double loansADay() {
      return termsAYear * archers * evenings / DAYS_A_YEAR;
    }
  }
}
