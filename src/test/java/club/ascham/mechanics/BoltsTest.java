package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoltsTest {
  @Test
  void tillerTooLarge_turnsTheUpperInAndTheLowerOut_aQuarterEach() {
    // 3/8 in where 3/16 in is aimed at: half to three quarters of a turn expected in all.
    BoltReckoning bolts = BoltReckoning.of(9.5, 4.8, 2.0, 2.0, 4.0);
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
    BoltReckoning large = BoltReckoning.of(9.5, 4.8, 2.0, 2.0, 4.0);
    BoltReckoning small = BoltReckoning.of(0.1, 4.8, 2.0, 2.0, 4.0);
    assertEquals(large.upper(), small.lower(), 1e-12);
    assertEquals(large.firstLower(), small.firstUpper(), 1e-12);
  }

  @ParameterizedTest(name = "upper {0} lower {1} of {2}")
  @CsvSource({", , ", "2, 2, ", "2, , 4", "2, 4, 4"})
  void noBoltGoesOut_whereTheTurnsAreUnknownOrUsedUp(Double upper, Double lower, Double most) {
    BoltReckoning bolts = BoltReckoning.of(9.5, 4.8, upper, lower, most);
    assertEquals(0, bolts.lower());
    assertEquals(0, bolts.firstLower());
    assertEquals(0.25, bolts.firstUpper());
    assertTrue(bolts.basis().contains("No bolt is turned out"));
  }

  @Test
  void aBoltThatIsIn_leavesTheRestToTheOther_andSaysWhereTheRoomEnds() {
    BoltReckoning other = BoltReckoning.of(9.5, 4.8, 0.0, 2.0, 4.0);
    assertEquals(0, other.upper());
    assertTrue(other.lower() < -0.5);
    assertTrue(other.reached());
    assertFalse(BoltReckoning.of(9.5, 4.8, 0.0, 4.0, 4.0).reached());
  }

  @Test
  void atItsAim_nothingIsTurned() {
    BoltReckoning bolts = BoltReckoning.of(4.8, 4.8, 2.0, 2.0, 4.0);
    assertEquals(0, bolts.upper() + bolts.firstUpper() + bolts.firstLower());
    assertEquals(4.8, bolts.expectedMm());
  }

  @Test
  void aBoltBeyondItsMakersTurns_isRefusedByItsName() {
    assertEquals(
        "upperTurnsOut",
        assertThrows(OutOfDomain.class, () -> BoltReckoning.of(9.5, 4.8, 5.0, 2.0, 4.0))
            .quantity());
    assertEquals(
        "tillerMm",
        assertThrows(OutOfDomain.class, () -> BoltReckoning.of(95, 4.8, 2.0, 2.0, 4.0)).quantity());
  }
}
