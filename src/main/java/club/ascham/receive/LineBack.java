package club.ascham.receive;

import club.ascham.form.Typed;
import club.ascham.loan.LoanLine;

/**
 * What became of one line that was still out.
 *
 * @param line the line's number
 * @param back false: missing, and so still with the borrower
 * @param damage what is wrong with it; null: nothing seen
 * @param count arrows brought back of a pool or a counted set; null: nobody knows how many went out
 */
public record LineBack(long line, boolean back, String damage, Integer count) {
  private static final int LONGEST_WORDS = 400;
  private static final int A_WORD = 3;

  static String damageField(LoanLine line) {
    return "damage-" + line.id();
  }

  /**
   * Reads {@code damage-LINE} (words; what is damaged is here) and {@code count-LINE} (arrows;
   * empty: all of them).
   *
   * @param ticked whether it is said to be here
   */
  public static LineBack read(Typed typed, LoanLine line, boolean ticked) {
    String damage = typed.text(damageField(line), LONGEST_WORDS);
    if (damage != null && damage.codePoints().filter(Character::isLetter).count() < A_WORD) {
      typed.fault(damageField(line), "What is wrong with it? It is withdrawn for that.");
    }
    boolean back = ticked || damage != null;
    Integer count = null;
    if (line.arrows() != null) {
      count = typed.whole("count-" + line.id(), 0, line.arrows());
      count = count == null ? line.arrows() : count;
      if (back && count == 0 && line.arrowCount() == null) {
        typed.fault("count-" + line.id(), "None of them came back? Then the set is still out.");
      }
    }
    return new LineBack(line.id(), back, damage, count);
  }
}
