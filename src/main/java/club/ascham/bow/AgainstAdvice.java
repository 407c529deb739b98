package club.ascham.bow;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Why a bow is given although advice speaks against it, and which coach agreed to its weight.
 *
 * <p>Kept with the loan, or with the archer of a session. A bow that is too short asks for the
 * reason alone. One rule for the issue, an extension (what was agreed when it went out holds for
 * the same draw), an archer added to a session, and other parts on a bow that is out.
 *
 * @param why null: no reason given
 * @param coach a person of the club, or another name; null: nobody named
 */
public record AgainstAdvice(String why, String coach) {
  /** The names of the two answers. */
  public static final String WHY = "overrideWhy";

  public static final String COACH = "overrideCoach";

  public static final String WHICH_COACH =
      "Which coach agreed to this weight? A person of the club, or another name.";

  /** Whether this is the name of one of the two. */
  public static boolean isAnswer(String field) {
    return field.equals(WHY) || field.equals(COACH);
  }

  public static final AgainstAdvice NOTHING_SAID = new AgainstAdvice(null, null);

  /**
   * What is still to be said, each at its answer; empty: nothing.
   *
   * @param against what speaks against it
   * @param sayWhy how the reason is asked for
   * @param asksCoach whether its weight takes a coach who agreed
   */
  public Map<String, String> lacking(String against, String sayWhy, boolean asksCoach) {
    Map<String, String> lacking = new LinkedHashMap<>();
    if (why == null) {
      lacking.put(WHY, against + sayWhy);
    }
    if (asksCoach && coach == null) {
      lacking.put(COACH, why == null ? WHICH_COACH : against + " " + WHICH_COACH);
    }
    return lacking;
  }

  /** These, and what was said before where nothing is said now. */
  public AgainstAdvice orElse(AgainstAdvice before) {
    return new AgainstAdvice(why == null ? before.why : why, coach == null ? before.coach : coach);
  }

  /** Both in the words of the record; null: no reason given. */
  public String said() {
    if (why == null || coach == null) {
      return why;
    }
    return why + (why.matches("(?s).*[.!?…]") ? "" : ".") + " The coach who agreed: " + coach + ".";
  }
}
