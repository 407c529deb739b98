package club.ascham.plan;

/**
 * Work that comes round again on one part: after so many days, loans or shots, whichever is reached
 * first.
 *
 * @param work its word, as the upkeep rules know it
 * @param minutes of a volunteer's time
 * @param everyDays null: days do not count (likewise loans and shots)
 * @param dueInDays days until it is next due by them, negative where that day lies behind, and
 *     where another count was reached since the day on which it was; null as above
 * @param loansLeft loans until it is next due by them, 0 where they are reached; null as above
 *     (likewise shotsLeft)
 * @param slackDays how long before it is due it may be done
 * @param safety whether its item stays in once it is overdue: never planned later than due
 * @param replaces whether it puts a new part in the old one's place
 */
public record Routine(
    String work,
    int minutes,
    Integer everyDays,
    Integer everyLoans,
    Integer everyShots,
    Integer dueInDays,
    Integer loansLeft,
    Integer shotsLeft,
    int slackDays,
    boolean safety,
    boolean replaces) {
  public Routine {
    if (minutes < 1 || slackDays < 0) {
      throw new IllegalArgumentException(minutes + " minutes, slack of " + slackDays + " days");
    }
  }

  /** A piece of work that a person asked for: due now, and not again. */
  public static Routine once(String work, int minutes, int dueInDays, boolean safety) {
    return new Routine(work, minutes, null, null, null, dueInDays, null, null, 0, safety, false);
  }

  /** It was due before today. */
  boolean late() {
    return dueInDays != null && dueInDays < 0;
  }

  /** Comes round again. */
  boolean recurs() {
    return everyDays != null || everyLoans != null || everyShots != null;
  }

  /** The same work as if it had been done today. */
  Routine done() {
    return new Routine(
        work,
        minutes,
        everyDays,
        everyLoans,
        everyShots,
        everyDays,
        everyLoans,
        everyShots,
        slackDays,
        safety,
        replaces);
  }

  /** The same work at another interval of days, its next day moved by the difference. */
  Routine every(int days) {
    if (everyDays == null) {
      return this;
    }
    return new Routine(
        work,
        minutes,
        days,
        everyLoans,
        everyShots,
        dueInDays + days - everyDays,
        loansLeft,
        shotsLeft,
        slackDays,
        safety,
        replaces);
  }
}
