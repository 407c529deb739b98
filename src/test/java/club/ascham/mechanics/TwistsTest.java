package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TwistsTest {
  private static final TwistedString STRING = new TwistedString(1651, 14, 0.45);

  // 65 in, 14 strands of 0.45 mm, packing 0.75: strand by strand in twists.py. The closed form
  // leaves
  // out what grows with the fourth power of the twists.
  @ParameterizedTest(name = "{0} twists shorten by {1} to {2} mm")
  @CsvSource({"15, 1.27, 2.54", "20, 2.26, 4.53", "25, 3.54, 7.08"})
  @DisplayName("twist geometry: mean strand (Hearle's contraction) and outermost helix, to 0.01 mm")
  void twists_shortenAsTheStrandsDo(int twists, double least, double most) {
    assertEquals(least, STRING.leastShorteningMm(twists), 0.01);
    assertEquals(most, 2 * STRING.leastShorteningMm(twists), 0.01 * most);
  }

  @Test
  @DisplayName("68 in bow at 9 in for 8 3/4 in, 35 twists: a dozen out (the trade says 13 to 19)")
  void aBowBracedTooHigh_losesADozenTwists() {
    TwistReckoning twists = reckon(68.0, STRING, 35, 228.6, 222.25);
    assertEquals(TwistReckoning.Reach.THIS_STRING, twists.reach());
    assertTrue(twists.turns() <= -8 && twists.turns() >= -20, "a technician nods: " + twists);
    assertTrue(twists.low() >= -13 && twists.high() <= -19, twists.toString());
    assertEquals(25, twists.room());
    assertTrue(twists.chance() > 0.9, twists.toString());
    assertEquals(6.2, twists.stringChangeMm(), 0.3, "a longer string braces lower");
    assertEquals(222.25, twists.expectedMm(), 0.3);
    assertTrue(twists.lowMm() < 221 && twists.highMm() > 223.5, twists.toString());
    assertTrue(twists.basis().startsWith("No adjustment of this bow yet: from the string's"));
  }

  @Test
  @DisplayName("1 mm of brace for 2 to 3 twists (common practice): 6.35 mm ask for 13 to 19")
  void uncountedTwists_getTheTradesRule_andAWideRange() {
    TwistReckoning twists = reckon(68.0, STRING, null, 228.6, 222.25);
    assertTrue(twists.turns() <= -13 && twists.turns() >= -19, twists.toString());
    assertTrue(twists.high() <= -19 && twists.low() >= -13, twists.toString());
    assertTrue(twists.basis().contains("rule of thumb"), twists.basis());
    assertTrue(twists.basis().contains("not counted"), twists.basis());
  }

  @ParameterizedTest(name = "bow {0} in, string {1} mm")
  @DisplayName("outside the geometry's domain the rule of thumb answers, and says so")
  @CsvSource({"44, 1040", "76, 1850", "68, 1200", "68, 1800"})
  void oddLengths_getTheRuleOfThumb(double bow, double stringMm) {
    TwistReckoning twists = reckon(bow, new TwistedString(stringMm, 14, 0.45), 35, 228.6, 222.25);
    assertTrue(twists.basis().contains("rule of thumb"), twists.basis());
    assertTrue(
        reckon(68.0, new TwistedString(1651, 60, 1.5), 60, 228.6, 222.25)
            .basis()
            .contains("don't go into a string"));
    assertTrue(
        reckon(68.0, null, 35, 228.6, 222.25).basis().contains("strands or their thickness"));
  }

  @Test
  void aStringAtItsFewestTwists_thatBracesTooHigh_asksForALongerOne() {
    TwistReckoning longer = reckon(68.0, STRING, 10, 228.6, 219);
    assertEquals(TwistReckoning.Reach.LONGER_STRING, longer.reach());
    // 9.6 mm of brace are 9.4 mm of string; 26 twists instead of 10 take up 5 mm more.
    assertEquals(14.4, longer.otherStringMm(), 0.5);
    TwistReckoning shorter = reckon(68.0, STRING, 60, 200, 222);
    assertEquals(TwistReckoning.Reach.SHORTER_STRING, shorter.reach());
    assertTrue(shorter.otherStringMm() < -21.5, shorter.toString());
    assertNull(reckon(68.0, STRING, 35, 228.6, 222.25).otherStringMm());
  }

  @ParameterizedTest(name = "{0} twists, brace {1} for {2}: {3}, room {4}")
  @CsvSource({
    "0,  250,    222.25, LONGER_STRING,  0",
    "6,  228.6,  222.25, LONGER_STRING,  0",
    "12, 228.6,  222.25, LONGER_STRING,  2",
    "35, 228.6,  222.25, THIS_STRING,   25",
    "35, 222.5,  222.25, LEAVE_IT,      25",
    "35, 222.25, 222.25, LEAVE_IT,      25",
    "70, 200,    222.25, SHORTER_STRING, 0",
    "70, 232,    230,    SHORTER_STRING, 60",
    "2,  221.6,  222.25, LONGER_STRING, 58",
    "20, 200,    222.25, THIS_STRING,   40"
  })
  void whatIsDone_isToldApart(
      int twists, double brace, double aim, TwistReckoning.Reach reach, int room) {
    TwistReckoning reckoned = reckon(68.0, STRING, twists, brace, aim);
    assertEquals(reach, reckoned.reach(), reckoned.toString());
    assertEquals(room, reckoned.room());
    assertEquals(reach == TwistReckoning.Reach.THIS_STRING, reckoned.turns() != 0);
    boolean other =
        reach == TwistReckoning.Reach.LONGER_STRING || reach == TwistReckoning.Reach.SHORTER_STRING;
    assertEquals(other, reckoned.otherStringMm() != null);
    if (other) {
      assertEquals(reach == TwistReckoning.Reach.LONGER_STRING, reckoned.otherStringMm() > 0);
    }
    boolean unsound = twists < 10 || twists > 60;
    assertEquals(unsound, reckoned.basis().contains("now, which is"), reckoned.basis());
  }

  @Test
  void theRange_isNotClippedByTheRoom() {
    TwistReckoning little = reckon(68.0, STRING, 22, 225.25, 222.25);
    assertEquals(TwistReckoning.Reach.THIS_STRING, little.reach(), little.toString());
    assertTrue(little.turns() >= -12, little.toString());
    assertTrue(little.high() == null || little.high() < -12, little.toString());
    assertTrue(little.chance() >= 0.5 && little.chance() < 0.9, little.toString());
  }

  @Test
  @DisplayName(
      "22 twists, 3 mm to come down: the chance by four million draws (twists.py), to 0.01")
  void theChance_isThatOfWhatItsTwistsMayDo() {
    assertEquals(0.671, reckon(68.0, STRING, 22, 225.25, 222.25).chance(), 0.01);
  }

  @Property
  void noAdvice_endsOutsideTheSoundLimits(
      @ForAll @IntRange(max = 80) int twists,
      @ForAll @DoubleRange(min = 190, max = 250) double brace,
      @ForAll @DoubleRange(min = 200, max = 240) double aim) {
    TwistReckoning reckoned = reckon(68.0, STRING, twists, brace, aim);
    if (reckoned.turns() != 0) {
      int after = twists + reckoned.turns();
      assertTrue(after >= 10 && after <= 60, reckoned.toString());
      assertTrue(
          Math.abs(reckoned.expectedMm() - aim) < Math.abs(brace - aim), reckoned.toString());
      assertTrue(reckoned.chance() >= 0.5);
      assertTrue(Math.abs(reckoned.low()) <= Math.abs(reckoned.turns()));
    }
  }

  @Test
  void theOtherString_bracesAtTheAim_withTheTwistsThatANewStringGets() {
    TwistReckoning longer = reckon(68.0, STRING, 10, 228.6, 219);
    double untwisted = STRING.untwistedMm() + longer.otherStringMm();
    TwistedString other = new TwistedString(untwisted, 14, 0.45);
    double thisTaut = STRING.untwistedMm() - 1.5 * STRING.leastShorteningMm(10);
    double otherTaut =
        untwisted - 1.5 * other.leastShorteningMm(TwistLimits.IN_PRINT.forNewString());
    assertEquals(219, 228.6 - 1.02 * (otherTaut - thisTaut), 0.1);
  }

  private static TwistReckoning reckon(
      Double bow, TwistedString string, Integer twists, double brace, double target) {
    return TwistReckoning.of(
        TwistReckoning.response(bow, string, twists, OwnRecord.NONE),
        brace,
        target,
        TwistLimits.IN_PRINT);
  }

  @Test
  void moreTwists_neverLowerTheBrace() {
    double last = -1;
    for (int twists = 0; twists <= 80; twists++) {
      double shortening = STRING.leastShorteningMm(twists);
      assertTrue(shortening > last);
      last = shortening;
    }
  }

  @ParameterizedTest
  @CsvSource({
    "bowLengthIn, 30, 228, 222",
    "braceMm, 68, 22.2, 222",
    "targetMm, 68, 228, 8.75",
    "braceMm, 68, NaN, 222"
  })
  void whatIsNoBow_isRefusedByItsName(String quantity, double bow, double brace, double target) {
    assertEquals(
        quantity,
        assertThrows(OutOfDomain.class, () -> reckon(bow, STRING, 20, brace, target)).quantity());
  }
}
