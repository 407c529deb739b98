package club.ascham.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.BracePoint;
import club.ascham.bow.Who;
import club.ascham.units.Length;
import club.ascham.verdict.AskAgain;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Given;
import club.ascham.verdict.Remark;
import club.ascham.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class AskedAgainTest {
  private static final AskAgain BOTH =
      new AskAgain(
          List.of(
              new AskAgain.Question(AskAgain.About.BRACE, "Measure the brace height."),
              new AskAgain.Question(AskAgain.About.TILLER, "Measure both.")));

  @Test
  void braceThatIsTyped_isNotAskedForBecauseOfATiller() {
    Measured typed =
        new Measured(
            Length.ofMm(208),
            "208 mm",
            BracePoint.GRIP_THROAT,
            null,
            "zz",
            Length.ofMm(178),
            "178");
    assertEquals(
        List.of(AskAgain.About.TILLER),
        Questions.of(BOTH, typed).questions().stream().map(AskAgain.Question::about).toList());
    Measured nothing = new Measured(null, null, null, null, null, null, null);
    assertEquals(2, Questions.of(BOTH, nothing).questions().size());
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
