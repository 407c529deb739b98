package club.ascham.withdrawal;

import club.ascham.form.Typed;
import club.ascham.upkeep.Work;
import java.util.Optional;

/**
 * Why a part is taken out of use.
 *
 * @param work what it needs before it may be released; null: to be decided
 * @param check the check that found it; null: none
 */
public record Reason(String why, Work work, Long check) {
  private static final int LONGEST = 500;

  /** Reads {@code why} and {@code work} for an item of this kind. */
  static Optional<Reason> parse(Typed typed, String kind) {
    String why = typed.reason("why", LONGEST, "Why? Whoever inspects it will ask.");
    Work work = typed.word("work", Work.class);
    if (work != null && !work.isFor(kind)) {
      typed.fault("work", "That is not done to such an item.");
    }
    return typed.sound() ? Optional.of(new Reason(why, work, null)) : Optional.empty();
  }
}
