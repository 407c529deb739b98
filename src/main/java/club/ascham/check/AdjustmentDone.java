package club.ascham.check;

import club.ascham.form.Typed;
import club.ascham.measured.Measurement;
import club.ascham.verdict.Turns;

/**
 * What someone did at the bench after a check that said <i>adjust first</i>.
 *
 * @param twistsAdded put in (positive) or taken out (negative); null: nobody counted, or none
 * @param upperIn turns of the upper limb bolt, in is positive; null: none (likewise lower)
 */
record AdjustmentDone(Integer twistsAdded, Double upperIn, Double lowerIn, String words) {
  static final AdjustmentDone NOT_COUNTED = new AdjustmentDone(null, null, null, null);

  private static final int LONGEST_WORDS = 400;

  /** Ask {@code typed.sound()} before using it. */
  static AdjustmentDone parse(Typed typed) {
    return new AdjustmentDone(
        Measurement.TWISTS_ADDED.count(typed),
        Measurement.UPPER_IN.number(typed),
        Measurement.LOWER_IN.number(typed),
        typed.text("words", LONGEST_WORDS));
  }

  Turns turns() {
    return new Turns(upperIn == null ? 0 : upperIn, lowerIn == null ? 0 : lowerIn);
  }

  boolean turnedBolts() {
    return !turns().none();
  }

  /** Whether anything is said to have been put in, taken out or turned. */
  boolean changedAnything() {
    return (twistsAdded != null && twistsAdded != 0) || turnedBolts();
  }

  String said() {
    StringBuilder said = new StringBuilder("Adjusted");
    if (twistsAdded != null && twistsAdded != 0) {
      said.append("; twists ")
          .append(twistsAdded > 0 ? "put in: " : "taken out: ")
          .append(Math.abs(twistsAdded));
    }
    bolt(said, "upper", upperIn);
    bolt(said, "lower", lowerIn);
    return said.append('.').toString();
  }

  private static void bolt(StringBuilder said, String which, Double in) {
    if (in != null && in != 0) {
      said.append("; ").append(which).append(" limb bolt ");
      said.append(in > 0 ? "in by " : "out by ").append(Math.abs(in)).append(" turns");
    }
  }
}
