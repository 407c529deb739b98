package club.ascham.units;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * An amount in the club's one currency.
 *
 * @param minor whole minor units (pence, cents); which they are, the club's currency says
 */
public record Money(long minor) implements Comparable<Money> {
  public static final Money ZERO = new Money(0);

  private static final int MOST_WHOLE_DIGITS = 7;
  // Pages are in English, so the sign is the one an English reader knows.
  private static final Locale SIGNS = Locale.ENGLISH;

  public Money plus(Money other) {
    return new Money(Math.addExact(minor, other.minor));
  }

  @Override
  public int compareTo(Money other) {
    return Long.compare(minor, other.minor);
  }

  /**
   * Reads an amount of nought or more: whole, or with exactly the currency's decimals after a point
   * or comma, with or without the currency's sign or letters; never with separated thousands.
   */
  public static MoneyParse parse(String text, Currency currency) {
    String number = withoutSign(text.strip(), currency);
    int decimals = decimals(currency);
    Pattern shape =
        Pattern.compile(
            "[0-9]{1,%d}%s"
                .formatted(
                    MOST_WHOLE_DIGITS,
                    decimals == 0 ? "" : "(?:[.,][0-9]{%d})?".formatted(decimals)));
    // With three decimals a comma could as well part thousands.
    boolean twoWays = decimals == 3 && number.indexOf(',') >= 0;
    if (!shape.matcher(number).matches() || twoWays) {
      String example =
          new Money(BigDecimal.TEN.movePointRight(decimals).longValueExact()).format(currency);
      return new MoneyParse.Unreadable(
          text.isBlank()
              ? "Enter an amount, for example %s.".formatted(example)
              : "%s can't be read as an amount. Write it like %s, without separated thousands."
                  .formatted(Quoted.of(text), example));
    }
    return new MoneyParse.Read(
        new Money(
            new BigDecimal(number.replace(',', '.')).movePointRight(decimals).longValueExact()));
  }

  /** For people: {@code £25.00}, {@code CHF 25.00}; a negative amount has the true minus sign. */
  public String format(Currency currency) {
    String sign = currency.getSymbol(SIGNS);
    boolean letters = Character.isLetter(sign.charAt(sign.length() - 1));
    BigDecimal amount = BigDecimal.valueOf(minor, decimals(currency));
    return (minor < 0 ? "−" : "") + sign + (letters ? " " : "") + amount.abs().toPlainString();
  }

  /** For files: {@code 25.00}, without the currency and with a plain hyphen for minus. */
  public String plain(Currency currency) {
    return BigDecimal.valueOf(minor, decimals(currency)).toPlainString();
  }

  private static String withoutSign(String text, Currency currency) {
    for (String sign : List.of(currency.getSymbol(SIGNS), currency.getCurrencyCode())) {
      if (text.regionMatches(true, 0, sign, 0, sign.length())) {
        return text.substring(sign.length()).strip();
      }
      int tail = text.length() - sign.length();
      if (tail > 0 && text.regionMatches(true, tail, sign, 0, sign.length())) {
        return text.substring(0, tail).strip();
      }
    }
    return text;
  }

  /** Pseudo-currencies say −1; they have no smaller part. */
  private static int decimals(Currency currency) {
    return Math.max(0, currency.getDefaultFractionDigits());
  }
}
