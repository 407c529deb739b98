package club.ascham.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Currency;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;

class MoneyLawsTest {

  @Property
  void anyAmountSurvivesBeingShownOrFiledAndRead(
      @ForAll @LongRange(max = 999_999_999L) long minor) {
    for (String code : new String[] {"GBP", "EUR", "CHF", "SEK", "USD"}) {
      Currency currency = Currency.getInstance(code);
      Money money = new Money(minor);

      assertEquals(new MoneyParse.Read(money), Money.parse(money.format(currency), currency));
      assertEquals(new MoneyParse.Read(money), Money.parse(money.plain(currency), currency));
    }
  }

  @Property
  void noTextWhateverIsMetWithAnythingButAnAnswer(@ForAll String text) {
    isAnswered(text);
  }

  @Property
  void noSlipOfTheHandIsReadAsLessThanNothingOrMoreThanThereIs(@ForAll("slips") String text) {
    isAnswered(text);
  }

  @Property(tries = 100)
  void noLongTextTakesLong(@ForAll("slips") String text) {
    String longText = text.repeat(20_000 / Math.max(1, text.length()));

    assertTimeoutPreemptively(Duration.ofSeconds(2), () -> isAnswered(longText));
  }

  private static void isAnswered(String text) {
    for (String code : new String[] {"GBP", "JPY", "KWD", "XAU"}) {
      Currency currency = Currency.getInstance(code);
      MoneyParse parse = Money.parse(text, currency);
      if (parse instanceof MoneyParse.Read read) {
        long minor = read.money().minor();
        long most =
            10_000_000L * (long) Math.pow(10, Math.max(0, currency.getDefaultFractionDigits()));
        assertTrue(minor >= 0 && minor < most, text + " in " + code + " is " + minor);
        assertEquals(parse, Money.parse(read.money().format(currency), currency));
      } else {
        assertTrue(((MoneyParse.Unreadable) parse).message().endsWith("."));
      }
    }
  }

  @Provide
  Arbitrary<String> slips() {
    return Arbitraries.strings().withChars("0123456789.,-−+ £€GBP¥JKWD\u00a0'e").ofMaxLength(14);
  }
}
