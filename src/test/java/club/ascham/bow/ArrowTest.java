package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.units.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArrowTest {

  // Source: elyarchers.org.uk/health_and_safety_rules.htm, johnsarchery.ca/how-to/ (R)
  @Test
  @DisplayName("A beginner's arrow: draw + 2 in (Ely Archers' safety rules)")
  void shortestSafe_beginner() {
    ShortestArrow arrow = ArrowLength.shortestSafe(26, false, true, false);
    assertEquals(Length.ofInches(28), arrow.length());
  }

  // Source: Hoyt recurve manual p. 11: tip at least 1 in in front of the centre of the rest's
  // mounting hole (R). The rest stands over the pivot, 1 3/4 in short of AMO draw.
  @ParameterizedTest(name = "draw {0} in")
  @DisplayName("Tip at least 1 in in front of the rest, a recurve maker's manual p. 11")
  @ValueSource(doubles = {18, 24, 28, 31.5})
  void shortestSafe_nobodyFallsShortOfTheMakersRule(double drawIn) {
    double restToNockIn = drawIn - FingerWeight.AMO_BEYOND_PIVOT_IN;
    ShortestArrow arrow = ArrowLength.shortestSafe(drawIn, false, false, false);
    assertTrue(arrow.length().inches() >= restToNockIn + 1);
    assertEquals(drawIn + 1, arrow.length().inches(), 1e-5);
  }

  @ParameterizedTest(name = "estimated {0}, beginner {1}, junior {2}: draw + {3} in")
  @CsvSource({
    "false, false, false, 1",
    "true, false, false, 2",
    "false, true, false, 2",
    "false, false, true, 2",
    "false, true, true, 2",
    "true, true, false, 3",
    "true, false, true, 3",
    "true, true, true, 3"
  })
  void shortestSafe_margins(boolean estimated, boolean beginner, boolean junior, double marginIn) {
    ShortestArrow arrow = ArrowLength.shortestSafe(25, estimated, beginner, junior);
    assertEquals(25 + marginIn, arrow.length().inches(), 1e-9);
    assertTrue(arrow.allows(arrow.length()));
    assertFalse(arrow.allows(arrow.length().minus(Target.READING_STEP)));
  }

  @Test
  void shortestSafe_isShownRoundedUp_neverBelowTheRule() {
    ShortestArrow arrow = ArrowLength.shortestSafe(22.84, true, true, false);
    assertEquals("25 7/8 in · 657 mm", arrow.said());
    assertEquals("27 in · 686 mm", ArrowLength.shortestSafe(25, false, true, false).said());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void shortestSafe_noDraw_isRefused(double drawIn) {
    assertThrows(
        IllegalArgumentException.class,
        () -> ArrowLength.shortestSafe(drawIn, false, false, false));
  }

  // Sources: hoyt.com/safetyandwarnings/traditional-recurves (200 gr for 40 lb), manualsdir.com,
  // Martin
  // bows, p. 23 (400 for 80), and IBO Rules and Class Definitions III A, as a club's question to
  // huntingnet.com's forum works it (310 for 62): all read.
  @ParameterizedTest
  @CsvSource({"40, 200", "62, 310", "80, 400"})
  @DisplayName("5 grains to the pound: two makers' warnings and the IBO's rule")
  void mass_leastForAWeight(double lb, double gr) {
    assertEquals(gr, new ArrowMass(400, weight(lb, lb, lb)).leastGr(), 1e-9);
    assertEquals(lb, ArrowMass.heaviestLb(gr), 1e-9);
  }

  @Test
  void mass_isSoundFromItsLeastOn() {
    assertEquals(60, ArrowMass.heaviestLb(300), 1e-9);
    assertEquals(300, new ArrowMass(400, weight(60, 60, 60)).leastGr(), 1e-9);
    assertTrue(new ArrowMass(300, weight(60, 60, 60)).isSound());
    assertFalse(new ArrowMass(299.9, weight(60, 60, 60)).isSound());
  }

  @Test
  void mass_isHeldAgainstTheHighEnd_andTheRangeIsTold() {
    ArrowMass mass = new ArrowMass(300, weight(50, 40, 60.1));
    assertFalse(mass.isSound());
    assertEquals(6, mass.perPound(), 1e-9);
    assertEquals(300 / 60.1, mass.lowPerPound(), 1e-9);
    assertEquals(7.5, mass.highPerPound(), 1e-9);
    assertEquals(
        "300 gr an arrow, where up to 60.1 lb on these fingers asks for at least 301 gr (5 gr to"
            + " the pound)",
        mass.shortfall());
    assertEquals(
        "300 gr, which is 10.0 gr to the pound on these fingers (7.5 to 15.0)",
        new ArrowMass(300, weight(30, 20, 40)).said());
  }

  @Test
  void mass_ofNothing_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> new ArrowMass(0, weight(30, 28, 32)));
    assertThrows(IllegalArgumentException.class, () -> new ArrowMass(300, weight(0, 0, 0)));
    assertThrows(IllegalArgumentException.class, () -> ArrowMass.heaviestLb(Double.NaN));
  }

  private static WeightOnFingers weight(double lb, double lowLb, double highLb) {
    return new WeightOnFingers(lb, lowLb, highLb, 0, "");
  }
}
