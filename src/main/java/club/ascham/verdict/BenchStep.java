package club.ascham.verdict;

import club.ascham.bow.Who;
import java.util.Optional;

/**
 * One step of an adjustment, for the hand that does it.
 *
 * @param thousandths of a twist (in positive) or of a bolt's turn (tightening positive) advised;
 *     null: none
 * @param says what to do, and what can hurt someone here
 */
public record BenchStep(Key key, Who who, Integer thousandths, Remark says) {

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
    return Optional.ofNullable(thousandths).map(many -> many / 1000.0);
  }

  public String words() {
    return says.words();
  }

  public Optional<String> caution() {
    return says.caution();
  }

  /** The same for pages; null: nothing beyond the ordinary. */
  public String danger() {
    return caution().orElse(null);
  }

  public boolean isForPermitHolder() {
    return who == Who.PERMIT_HOLDER;
  }
}
