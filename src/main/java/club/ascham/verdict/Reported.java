package club.ascham.verdict;

/**
 * What was reported about the time the bow was away, or seen when it came back.
 *
 * @param dryLooseOrFall loosed without an arrow, or fell
 * @param cameBackStrung came back with its string on
 */
public record Reported(boolean dryLooseOrFall, boolean cameBackStrung) {
  public static final Reported NOTHING = new Reported(false, false);
}
