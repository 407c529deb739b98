package club.ascham.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

class TallyLawsTest {
  @Property(tries = 300)
  void aQuantile_isWithinOneIn128OfTheSortedValues(
      @ForAll @Size(min = 1, max = 200) List<@LongRange(max = Tally.MOST) Long> values) {
    Tally tally = new Tally();
    values.forEach(tally::add);
    List<Long> sorted = new ArrayList<>(values);
    sorted.sort(null);
    for (double share : new double[] {0.05, 0.25, 0.5, 0.75, 0.95}) {
      long exact = sorted.get(Math.max(0, (int) Math.ceil(share * sorted.size()) - 1));
      assertEquals(exact, tally.quantile(share), exact / 128.0 + 1e-9);
    }
    assertEquals(
        values.stream().mapToLong(Long::longValue).average().orElseThrow(),
        tally.mean(),
        1e-6 * Tally.MOST / 1e6);
  }

  @Property(tries = 200)
  void talliesOfShares_addUpToTheTallyOfTheWhole(
      @ForAll @Size(max = 60) List<@LongRange(max = Tally.MOST) Long> some,
      @ForAll @Size(min = 1, max = 60) List<@LongRange(max = Tally.MOST) Long> others) {
    Tally whole = new Tally();
    some.forEach(whole::add);
    others.forEach(whole::add);
    Tally one = new Tally();
    some.forEach(one::add);
    Tally other = new Tally();
    others.forEach(other::add);
    other.add(one);
    assertEquals(whole.band(), other.band());
  }

  @Property(tries = 1)
  void itsMemory_isBounded() {
    assertTrue(Tally.mostBuckets() < 3100, "buckets: " + Tally.mostBuckets());
  }
}
