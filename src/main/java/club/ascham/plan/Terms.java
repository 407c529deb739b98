package club.ascham.plan;

/**
 * What a new part of one kind costs and takes.
 *
 * @param priceMinor of one, in minor units of the club's money
 * @param leadDays from order to the kit room
 * @param minutes to put it in the place of one that failed, set-up included
 * @param failureTimes what one that fails costs in all, in prices of one replaced in time; 1 or
 *     more
 */
public record Terms(long priceMinor, int leadDays, int minutes, double failureTimes) {
  public Terms {
    if (!(failureTimes >= 1)) {
      throw new IllegalArgumentException("a failure costs " + failureTimes + " times the part");
    }
  }
}
