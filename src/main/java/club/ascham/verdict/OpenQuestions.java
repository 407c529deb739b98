package club.ascham.verdict;

import club.ascham.verdict.AskAgain.About;
import club.ascham.verdict.AskAgain.Question;
import java.util.ArrayList;
import java.util.List;

/** What must be answered before a bow that nothing stops can be judged. */
final class OpenQuestions {
  private OpenQuestions() {}

  static List<Question> of(OnRecord bow, Seen seen) {
    List<Question> open = new ArrayList<>();
    Reading reading = seen.reading();
    if (reading == null) {
      open.add(new Question(About.BRACE, "Measure the brace height."));
      open.add(new Question(About.TILLER, "Measure the upper and the lower tiller distance."));
    } else if (reading.from() != bow.setUp().braceFrom()) {
      open.add(
          new Question(
              About.BRACE,
              "At the set-up brace was measured from %s, now from %s: the two can't be compared."
                      .formatted(Judge.words(bow.setUp().braceFrom()), Judge.words(reading.from()))
                  + " Measure again from %s.".formatted(Judge.words(bow.setUp().braceFrom()))));
    }
    for (Part part : Signs.mustAnswer(bow.rig().build())) {
      if (seen.signs().stream().noneMatch(sign -> sign.part() == part)) {
        open.add(
            new Question(
                About.of(part),
                "Look at the %s and say what you saw, also if all is fine."
                    .formatted(part.words())));
      }
    }
    return open;
  }
}
