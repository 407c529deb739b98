package club.ascham.check;

import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import club.ascham.verdict.AskAgain;
import java.util.ArrayList;
import java.util.List;

/** What is still to be measured or looked at before a check can be judged, each at its field. */
record Questions(List<AskAgain.Question> questions) {
  /** Of what was measured, only what was not typed is asked for: the rest has its own fault. */
  static Questions of(AskAgain ask, Measured measured) {
    boolean braceGiven = measured.reading().isEmpty() && measured.braceTyped() != null;
    return new Questions(
        ask.questions().stream()
            .filter(one -> !braceGiven || one.about() != AskAgain.About.BRACE)
            .toList());
  }

  /** Each question at its field, or at the ones of its fields that are empty. */
  List<Refusal> of(Measured measured) {
    return at(measured.upperTyped() != null, measured.lowerTyped() != null);
  }

  /** Puts each there. */
  void tell(Typed typed) {
    Refusal.at(typed, at(typed.has("tillerUpper"), typed.has("tillerLower")), "form");
  }

  private List<Refusal> at(boolean upperGiven, boolean lowerGiven) {
    List<Refusal> all = new ArrayList<>();
    for (AskAgain.Question question : questions) {
      switch (question.about()) {
        case BRACE -> all.add(new Refusal("brace", question.words()));
        case TILLER -> {
          boolean neither = !upperGiven && !lowerGiven;
          if (neither || !upperGiven) {
            all.add(new Refusal("tillerUpper", "Measure the upper tiller distance."));
          }
          if (neither || !lowerGiven) {
            all.add(new Refusal("tillerLower", "Measure the lower tiller distance."));
          }
        }
        case EACH -> all.add(new Refusal("measuredEach", question.words()));
        case SEATED -> all.add(new Refusal("limbsSeated", question.words()));
        case STRING, LIMBS, BOLTS ->
            all.add(new Refusal(question.about().name().toLowerCase(), question.words()));
      }
    }
    return all;
  }
}
