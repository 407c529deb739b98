package club.ascham.rules;

import club.ascham.mechanics.TwistLimits;
import java.time.Duration;

/**
 * The club's own settings, as edited on the rules page.
 *
 * @param braceTable the name of the table of brace bands in force
 * @param fullCheckEveryLooks sessions after which a look no longer suffices
 * @param sessionsAWeek with {@code shotsASession}, what shots are estimated from
 * @param keepNamesDays after the last thing came back, a borrower is known by name for so long
 * @param weighLimbsDays how often limbs belong on the bow scale; null: by no rule
 * @param fewestTwists that a string may hold, and {@code mostTwists}
 */
public record ClubRules(
    String name,
    boolean demo,
    String braceTable,
    int fullCheckEveryLooks,
    int loanDays,
    long depositMinor,
    double sessionsAWeek,
    int shotsASession,
    int keepNamesDays,
    int fewestTwists,
    int mostTwists,
    String twistsSource,
    Integer weighLimbsDays,
    int version) {
  private static final double HOURS_A_WEEK = 7 * 24;

  public TwistLimits twistLimits() {
    return new TwistLimits(fewestTwists, mostTwists);
  }

  /**
   * The shots that a bow is thought to have fired while it was lent: the weeks it was out, times
   * sessions a week, times shots a session; never less than one session's, since it was lent to be
   * shot.
   */
  public int shotsWhileOut(Duration out) {
    if (out.isNegative()) {
      throw new IllegalArgumentException("lent for a negative time");
    }
    double weeks = out.toMinutes() / 60.0 / HOURS_A_WEEK;
    long shots = Math.round(weeks * sessionsAWeek * shotsASession);
    return (int) Math.min(Integer.MAX_VALUE, Math.max(shotsASession, shots));
  }
}
