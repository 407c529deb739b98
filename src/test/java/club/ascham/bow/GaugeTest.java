package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeTest {
  private static final Target BRACE =
      new Target(Band.ofMm(210, 220), Band.ofMm(200, 230), "for the test");

  @ParameterizedTest(name = "{0} mm is {1}")
  @CsvSource({
    "215, fine",
    "210, fine",
    "209.5, fine",
    "209.4, note",
    "230.5, note",
    "230.6, stop",
    "190, stop"
  })
  void sign_followsTheBands(double mm, String sign) {
    assertEquals(sign, Gauge.sign(BRACE, Length.ofMm(mm)));
  }

  @Test
  void sign_whereOnlyAnOuterBandIsKnown_isFineWithinIt() {
    Target fixedTiller = new Target(null, Band.ofMm(0, 10), "for the test");

    assertEquals("fine", Gauge.sign(fixedTiller, Length.ofMm(4)));
    assertEquals("stop", Gauge.sign(fixedTiller, Length.ofMm(-1)));
  }

  @Test
  void sign_whereNothingSpeaks_isNone() {
    assertNull(Gauge.sign(new Target(null, null, "for the test"), Length.ofMm(4)));
  }

  @Test
  void positions_runFromLowToHigh() {
    Gauge gauge = Gauge.of("Brace", BRACE, Length.ofMm(212), Length.ofMm(218), false);

    assertTrue(0 < gauge.outerFrom() && gauge.outerFrom() < gauge.innerFrom());
    assertTrue(gauge.innerFrom() < gauge.setUp() && gauge.setUp() < gauge.reading());
    assertTrue(gauge.reading() < gauge.innerTo() && gauge.innerTo() < gauge.outerTo());
    assertTrue(gauge.outerTo() < 100);
  }

  @Test
  void aReadingFarOut_standsAtTheEdge() {
    assertEquals(97.0, Gauge.of("Brace", BRACE, null, Length.ofMm(299), false).reading());
  }

  @ParameterizedTest(name = "{0} mm is {1}")
  @CsvSource({
    "4.8, +3/16 in · +4.8 mm",
    "-4.8, −3/16 in · −4.8 mm",
    "0, 0 in · 0 mm",
    "0.4, 0 in · +0.4 mm",
    "-0.4, 0 in · −0.4 mm",
    "0.04, 0 in · 0 mm"
  })
  void signed_hasNoSignWhereItRoundsToNothing(double mm, String said) {
    assertEquals(said, Gauge.signed(Length.ofMm(mm)));
  }

  @Test
  void aSignedFigure_carriesItsSign() {
    Target tiller = new Target(Band.ofMm(0, 6), Band.ofMm(-4, 10), "for the test");

    Gauge gauge = Gauge.of("Tiller", tiller, null, Length.ofMm(4), true);

    assertEquals("+3/16 in · +4 mm", gauge.readingText());
    assertEquals("−3/16 in · −4 mm to +3/8 in · +10 mm", gauge.outerText());
  }

  @Test
  void withoutBandOrReading_nothingIsDrawn() {
    Gauge gauge = Gauge.of("Brace", new Target(null, null, "for the test"), null, null, false);

    assertNull(gauge.outerFrom());
    assertNull(gauge.innerFrom());
    assertNull(gauge.reading());
    assertNull(gauge.sign());
  }
}
