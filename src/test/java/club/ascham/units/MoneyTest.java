package club.ascham.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {
  private static final Currency POUND = Currency.getInstance("GBP");

  @ParameterizedTest(name = "{0} in {1} is {2} of its smallest unit")
  @CsvSource(
      delimiter = '|',
      value = {
        "25|GBP|2500",
        "25.00|GBP|2500",
        "25,50|EUR|2550",
        "£25|GBP|2500",
        "£ 25.05|GBP|2505",
        "25 GBP|GBP|2500",
        "gbp 25|GBP|2500",
        "25,00 €|EUR|2500",
        "CHF 25.00|CHF|2500",
        "$25|USD|2500",
        "2500|JPY|2500",
        "1.250|KWD|1250",
        "0|GBP|0",
        "9999999.99|GBP|999999999",
      })
  void anAmountIsReadAsPeopleWriteIt(String text, String currency, long minor) {
    assertEquals(
        new MoneyParse.Read(new Money(minor)), Money.parse(text, Currency.getInstance(currency)));
  }

  @ParameterizedTest(name = "[{0}] in {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "25.5|GBP",
        "25.555|GBP",
        "1,250|GBP",
        "1,250.00|GBP",
        "1 250|GBP",
        "-25|GBP",
        "−25|GBP",
        "€25|GBP",
        "££25|GBP",
        "£25 GBP|GBP",
        "£|GBP",
        ".50|GBP",
        "25.|GBP",
        "25.00|JPY",
        "1,250|KWD",
        "12345678|GBP",
        "1e3|GBP",
        "free|GBP",
      })
  void whatIsNoPlainAmountIsRefusedWithAnExample(String text, String currency) {
    String message = refusal(text, Currency.getInstance(currency));

    assertTrue(message.startsWith("“" + text + "” can't be read as an amount."), message);
  }

  @ParameterizedTest(name = "[{0}]")
  @ValueSource(strings = {"", " "})
  void aBlankIsAskedFor(String blank) {
    assertEquals("Enter an amount, for example £10.00.", refusal(blank, POUND));
  }

  @ParameterizedTest(name = "{0} of the smallest unit of {1} show as {2}")
  @CsvSource({
    "2500, GBP, £25.00",
    "5, GBP, £0.05",
    "-2500, GBP, −£25.00",
    "2500, CHF, CHF 25.00",
    "2500, JPY, ¥2500",
    "1250, KWD, KWD 1.250",
    "123456789, EUR, €1234567.89",
  })
  void anAmountIsShownWithItsSign(long minor, String currency, String shown) {
    assertEquals(shown, new Money(minor).format(Currency.getInstance(currency)));
  }

  @Test
  void inAFileAnAmountStandsWithoutItsCurrency() {
    assertEquals("-25.00", new Money(-2500).plain(POUND));
  }

  @Test
  void amountsAdd() {
    assertEquals(new Money(2550), new Money(2500).plus(new Money(50)).plus(Money.ZERO));
  }

  private static String refusal(String text, Currency currency) {
    return assertInstanceOf(MoneyParse.Unreadable.class, Money.parse(text, currency)).message();
  }
}
