package club.ascham.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Who;
import club.ascham.check.VerdictWords.Step;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class VerdictWordsTest {
  @Test
  void whatIsKept_isReadBackAsItWasGiven() {
    VerdictWords given =
        new VerdictWords(
            Verdict.Kind.ADJUST,
            List.of("Brace is low.", "Tiller is off: by much."),
            List.of(
                new Step(
                    BenchStep.Key.STRING_OFF,
                    Who.VOLUNTEER,
                    null,
                    "Take it off.",
                    "Mind the tips."),
                new Step(BenchStep.Key.TWISTS, Who.VOLUNTEER, -8.0, "Take out 8.", null),
                new Step(BenchStep.Key.UPPER_BOLT, Who.PERMIT_HOLDER, 0.125, "Turn it: in.", null)),
            List.of("Brace about so much: no adjustment of this bow yet."),
            List.of(),
            List.of("Keep an eye on it."),
            List.of("A table | with a bar.", "Common practice."));
    assertEquals(given, VerdictWords.read(Verdict.Kind.ADJUST, given.text()));
  }

  @Test
  void aPlainSentence_isAReason() {
    VerdictWords read = VerdictWords.read(Verdict.Kind.FIT, "Looked over, nothing seen.");
    assertEquals(List.of("Looked over, nothing seen."), read.reasons());
    assertTrue(read.steps().isEmpty());
  }
}
