package club.ascham.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;
import java.time.Duration;
import java.util.Currency;
import java.util.Map;
import java.util.OptionalLong;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * A cell reads as a value that is written back as it reads, or as a fault; never as anything else.
 */
class CodecsLawsTest {
  private static final Surroundings DEMO = around(400);
  private static final Surroundings CLUB = around(0);
  private static final Map<String, Codec> CODECS =
      Map.ofEntries(
          Map.entry("text", Codecs.text(40)),
          Map.entry("whole", Codecs.whole(-3, 4_000)),
          Map.entry("decimal", Codecs.decimal(-2.5, 99.5)),
          Map.entry("yesNo", Codecs.yesNo()),
          Map.entry("day", DayCodecs.day()),
          Map.entry("moment", DayCodecs.moment()),
          Map.entry("word", Codecs.word(LengthUnit.class)),
          Map.entry("length", Codecs.length(Plausible.BRACE)),
          Map.entry("money", Codecs.money()),
          Map.entry("code", Codecs.code()),
          Map.entry("item", Codecs.item()),
          Map.entry("number", Codecs.number("rig", "rig")),
          Map.entry("account", Codecs.account()));

  @Property
  void anyText_isAnsweredByEveryColumn(@ForAll String text) {
    CODECS.forEach((name, codec) -> isAnswered(name, codec, text));
  }

  @Property
  void anySlipOfTheHand_isAnsweredByEveryColumn(@ForAll("slips") String text) {
    CODECS.forEach((name, codec) -> isAnswered(name, codec, text));
  }

  @Property(tries = 50)
  void noLongText_takesLong(@ForAll("slips") String text) {
    String longText = text.repeat(20_000 / Math.max(1, text.length()));

    assertTimeoutPreemptively(
        Duration.ofSeconds(5),
        () -> CODECS.forEach((name, codec) -> isAnswered(name, codec, longText)));
  }

  private static void isAnswered(String name, Codec codec, String text) {
    if (text.isEmpty()) {
      return;
    }
    read(codec, text, DEMO);
    if (read(codec, text, CLUB) instanceof CellReading.Value value) {
      assertFalse(value.canonical().isEmpty(), name);
      assertEquals(value, read(codec, value.canonical(), CLUB), name + ": " + text);
      if (name.equals("day") || name.equals("moment")) {
        int year = Integer.parseInt(value.canonical().substring(0, 4));
        assertTrue(year >= 1950 && year <= 2100, text);
      } else if (value.stored() instanceof Number number && name.equals("whole")) {
        assertTrue(number.longValue() >= -3 && number.longValue() <= 4_000, text);
      } else if (value.stored() instanceof Number number && name.equals("decimal")) {
        assertTrue(number.doubleValue() >= -2.5 && number.doubleValue() <= 99.5, text);
      }
    } else {
      assertFalse(((CellReading.Fault) read(codec, text, CLUB)).message().isBlank(), name);
    }
  }

  private static CellReading read(Codec codec, String text, Surroundings around) {
    CellReading reading = codec.read(text, around);
    return reading instanceof CellReading.Refers refers ? refers.finder().among(ROWS) : reading;
  }

  private static Surroundings around(long shiftDays) {
    return new Surroundings(Currency.getInstance("GBP"), shiftDays);
  }

  private static final References ROWS =
      new References() {
        @Override
        public OptionalLong item(String bareCode) {
          return bareCode.startsWith("R") ? OptionalLong.of(1) : OptionalLong.empty();
        }

        @Override
        public OptionalLong account(String name) {
          return name.equals("officer") ? OptionalLong.of(1) : OptionalLong.empty();
        }

        @Override
        public boolean has(String table, long number) {
          return number < 100;
        }
      };

  @Provide
  Arbitrary<String> slips() {
    return Arbitraries.oneOf(
        Arbitraries.strings().withChars("0123456789.,-−+/:TZ eE").ofMaxLength(16),
        Arbitraries.strings().withChars("=+-@'\t\r a\"").ofMinLength(1).ofMaxLength(6),
        Arbitraries.of(
            "2026-03-15T18:30:00Z",
            "-2999-01-01T00:00:00Z",
            "+1000000000-12-31T23:59:59.999Z",
            "-1000000000-01-01T00:00:00Z",
            "9999-12-31T23:59:59Z",
            "2100-12-31T23:59:59Z",
            "+999999999-12-31",
            "-999999999-01-01",
            "31/12/999999999",
            "1/1/2026",
            "29.2.2025",
            "222.25 mm",
            "8 3/4 in",
            "222",
            "12.5",
            "12.50",
            "0.1",
            "999999999999999",
            "yes",
            "INCH",
            "R-0118-V",
            "R0118V",
            "officer",
            "%s",
            "100%",
            "%d%n",
            "''=1",
            "'",
            "  "));
  }
}
