package club.ascham.life;

import club.ascham.statistics.ReplacementAge;
import club.ascham.statistics.WeibullFit;

/** What the club's own record would make of one rule's interval in days. */
sealed interface Proposal {
  /**
   * Replace earlier.
   *
   * @param low with {@code high}: 9 times in 10 the best age lies between; null: it may be that no
   *     age pays
   * @param saves share of what the interval in force costs in the long run
   */
  record Shorten(int days, Integer low, Integer high, double saves) implements Proposal {}

  /** The best age is the one in force, or so near that it does not matter. */
  record Keep(int days) implements Proposal {}

  /** The record would bear a longer one; statistics alone never lengthen an interval. */
  record NotLonger(int days, Integer low, Integer high) implements Proposal {}

  /** These parts do not wear out by age: inspecting them helps, replacing them does not. */
  record InspectInstead() implements Proposal {}

  /** Too little is on record. */
  record Untold(String why) implements Proposal {}

  /** Nobody reads a week's difference out of a life (judged). */
  int NEAR_DAYS = 14;

  /** A saving below this is none (judged). */
  double WORTH_IT = 0.03;

  long SEED = 20_260_301;

  /**
   * @param fit the life in days of the parts that the rule is for
   * @param times what a part that fails costs, in costs of one that is replaced in time; at least 1
   * @param everyDays the interval in force
   */
  static Proposal of(WeibullFit fit, double times, int everyDays) {
    ReplacementAge.Likely likely = ReplacementAge.likely(fit, 1, times, SEED);
    ReplacementAge best = likely.best();
    if (best.age() == null) {
      return new InspectInstead();
    }
    int days = Math.max(1, (int) Math.round(best.age()));
    double inForce = costRate(fit, times, everyDays);
    double saves = 1 - best.costRate() / inForce;
    if (Math.abs(days - everyDays) <= NEAR_DAYS || saves < WORTH_IT) {
      return new Keep(everyDays);
    }
    return days < everyDays
        ? new Shorten(days, whole(likely.low()), whole(likely.high()), saves)
        : new NotLonger(days, whole(likely.low()), whole(likely.high()));
  }

  private static double costRate(WeibullFit fit, double times, int age) {
    double reach = fit.life().survival(age);
    return (reach + times * (1 - reach)) / fit.life().meanUpTo(age);
  }

  private static Integer whole(Double days) {
    return days == null ? null : (int) Math.round(days);
  }
}
