package club.ascham.upkeep;

import club.ascham.form.Typed;
import java.util.Optional;

/**
 * Work asked for out of turn: after an event that could have harmed, or by a sign seen.
 *
 * @param why in words
 * @param blocks whether the item stays in until it is done
 */
public record Request(Work work, String why, boolean blocks) {
  private static final int LONGEST = 500;

  /** Reads {@code work}, {@code why} and {@code blocks} for an item of this kind. */
  public static Optional<Request> parse(Typed typed, String kind) {
    Work work = typed.requiredWord("work", Work.class, "What should be done?");
    if (work != null && !work.isFor(kind)) {
      typed.fault("work", "That is not done to such an item.");
    }
    String why = typed.reason("why", LONGEST, "What happened, or what was seen?");
    boolean blocks = typed.ticked("blocks");
    return typed.sound() ? Optional.of(new Request(work, why, blocks)) : Optional.empty();
  }
}
