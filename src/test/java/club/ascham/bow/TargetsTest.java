package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.units.Length;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TargetsTest {
  private static final BraceTable TABLE = BraceTable.FRENCH_FEDERATION_2008;
  private static final Band MAKER = Band.ofMm(208, 227);
  private static final Band CLUB = Band.ofMm(212, 225);

  private final RigSpec rig = Bows.adjustableRig(24, Style.SPLIT_FINGER);

  @Test
  void brace_tableInForce_withItsSourceShown() {
    Target brace = Targets.of(rig, TABLE, null, null).brace();
    assertEquals(Band.ofMm(220, 230), brace.inner());
    assertEquals(Band.ofMm(210, 240), brace.outer());
    assertTrue(brace.basis().contains(TABLE.source()), brace.basis());
  }

  @Test
  void brace_clubsOwnRange_beatsTheTable() {
    Target brace = Targets.of(rig, TABLE, CLUB, null).brace();
    assertEquals(CLUB, brace.inner());
    assertFalse(brace.basis().contains(TABLE.source()), brace.basis());
  }

  // Source: archery360.com, greygoosearchery.co.uk and laflechegasconne.fr all state it (R)
  @Test
  @DisplayName(
      "The maker's range beats any table (Archery Trade Association, 2020; a British dealer)")
  void brace_makersRange_beatsAll() {
    LimbsSpec limbs = Bows.slotInLimbs(LimbSize.MEDIUM, 24, "ILF", Known.YES, MAKER);
    RigSpec own =
        Bows.rig(Bows.adjustableRiser(25), limbs, Bows.polyesterString(68), Style.SPLIT_FINGER);
    assertEquals(MAKER, Targets.of(own, TABLE, CLUB, null).brace().inner());
  }

  @Test
  void brace_onePieceWithMakersRange_usesIt() {
    Band maker = Band.ofMm(150, 165);
    OnePieceSpec bow = new OnePieceSpec(null, 54, 14, 24, Known.NO, maker);
    RigSpec own = new RigSpec(null, null, bow, null, Style.SPLIT_FINGER);
    assertEquals(maker, Targets.of(own, TABLE, null, null).brace().inner());
  }

  @Test
  void brace_nothingSpeaks_setUpFigureGivesTheOuterBandAlone() {
    RigSpec junior = Bows.onePieceRig(48, 12);
    Target brace = Targets.of(junior, TABLE, null, Bows.setUp(150, 120, 118)).brace();
    assertNull(brace.inner());
    assertEquals(Band.ofMm(140, 160), brace.outer());
  }

  @Test
  void brace_nothingSpeaksAndNoSetUp_noBandIsInvented() {
    Target brace = Targets.of(Bows.onePieceRig(48, 12), TABLE, null, null).brace();
    assertNull(brace.inner());
    assertNull(brace.outer());
    assertTrue(brace.basis().contains("48 in"), brace.basis());
  }

  @Test
  void brace_measuredFromTheButton_saysHowThatCompares() {
    SetUpFigures fromButton =
        new SetUpFigures(
            Length.ofMm(225),
            BracePoint.BUTTON,
            Length.ofMm(180),
            Length.ofMm(176),
            null,
            true,
            null,
            null,
            null);
    assertTrue(Targets.of(rig, TABLE, null, fromButton).brace().basis().contains("button"));
    assertFalse(
        Targets.of(rig, TABLE, null, Bows.setUp(225, 180, 176)).brace().basis().contains("button"));
  }

  // Source: bow-international.com "Tiller and bracing height: going deep" (R)
  @Test
  @DisplayName("Tiller, split finger: 0 to +6 mm (Bow International)")
  void tiller_splitFinger() {
    Target tiller = Targets.of(rig, TABLE, null, null).tiller();
    assertEquals(Band.ofMm(0, 6), tiller.inner());
    // Source: selfbow.ch: more than +10 mm is a matter for the bowyer (R); -4 mm is judged.
    assertEquals(Band.ofMm(-4, 10), tiller.outer());
  }

  // Source: hullarcheryclub.co.uk, +1/8 to +1/4 in (3 to 6 mm) (R); 1/4 in is 6.35 mm, so 6 mm it
  // is
  @ParameterizedTest(name = "+{0} mm is aimed for")
  @DisplayName("Tiller, split finger: 3 to 6 mm (Hull Archery Club)")
  @CsvSource({"3", "6"})
  void tiller_splitFinger_holdsTheUsualChoice(double mm) {
    assertTrue(Targets.of(rig, TABLE, null, null).tiller().inner().holds(Length.ofMm(mm)));
  }

  // Source: bow-international.com (sign) and handboogverenigingodysseus.nl (worked example) (R)
  @Test
  @DisplayName("Tiller is top minus bottom: 19.8 - 19.2 cm = +6 mm (Handboogvereniging Odysseus)")
  void tiller_sign() {
    assertEquals(Length.ofMm(6), Bows.setUp(220, 198, 192).tiller());
    assertEquals(Length.ofMm(-6), Bows.setUp(220, 192, 198).tiller());
  }

  // Source: experts123.com (even tiller often used, R); bow-international.com (negative common, R)
  @Test
  @DisplayName("Tiller: even for three under, negative for string walking (R)")
  void tiller_otherStyles() {
    Target threeUnder =
        Targets.of(Bows.adjustableRig(24, Style.THREE_UNDER), TABLE, null, null).tiller();
    Target walking =
        Targets.of(Bows.adjustableRig(24, Style.STRING_WALKING), TABLE, null, null).tiller();
    assertTrue(threeUnder.inner().holds(Length.ZERO));
    assertFalse(threeUnder.inner().holds(Length.ofMm(4)));
    assertTrue(walking.inner().holds(Length.ofMm(-4)));
    assertFalse(walking.inner().holds(Length.ofMm(2)));
  }

  @ParameterizedTest
  @EnumSource(Style.class)
  void tiller_outerBand_enclosesTheInner(Style style) {
    Target tiller = Targets.of(Bows.adjustableRig(24, style), TABLE, null, null).tiller();
    assertTrue(tiller.outer().low().compareTo(tiller.inner().low()) < 0);
    assertTrue(tiller.outer().high().compareTo(tiller.inner().high()) > 0);
  }

  // Source: selfbow.ch care and maintenance: negative or more than +10 mm, consult the bowyer (R)
  @ParameterizedTest(name = "{0} mm: {1}")
  @DisplayName("Tiller alarm of a bow that can't be adjusted (a bowyer's page on wooden bows)")
  @CsvSource({"-1, false", "0, true", "10, true", "11, false"})
  void tiller_fixed(double mm, boolean within) {
    Target screwIn = Targets.of(Bows.screwInRig(62, 18), TABLE, null, null).tiller();
    Target onePiece = Targets.of(Bows.onePieceRig(54, 14), TABLE, null, null).tiller();
    assertEquals(within, screwIn.outer().holds(Length.ofMm(mm)));
    assertEquals(screwIn, onePiece);
    assertNull(screwIn.inner());
  }

  // Source: Hoyt recurve manual p. 11, manualshive.com (R)
  @ParameterizedTest(name = "{0} in above square: {1}")
  @DisplayName("Nocking window 0 to 1/2 in above square, a recurve maker's manual p. 11")
  @CsvSource({"-0.0625, false", "0, true", "0.25, true", "0.5, true", "0.5625, false"})
  void nocking_window(double inches, boolean within) {
    Target nocking = Targets.of(rig, TABLE, null, null).nocking();
    assertEquals(within, nocking.inner().holds(Length.ofInches(inches)));
  }

  @ParameterizedTest(name = "tiller {0} mm: start {1} mm above square")
  @CsvSource({"4, 4", "0, 0", "-5, 0", "20, 12.7"})
  void nockingStart_isTheTillerWithinTheWindow(double tillerMm, double startMm) {
    assertEquals(Length.ofMm(startMm), Targets.nockingStart(Length.ofMm(tillerMm)));
  }

  @Test
  void aim_setUpFigureInTheBand_isKept() {
    assertEquals(Optional.of(Length.ofMm(220)), target(220, 230).aim(Length.ofMm(220)));
  }

  @Test
  void aim_setUpFigureOutside_nearestPointOneReadingStepInside() {
    Length step = Length.ofInches(0.0625);
    assertEquals(Optional.of(Length.ofMm(220).plus(step)), target(220, 230).aim(Length.ofMm(214)));
    assertEquals(Optional.of(Length.ofMm(230).minus(step)), target(220, 230).aim(Length.ofMm(236)));
  }

  @Test
  void aim_bandNarrowerThanTwoSteps_middle() {
    assertEquals(Optional.of(Length.ofMm(221)), target(220, 222).aim(Length.ofMm(240)));
    assertEquals(Optional.of(Length.ofMm(221)), target(220, 222).aim(Length.ofMm(200)));
  }

  @Test
  void aim_noSetUp_middleOfTheBand() {
    assertEquals(Optional.of(Length.ofMm(225)), target(220, 230).aim(null));
  }

  @Test
  void aim_noBand_setUpFigureOrNothing() {
    Target silent = new Target(null, null, "nothing speaks");
    assertEquals(Optional.of(Length.ofMm(150)), silent.aim(Length.ofMm(150)));
    assertEquals(Optional.empty(), silent.aim(null));
  }

  private static Target target(double lowMm, double highMm) {
    return new Target(Band.ofMm(lowMm, highMm), null, "a band");
  }
}
