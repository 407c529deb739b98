package club.ascham.verdict;

import club.ascham.units.Length;
import club.ascham.verdict.AskAgain.About;
import club.ascham.verdict.AskAgain.Question;
import java.util.ArrayList;
import java.util.List;

/** What must be answered before a bow that nothing stops can be judged. */
final class OpenQuestions {
  /** Figures closer together than this may be one, typed twice or three times: judged. */
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
                      .formatted(Blank.point(bow.setUp().braceFrom()), Blank.point(reading.from()))
                  + " Measure again from %s.".formatted(Blank.point(bow.setUp().braceFrom()))));
    }
    if (isOneFigure(bow, seen)) {
      open.add(
          new Question(
              About.EACH,
              "Brace and %s nearly the same. Brace: string to grip. Distance: string to the limb where it leaves the riser. Measure each; if it is so, tick it."
                  .formatted(alike(reading))));
    }
    open.addAll(ofLooks(bow, seen));
    return open;
  }

  /** What was not looked at yet. */
  static List<Question> ofLooks(OnRecord bow, Seen seen) {
    List<Question> open = new ArrayList<>();
    for (BowPart part : Signs.mustAnswer(bow.rig().build())) {
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

  /**
   * Whether brace was sooner typed in the place of a distance, or the other way round, than
   * measured twice the same. A distance that followed its brace is where it should be, so a bow
   * whose two are alike by its build is never asked; one that did not would be looked at or
   * withdrawn, and to ask before that costs a tick. Who measured each and ticks that is asked no
   * more.
   */
  static boolean isOneFigure(OnRecord bow, Seen seen) {
    Reading reading = seen.reading();
    return reading != null
        && !seen.assured().measuredEach()
        && DistancesMoved.of(bow, reading)
            .filter(
                moved ->
                    isAlike(reading.brace(), reading.tillerUpper(), moved.upper())
                        || isAlike(reading.brace(), reading.tillerLower(), moved.lower()))
            .isPresent();
  }

  private static boolean isAlike(Length brace, Length distance, Length moved) {
    return same(brace, distance) && moved.abs().compareTo(DistancesMoved.LOOK_FIRST) > 0;
  }

  private static boolean same(Length brace, Length distance) {
    return brace.minus(distance).abs().compareTo(ONE_FIGURE) <= 0;
  }

  /** {@code the upper tiller distance are}. */
  private static String alike(Reading reading) {
    boolean upper = same(reading.brace(), reading.tillerUpper());
    boolean lower = same(reading.brace(), reading.tillerLower());
    return upper && lower
        ? "both tiller distances are"
        : "the %s tiller distance are".formatted(upper ? "upper" : "lower");
  }
}
