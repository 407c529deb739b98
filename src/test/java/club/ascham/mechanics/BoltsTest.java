package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
  void aWishSmallerThanABoltIsTurned_getsAnEighthOnOne() {
    assertEquals(0.125, reckon(6.2, 6, 2.0, 2.0, 4.0).firstUpper());
    assertEquals(-0.125, reckon(6.2, 6, 0.0, 2.0, 4.0).firstLower());
    assertEquals(0.125, reckon(-0.2, 0, 2.0, 2.0, 4.0).firstLower());
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
