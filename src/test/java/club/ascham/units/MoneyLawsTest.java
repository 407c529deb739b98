package club.ascham.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Currency;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
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
}
