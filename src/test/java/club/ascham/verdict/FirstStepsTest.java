package club.ascham.verdict;

import static club.ascham.verdict.Remark.words;
import static club.ascham.verdict.SeenBows.adjustable;
import static club.ascham.verdict.SeenBows.following;
import static club.ascham.verdict.SeenBows.reading;
import static club.ascham.verdict.SeenBows.seated;
import static club.ascham.verdict.SeenBows.seen;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.TwistLimits;
import club.ascham.verdict.BenchStep.Key;
import club.ascham.verdict.Verdict.AdjustFirst;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What comes first when a bow is not as it should be: the look that its reason asks for. */
class FirstStepsTest {
  private final Judge judge = new Judge(new BenchAdvice(TwistLimits.IN_PRINT, OwnRecord.NONE));

  @ParameterizedTest(name = "brace {0}, upper {1}, lower {2}, seated {3}: {4}")
  @CsvSource({
    "212, 182, 178, false, brace lost within its limits",
    "204, 182, 178, false, brace lost beyond its limits",
    "194, 182, 178, true,  and still beyond once limbs and loops are seated",
    "220, 187, 176, false, tiller beyond its limits",
    "220, 174.9, 178, false, a distance moved unexplained",
    "235, 182, 178, false, brace beyond its limits upward"
  })
  void theWholeLookComesFirst_withItsCaution(
      double brace, double upper, double lower, boolean seated) {
    Reading now = following(adjustable(), brace, upper, lower);
    AdjustFirst adjust = adjust(seated ? seated(now) : seen(now));
    assertEquals(List.of(Key.LOOK_ALONG, Key.STRING_OFF), keys(adjust).subList(0, 2));
    assertEquals(1, keys(adjust).stream().filter(Key.LOOK_ALONG::equals).count());
    assertTrue(adjust.steps().get(0).words().contains("along both limbs for a crack"));
    assertEquals("Don't draw it before you have looked.", adjust.steps().get(0).danger());
  }

  @Test
  void bothDistancesMovedAlike_isMeasuredAgainBeforeTheStringComesOff() {
    AdjustFirst adjust = adjust(seen(reading(230, 182, 178)));
    assertTrue(
        words(adjust.reasons()).toString().contains("was brace measured from the same point?"));
    assertEquals(List.of(Key.SAME_POINT, Key.STRING_OFF), keys(adjust).subList(0, 2));
    assertTrue(adjust.steps().get(0).words().contains("from the throat of the grip"));
  }

  @ParameterizedTest(name = "brace {0}: {1}")
  @CsvSource({"228.6, COUNT_TWISTS", "240, COUNT_TWISTS", "214, TWISTS"})
  void braceTooHigh_theTwistsAreCountedFirst(double brace, Key first) {
    List<Key> keys = keys(adjust(seen(following(adjustable(), brace, 182, 178))));
    assertEquals(first, keys.get(keys.indexOf(Key.STRING_OFF) + 1));
  }

  @Test
  void braceTooHighOnAnOverdueString_countsThenAnother_andSpeaksOfNoTwistsGoingIn() {
    OnRecord usual = adjustable();
    OnRecord worn =
        SeenBows.onRecord(
            usual.rig(),
            usual.setUp(),
            usual.targets(),
            usual.scatter(),
            null,
            false,
            "it is overdue");
    AdjustFirst high = adjust(worn, seen(following(usual, 228.6, 182, 178)));
    assertEquals(List.of(Key.STRING_OFF, Key.COUNT_TWISTS, Key.OTHER_STRING), keys(high));
    assertTrue(high.steps().get(2).words().startsWith("Only then fit another string"));
    assertFalse(SeenBows.said(high).contains("no twists go into"), SeenBows.said(high));
    AdjustFirst low = adjust(worn, seen(following(usual, 214, 182, 178)));
    assertTrue(SeenBows.said(low).contains("no twists go into this one, it is overdue"));
  }

  @Test
  void moreTwistsMayBeNeededThanItHasRoomFor_theChanceIsSaid() {
    AdjustFirst adjust = adjust(seen(following(adjustable(), 228.6, 182, 178)));
    TwistAdvice twists = adjust.twists().orElseThrow();
    assertTrue(twists.high() == null || -twists.high() > twists.room());
    assertTrue(twists.chance() >= 0.5);
    assertTrue(
        SeenBows.said(adjust)
            .contains("with a chance of about %.0f in 100".formatted(100 * twists.chance())),
        SeenBows.said(adjust));
  }

  @Test
  void uncountedTwistsThatShowNothing_areAskedForBeforeMore() {
    Reading low = following(adjustable(), 214, 182, 178);
    WorkDone uncounted = new WorkDone(null, Turns.NONE, low);
    AdjustFirst asked =
        assertInstanceOf(
            AdjustFirst.class, judge.afterAdjustment(adjustable(), uncounted, seen(low), true));
    assertFalse(keys(asked).contains(Key.TWISTS));
    assertTrue(keys(asked).contains(Key.COUNT_TWISTS));
    assertTrue(words(asked.reasons()).get(0).contains("how many were put in"));
    WorkDone counted = new WorkDone(2, Turns.NONE, low);
    AdjustFirst more =
        assertInstanceOf(
            AdjustFirst.class, judge.afterAdjustment(adjustable(), counted, seen(low), true));
    assertTrue(keys(more).contains(Key.TWISTS));
  }

  private AdjustFirst adjust(Seen seen) {
    return adjust(adjustable(), seen);
  }

  private AdjustFirst adjust(OnRecord bow, Seen seen) {
    return assertInstanceOf(AdjustFirst.class, judge.verdict(bow, seen, true));
  }

  private static List<Key> keys(AdjustFirst adjust) {
    return adjust.steps().stream().map(BenchStep::key).toList();
  }
}
