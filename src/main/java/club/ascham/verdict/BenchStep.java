package club.ascham.verdict;

import club.ascham.bow.Who;
import java.util.Optional;

/**
 * One step of an adjustment, in words for the hand that does it.
 *
 * @param words what to do
 * @param turned twists (in positive) or bolt turns (tightening positive) advised; null: none
 * @param danger what can hurt someone here; null: nothing beyond the ordinary
 */
public record BenchStep(Key key, String words, Who who, Double turned, String danger) {

  /** The kinds of step, in the order of the bench. */
  public enum Key {
    LOOK_ALONG,
    SAME_POINT,
    STRING_OFF,
    ANSWER_TOLD,
    RELEASE,
    PARTS_RIGHT,
    COUNT_TWISTS,
    LOOK_AT_LIMBS,
    TWISTS,
    OTHER_STRING,
    TO_WORKSHOP,
    LOCK_LOOSENED,
    UPPER_BOLT,
    LOWER_BOLT,
    LOCK_TIGHTENED,
    STRING_ON,
    LOOPS,
    STRING_LINE,
    MEASURE_AGAIN;

    /** Whether the bow is another one after it: a mere look changes nothing. */
    public boolean adjusts() {
      return switch (this) {
        case TWISTS, OTHER_STRING, UPPER_BOLT, LOWER_BOLT -> true;
        default -> false;
      };
    }

    /** Whether the step touches a limb bolt or its locking screw. */
    public boolean turnsBolt() {
      return switch (this) {
        case LOCK_LOOSENED, UPPER_BOLT, LOWER_BOLT, LOCK_TIGHTENED -> true;
        default -> false;
      };
    }
  }

  public Optional<Double> amount() {
    return Optional.ofNullable(turned);
  }

  public Optional<String> caution() {
    return Optional.ofNullable(danger);
  }
}
