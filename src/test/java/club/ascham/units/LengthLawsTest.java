package club.ascham.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
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

  private static Length read(String text) {
    if (LengthText.parse(text, LengthUnit.INCH, ANY) instanceof LengthParse.Read read) {
      return read.length();
    }
    throw new AssertionError("not read: " + text);
  }
}
