package club.ascham.verdict;

import club.ascham.units.Length;
import club.ascham.verdict.AskAgain.About;
import club.ascham.verdict.AskAgain.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.stream.LongStream;

/** What must be answered before a bow that nothing stops can be judged. */
final class OpenQuestions {
  /** Three figures closer together than this are one, typed three times: judged. */
  private static final Length ONE_FIGURE = Length.ofMm(5);

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
    if (reading != null && isOneFigure(bow, reading)) {
      open.add(
          new Question(
              About.BRACE,
              "Brace and both tiller distances are nearly the same. Brace is from the string to the"
                  + " grip, the distances to the limbs where they leave the riser. Measure each of"
                  + " the three."));
    }
    open.addAll(ofLooks(bow, seen));
    return open;
  }

  /** What was not looked at yet. */
  static List<Question> ofLooks(OnRecord bow, Seen seen) {
    List<Question> open = new ArrayList<>();
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

  /** The same figure three times, on a bow of which the three are not the same. */
  static boolean isOneFigure(OnRecord bow, Reading reading) {
    return spread(reading).compareTo(ONE_FIGURE) <= 0
        && spread(bow.distancesFrom()).compareTo(ONE_FIGURE) > 0;
  }

  private static Length spread(Reading reading) {
    LongSummaryStatistics three =
        LongStream.of(
                reading.brace().units(),
                reading.tillerUpper().units(),
                reading.tillerLower().units())
            .summaryStatistics();
    return new Length(three.getMax() - three.getMin());
  }
}
