package club.ascham.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.BracePoint;
import club.ascham.bow.Who;
import club.ascham.measured.Measurement;
import club.ascham.units.Length;
import club.ascham.verdict.AskAgain;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Given;
import club.ascham.verdict.Reading;
import club.ascham.verdict.Remark;
import club.ascham.verdict.Verdict;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class AskedAgainTest {
  private static final AskAgain BOTH =
      new AskAgain(
          List.of(
              new AskAgain.Question(AskAgain.About.BRACE, "Measure the brace height."),
              new AskAgain.Question(AskAgain.About.TILLER, "Measure both.")));

  @Test
  void braceThatIsTyped_isNotAskedForBecauseOfATiller() {
    Reading typed = new Reading(Length.ofMm(208), BracePoint.GRIP_THROAT, null, Length.ofMm(178));
    assertEquals(
        List.of(AskAgain.About.TILLER),
        Questions.of(BOTH, typed, Set.copyOf(Measurement.READING)).questions().stream()
            .map(AskAgain.Question::about)
            .toList());
    assertEquals(2, Questions.of(BOTH, Reading.NOTHING, Set.of()).questions().size());
  }

  @Test
  void aLook_isNoAdjustment() {
    assertFalse(given(BenchStep.Key.LOOK_AT_LIMBS).adjusts());
    assertFalse(given(BenchStep.Key.COUNT_TWISTS).adjusts());
    assertTrue(given(BenchStep.Key.TWISTS).adjusts());
    assertTrue(given(BenchStep.Key.UPPER_BOLT).adjusts());
    assertFalse(new AdjustmentDone(null, null, 0.0, "seated").changedAnything());
    assertTrue(new AdjustmentDone(-3, null, null, null).changedAnything());
  }

  private static Given given(BenchStep.Key step) {
    return new Given(
        Verdict.Kind.ADJUST,
        List.of(),
        List.of(new BenchStep(step, Who.VOLUNTEER, null, Remark.asSaid("Do it."))),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }
}
