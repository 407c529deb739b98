package club.ascham.statistics;

import club.ascham.mechanics.Domain;
import club.ascham.mechanics.OutOfDomain;
import java.util.Set;

/**
 * The time in which one part was watched, by its age in days, loans or shots.
 *
 * @param entered its age when the record of it began: 0 where it was new, more where it is older
 *     than the record. What failed before that age was never seen, so it counts from there only
 * @param until its age at the end: it failed, left for another reason, or is in use to this day
 * @param failed whether it failed
 */
public record Service(double entered, double until, boolean failed) {
  private static final double OLDEST = 1e9;

  /**
   * @throws OutOfDomain naming {@code entered}, {@code failed} or {@code suspended}
   */
  public Service {
    String which = failed ? "failed" : "suspended";
    Domain.within(which, until, 0, OLDEST);
    Domain.within("entered", entered, 0, OLDEST);
    if (failed && until < 1 / OLDEST) {
      throw new OutOfDomain(which, "What failed was older than 0.");
    }
    if (entered > 0 && entered >= until) {
      throw new OutOfDomain("entered", "It must be less than the age at the end.");
    }
  }

  /**
   * How a part left, in a word of the club's; null: it has not.
   *
   * <p>One cause at a time: what left for another one had not failed by this one yet.
   */
  public record Ended(double entered, double until, String cause) {
    public Service by(Set<String> causes) {
      return new Service(entered, until, cause != null && causes.contains(cause));
    }
  }
}
