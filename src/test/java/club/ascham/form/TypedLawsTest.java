package club.ascham.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;
import java.time.Duration;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.Map;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/**
 * Whatever was typed reads as a value within its bounds, or as nothing and a fault at its field.
 */
class TypedLawsTest {
  private static final Currency POUNDS = Currency.getInstance("GBP");
  private static final LocalDate FIRST_DAY = LocalDate.of(1950, 1, 1);
  private static final LocalDate LAST_DAY = LocalDate.of(2100, 12, 31);

  @Property
  void anyText_readsAsEveryKindOfValue(@ForAll String text) {
    readsOrIsAtFault(text);
  }

  @Property
  void anySlipOfTheHand_readsAsEveryKindOfValue(@ForAll("slips") String text) {
    readsOrIsAtFault(text);
  }

  @Property(tries = 50)
  void noLongText_takesLong(@ForAll("slips") String text) {
    String longText = text.repeat(20_000 / Math.max(1, text.length()));

    assertTimeoutPreemptively(Duration.ofSeconds(3), () -> readsOrIsAtFault(longText));
  }

  @Property
  void aWholeNumber_survivesBeingWrittenAndRead(@ForAll @IntRange(min = -999_999) int number) {
    int within = number % 1_000_000_000;

    assertEquals(
        within, typed(Integer.toString(within)).whole("field", -999_999, Integer.MAX_VALUE));
  }

  @Property
  void aDay_survivesBeingWrittenAndRead(@ForAll @IntRange(max = 55_000) int after) {
    LocalDate day = FIRST_DAY.plusDays(after);

    assertEquals(day, typed(day.toString()).day("field"));
    assertEquals(day, typed(DateTimeFormatter.ofPattern("d/M/yyyy").format(day)).day("field"));
    assertEquals(day, typed(DateTimeFormatter.ofPattern("dd.MM.yyyy").format(day)).day("field"));
  }

  private static void readsOrIsAtFault(String text) {
    Integer whole = read(text, typed -> typed.whole("field", -5, 120));
    assertTrue(whole == null || whole >= -5 && whole <= 120, text);
    Double decimal = read(text, typed -> typed.decimal("field", 0.5, 99.5));
    assertTrue(decimal == null || decimal >= 0.5 && decimal <= 99.5, text);
    LocalDate day = read(text, typed -> typed.day("field"));
    assertTrue(day == null || !day.isBefore(FIRST_DAY) && !day.isAfter(LAST_DAY), text);
    String line = read(text, typed -> typed.optional("field", 80));
    assertTrue(line == null || line.chars().noneMatch(c -> c == '\n' || c == '\r'), text);
    String words = read(text, typed -> typed.text("field", 80));
    assertTrue(words == null || words.length() <= 80 && !words.isBlank(), text);
    assertTrue(words == null || words.chars().noneMatch(c -> c < ' ' && "\n\r\t".indexOf(c) < 0));
    read(text, typed -> typed.word("field", LengthUnit.class));
    read(text, typed -> typed.code("field"));
    read(text, typed -> typed.money("field", POUNDS));
    read(text, typed -> typed.length("field", LengthUnit.INCH, Plausible.BRACE));
    typed(text).version();
  }

  private static <T> T read(String text, Function<Typed, T> reading) {
    Typed typed = typed(text);
    T value = reading.apply(typed);
    if (value == null && typed.has("field")) {
      assertNotNull(typed.messageAt("field"), text);
    } else {
      assertTrue(typed.sound(), text);
    }
    return value;
  }

  private static Typed typed(String text) {
    return Typed.of(Map.of("field", text, "field-unit", text));
  }

  @Provide
  Arbitrary<String> slips() {
    return Arbitraries.oneOf(
        Arbitraries.strings().withChars("0123456789.,-−+/: eE").ofMaxLength(14),
        Arbitraries.strings().withChars("0123456789-/.+").ofMinLength(8).ofMaxLength(16),
        Arbitraries.strings().withChars("a\u0000\u001b\r\n\t\u202e\ud83d\ude00").ofMaxLength(90),
        Arbitraries.of(
            "31/12/999999999",
            "+999999999-12-31",
            "-999999999-01-01",
            "29/2/2025",
            "1e999",
            "NaN",
            "2026-02-30",
            "0/0/0",
            "１２",
            "R-0147-J",
            "mm",
            "222 mm"));
  }
}
