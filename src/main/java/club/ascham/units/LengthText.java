package club.ascham.units;

import java.math.BigDecimal;

/** The written form of lengths: how typed ones are read, and how they are shown. */
public final class LengthText {
  private static final long UNITS_PER_MM = 100_000;
  private static final long UNITS_PER_TENTH_MM = 10_000;
  private static final long UNITS_PER_SIXTEENTH_INCH = 158_750;

  /** Below this a whole millimetre is too coarse to show, in hundred-thousandths of a mm. */
  private static final long SMALL = 20 * UNITS_PER_MM;

  private static final String MINUS = "−";

  private LengthText() {}

  /**
   * Reads a length as a person types it: {@code 8 3/4}, {@code 8-3/4}, {@code 8¾ in}, {@code 222},
   * {@code 222,5 mm}, {@code 22.2 cm}, {@code −1/8}.
   *
   * @param assumed the unit where none is typed
   * @param plausible what the measurement can be; decides whether the unit was a slip
   */
  public static LengthParse parse(String text, LengthUnit assumed, Plausible plausible) {
    WrittenLength written = LengthReader.read(text, assumed);
    if (written instanceof WrittenLength.Figure figure) {
      return judge(figure, text, plausible);
    }
    WrittenLength.Fault fault = (WrittenLength.Fault) written;
    return new LengthParse.Unreadable(
        text.isBlank()
            ? "Enter the %s, for example %s.".formatted(plausible.what(), plausible.example())
            : "%s can't be read as a length: %s. Write the %s like %s."
                .formatted(Quoted.of(text), fault.reason(), plausible.what(), plausible.example()));
  }

  private static LengthParse judge(
      WrittenLength.Figure figure, String asTyped, Plausible plausible) {
    Length asRead = figure.length();
    if (plausible.holds(asRead) && !isInchHabit(figure, plausible)) {
      return new LengthParse.Read(asRead, figure.unit(), asTyped);
    }
    // Inches come first: a bow is measured in inches or millimetres, seldom in centimetres.
    for (LengthUnit other : LengthUnit.values()) {
      Length likely = other.of(figure.amount());
      if (other != figure.unit() && plausible.holds(likely)) {
        return new LengthParse.Unlikely(asRead, figure.unit(), likely, other, asTyped);
      }
    }
    return new LengthParse.Unreadable(
        "%s can't be right for the %s, which lies %s. Check the figure and its unit."
            .formatted(Quoted.of(asTyped), plausible.what(), plausible.range()));
  }

  /** A tiller of {@code 1/8} in a field set to millimetres is plausible as 0.1 mm, and wrong. */
  private static boolean isInchHabit(WrittenLength.Figure figure, Plausible plausible) {
    return figure.fraction()
        && !figure.unitTyped()
        && figure.unit() != LengthUnit.INCH
        && plausible.holds(LengthUnit.INCH.of(figure.amount()));
  }

  /**
   * In inches to the nearest sixteenth, half away from zero, the fraction reduced: {@code 8 3/4
   * in}; a negative length carries the true minus sign.
   */
  public static String inches(Length length) {
    long sixteenths = nearest(length, UNITS_PER_SIXTEENTH_INCH);
    long whole = sixteenths / 16;
    long over = sixteenths % 16;
    long under = 16;
    while (over != 0 && over % 2 == 0) {
      over /= 2;
      under /= 2;
    }
    String figure;
    if (over == 0) {
      figure = Long.toString(whole);
    } else if (whole == 0) {
      figure = over + "/" + under;
    } else {
      figure = whole + " " + over + "/" + under;
    }
    return sign(length, sixteenths) + figure + " in";
  }

  /** In millimetres to the nearest tenth, half away from zero: {@code 222.3 mm}. */
  public static String mm(Length length) {
    long tenths = nearest(length, UNITS_PER_TENTH_MM);
    String decimal = tenths % 10 == 0 ? "" : "." + tenths % 10;
    return sign(length, tenths) + tenths / 10 + decimal + " mm";
  }

  /** In both units, {@code 8 3/4 in · 222 mm}; tenths of a millimetre only under 20 mm. */
  public static String both(Length length) {
    return inches(length) + " · " + wholeMm(length);
  }

  /** In whole millimetres, and in tenths where the length is under 20 mm. */
  public static String wholeMm(Length length) {
    if (Math.abs(length.units()) < SMALL) {
      return mm(length);
    }
    long whole = nearest(length, UNITS_PER_MM);
    return sign(length, whole) + whole + " mm";
  }

  /**
   * For files: millimetres with every decimal there is and a plain hyphen for minus; {@link #parse}
   * reads the very same length back from it, up to 100 m.
   */
  public static String exact(Length length) {
    BigDecimal mm = BigDecimal.valueOf(length.units(), 5).stripTrailingZeros();
    return mm.toPlainString() + " mm";
  }

  private static long nearest(Length length, long step) {
    return (Math.abs(length.units()) + step / 2) / step;
  }

  private static String sign(Length length, long shown) {
    return length.units() < 0 && shown != 0 ? MINUS : "";
  }
}
