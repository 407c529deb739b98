package club.ascham.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.StringLength;

class LengthLawsTest {
  private static final long THIRTY_SECOND_INCH = 79_375;
  private static final long TENTH_MM = 10_000;
  private static final Plausible ANY =
      new Plausible("length", Length.ofMm(-100_000), Length.ofMm(100_000));

  @Property
  void anyNumberOfThirtySecondsSurvivesBeingFiledAndRead(
      @ForAll @IntRange(min = -100_000, max = 100_000) int thirtySeconds) {
    Length length = new Length(thirtySeconds * THIRTY_SECOND_INCH);

    assertEquals(length, read(LengthText.exact(length)));
  }

  @Property
  void anyNumberOfTenthsOfAMillimetreSurvivesBeingFiledAndRead(
      @ForAll @IntRange(min = -900_000, max = 900_000) int tenths) {
    Length length = new Length(tenths * TENTH_MM);

    assertEquals(length, read(LengthText.exact(length)));
  }

  @Property
  void anyLengthSurvivesBeingFiledAndRead(
      @ForAll @LongRange(min = -9_999_999_999L, max = 9_999_999_999L) long units) {
    assertEquals(new Length(units), read(LengthText.exact(new Length(units))));
  }

  @Property
  void thirtySecondsTypedAsAFractionAreReadExactly(
      @ForAll @IntRange(max = 99) int whole, @ForAll @IntRange(min = 1, max = 31) int over) {
    assertEquals(
        new Length((whole * 32L + over) * THIRTY_SECOND_INCH),
        read("%d %d/32 in".formatted(whole, over)));
  }

  @Property
  void anyNumberOfSixteenthsSurvivesBeingShownInInches(
      @ForAll @IntRange(min = -2000, max = 2000) int sixteenths) {
    Length length = new Length(sixteenths * 2 * THIRTY_SECOND_INCH);

    assertEquals(length, read(LengthText.inches(length)));
  }

  @Property
  void anyNumberOfTenthsSurvivesBeingShownInMillimetres(
      @ForAll @IntRange(min = -900_000, max = 900_000) int tenths) {
    Length length = new Length(tenths * TENTH_MM);

    assertEquals(length, read(LengthText.mm(length)));
  }

  @Property
  void whatIsShownInInchesIsNeverMoreThanAThirtySecondOff(
      @ForAll @LongRange(min = -300_000_000L, max = 300_000_000L) long units) {
    Length shown = read(LengthText.inches(new Length(units)));

    assertTrue(shown.minus(new Length(units)).abs().units() <= THIRTY_SECOND_INCH);
  }

  @Property
  void aReadLengthIsAlwaysPlausible(@ForAll @IntRange(max = 3000) int tenths) {
    String typed = "%d.%d".formatted(tenths / 10, tenths % 10);

    for (LengthUnit assumed : LengthUnit.values()) {
      LengthParse parse = LengthText.parse(typed, assumed, Plausible.BRACE);
      if (parse instanceof LengthParse.Read read) {
        assertTrue(Plausible.BRACE.holds(read.length()));
      } else if (parse instanceof LengthParse.Unlikely slip) {
        assertTrue(!Plausible.BRACE.holds(slip.asRead()) && Plausible.BRACE.holds(slip.likely()));
      } else {
        assertTrue(
            !Plausible.BRACE.holds(Length.ofMm(tenths / 10.0))
                && !Plausible.BRACE.holds(Length.ofMm(tenths))
                && !Plausible.BRACE.holds(Length.ofInches(tenths / 10.0)));
      }
    }
  }

  @Property
  void noTextWhateverIsMetWithAnythingButAnAnswer(@ForAll @StringLength(max = 60) String text) {
    for (LengthUnit assumed : LengthUnit.values()) {
      LengthParse parse = LengthText.parse(text, assumed, Plausible.TILLER);
      if (parse instanceof LengthParse.Unreadable refusal) {
        assertTrue(refusal.message().endsWith("."), refusal.message());
      } else if (parse instanceof LengthParse.Read read) {
        assertEquals(text, read.asTyped());
      } else if (parse instanceof LengthParse.Unlikely slip) {
        assertEquals(text, slip.asTyped());
      }
    }
  }

  @Property
  void noSlipOfTheHandReadsAsAnImplausibleLength(@ForAll("slips") String text) {
    for (Plausible plausible : new Plausible[] {Plausible.BRACE, Plausible.TILLER, ANY}) {
      for (LengthUnit assumed : LengthUnit.values()) {
        LengthParse parse = LengthText.parse(text, assumed, plausible);
        if (parse instanceof LengthParse.Read read) {
          assertTrue(plausible.holds(read.length()), text);
        } else if (parse instanceof LengthParse.Unlikely slip) {
          assertTrue(plausible.holds(slip.likely()), text);
          assertEquals(
              new LengthParse.Read(slip.likely(), slip.likelyUnit(), slip.likelyText()),
              LengthText.parse(slip.likelyText(), assumed, plausible),
              "the button's text reads as what it offers");
        }
      }
    }
  }

  @Property(tries = 200)
  void noLongTextTakesLong(@ForAll("slips") String text) {
    String longText = text.repeat(20_000 / Math.max(1, text.length()));

    assertTimeoutPreemptively(
        Duration.ofSeconds(2), () -> LengthText.parse(longText, LengthUnit.INCH, Plausible.BRACE));
  }

  /** What people write for a length, with a character changed, doubled or lost here and there. */
  @Provide
  Arbitrary<String> slips() {
    Arbitrary<String> written =
        Arbitraries.of(
            "8 3/4",
            "8¾ in",
            "222",
            "22.2 cm",
            "−1/8",
            "222,5 mm",
            "8-3/4\"",
            "+3 mm",
            "1,234",
            "1 234",
            "12.345.6",
            "63/64 in",
            "0",
            "99999 cm");
    Arbitrary<String> crumbs =
        Arbitraries.strings().withChars("0123456789.,/ -+−¾½⅛\"'inmc\u00a0\t٣x").ofMaxLength(3);
    return Combinators.combine(written, crumbs, Arbitraries.integers().between(0, 20), written)
        .as(
            (text, crumb, at, other) -> {
              int cut = Math.min(at, text.length());
              String rest = text.substring(Math.min(text.length(), cut + at % 2));
              return text.substring(0, cut) + crumb + (at % 5 == 0 ? other : rest);
            });
  }

  private static Length read(String text) {
    if (LengthText.parse(text, LengthUnit.INCH, ANY) instanceof LengthParse.Read read) {
      return read.length();
    }
    throw new AssertionError("not read: " + text);
  }
}
