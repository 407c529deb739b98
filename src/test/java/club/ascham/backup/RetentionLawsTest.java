package club.ascham.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class RetentionLawsTest {
  private static final ZoneId LONDON = ZoneId.of("Europe/London");
  private static final Instant NOW = Instant.parse("2026-11-25T10:00:00Z");

  @Property
  void theNewestNeverGoes(@ForAll("made") Set<BackupName> made) {
    made.stream()
        .max((a, b) -> a.moment().compareTo(b.moment()))
        .ifPresent(
            newest ->
                assertTrue(
                    kept(made, NOW).stream().anyMatch(k -> k.moment().equals(newest.moment()))));
  }

  @Property
  void thinningAgain_takesNothingMore(@ForAll("made") Set<BackupName> made) {
    Set<BackupName> once = kept(made, NOW);
    assertEquals(once, kept(once, NOW));
  }

  @Property
  void whatIsYoungerThanTwoDays_neverGoes(@ForAll("made") Set<BackupName> made) {
    Retention.superfluous(made, NOW, LONDON)
        .forEach(gone -> assertFalse(gone.moment().isAfter(NOW.minus(Retention.ALL_STAY))));
  }

  @Property
  void ofWhatIsOlderThanTwoDays_noMoreStayThanTheRotaHasPlaces(
      @ForAll("made") Set<BackupName> made) {
    long old =
        kept(made, NOW).stream()
            .filter(one -> !one.moment().isAfter(NOW.minus(Retention.ALL_STAY)))
            .count();
    assertTrue(
        old <= Retention.DAYS + Retention.WEEKS + Retention.MONTHS + Retention.BEFORE_MIGRATIONS,
        () -> old + " stay");
  }

  @Property
  void eachOfTheLastTwelveMonthsThatHasAny_keepsOne(@ForAll("made") Set<BackupName> made) {
    Set<YearMonth> months =
        new TreeSet<>(made.stream().map(RetentionLawsTest::month).collect(Collectors.toSet()))
            .descendingSet().stream().limit(Retention.MONTHS).collect(Collectors.toSet());
    assertTrue(
        kept(made, NOW).stream()
            .map(RetentionLawsTest::month)
            .collect(Collectors.toSet())
            .containsAll(months));
  }

  /** Thinned out after each, as it happens, and not once at the end. */
  @Property(tries = 20)
  void afterTwoYearsOfNights_eachOfTheLastTwelveMonthsIsThere(@ForAll Random random) {
    Set<BackupName> there = new HashSet<>();
    Instant now = NOW;
    for (int night = 0; night < 730; night++) {
      now = now.plus(Duration.ofDays(1));
      // A club's server is off now and then.
      if (random.nextInt(10) > 0) {
        there.add(named(now, null));
        there.removeAll(Retention.superfluous(there, now, LONDON));
      }
    }
    Set<YearMonth> months =
        there.stream().map(RetentionLawsTest::month).collect(Collectors.toSet());
    YearMonth last = YearMonth.from(LocalDate.ofInstant(now, LONDON));
    for (int back = 0; back < 11; back++) {
      assertTrue(months.contains(last.minusMonths(back)), last.minusMonths(back) + " of " + months);
    }
    assertTrue(
        there.size() <= 2 + Retention.DAYS + Retention.WEEKS + Retention.MONTHS,
        () -> "" + there.size());
  }

  private static Set<BackupName> kept(Collection<BackupName> made, Instant now) {
    Set<BackupName> kept = new HashSet<>(made);
    kept.removeAll(Retention.superfluous(made, now, LONDON));
    return kept;
  }

  private static YearMonth month(BackupName one) {
    return YearMonth.from(LocalDate.ofInstant(one.moment(), LONDON));
  }

  private static BackupName named(Instant moment, String before) {
    return new BackupName(moment, "0".repeat(12), before);
  }

  @Provide
  Arbitrary<Set<BackupName>> made() {
    return Combinators.combine(
            Arbitraries.longs().between(-1_000, 600 * 24 * 60),
            Arbitraries.of(List.of("", "", "", "V011")))
        .as(
            (minutesBack, before) ->
                named(NOW.minus(Duration.ofMinutes(minutesBack)), before.isEmpty() ? null : before))
        .set()
        .ofMaxSize(120);
  }
}
