package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoltsTest {
  @Test
  void tillerTooLarge_turnsTheUpperInAndTheLowerOut_aQuarterEach() {
    // 3/8 in where 3/16 in is aimed at: half to three quarters of a turn expected in all.
    BoltReckoning bolts = reckon(9.5, 4.8, 2.0, 2.0, 4.0);
    assertEquals(0.25, bolts.firstUpper());
    assertEquals(-0.25, bolts.firstLower());
    double inAll = bolts.upper() - bolts.lower();
    assertTrue(inAll >= 0.5 && inAll <= 0.75, "in all: " + inAll);
    assertEquals(bolts.upper(), -bolts.lower(), 1e-12, "the draw weight is kept");
    assertTrue(bolts.expectedMm() < 9.5 && bolts.expectedMm() > 4.8);
    assertTrue(bolts.lowMm() <= bolts.expectedMm() && bolts.expectedMm() <= bolts.highMm());
  }

  @Test
  void tillerTooSmall_isTheMirror() {
    BoltReckoning large = reckon(9.5, 4.8, 2.0, 2.0, 4.0);
    BoltReckoning small = reckon(0.1, 4.8, 2.0, 2.0, 4.0);
    assertEquals(large.upper(), small.lower(), 1e-12);
    assertEquals(large.firstLower(), small.firstUpper(), 1e-12);
  }

  @ParameterizedTest(name = "upper {0} lower {1} of {2}")
  @CsvSource({", , ", "2, 2, ", "2, , 4", "2, 4, 4"})
  void noBoltGoesOut_whereTheTurnsAreUnknownOrUsedUp(Double upper, Double lower, Double most) {
    BoltReckoning bolts = reckon(9.5, 4.8, upper, lower, most);
    assertEquals(0, bolts.lower());
    assertEquals(0, bolts.firstLower());
    assertEquals(0.25, bolts.firstUpper());
    assertTrue(bolts.basis().contains("No bolt is turned out"));
  }

  @Test
  void aBoltThatIsIn_leavesTheRestToTheOther_andSaysWhereTheRoomEnds() {
    BoltReckoning other = reckon(9.5, 4.8, 0.0, 2.0, 4.0);
    assertEquals(0, other.upper());
    assertTrue(other.lower() < -0.5);
    assertTrue(other.reached());
    assertFalse(reckon(9.5, 4.8, 0.0, 4.0, 4.0).reached());
  }

  @Test
  void atItsAim_nothingIsTurned() {
    BoltReckoning bolts = reckon(4.8, 4.8, 2.0, 2.0, 4.0);
    assertEquals(0, bolts.upper() + bolts.firstUpper() + bolts.firstLower());
    assertEquals(4.8, bolts.expectedMm());
  }

  @Test
  void aBoltBeyondItsMakersTurns_isRefusedByItsName() {
    assertEquals(
        "upperTurnsOut",
        assertThrows(OutOfDomain.class, () -> reckon(9.5, 4.8, 5.0, 2.0, 4.0)).quantity());
    assertEquals(
        "tillerMm",
        assertThrows(OutOfDomain.class, () -> reckon(95, 4.8, 2.0, 2.0, 4.0)).quantity());
  }

  // Cases of the trade's advice for a bow of which nothing was recorded.
  @ParameterizedTest(name = "maximum {0}, upper {1}, lower {2} out: upper {3}, lower {4}")
  @CsvSource(
      nullValues = "-",
      value = {
        "-,   2.0, 2.0,  0.25,   0",
        "4.0, 2.0, -,    0.25,   0",
        "4.0, -,   2.0,  0.25,  -0.25",
        "4.0, 0.0, 2.0,  0,     -0.25",
        "4.0, 0.2, 2.0,  0.125, -0.25",
        "4.0, 2.0, 3.9,  0.25,   0",
        "4.0, 2.0, 3.85, 0.25,  -0.125",
        "-,   0.0, 2.0,  0,      0"
      })
  void bolts_stayInsideTheirTurns(
      Double max, Double upper, Double lower, double upperFirst, double lowerFirst) {
    BoltReckoning bolts = reckon(9.5, 4.8, upper, lower, max);
    assertEquals(upperFirst, bolts.firstUpper(), 1e-12);
    assertEquals(lowerFirst, bolts.firstLower(), 1e-12);
  }

  @Test
  void whatOneBoltCantTake_theOtherTakes_orItIsSaid() {
    BoltReckoning bolts = reckon(9.5, 4.8, 0.125, 2.0, 4.0);
    assertEquals(0.125, bolts.upper(), 1e-9);
    assertEquals(-(4.7 / 7.5 - 0.125), bolts.lower(), 1e-9);
    assertFalse(bolts.basis().contains("all the way"));
    assertTrue(reckon(9.5, 4.8, 0.125, 2.0, null).basis().contains("can't bring it all the way"));
  }

  @Test
  void aSmallWish_getsAnEighthOnOne() {
    assertEquals(0.125, reckon(7.1, 6, 2.0, 2.0, 4.0).firstUpper());
    assertEquals(0, reckon(7.1, 6, 2.0, 2.0, 4.0).firstLower());
    assertEquals(-0.125, reckon(7.1, 6, 0.0, 2.0, 4.0).firstLower());
    assertEquals(0.125, reckon(-1.1, 0, 2.0, 2.0, 4.0).firstLower());
  }

  @ParameterizedTest(name = "tiller {0} for {1}, bolts {2} and {3} of {4} out: {5}, reached {6}")
  @CsvSource(
      nullValues = "-",
      value = {
        "4.9, 4.8, 2, 2, 4, LEAVE_IT, true",
        "4.8, 4.8, -, -, -, LEAVE_IT, true",
        "5.7, 4.8, 2, 2, 4, LEAVE_IT, true",
        "5.9, 4.8, 2, 2, 4, TURN, true",
        "9.5, 4.8, 0, 4, 4, NO_ROOM, false",
        "9.5, 4.8, 0, -, -, NO_ROOM, false",
        "5.9, 4.8, 0, 2, -, NO_ROOM, false"
      })
  void whatIsDone_isToldApart(
      double tiller,
      double aim,
      Double upper,
      Double lower,
      Double most,
      BoltReckoning.Outcome outcome,
      boolean reached) {
    BoltReckoning bolts = reckon(tiller, aim, upper, lower, most);
    assertEquals(outcome, bolts.outcome(), bolts.basis());
    assertEquals(reached, bolts.reached());
    assertEquals(
        outcome == BoltReckoning.Outcome.TURN, bolts.firstUpper() != 0 || bolts.firstLower() != 0);
  }

  @Property
  void noStep_isExpectedFartherFromTheAim(
      @ForAll @DoubleRange(min = -20, max = 20) double tiller,
      @ForAll @DoubleRange(min = -6, max = 6) double aim) {
    BoltReckoning bolts = reckon(tiller, aim, 2.0, 2.0, 4.0);
    if (bolts.outcome() == BoltReckoning.Outcome.TURN) {
      assertTrue(Math.abs(bolts.expectedMm() - aim) < Math.abs(tiller - aim), bolts.toString());
    } else {
      assertEquals(tiller, bolts.expectedMm());
      assertTrue(Math.abs(tiller - aim) < 1, bolts.toString());
    }
  }

  @Test
  @DisplayName("both bolts half a turn in: brace 0.02 to 0.03 in lower, by two models of the bow")
  void braceHardlyMoves_andItIsSaid() {
    assertTrue(reckon(9.5, 4.8, 2.0, 2.0, 4.0).basis().contains("lower it by 0.5 to 0.8 mm"));
  }

  private static BoltReckoning reckon(
      double tiller, double target, Double upper, Double lower, Double most) {
    return BoltReckoning.of(tiller, target, upper, lower, most, OwnRecord.NONE);
  }
}
