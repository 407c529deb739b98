package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TwistsTest {
  private static final TwistedString STRING = new TwistedString(1651, 14, 0.45);

  // 65 in, 14 strands of 0.45 mm, packing 0.75, computed with an independent program.
  @ParameterizedTest(name = "{0} twists shorten by {1} to {2} mm")
  @CsvSource({"15, 1.27, 2.54", "20, 2.26, 4.53", "25, 3.53, 7.08"})
  @DisplayName("twist geometry: mean strand (Hearle's contraction) and outermost helix, to 0.01 mm")
  void twists_shortenAsComputedElsewhere(int twists, double least, double most) {
    assertEquals(least, STRING.leastShorteningMm(twists), 0.005);
    assertEquals(most, STRING.mostShorteningMm(twists), 0.005);
  }

  @Test
  void aBowBracedTooHigh_losesAHandfulOfTwists() {
    TwistReckoning twists = TwistReckoning.of(68, STRING, 35, 228.6, 222.25, 10, 60);
    assertEquals(TwistReckoning.Reach.THIS_STRING, twists.reach());
    assertTrue(twists.turns() <= -8 && twists.turns() >= -20, "a technician nods: " + twists);
    assertTrue(twists.low() >= twists.turns() && twists.turns() >= twists.high());
    assertEquals(6.2, twists.stringChangeMm(), 0.3, "a longer string braces lower");
  }

  @Test
  void theTradesRule_liesWithinTheGeometrysRange() {
    // Common practice: 1 mm of brace for 2 to 3 twists; 6.35 mm ask for 13 to 19.
    TwistReckoning twists = TwistReckoning.of(68, STRING, 35, 228.6, 222.25, 10, 60);
    assertTrue(twists.low() >= -13 && twists.high() <= -19, twists.toString());
  }

  @Test
  void uncountedTwists_getTheTradesRule_andAWideRange() {
    TwistReckoning twists = TwistReckoning.of(68, STRING, null, 228.6, 222.25, 10, 60);
    assertEquals(-16, twists.turns());
    assertTrue(twists.high() <= -19 && twists.low() >= -13, twists.toString());
    assertTrue(twists.basis().contains("common practice"));
  }

  @Test
  void aStringAtItsFewestTwists_thatBracesTooHigh_asksForALongerOne() {
    assertEquals(
        TwistReckoning.Reach.LONGER_STRING,
        TwistReckoning.of(68, STRING, 10, 228.6, 219, 10, 60).reach());
    assertEquals(
        TwistReckoning.Reach.SHORTER_STRING,
        TwistReckoning.of(68, STRING, 60, 200, 222, 10, 60).reach());
  }

  @Test
  void moreTwists_neverLowerTheBrace() {
    double last = -1;
    for (int twists = 0; twists <= 80; twists++) {
      double shortening = STRING.leastShorteningMm(twists);
      assertTrue(shortening > last);
      assertTrue(STRING.mostShorteningMm(twists) >= shortening);
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
        assertThrows(
                OutOfDomain.class, () -> TwistReckoning.of(bow, STRING, 20, brace, target, 10, 60))
            .quantity());
  }
}
