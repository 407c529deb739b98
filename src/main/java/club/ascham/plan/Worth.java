package club.ascham.plan;

/**
 * What one thing is worth, for the insurance list, in minor units: written down in a straight line
 * from what was paid for it to nothing over the years that the club says such a thing serves, by
 * days; and what a new one costs today.
 *
 * @param cost what it is written down from
 * @param writtenDown never less than nothing
 */
public record Worth(long cost, long writtenDown, long replacement) {
  private static final double DAYS_A_YEAR = 365.25;

  /**
   * @param paid null: not known, and today's price stands for it
   * @param ageDays since it was bought; a day to come counts as today
   * @param years over which it is written down, 1 or more
   */
  public static Worth of(Long paid, long priceToday, long ageDays, int years) {
    if (years < 1) {
      throw new IllegalArgumentException("written down over " + years + " years");
    }
    long cost = paid == null ? priceToday : paid;
    double left = Math.max(0, 1 - Math.max(0, ageDays) / (years * DAYS_A_YEAR));
    return new Worth(cost, Math.round(cost * left), priceToday);
  }

  public Worth plus(Worth other) {
    return new Worth(
        cost + other.cost, writtenDown + other.writtenDown, replacement + other.replacement);
  }
}
