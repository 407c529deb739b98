package club.ascham.form;

import java.util.List;

/**
 * Why something was not done, for the person who asked for it.
 *
 * @param field the answer that stands in the way; empty: the whole
 * @param words what is wrong, and what to do
 * @param title the cause in a few words, for programs
 */
public record Refusal(String field, String words, Cause cause, String title) {
  /** Where what stands in the way is to be sought. */
  public enum Cause {
    /** In what was sent: other answers would do. */
    WHAT_WAS_SENT,
    /** In how things stand: the same answers would have done before, or will do later. */
    HOW_IT_STANDS,
    /** In who asks: somebody else may. */
    WHO_ASKS
  }

  public Refusal(String field, String words) {
    this(field, words, Cause.WHAT_WAS_SENT, "Not accepted");
  }

  /** Things stand so that it can't be done now, whatever was answered. */
  public static Refusal now(String title, String words) {
    return now(title, "", words);
  }

  /**
   * The same, said at one of the answers where a page shows it.
   *
   * @param field where
   */
  public static Refusal now(String title, String field, String words) {
    return new Refusal(field, words, Cause.HOW_IT_STANDS, title);
  }

  /** What was typed comes back with the newer version, to be sent again. */
  public static Refusal savedFirst(String what) {
    return now(
        "Someone saved first",
        "version",
        "Someone changed "
            + what
            + " since you opened it. Below is what you typed; saving again puts it in the place of"
            + " theirs.");
  }

  public static Refusal notYours(String field, String words) {
    return new Refusal(field, words, Cause.WHO_ASKS, "Not yours to do");
  }

  /**
   * Puts each at its field.
   *
   * @param whole the field at which a form shows what is said of all of it
   */
  public static void at(Typed typed, List<Refusal> refusals, String whole) {
    refusals.forEach(
        refusal ->
            typed.fault(refusal.field().isEmpty() ? whole : refusal.field(), refusal.words()));
  }
}
