package club.ascham.upkeep;

import club.ascham.form.Typed;
import java.util.Optional;

/**
 * Work asked for out of turn: after an event that could have harmed, or by a sign seen.
 *
 * @param why in words
 * @param blocks whether the item stays in until it is done
 * @param cause what led to it
 */
public record Request(Work work, String why, boolean blocks, Cause cause) {
  private static final int LONGEST = 500;

  /** What led to work out of turn. */
  public enum Cause {
    /** A person asked for it. */
    ASKED,
    /** Its bow's readings change by more than readers differ. */
    CHANGING,
    /** Someone told of a dangerous sign. */
    REPORTED,
    /** It was found after it had been given up. */
    FOUND_AGAIN,
    /** It was taken out of use. */
    WITHDRAWN,
    /** A bow scale showed that it lost weight. */
    WEIGHED
  }

  /** Asked for by a person. */
  public Request(Work work, String why, boolean blocks) {
    this(work, why, blocks, Cause.ASKED);
  }

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
