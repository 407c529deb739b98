package club.ascham.verdict;

import static club.ascham.verdict.Checks.adjustable;
import static club.ascham.verdict.Checks.following;
import static club.ascham.verdict.Checks.reading;
import static club.ascham.verdict.Checks.seated;
import static club.ascham.verdict.Checks.seen;
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
