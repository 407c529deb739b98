package club.ascham.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class WorthLawsTest {
  @Property
  void worth_fallsFromThePriceToNothing_andNeverRises(
      @ForAll @LongRange(max = 1_000_000) long paid,
      @ForAll @IntRange(max = 20_000) int days,
      @ForAll @IntRange(min = 1, max = 30) int years) {
    long now = Worth.of(paid, 5, days, years).writtenDown();
    long later = Worth.of(paid, 5, days + 30, years).writtenDown();
    assertTrue(0 <= later && later <= now && now <= paid);
    assertEquals(paid, Worth.of(paid, 5, 0, years).writtenDown());
    assertEquals(0, Worth.of(paid, 5, 366L * years, years).writtenDown());
  }

  @Example
  void halfWayThrough_itIsWorthHalf_andAnUnknownPriceIsTodays() {
    assertEquals(new Worth(13_900, 6_950, 15_000), Worth.of(13_900L, 15_000, 1461, 8));
    assertEquals(new Worth(15_000, 15_000, 15_000), Worth.of(null, 15_000, 0, 8));
  }
}
