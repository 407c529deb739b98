package club.ascham.verdict;

import static club.ascham.verdict.Remark.words;
import static club.ascham.verdict.SeenBows.adjustable;
import static club.ascham.verdict.SeenBows.reading;
import static club.ascham.verdict.SeenBows.seated;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.BracePoint;
import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.TwistLimits;
import club.ascham.units.Length;
import club.ascham.verdict.BenchStep.Key;
import club.ascham.verdict.Verdict.AdjustFirst;
import club.ascham.verdict.Verdict.FitToIssue;
import club.ascham.verdict.Verdict.Withdraw;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AfterAdjustmentTest {
  private static final Turns UPPER_IN_LOWER_OUT = new Turns(0.25, -0.25);
  private static final Reading TILLER_HIGH = reading(220, 184.75, 175.25);
  private final Judge judge = new Judge(new BenchAdvice(TwistLimits.IN_PRINT, OwnRecord.NONE));

  @Test
  void movedTheRightWayIntoTheBand_isFit() {
    WorkDone done = new WorkDone(null, UPPER_IN_LOWER_OUT, TILLER_HIGH);
    assertInstanceOf(FitToIssue.class, after(done, reading(220, 182.5, 177.5), true));
  }

  @Test
  void movedTheRightWayButNotEnough_isAdjustedFurther() {
    WorkDone done = new WorkDone(null, UPPER_IN_LOWER_OUT, TILLER_HIGH);
    AdjustFirst adjust = adjust(done, reading(220, 184, 176.5), true);
    assertEquals(Optional.of(0.25), adjust.steps().get(2).amount());
    assertFalse(adjust.forWorkshop());
  }

  @Test
  void movedTheWrongWay_isPutBackAndGoesToTheWorkshop() {
    WorkDone done = new WorkDone(null, UPPER_IN_LOWER_OUT, TILLER_HIGH);
    AdjustFirst adjust = adjust(done, reading(220, 186.75, 174.25), true);
    assertEquals(
        List.of(
            Key.LOOK_ALONG,
            Key.STRING_OFF,
            Key.LOCK_LOOSENED,
            Key.UPPER_BOLT,
            Key.LOWER_BOLT,
            Key.LOCK_TIGHTENED,
            Key.TO_WORKSHOP),
        adjust.steps().stream().map(BenchStep::key).toList());
    assertEquals(Optional.of(-0.25), adjust.steps().get(3).amount());
    assertEquals(Optional.of("Only back to where it stood."), adjust.steps().get(3).caution());
    assertEquals(Optional.of(0.25), adjust.steps().get(4).amount());
    assertTrue(adjust.forWorkshop());
  }

  @Test
  void movedTheWrongWayByOneReadingStep_provesNothing() {
    // 1.5875 mm is 1/16 in, the finest a bow square is read to.
    WorkDone done = new WorkDone(null, new Turns(0.25, 0), reading(220, 182, 178));
    assertInstanceOf(FitToIssue.class, after(done, reading(220, 183.5875, 178), true));
    assertTrue(adjust(done, reading(220, 183.6, 178), true).forWorkshop());
  }

  @Test
  void putBack_saysWhoFindsOutWhy() {
    WorkDone done = new WorkDone(null, UPPER_IN_LOWER_OUT, TILLER_HIGH);
    Reading worse = reading(220, 186.75, 174.25);
    assertTrue(
        adjust(done, worse, true).steps().get(6).words().contains("before a bolt is turned again"));
    assertTrue(adjust(done, worse, false).steps().get(2).words().contains("a permit holder puts"));
  }

  @Test
  void movedTheWrongWayAndNoPermit_nobodyTurnsABolt() {
    WorkDone done = new WorkDone(null, UPPER_IN_LOWER_OUT, TILLER_HIGH);
    AdjustFirst adjust = adjust(done, reading(220, 186.75, 174.25), false);
    assertFalse(adjust.steps().stream().anyMatch(step -> step.key().turnsBolt()));
    assertEquals(Key.TO_WORKSHOP, adjust.steps().get(2).key());
  }

  @Test
  void lowerBoltIn_tillerFell_isTheWrongWay() {
    WorkDone done = new WorkDone(null, new Turns(0, 0.25), reading(220, 178, 180));
    AdjustFirst adjust = adjust(done, reading(220, 177, 181), true);
    assertTrue(words(adjust.reasons()).get(0).startsWith("Tiller moved the wrong way"));
    assertEquals(
        List.of(Optional.of(-0.25)),
        adjust.steps().stream()
            .filter(step -> step.key() == Key.LOWER_BOLT || step.key() == Key.UPPER_BOLT)
            .map(BenchStep::amount)
            .toList());
  }

  @Test
  void movedTheWrongWayIntoTheBand_isPutBackAllTheSame() {
    WorkDone done = new WorkDone(null, new Turns(0, 0.25), reading(220, 186, 178));
    AdjustFirst adjust = adjust(done, reading(220, 183, 178), true);
    assertTrue(adjust.forWorkshop());
  }

  @Test
  void movedTheWrongWayByLessThanAReadingStep_provesNothing() {
    WorkDone done = new WorkDone(null, new Turns(0.25, 0), reading(220, 184, 179));
    assertInstanceOf(FitToIssue.class, after(done, reading(220, 183.5, 177.5), true));
    assertTrue(adjust(done, reading(220, 182, 175.3), true).forWorkshop());
  }

  @Test
  void noBoltTurned_tillerMoved_isJudgedAsEver() {
    WorkDone done = new WorkDone(-10, Turns.NONE, reading(225, 184, 180));
    assertInstanceOf(FitToIssue.class, after(done, reading(220, 184, 178), true));
  }

  @Test
  void twistsOutAndBraceRose_looksBeforeMoreTwisting() {
    WorkDone done = new WorkDone(-10, Turns.NONE, reading(224, 182, 178));
    AdjustFirst adjust = adjust(done, reading(226, 182, 178), false);
    assertTrue(words(adjust.reasons()).get(0).startsWith("Brace moved the wrong way"));
    assertEquals(Key.COUNT_TWISTS, adjust.steps().get(1).key());
    assertEquals(Key.LOOK_AT_LIMBS, adjust.steps().get(2).key());
  }

  @Test
  void twistsInAndBraceRose_isTheRightWay() {
    WorkDone done = new WorkDone(10, Turns.NONE, reading(214, 182, 178));
    assertInstanceOf(FitToIssue.class, after(done, reading(218, 182, 178), false));
  }

  @Test
  void braceBeforeFromAnotherPoint_provesNothing() {
    Reading before =
        new Reading(Length.ofMm(210), BracePoint.BUTTON, Length.ofMm(182), Length.ofMm(178));
    WorkDone done = new WorkDone(-10, Turns.NONE, before);
    assertInstanceOf(FitToIssue.class, after(done, reading(220, 182, 178), false));
  }

  @Test
  void aStopSeenAfterwards_withdrawsWhateverTillerDid() {
    WorkDone done = new WorkDone(null, UPPER_IN_LOWER_OUT, TILLER_HIGH);
    Seen seen =
        SeenBows.seen(
            reading(220, 186.75, 174.25), new Sign(BowPart.LIMBS, Gravity.STOP, "a crack"));
    assertInstanceOf(Withdraw.class, judge.afterAdjustment(adjustable(), done, seen, true));
  }

  @Test
  void notMeasuredAfterwards_isAskedFor() {
    WorkDone done = new WorkDone(null, UPPER_IN_LOWER_OUT, TILLER_HIGH);
    Seen seen = SeenBows.seen(null, SeenBows.signs(), Reported.NOTHING, List.of(), true);
    assertInstanceOf(AskAgain.class, judge.afterAdjustment(adjustable(), done, seen, true));
  }

  @Test
  void boltsTurnedWhereNoneSetsTiller_isRefused() {
    WorkDone done = new WorkDone(null, new Turns(0.25, 0), reading(195, 162, 158));
    OnRecord bow = SeenBows.screwIn();
    Seen seen = seated(reading(195, 162, 158));
    assertThrows(
        IllegalArgumentException.class, () -> judge.afterAdjustment(bow, done, seen, true));
  }

  private Judgement after(WorkDone done, Reading now, boolean permit) {
    return judge.afterAdjustment(adjustable(), done, seated(now), permit);
  }

  private AdjustFirst adjust(WorkDone done, Reading now, boolean permit) {
    return assertInstanceOf(AdjustFirst.class, after(done, now, permit));
  }
}
