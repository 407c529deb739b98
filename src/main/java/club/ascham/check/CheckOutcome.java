package club.ascham.check;

import club.ascham.form.Typed;
import club.ascham.verdict.AskAgain;
import java.util.List;

/** How saving a check ended. */
sealed interface CheckOutcome {
  /** Kept and judged. */
  record Judged(long check, VerdictWords verdict) implements CheckOutcome {}

  /** The same form was sent before; this is the page it led to. */
  record PressedBefore(String page) implements CheckOutcome {}

  /** Nothing kept: each question goes to its field. */
  record Asked(List<AskAgain.Question> questions) implements CheckOutcome {
    /** Of what was measured, only what was not typed is asked for: the rest has its own fault. */
    static Asked of(AskAgain ask, Measured measured) {
      boolean braceGiven = measured.reading().isEmpty() && measured.braceTyped() != null;
      return new Asked(
          ask.questions().stream()
              .filter(one -> !braceGiven || one.about() != AskAgain.About.BRACE)
              .toList());
    }

    /** Puts each question at its field, or at the ones of its fields that are empty. */
    void tell(Typed typed) {
      for (AskAgain.Question question : questions) {
        switch (question.about()) {
          case BRACE -> typed.fault("brace", question.words());
          case TILLER -> {
            boolean neither = !typed.has("tillerUpper") && !typed.has("tillerLower");
            if (neither || !typed.has("tillerUpper")) {
              typed.fault("tillerUpper", "Measure the upper tiller distance.");
            }
            if (neither || !typed.has("tillerLower")) {
              typed.fault("tillerLower", "Measure the lower tiller distance.");
            }
          }
          case EACH -> typed.fault("measuredEach", question.words());
          case SEATED -> typed.fault("limbsSeated", question.words());
          case STRING, LIMBS, BOLTS ->
              typed.fault(question.about().name().toLowerCase(), question.words());
        }
      }
    }
  }

  /** Nothing kept: a part is on the bow that is not on its list; what is to be done about it? */
  record StrangerFound(String question) implements CheckOutcome {}

  /** Nothing kept. */
  record Refused(String field, String message) implements CheckOutcome {}
}
