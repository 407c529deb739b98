package club.ascham.bow;

import java.util.Optional;

/**
 * One step of the set-up sheet, in words for the person at the bench.
 *
 * @param what what the hands do
 * @param target what it should be when done
 * @param tolerance how far off it may be
 * @param why the reason for it, with its source where one is published
 * @param entered the figure written down at this step; null: none
 * @param danger what can hurt someone here; null: nothing beyond the ordinary
 */
public record SetUpStep(
    Key key,
    String title,
    String what,
    String target,
    String tolerance,
    String why,
    Who who,
    Figure entered,
    String danger) {

  /** The steps there are, in the order of the bench. */
  public enum Key {
    LIMBS,
    LOOPS,
    STRING_ON,
    STRING_LINE,
    BRACE,
    TILLER,
    BRACE_AGAIN,
    ALIGNMENT,
    BOLTS_HELD,
    REST,
    CENTRE_SHOT,
    BUTTON,
    NOCKING_POINT,
    SIGHT,
    STABILISERS,
    BALANCE_SIDE_TO_SIDE,
    BALANCE_UP_AND_DOWN,
    BALANCE_FORE_AND_AFT,
    CLICKER
  }

  /** What is written down at a step. */
  public enum Figure {
    BRACE,
    TILLER_UPPER_AND_LOWER,
    NOCKING,
    LOCKING_SCREWS_SEEN
  }

  public Optional<Figure> figure() {
    return Optional.ofNullable(entered);
  }

  public Optional<String> caution() {
    return Optional.ofNullable(danger);
  }
}
