package club.ascham.rules;

import club.ascham.mechanics.TwistLimits;
import club.ascham.units.Length;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The club's own settings, as edited on the rules page.
 *
 * @param braceTable the name of the table of brace bands in force
 * @param fullCheckEveryLooks sessions after which a look no longer suffices
 * @param sessionsAWeek with {@code shotsASession}, what shots are estimated from
 * @param keepNamesDays after the last thing came back, a borrower is known by name for so long
 * @param weighLimbsDays how often limbs belong on the bow scale; null: by no rule
 * @param fewestTwists that a string may hold, and {@code mostTwists}
 * @param telephone for whoever has a bow at home; null: none given (likewise mail)
 * @param terms of a loan, in the club's own words, a line each; null: the usual ones
 * @param braceMayMove how far a brace height may be from its set-up before the bow comes back;
 *     null: the club names no figure
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
    String telephone,
    String mail,
    String terms,
    Length braceMayMove,
    String braceMayMoveSource,
    int version) {
  private static final double HOURS_A_WEEK = 7 * 24;

  /** What a borrower accepts where the club has no terms of its own. */
  static final List<String> USUAL_TERMS =
      List.of(
          "Back by the day agreed.",
          "Damage, a loose without an arrow or a loss is said at once.",
          "Nothing on the bow is changed, and no bolt is turned.",
          "Shot only where range rules, coach and law allow.");

  /** How the club is reached: telephone and mail as far as they are given; may be empty. */
  public String reachedAt() {
    return Stream.of(telephone, mail).filter(Objects::nonNull).collect(Collectors.joining(", "));
  }

  /** The terms of a loan, one sentence a line: the club's own, else the usual ones. */
  public List<String> termLines() {
    return terms == null
        ? USUAL_TERMS
        : terms.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
  }

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
