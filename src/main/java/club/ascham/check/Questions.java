package club.ascham.check;

import club.ascham.form.Refusal;
import club.ascham.measured.Measurement;
import club.ascham.verdict.AskAgain;
import club.ascham.verdict.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What is still to be measured or looked at before a check can be judged, each at its field.
 *
 * @param typed what is not asked for again: where it can't be read, that is its own fault
 */
record Questions(List<AskAgain.Question> questions, Set<Measurement> typed) {
  static Questions of(AskAgain ask, Reading reading, Set<Measurement> typed) {
    boolean braceGiven = !reading.isWhole() && typed.contains(Measurement.BRACE);
    return new Questions(
        ask.questions().stream()
            .filter(one -> !braceGiven || one.about() != AskAgain.About.BRACE)
            .toList(),
        typed);
  }

  /** Each at its field; of the two distances at the one that is missing. */
  List<Refusal> refusals() {
    List<Refusal> all = new ArrayList<>();
    for (AskAgain.Question question : questions) {
      switch (question.about()) {
        case BRACE -> all.add(new Refusal(Measurement.BRACE.field(), question.words()));
        case TILLER -> {
          measure(Measurement.TILLER_UPPER, "upper", all);
          measure(Measurement.TILLER_LOWER, "lower", all);
        }
        case EACH -> all.add(new Refusal("measuredEach", question.words()));
        case SEATED -> all.add(new Refusal("limbsSeated", question.words()));
        case STRING, LIMBS, BOLTS ->
            all.add(new Refusal(question.about().name().toLowerCase(), question.words()));
      }
    }
    return all;
  }

  private void measure(Measurement distance, String which, List<Refusal> all) {
    if (!typed.contains(distance)) {
      all.add(new Refusal(distance.field(), "Measure the " + which + " tiller distance."));
    }
  }
}
