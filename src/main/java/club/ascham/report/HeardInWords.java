package club.ascham.report;

import static club.ascham.report.Noticed.BANG;
import static club.ascham.report.Noticed.BOLT_LOOSE;
import static club.ascham.report.Noticed.CRACK;
import static club.ascham.report.Noticed.CREAK;
import static club.ascham.report.Noticed.FELL;
import static club.ascham.report.Noticed.LIMB_TWISTED;
import static club.ascham.report.Noticed.LOOSED_WITHOUT_ARROW;
import static club.ascham.report.Noticed.STRAND;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What own words sound like. They decide nothing: where they name a danger that nobody ticked, the
 * person is asked once. Which words do is judged.
 */
final class HeardInWords {
  private HeardInWords() {}

  /**
   * A word that makes us ask.
   *
   * @param written as it stands in the words
   * @param sign the sign to be offered
   */
  record Heard(String written, Noticed sign, String question) {
    String asked() {
      return "You wrote “" + written + "”: " + question;
    }
  }

  /**
   * @param answeredBy any of them ticked answers it
   */
  private record Cue(Pattern word, Noticed sign, List<Noticed> answeredBy, String question) {
    static Cue of(String words, String question, Noticed sign, Noticed... also) {
      return new Cue(
          Pattern.compile("\\b(?:" + words + ")", Pattern.CASE_INSENSITIVE),
          sign,
          Stream.concat(Stream.of(sign), Arrays.stream(also)).toList(),
          question);
    }
  }

  private static final List<Cue> CUES =
      List.of(
          Cue.of(
              "crack(?:s|ed|ing)?\\b|split\\b|splinter\\w*|delaminat\\w*"
                  + "|snap(?:s|ped)?\\b|broke\\w*|(?:came|coming|come) (?:off|apart)\\b",
              "was one seen or heard?",
              CRACK,
              BANG),
          Cue.of("bang(?:s|ed)?\\b|popp?(?:ed|ing)?\\b", "was one heard?", BANG, CRACK),
          Cue.of("creak\\w*|click(?:s|ed|ing)?\\b", "did it creak or click?", CREAK),
          Cue.of(
              "dry\\b|without (?:an |any )?arrow",
              "was it loosed without an arrow?",
              LOOSED_WITHOUT_ARROW),
          Cue.of(
              "fell\\b|fallen\\b|a fall\\b|dropp\\w*|knocked\\b",
              "did it fall, or take a knock?",
              FELL),
          Cue.of(
              "(?:loose|slack) (?:\\w+ )?(?:bolt|screw|limb)s?\\b"
                  + "|(?:bolt|screw|limb)s? (?:\\w+ ){0,2}(?:loose|slack|wobbl\\w*)",
              "is a limb bolt, or a limb, loose?",
              BOLT_LOOSE),
          Cue.of("twisted\\b|warped\\b", "is a limb twisted?", LIMB_TWISTED),
          Cue.of("strands?\\b", "is one cut or broken?", STRAND));

  /** What is asked of words that stand beside no list of signs; empty: they name no danger. */
  static Optional<String> asked(String words) {
    return unanswered(words, List.of()).map(Heard::asked);
  }

  /** The first word that names a danger of which no sign is ticked. */
  static Optional<Heard> unanswered(String words, Collection<Noticed> ticked) {
    if (words == null) {
      return Optional.empty();
    }
    for (Cue cue : CUES) {
      Matcher found = cue.word().matcher(words);
      if (found.find() && cue.answeredBy().stream().noneMatch(ticked::contains)) {
        return Optional.of(new Heard(found.group(), cue.sign(), cue.question()));
      }
    }
    return Optional.empty();
  }
}
