package club.ascham.withdrawal;

import club.ascham.form.Typed;
import club.ascham.upkeep.Work;
import java.util.Optional;

/**
 * What a withdrawn part needs before it may be released, decided by someone with the permit.
 *
 * @param work null: no inspection of ours fits
 * @param noWorkWhy why none fits; null where a work is named
 */
record Decision(Work work, String noWorkWhy) {
  /** The word for: no inspection fits. */
  static final String NONE = "none";

  static final String WHY = "Why does no inspection fit? What is done about it instead?";

  private static final int LONGEST = 500;

  /** Reads {@code work}, one that is done to such a kind or {@code none}, and {@code why}. */
  static Optional<Decision> parse(Typed typed, String kind) {
    if (typed.value("work").equalsIgnoreCase(NONE)) {
      String why = typed.reason("why", LONGEST, WHY);
      return typed.sound() ? Optional.of(new Decision(null, why)) : Optional.empty();
    }
    Work work =
        typed.requiredWord("work", Work.class, "Which work does it need? Or: no inspection fits.");
    if (work != null && !work.isFor(kind)) {
      typed.fault("work", "That is not done to such an item.");
    }
    return typed.sound() ? Optional.of(new Decision(work, null)) : Optional.empty();
  }
}
