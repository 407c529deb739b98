package club.ascham.units;

import java.util.Objects;

/**
 * The range within which a measurement of one kind can lie on any bow or archer of a club; it is
 * there to catch slips of unit and of typing, and says nothing about what is safe or good.
 *
 * <p>The bounds of the constants are judged, wide on purpose, and have no published source.
 *
 * @param what the measurement's name within a sentence: {@code brace height}
 * @param low the smallest value accepted
 * @param high the largest value accepted
 */
public record Plausible(String what, Length low, Length high) {
  public static final Plausible BRACE = mm("brace height", 100, 300);

  /** How far a brace height may move before somebody asks why. */
  public static final Plausible BRACE_CHANGE = mm("change of brace height", 1, 20);

  /** From the string, square, to the base of one limb. */
  public static final Plausible TILLER_DISTANCE = mm("tiller distance", 120, 300);

  /** The same of years ago, brought by an import of history: kept, where a page would ask back. */
  public static final Plausible TILLER_DISTANCE_IN_HISTORY = mm("tiller distance", 80, 350);

  /** Upper tiller distance minus lower: signed. */
  public static final Plausible TILLER = mm("tiller", -30, 30);

  /** Above square is positive. */
  public static final Plausible NOCKING = mm("nocking point height", -10, 30);

  public static final Plausible DRAW_LENGTH = inches("draw length", 14, 36);
  public static final Plausible ARROW_LENGTH = inches("arrow length", 16, 40);
  public static final Plausible STRING_LENGTH = mm("string length", 1000, 1900);
  public static final Plausible ARM_SPAN = mm("arm span", 900, 2300);

  public Plausible {
    Objects.requireNonNull(what);
    if (low.compareTo(high) > 0) {
      throw new IllegalArgumentException(what + ": low is above high");
    }
  }

  /** Whether the length lies in the range, its ends included. */
  public boolean holds(Length length) {
    return low.compareTo(length) <= 0 && length.compareTo(high) <= 0;
  }

  /** The range for a sentence: {@code from 100 mm (3 15/16 in) to 300 mm (11 13/16 in)}. */
  public String range() {
    return "from %s (%s) to %s (%s)"
        .formatted(
            LengthText.mm(low),
            LengthText.inches(low),
            LengthText.mm(high),
            LengthText.inches(high));
  }

  /** How such a measurement may be typed: {@code 200 mm or 7 7/8 in}. */
  String example() {
    Length middle = new Length((low.units() + high.units()) / 2);
    return "%s or %s".formatted(LengthText.wholeMm(middle), LengthText.inches(middle));
  }

  private static Plausible mm(String what, double low, double high) {
    return new Plausible(what, Length.ofMm(low), Length.ofMm(high));
  }

  private static Plausible inches(String what, double low, double high) {
    return new Plausible(what, Length.ofInches(low), Length.ofInches(high));
  }
}
