package club.ascham.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.BracePoint;
import club.ascham.units.Length;
import club.ascham.verdict.AskAgain;
import club.ascham.verdict.BenchStep;
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
    assertFalse(words("Step LOOK_AT_LIMBS by volunteer: Look.").adjusts());
    assertFalse(words("Step COUNT_TWISTS by volunteer: Count.").adjusts());
    assertTrue(words("Step TWISTS +12.000 by volunteer: Put in 12.").adjusts());
    assertTrue(words("Step " + BenchStep.Key.UPPER_BOLT + " by permit-holder: Turn.").adjusts());
    assertFalse(new AdjustmentDone(null, null, 0.0, "seated").changedAnything());
    assertTrue(new AdjustmentDone(-3, null, null, null).changedAnything());
  }

  private static VerdictWords words(String step) {
    return VerdictWords.read(Verdict.Kind.ADJUST, step);
  }
}
