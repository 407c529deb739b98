package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.SetUpStep.Figure;
import club.ascham.bow.SetUpStep.Key;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class SetUpSheetTest {
  private static final Targets TARGETS =
      new Targets(
          new Target(Band.ofInches(8.5, 8.75), Band.ofInches(8, 9.25), "a table"),
          new Target(Band.ofMm(0, 6), Band.ofMm(-4, 10), "a style"),
          new Target(Band.ofInches(0, 0.5), null, "a window"));

  @Test
  void steps_adjustableBeginner_inTheSafeOrder() {
    assertEquals(
        List.of(
            Key.LIMBS,
            Key.LOOPS,
            Key.STRING_ON,
            Key.STRING_LINE,
            Key.BRACE,
            Key.TILLER,
            Key.BRACE_AGAIN,
            Key.ALIGNMENT,
            Key.BOLTS_HELD,
            Key.REST,
            Key.CENTRE_SHOT,
            Key.BUTTON,
            Key.NOCKING_POINT),
        keys(adjustable(), Level.BEGINNER));
  }

  @Test
  void steps_screwInBeginner_noBraceAgainSinceNoBoltMovesIt() {
    assertEquals(
        List.of(
            Key.LIMBS,
            Key.LOOPS,
            Key.STRING_ON,
            Key.STRING_LINE,
            Key.BRACE,
            Key.TILLER,
            Key.ALIGNMENT,
            Key.BOLTS_HELD,
            Key.REST,
            Key.CENTRE_SHOT,
            Key.BUTTON,
            Key.NOCKING_POINT),
        keys(screwIn(), Level.BEGINNER));
  }

  @Test
  void steps_onePiece_startWithTheStringAndKnowNoBolts() {
    List<Key> keys = keys(onePiece(), Level.BEGINNER);
    assertEquals(Key.LOOPS, keys.get(0));
    assertFalse(keys.contains(Key.BOLTS_HELD));
    assertFalse(keys.contains(Key.BRACE_AGAIN));
  }

  @Test
  void steps_fuller_goOnAfterTheNockingPoint() {
    List<Key> keys = keys(adjustable(), Level.FULLER);
    assertEquals(keys(adjustable(), Level.BEGINNER), keys.subList(0, 13));
    assertEquals(
        List.of(
            Key.SIGHT,
            Key.STABILISERS,
            Key.BALANCE_SIDE_TO_SIDE,
            Key.BALANCE_UP_AND_DOWN,
            Key.BALANCE_FORE_AND_AFT,
            Key.CLICKER),
        keys.subList(13, keys.size()));
  }

  @ParameterizedTest
  @MethodSource("everyRig")
  void steps_everyRig_eachStepSaysWhatToWhatHowFarAndWhy(RigSpec rig, Level level) {
    for (SetUpStep step : SetUpSheet.steps(rig, TARGETS, level)) {
      for (String words :
          List.of(step.title(), step.what(), step.target(), step.tolerance(), step.why())) {
        assertFalse(words.isBlank(), step.key() + " leaves something unsaid");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("everyRig")
  void steps_everyRig_lineIsSeenBeforeAnythingIsDrawnOrMeasured(RigSpec rig, Level level) {
    List<Key> keys = keys(rig, level);
    assertEquals(keys.indexOf(Key.STRING_ON) + 1, keys.indexOf(Key.STRING_LINE));
    assertEquals(keys.indexOf(Key.STRING_LINE) + 1, keys.indexOf(Key.BRACE));
    assertTrue(step(rig, Key.STRING_LINE).caution().orElseThrow().startsWith("Do not draw"));
  }

  @ParameterizedTest
  @MethodSource("everyRig")
  void steps_everyRig_writeDownEachFigureOnce(RigSpec rig, Level level) {
    List<Figure> figures =
        SetUpSheet.steps(rig, TARGETS, level).stream()
            .map(SetUpStep::figure)
            .flatMap(Optional::stream)
            .toList();
    List<Figure> expected =
        switch (rig.build()) {
          case ADJUSTABLE ->
              List.of(
                  Figure.TILLER_UPPER_AND_LOWER,
                  Figure.BRACE,
                  Figure.LOCKING_SCREWS_SEEN,
                  Figure.NOCKING);
          case SCREW_IN ->
              List.of(
                  Figure.BRACE,
                  Figure.TILLER_UPPER_AND_LOWER,
                  Figure.LOCKING_SCREWS_SEEN,
                  Figure.NOCKING);
          case ONE_PIECE -> List.of(Figure.BRACE, Figure.TILLER_UPPER_AND_LOWER, Figure.NOCKING);
        };
    assertEquals(expected, figures);
  }

  @ParameterizedTest
  @EnumSource(
      value = Build.class,
      names = {"SCREW_IN", "ONE_PIECE"})
  void steps_fixedTiller_nothingIsTurned(Build build) {
    RigSpec rig = build == Build.SCREW_IN ? screwIn() : onePiece();
    for (SetUpStep step : SetUpSheet.steps(rig, TARGETS, Level.BEGINNER)) {
      assertFalse(step.what().contains("quarter turn"), step.key().toString());
      assertFalse(step.what().toLowerCase().contains("locking screw"), step.key().toString());
      assertFalse(step.who() == Who.PERMIT_HOLDER, step.key().toString());
    }
    assertTrue(step(rig, Key.TILLER).what().contains("Nothing sets it"));
    assertTrue(step(rig, Key.ALIGNMENT).what().contains("Nothing moves the limbs sideways"));
  }

  @Test
  void limbs_slotInOrAreBoltedByTheirBuild() {
    assertTrue(step(adjustable(), Key.LIMBS).what().contains("Slot the one marked U"));
    assertTrue(step(screwIn(), Key.LIMBS).what().contains("Bolt the one marked U"));
  }

  @Test
  void tiller_isMeasuredWhereTheLimbLeavesTheRiserOrBeginsToCurve() {
    assertTrue(step(screwIn(), Key.TILLER).what().contains("where it meets the riser"));
    assertTrue(step(onePiece(), Key.TILLER).what().contains("where the limb begins to curve"));
  }

  @Test
  void nockingPoint_hasNoOuterBand_isTiedAgain() {
    assertEquals(
        "Outside that window: tie it again", step(adjustable(), Key.NOCKING_POINT).tolerance());
  }

  @Test
  void tiller_adjustable_isForThePermitHolderWithTheStringOff() {
    SetUpStep tiller = step(adjustable(), Key.TILLER);
    assertEquals(Who.PERMIT_HOLDER, tiller.who());
    assertTrue(tiller.what().contains("string off, loosen the locking screws"));
    assertTrue(tiller.caution().orElseThrow().contains("Never turn a limb bolt on a strung bow"));
  }

  @Test
  void tiller_turnsUnknown_noneOut() {
    assertTrue(step(adjustable(), Key.TILLER).danger().endsWith("turn no bolt out."));
  }

  @Test
  void tiller_turnsKnown_neverBeyondThem() {
    RigSpec rig =
        withRiser(new RiserSpec(Build.ADJUSTABLE, Hand.RIGHT, 25, "ILF", null, 4.0, true));
    assertTrue(
        step(rig, Key.TILLER).danger().endsWith("Never further out than the maker's 4 turns."));
  }

  @Test
  void alignment_lateralRiser_isMovedByThePermitHolder() {
    RigSpec rig =
        withRiser(new RiserSpec(Build.ADJUSTABLE, Hand.RIGHT, 25, "ILF", null, null, true));
    assertEquals(Who.PERMIT_HOLDER, step(rig, Key.ALIGNMENT).who());
    assertTrue(step(rig, Key.ALIGNMENT).what().contains("move the limb sideways at its pocket"));
  }

  @Test
  void alignment_noLateralAdjustment_isLookedAtByAnyVolunteer() {
    assertEquals(Who.VOLUNTEER, step(adjustable(), Key.ALIGNMENT).who());
    assertTrue(step(adjustable(), Key.ALIGNMENT).caution().isEmpty());
  }

  // Easton, Arrow Tuning and Maintenance Guide, p. 3, as at manualsbrain.com (R): for a finger
  // release the point lies 1/16 to 1/8 in (1.6 to 3.2 mm) outside the string.
  @Test
  @DisplayName(
      "centre shot 1/16 to 1/8 in outside the string, mirrored by hand (an arrow maker's guide, p."
          + " 3)")
  void centreShot_mirroredForTheOtherHand() {
    RigSpec left =
        withRiser(new RiserSpec(Build.ADJUSTABLE, Hand.LEFT, 25, "ILF", null, null, false));
    assertEquals(
        "Point of the arrow 1/16 to 1/8 in (1.6 to 3.2 mm) to the left of the string, seen from"
            + " behind",
        step(adjustable(), Key.CENTRE_SHOT).target());
    assertEquals(
        "Point of the arrow 1/16 to 1/8 in (1.6 to 3.2 mm) to the right of the string, seen from"
            + " behind",
        step(left, Key.CENTRE_SHOT).target());
    assertTrue(step(onePiece(), Key.CENTRE_SHOT).target().endsWith("away from the riser"));
  }

  @Test
  void target_bandKnown_isShownInBothUnits() {
    SetUpStep brace = step(adjustable(), Key.BRACE);
    assertEquals("8 1/2 in · 216 mm to 8 3/4 in · 222 mm", brace.target());
    assertTrue(brace.tolerance().contains("9 1/4 in · 235 mm"));
    assertEquals("a table", brace.why());
  }

  @Test
  void target_noBandKnown_sendsToTheMaker() {
    Targets silent =
        new Targets(new Target(null, null, "silence"), TARGETS.tiller(), TARGETS.nocking());
    SetUpStep brace =
        SetUpSheet.steps(screwIn(), silent, Level.BEGINNER).stream()
            .filter(step -> step.key() == Key.BRACE)
            .findFirst()
            .orElseThrow();
    assertTrue(brace.target().contains("maker's own figure"));
    assertTrue(brace.tolerance().contains("write down what was measured"));
  }

  @Test
  void clicker_notForABeginner_setWithTheCoach() {
    SetUpStep clicker =
        SetUpSheet.steps(adjustable(), TARGETS, Level.FULLER).stream()
            .filter(step -> step.key() == Key.CLICKER)
            .findFirst()
            .orElseThrow();
    assertEquals(Who.COACH, clicker.who());
    assertTrue(clicker.what().startsWith("Not for a beginner"));
  }

  private static Stream<Arguments> everyRig() {
    return Stream.of(adjustable(), screwIn(), onePiece())
        .flatMap(rig -> Stream.of(Level.values()).map(level -> Arguments.of(rig, level)));
  }

  private static RigSpec adjustable() {
    return Bows.adjustableRig(28, Style.SPLIT_FINGER);
  }

  private static RigSpec screwIn() {
    return Bows.screwInRig(62, 18);
  }

  private static RigSpec onePiece() {
    return Bows.onePieceRig(54, 14);
  }

  private static RigSpec withRiser(RiserSpec riser) {
    return Bows.rig(
        riser, Bows.slotInLimbs(LimbSize.MEDIUM, 28), Bows.polyesterString(68), Style.SPLIT_FINGER);
  }

  private static List<Key> keys(RigSpec rig, Level level) {
    return SetUpSheet.steps(rig, TARGETS, level).stream().map(SetUpStep::key).toList();
  }

  private static SetUpStep step(RigSpec rig, Key key) {
    return SetUpSheet.steps(rig, TARGETS, Level.BEGINNER).stream()
        .filter(step -> step.key() == key)
        .findFirst()
        .orElseThrow();
  }
}
