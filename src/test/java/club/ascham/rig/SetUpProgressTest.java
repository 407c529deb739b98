package club.ascham.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.bow.BracePoint;
import club.ascham.bow.BraceTable;
import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.Level;
import club.ascham.bow.LimbSize;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RigSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.SetUpSheet;
import club.ascham.bow.SetUpStep;
import club.ascham.bow.SetUpStep.Key;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringSpec;
import club.ascham.bow.Style;
import club.ascham.bow.Targets;
import club.ascham.setup.PermitAhead;
import club.ascham.setup.SetUpFinish;
import club.ascham.setup.StepTarget;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class SetUpProgressTest {
  private static final StringSpec STRING =
      new StringSpec(68, null, StringMaterial.POLYESTER, 12, null, null);
  private static final RigSpec ADJUSTABLE =
      new RigSpec(
          new RiserSpec(Build.ADJUSTABLE, Hand.RIGHT, 25, "ILF", null, 4.0, false),
          new LimbsSpec(
              Build.ADJUSTABLE, LimbSize.MEDIUM, null, "ILF", null, 22, 28, 25, Known.YES, null),
          null,
          STRING,
          Style.SPLIT_FINGER);
  private static final RigSpec ONE_PIECE =
      new RigSpec(
          null,
          null,
          new OnePieceSpec(null, 48, 10, 24, Known.NO, Band.ofMm(146, 171)),
          STRING,
          Style.SPLIT_FINGER);

  private static List<SetUpStep> sheet(RigSpec rig) {
    return SetUpSheet.steps(rig, targets(rig), Level.BEGINNER);
  }

  private static Targets targets(RigSpec rig) {
    return Targets.of(rig, BraceTable.TRADE_OUTREACH_2020, null, null);
  }

  private static SetUpProgress done(RigSpec rig, String keys) {
    return new SetUpProgress(sheet(rig), StepsDone.of(keys));
  }

  private static SetUpProgress through(RigSpec rig) {
    StepsDone all = StepsDone.of("");
    for (SetUpStep step : sheet(rig)) {
      all = all.with(step.key());
    }
    return new SetUpProgress(sheet(rig), all);
  }

  private static SetUpFigures figures(double braceMm, double upperMm, double lowerMm) {
    return new SetUpFigures(
        Length.ofMm(braceMm),
        BracePoint.GRIP_THROAT,
        Length.ofMm(upperMm),
        Length.ofMm(lowerMm),
        Length.ofMm(4),
        true,
        null,
        null,
        null);
  }

  @Test
  void theFirstStepNotDone_isNext() {
    assertEquals(Key.STRING_ON, done(ADJUSTABLE, "LIMBS,LOOPS").next().orElseThrow().key());
  }

  @Test
  void aStepBeforeItsTurn_isRefusedByNamingWhatComesFirst() {
    Obstacle refusal =
        done(ADJUSTABLE, "LIMBS,LOOPS").refusal(EnumSet.of(Key.BRACE), true).orElseThrow();

    assertTrue(refusal.reason().contains("String on, with the stringer"));
  }

  @Test
  void severalStepsInOnePiece_areTakenTogether() {
    assertTrue(
        done(ADJUSTABLE, "LIMBS,LOOPS")
            .refusal(EnumSet.of(Key.STRING_ON, Key.STRING_LINE, Key.BRACE), true)
            .isEmpty());
  }

  @Test
  void aDoneStep_mayBeDoneOnceMore() {
    assertTrue(
        done(ADJUSTABLE, "LIMBS,LOOPS,STRING_ON").refusal(EnumSet.of(Key.LOOPS), true).isEmpty());
  }

  @Test
  void tillerByBolts_needsThePermit_andTillerOfAFixedBowDoesNot() {
    String beforeTiller = "LIMBS,LOOPS,STRING_ON,STRING_LINE,BRACE";

    assertTrue(done(ADJUSTABLE, beforeTiller).refusal(EnumSet.of(Key.TILLER), false).isPresent());
    assertTrue(done(ADJUSTABLE, beforeTiller).refusal(EnumSet.of(Key.TILLER), true).isEmpty());
    assertTrue(done(ONE_PIECE, beforeTiller).refusal(EnumSet.of(Key.TILLER), false).isEmpty());
  }

  @Test
  void whoLacksThePermit_isToldAtTheBeginning_atWhichStepTheyStop() {
    String ahead = PermitAhead.of(done(ADJUSTABLE, ""), false);
    assertTrue(ahead.startsWith("Step 6, Tiller, is only for someone who holds the permit"), ahead);
    assertTrue(ahead.contains("the string comes off there"), ahead);
    assertEquals(ahead, PermitAhead.of(done(ADJUSTABLE, "LIMBS,LOOPS"), false));
    assertNull(PermitAhead.of(done(ADJUSTABLE, ""), true));
    assertNull(PermitAhead.of(done(ONE_PIECE, ""), false), "nothing of it needs the permit");
    assertNull(PermitAhead.of(through(ADJUSTABLE), false), "it is done");
    String refused =
        done(ADJUSTABLE, "LIMBS,LOOPS,STRING_ON,STRING_LINE,BRACE")
            .refusal(EnumSet.of(Key.TILLER), false)
            .orElseThrow()
            .message();
    assertTrue(refused.contains("Take the string off with the stringer"), refused);
  }

  @Test
  void stepsDone_areKeptInTheOrderOfTheBench() {
    assertEquals("LIMBS,BRACE", StepsDone.of("BRACE").with(Key.LIMBS).text());
    assertEquals("", StepsDone.of("").text());
  }

  @Test
  void finish_namesEverythingThatIsMissing() {
    SetUpFigures empty = new SetUpFigures(null, null, null, null, null, false, null, null, null);

    List<Obstacle> refusals =
        SetUpFinish.refusals(ADJUSTABLE, targets(ADJUSTABLE), empty, through(ADJUSTABLE));

    assertEquals(
        List.of(
            "Still missing: brace height; both tiller distances; the height of the nocking point;"
                + " that the locking screws were seen."),
        refusals.stream().map(Obstacle::reason).toList());
  }

  @Test
  void finish_asksWhereBraceWasMeasuredFrom() {
    SetUpFigures from =
        new SetUpFigures(
            Length.ofMm(215),
            null,
            Length.ofMm(190),
            Length.ofMm(186),
            Length.ofMm(4),
            true,
            null,
            null,
            null);

    assertEquals(
        List.of("the point that brace was measured from"), SetUpFinish.missing(ADJUSTABLE, from));
  }

  @Test
  void finish_ofAOnePieceBow_asksForNoScrews() {
    SetUpFigures withoutScrews =
        new SetUpFigures(
            Length.ofMm(160),
            BracePoint.GRIP_THROAT,
            Length.ofMm(140),
            Length.ofMm(138),
            Length.ofMm(4),
            false,
            null,
            null,
            null);

    assertTrue(
        SetUpFinish.refusals(ONE_PIECE, targets(ONE_PIECE), withoutScrews, through(ONE_PIECE))
            .isEmpty());
  }

  @Test
  void finish_withUnknownTurnsAndTwists_isAllowed() {
    assertTrue(
        SetUpFinish.refusals(
                ADJUSTABLE, targets(ADJUSTABLE), figures(215, 190, 186), through(ADJUSTABLE))
            .isEmpty());
  }

  @Test
  void finish_withAStepLeft_namesIt() {
    SetUpProgress allButOne =
        new SetUpProgress(
            sheet(ADJUSTABLE),
            StepsDone.of(
                "LIMBS,LOOPS,STRING_ON,STRING_LINE,BRACE,TILLER,BRACE_AGAIN,ALIGNMENT,BOLTS_HELD,"
                    + "REST,CENTRE_SHOT,NOCKING_POINT"));

    assertEquals(
        "Not done yet: Button.",
        SetUpFinish.refusals(ADJUSTABLE, targets(ADJUSTABLE), figures(215, 190, 186), allButOne)
            .get(0)
            .reason());
  }

  @Test
  void finish_withAFigureBeyondItsOuterBand_isRefused() {
    List<Obstacle> refusals =
        SetUpFinish.refusals(
            ADJUSTABLE, targets(ADJUSTABLE), figures(180, 190, 170), through(ADJUSTABLE));

    assertEquals(List.of("brace", "tillerUpper"), refusals.stream().map(Obstacle::field).toList());
  }

  @Test
  void finish_ofABowWhoseTillerNothingSets_sendsItToItsMaker() {
    Obstacle refusal =
        SetUpFinish.refusals(
                ONE_PIECE, targets(ONE_PIECE), figures(160, 140, 143), through(ONE_PIECE))
            .get(0);

    assertTrue(refusal.remedy().contains("withdraw it"));
    assertFalse(refusal.remedy().contains("bolts"));
  }

  @Test
  void theNockingPoint_isTriedFirstWhereTillerSays() {
    SetUpStep nocking =
        sheet(ADJUSTABLE).stream()
            .filter(s -> s.key() == Key.NOCKING_POINT)
            .findFirst()
            .orElseThrow();

    StepTarget target =
        StepTarget.of(nocking, targets(ADJUSTABLE), figures(215, 190, 185.2375), LengthUnit.INCH);

    assertEquals("start 3/16 in above square", target.large());
    assertEquals("4.8 mm; within 0 to 1/2 in", target.small());
  }

  @Test
  void aBandTarget_isLargeInTheOwnUnitAndSmallInTheOther() {
    SetUpStep brace =
        sheet(ADJUSTABLE).stream().filter(s -> s.key() == Key.BRACE).findFirst().orElseThrow();

    StepTarget inches =
        StepTarget.of(brace, targets(ADJUSTABLE), figures(215, 190, 186), LengthUnit.INCH);
    StepTarget millimetres =
        StepTarget.of(brace, targets(ADJUSTABLE), figures(215, 190, 186), LengthUnit.MILLIMETRE);

    assertEquals(new StepTarget("8 to 9 in", "203 to 229 mm"), inches);
    assertEquals(new StepTarget("203 to 229 mm", "8 to 9 in"), millimetres);
  }
}
