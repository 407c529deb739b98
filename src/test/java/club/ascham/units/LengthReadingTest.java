package club.ascham.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthReadingTest {
  private static final Plausible ANY =
      new Plausible("length", Length.ofMm(-100_000), Length.ofMm(100_000));

  // Worked by hand from 1 in = 25.4 mm exactly (the definition of the international inch), in
  // hundred-thousandths of a millimetre; C = common knowledge, no page was read for it.
  @ParameterizedTest(name = "{0}, inches assumed, is {1} hundred-thousandths of a mm")
  @DisplayName("1 in = 25.4 mm by definition of the inch (C)")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "8 3/4|22225000",
        "8-3/4|22225000",
        "8 3⁄4|22225000",
        "8¾|22225000",
        "8 ¾ in|22225000",
        "8-¾|22225000",
        "8 3/4\"|22225000",
        "8 3/4″|22225000",
        "8 3/4''|22225000",
        "8.75 inches|22225000",
        "8,75 Inch|22225000",
        "8 5/8|21907500",
        "8 11/16|22066250",
        "8 1/32|20399375",
        "65|165100000",
        "½|1270000",
        "¼|635000",
        "¾|1905000",
        "⅛|317500",
        "⅜|952500",
        "⅝|1587500",
        "⅞|2222500",
        "-1/8|-317500",
        "−1/8|-317500",
        "–⅛|-317500",
        "+1/8|317500",
        "1/64|39688",
        ".5|1270000",
        "17/16|2698750",
        "-0|0",
      })
  void aNumberInInchesIsReadExactly(String text, long units) {
    assertEquals(
        new LengthParse.Read(new Length(units), LengthUnit.INCH, text),
        LengthText.parse(text, LengthUnit.INCH, ANY));
  }

  @ParameterizedTest(name = "{0}, millimetres assumed, is {1} hundred-thousandths of a mm, in {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "222|22200000|MILLIMETRE",
        "222,5 mm|22250000|MILLIMETRE",
        "222.5mm|22250000|MILLIMETRE",
        "+3 mm|300000|MILLIMETRE",
        "− 3 MM|-300000|MILLIMETRE",
        "0,125|12500|MILLIMETRE",
        "8.125|812500|MILLIMETRE",
        "222 1/2 mm|22250000|MILLIMETRE",
        "22.2 cm|22200000|CENTIMETRE",
        "22,2 centimetres|22200000|CENTIMETRE",
        "8 3/4 in|22225000|INCH",
        "1 millimeter|100000|MILLIMETRE",
      })
  void aTypedUnitWinsOverTheAssumedOne(String text, long units, LengthUnit unit) {
    assertEquals(
        new LengthParse.Read(new Length(units), unit, text),
        LengthText.parse(text, LengthUnit.MILLIMETRE, ANY));
  }

  @Test
  void theTextIsKeptExactlyAsTyped() {
    LengthParse.Read read =
        assertInstanceOf(
            LengthParse.Read.class,
            LengthText.parse("  8-3/4  ", LengthUnit.INCH, Plausible.BRACE));

    assertEquals("  8-3/4  ", read.asTyped());
  }

  @ParameterizedTest(name = "{0} is refused because {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "8 5/0|a fraction is in halves",
        "8 3/5|a fraction is in halves",
        "8 1/3|a fraction is in halves",
        "8 1/128|a fraction is in halves",
        "8 17/16|must be less than 1",
        "8 16/16|must be less than 1",
        "8 0/4|upper figure of its fraction is 0",
        "1,651|can be taken in two ways",
        "1 651|without a separator",
        "1,651.5|without a separator",
        "1.651,5|without a separator",
        "1,000,000|without a separator",
        "1'651|not one of the units",
        "123456|far too large",
        "99999999999999999999|far too large",
        "99999999999999999999/2|far too large",
        "1.234567|more than 5 decimals",
        "1111111111111111111111111111111111|too long",
        "8.|not a number",
        "8 3/4/2|not a number",
        "8.5 1/4|not a number",
        "¼½|not a number",
        "½6|not a number",
        "8 -|not a number",
        "5 ft|“ft” is not one of the units",
        "1.65 m|“m” is not one of the units",
        "8 3/4 in in|“in in” is not one of the units",
        "--3|must begin with a number",
        "about 8|must begin with a number",
        "<script>|must begin with a number",
        "٨|must begin with a number",
        "1e3|not one of the units",
        "NaN|must begin with a number",
      })
  void whatCantBeALengthIsRefusedWithItsReason(String text, String reason) {
    String message = refusal(text, LengthUnit.MILLIMETRE, ANY);

    assertTrue(message.contains(reason), message);
  }

  @ParameterizedTest(name = "[{0}]")
  @ValueSource(strings = {"", " ", "\t"})
  void aBlankIsAskedForByItsName(String blank) {
    assertEquals(
        "Enter the brace height, for example 200 mm or 7 7/8 in.",
        refusal(blank, LengthUnit.MILLIMETRE, Plausible.BRACE));
  }

  @Test
  void aRefusalSaysWhatWouldBeAccepted() {
    assertEquals(
        "“8 17/16” can't be read as a length: after a whole number the fraction must be less than"
            + " 1. Write the brace height like 200 mm or 7 7/8 in.",
        refusal("8 17/16", LengthUnit.INCH, Plausible.BRACE));
  }

  @Test
  void aLengthThatIsImpossibleInEveryUnitSaysWhatIsPossible() {
    assertEquals(
        "“500” can't be right for the brace height, which lies from 100 mm (3 15/16 in) to 300 mm"
            + " (11 13/16 in). Check the figure and its unit.",
        refusal("500", LengthUnit.MILLIMETRE, Plausible.BRACE));
  }

  @Test
  void aNegativeBraceHeightIsImpossible() {
    assertTrue(refusal("-222", LengthUnit.MILLIMETRE, Plausible.BRACE).contains("can't be right"));
  }

  @ParameterizedTest(name = "a brace of {0}, {1} assumed: did you mean {3}?")
  @CsvSource(
      delimiter = '|',
      value = {
        "8.75|MILLIMETRE|MILLIMETRE|8.75 in|INCH|22225000",
        "8.75 mm|INCH|MILLIMETRE|8.75 in|INCH|22225000",
        "8 3/4|MILLIMETRE|MILLIMETRE|8 3/4 in|INCH|22225000",
        "8¾|MILLIMETRE|MILLIMETRE|8 3/4 in|INCH|22225000",
        "222|INCH|INCH|222 mm|MILLIMETRE|22200000",
        "222 in|MILLIMETRE|INCH|222 mm|MILLIMETRE|22200000",
        "222,5 cm|INCH|CENTIMETRE|222,5 mm|MILLIMETRE|22250000",
        "22.2|INCH|INCH|22.2 cm|CENTIMETRE|22200000",
        "22.2|MILLIMETRE|MILLIMETRE|22.2 cm|CENTIMETRE|22200000",
      })
  void aSlipOfUnitIsAskedBack(
      String text,
      LengthUnit assumed,
      LengthUnit readIn,
      String likelyText,
      LengthUnit likelyUnit,
      long likelyUnits) {
    LengthParse.Unlikely slip =
        assertInstanceOf(
            LengthParse.Unlikely.class, LengthText.parse(text, assumed, Plausible.BRACE));

    assertEquals(readIn, slip.unit());
    assertEquals(likelyText, slip.likelyText());
    assertEquals(likelyUnit, slip.likelyUnit());
    assertEquals(new Length(likelyUnits), slip.likely());
    assertEquals(
        new LengthParse.Read(slip.likely(), likelyUnit, likelyText),
        LengthText.parse(likelyText, assumed, Plausible.BRACE),
        "pressing the button gives the likely reading");
  }

  @Test
  void theQuestionNamesBothReadings() {
    LengthParse.Unlikely slip =
        assertInstanceOf(
            LengthParse.Unlikely.class, LengthText.parse("222", LengthUnit.INCH, Plausible.BRACE));

    assertEquals(
        "“222” was read in inches. Did you mean 222 mm (8 3/4 in · 222 mm)?", slip.question());
  }

  @Test
  void aBareFractionWhereMillimetresAreAssumedIsAskedBackThoughItWouldBePlausible() {
    assertEquals(
        new LengthParse.Unlikely(
            new Length(-12_500),
            LengthUnit.MILLIMETRE,
            new Length(-317_500),
            LengthUnit.INCH,
            "-1/8"),
        LengthText.parse("-1/8", LengthUnit.MILLIMETRE, Plausible.TILLER));
  }

  @Test
  void aFractionWithItsUnitTypedIsTakenAtItsWord() {
    assertEquals(
        new LengthParse.Read(new Length(50_000), LengthUnit.MILLIMETRE, "1/2 mm"),
        LengthText.parse("1/2 mm", LengthUnit.INCH, Plausible.NOCKING));
  }

  @ParameterizedTest
  @EnumSource(LengthUnit.class)
  void everyUnitIsKnownByItsSymbol(LengthUnit unit) {
    assertEquals(unit, LengthUnit.spelled(unit.symbol()).orElseThrow());
  }

  @ParameterizedTest(name = "{0} to {1} inside, a hair beyond outside")
  @CsvSource({"100, 300"})
  void theEndsOfAPlausibleRangeAreInside(double lowMm, double highMm) {
    Length hair = new Length(1);

    assertTrue(Plausible.BRACE.holds(Length.ofMm(lowMm)));
    assertTrue(Plausible.BRACE.holds(Length.ofMm(highMm)));
    assertTrue(!Plausible.BRACE.holds(Length.ofMm(lowMm).minus(hair)));
    assertTrue(!Plausible.BRACE.holds(Length.ofMm(highMm).plus(hair)));
  }

  private static String refusal(String text, LengthUnit assumed, Plausible plausible) {
    return assertInstanceOf(
            LengthParse.Unreadable.class, LengthText.parse(text, assumed, plausible))
        .message();
  }
}
