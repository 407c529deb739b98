package club.ascham.check;

import club.ascham.concern.ConcernJson;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.report.ReportAnswer;
import club.ascham.rig.ReadingJson;
import club.ascham.verdict.Given;
import club.ascham.verdict.Remark;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** How checks stand in JSON. */
final class CheckShapes {
  private CheckShapes() {}

  /** One page of checks, the last that happened first. */
  record Page(List<CheckLine> items, int page, int size, long total) {}

  /** A check in a list. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record CheckLine(
      long id,
      RigId rig,
      String kind,
      Instant happenedAt,
      String by,
      String verdict,
      @JsonUnwrapped ReadingJson measured,
      Instant releasedAt,
      boolean undone) {
    static CheckLine of(Checks.Row check) {
      return new CheckLine(
          check.id(),
          check.rig(),
          Words.of(check.kind()),
          check.happenedAt(),
          check.by(),
          Words.of(check.verdict()),
          ReadingJson.of(check.measured()),
          check.releasedAt(),
          check.undone());
    }
  }

  /** One sign seen. */
  record SignShape(String part, String gravity, String words) {}

  /** One step of the advice; {@code amount} is twists or turns, in is positive. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record StepShape(String key, String who, Double amount, String words, String caution) {}

  /**
   * What was given as the verdict.
   *
   * @param expected what the bow should measure after the steps, with its range and what that rests
   *     on
   */
  record VerdictShape(
      String kind,
      List<String> reasons,
      List<StepShape> steps,
      List<String> expected,
      List<String> work,
      List<String> notes,
      List<String> basis) {
    static VerdictShape of(Given given) {
      return new VerdictShape(
          Words.of(given.kind()),
          Remark.words(given.reasons()),
          given.steps().stream()
              .map(
                  step ->
                      new StepShape(
                          Words.of(step.key()),
                          Words.of(step.who()),
                          step.amount().orElse(null),
                          step.words(),
                          step.caution().orElse(null)))
              .toList(),
          Remark.words(given.expected()),
          Remark.words(given.work()),
          Remark.words(given.notes()),
          Remark.words(given.basis()));
    }
  }

  /** A whole check with its verdict. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record CheckShape(
      long id,
      RigId rig,
      String kind,
      Instant happenedAt,
      Instant recordedAt,
      String by,
      boolean allAsListed,
      @JsonUnwrapped ReadingJson measured,
      boolean dryLooseOrFall,
      boolean cameBackStrung,
      List<SignShape> signs,
      VerdictShape verdict,
      Long corrects,
      String correctionWhy,
      Instant releasedAt,
      String releasedBy,
      boolean undone) {
    static CheckShape of(Checks.Row check, Given given, List<Checks.SeenSign> signs) {
      return new CheckShape(
          check.id(),
          check.rig(),
          Words.of(check.kind()),
          check.happenedAt(),
          check.recordedAt(),
          check.by(),
          check.allAsListed(),
          ReadingJson.of(check.measured()),
          check.dryLooseOrFall(),
          check.cameBackStrung(),
          signs.stream()
              .map(s -> new SignShape(Words.of(s.part()), Words.of(s.gravity()), s.words()))
              .toList(),
          VerdictShape.of(given),
          check.corrects(),
          check.correctionWhy(),
          check.releasedAt(),
          check.releasedBy(),
          check.undone());
    }
  }

  /**
   * A check to be kept. Lengths are texts such as {@code 8 3/4 in}; without a unit the account's
   * own holds.
   *
   * @param rig its number, or the code of any part of it
   * @param allAsListed else {@code parts} names those that are there: body, limbs, string
   * @param stranger the code of a part that is on it and not on its list
   * @param strangerAnswer put-right or withdraw-both
   * @param answers by part (string, limbs, bolts, riser, rest): fine, note or stop
   * @param words by part, what was seen in the person's own words
   * @param notSo the words of a note only read like a danger
   * @param signs keys of known signs
   * @param measuredEach each of the three was measured by itself, though two are the same
   * @param adjustment the adjustment that this is the second measurement of
   * @param looked the check whose steps were a mere look, where this is measured after it
   * @param on a past day, for a check entered later
   * @param reports by the number of an open report, its answer; {@code new}: to what this check
   *     tells itself. What is not answered stays open, and nothing is fit meanwhile
   */
  record CheckBody(
      String rig,
      Boolean allAsListed,
      List<String> parts,
      String stranger,
      String strangerAnswer,
      String brace,
      String braceFrom,
      String tillerUpper,
      String tillerLower,
      Map<String, String> answers,
      Map<String, String> words,
      Boolean notSo,
      List<String> signs,
      Boolean dryLooseOrFall,
      Boolean cameBackStrung,
      Boolean limbsSeated,
      Boolean measuredEach,
      Long adjustment,
      Long looked,
      Long corrects,
      String correctionWhy,
      String on,
      Map<String, ReportAnswer> reports,
      String onceKey) {

    Typed typed() {
      Typed typed = Typed.of(this);
      ReportAnswer.into(typed, reports);
      if (answers != null) {
        answers.forEach(typed::with);
      }
      if (words != null) {
        words.forEach((part, said) -> typed.with(part + "Words", said));
      }
      return typed;
    }
  }

  /** What was done at the bench; what nobody counted is left out. */
  record AdjustmentBody(
      Integer twistsAdded, Double upperIn, Double lowerIn, String words, String onceKey) {}

  /** The adjustment kept, which the second measurement names; no id: it was a mere look. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record AdjustmentShape(Long id, RigId rig) {}

  /** Where a bow stands after it was put back. */
  record PutBackShape(String rig, String state, List<ConcernJson> concerns) {}

  record ReleaseBody(String onceKey) {}
}
