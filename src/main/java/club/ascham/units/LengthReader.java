package club.ascham.units;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The reading of lengths off the page: which marks make a number and a unit, and which don't. */
final class LengthReader {
  /** Nothing that is measured on a bow needs more room, and a message must stay short. */
  private static final int LONGEST_TEXT = 32;

  private static final int MOST_WHOLE_DIGITS = 5;

  /** A hundred-thousandth of a millimetre is the finest length there is. */
  private static final int MOST_DECIMALS = 5;

  private static final Set<String> RULE_DIVISIONS = Set.of("2", "4", "8", "16", "32", "64");

  private static final Pattern SIGN_NUMBER_UNIT =
      Pattern.compile("(?<sign>[+-]?) *(?<number>[0-9.,][0-9.,/ -]*?) *(?<unit>[^0-9.,/ -].*)?");
  private static final Pattern WITH_FRACTION =
      Pattern.compile("(?:(?<whole>[0-9]+)(?: |- ?))?(?<top>[0-9]+)/(?<bottom>[0-9]+)");
  private static final Pattern DECIMAL = Pattern.compile("(?<whole>[0-9]*)[.,](?<decimals>[0-9]+)");
  private static final Pattern WHOLE = Pattern.compile("[0-9]+");

  /** One comma before exactly three digits: a decimal to some readers, a thousand to others. */
  private static final Pattern TWO_WAYS = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");

  private static final Pattern GROUPED =
      Pattern.compile("[0-9]{1,3}(?:[ ,.][0-9]{3})+(?:[.,][0-9]+)?|[0-9]+(?:[.,][0-9]+){2,}");

  private LengthReader() {}

  static WrittenLength read(String text, LengthUnit assumed) {
    String plain = plain(text);
    if (plain.isEmpty()) {
      return new WrittenLength.Fault("nothing is written");
    }
    if (plain.length() > LONGEST_TEXT) {
      return new WrittenLength.Fault("it is too long");
    }
    Matcher parts = SIGN_NUMBER_UNIT.matcher(plain);
    if (!parts.matches()) {
      return new WrittenLength.Fault("it must begin with a number");
    }
    String spelling = Objects.requireNonNullElse(parts.group("unit"), "");
    Optional<LengthUnit> typed = LengthUnit.spelled(spelling);
    if (!spelling.isEmpty() && typed.isEmpty()) {
      return new WrittenLength.Fault("“%s” is not one of the units mm, cm, in".formatted(spelling));
    }
    boolean negative = parts.group("sign").equals("-");
    return number(parts.group("number"), negative, typed.orElse(assumed), typed.isPresent());
  }

  /** The sign and number of a length that {@link #read} accepts, without its unit. */
  static String numberIn(String text) {
    Matcher parts = SIGN_NUMBER_UNIT.matcher(plain(text));
    return parts.matches() ? parts.group("sign") + parts.group("number") : text.strip();
  }

  private static WrittenLength number(
      String number, boolean negative, LengthUnit unit, boolean unitTyped) {
    Matcher fraction = WITH_FRACTION.matcher(number);
    if (fraction.matches()) {
      return fraction(fraction, negative, unit, unitTyped);
    }
    if (TWO_WAYS.matcher(number).matches()) {
      return new WrittenLength.Fault(
          "its comma can be taken in two ways; write %s or %s"
              .formatted(number.replace(",", ""), number.replace(',', '.')));
    }
    Matcher decimal = DECIMAL.matcher(number);
    if (decimal.matches()) {
      if (decimal.group("whole").length() > MOST_WHOLE_DIGITS) {
        return new WrittenLength.Fault("it is far too large");
      }
      if (decimal.group("decimals").length() > MOST_DECIMALS) {
        return new WrittenLength.Fault("it has more than %d decimals".formatted(MOST_DECIMALS));
      }
      return figure(new BigDecimal(number.replace(',', '.')), negative, false, unit, unitTyped);
    }
    if (WHOLE.matcher(number).matches()) {
      return number.length() > MOST_WHOLE_DIGITS
          ? new WrittenLength.Fault("it is far too large")
          : figure(new BigDecimal(number), negative, false, unit, unitTyped);
    }
    return new WrittenLength.Fault(
        GROUPED.matcher(number).matches()
            ? "thousands are written without a separator"
            : "“%s” is not a number".formatted(number));
  }

  private static WrittenLength fraction(
      Matcher parts, boolean negative, LengthUnit unit, boolean unitTyped) {
    String whole = Objects.requireNonNullElse(parts.group("whole"), "");
    String top = parts.group("top");
    String bottom = parts.group("bottom");
    if (whole.length() > MOST_WHOLE_DIGITS || top.length() > MOST_WHOLE_DIGITS) {
      return new WrittenLength.Fault("it is far too large");
    }
    if (!RULE_DIVISIONS.contains(bottom)) {
      return new WrittenLength.Fault(
          "a fraction is in halves, quarters, 8ths, 16ths, 32nds or 64ths");
    }
    int over = Integer.parseInt(top);
    int under = Integer.parseInt(bottom);
    if (over == 0) {
      return new WrittenLength.Fault("the upper figure of its fraction is 0");
    }
    if (!whole.isEmpty() && over >= under) {
      return new WrittenLength.Fault("after a whole number the fraction must be less than 1");
    }
    BigDecimal amount =
        new BigDecimal(whole.isEmpty() ? "0" : whole)
            // The division is exact: the divisor is a power of two.
            .add(BigDecimal.valueOf(over).divide(BigDecimal.valueOf(under)));
    return figure(amount, negative, true, unit, unitTyped);
  }

  private static WrittenLength figure(
      BigDecimal amount, boolean negative, boolean fraction, LengthUnit unit, boolean unitTyped) {
    return new WrittenLength.Figure(negative ? amount.negate() : amount, fraction, unit, unitTyped);
  }

  /** One spelling for the many dashes, spaces and fraction characters that keyboards offer. */
  private static String plain(String text) {
    return text.replaceAll("[‐‑‒–−]", "-")
        .replace('⁄', '/')
        .replace("½", " 1/2 ")
        .replace("¼", " 1/4 ")
        .replace("¾", " 3/4 ")
        .replace("⅛", " 1/8 ")
        .replace("⅜", " 3/8 ")
        .replace("⅝", " 5/8 ")
        .replace("⅞", " 7/8 ")
        .replaceAll("[\\s\\u00a0\\u2009\\u202f]+", " ")
        .replaceAll(" ?/ ?", "/")
        .strip();
  }
}
