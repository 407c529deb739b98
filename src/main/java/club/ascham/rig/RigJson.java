package club.ascham.rig;

import club.ascham.bow.Band;
import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.SetUpStep;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.concern.Against;
import club.ascham.concern.ConcernJson;
import club.ascham.form.Words;
import club.ascham.verdict.Reading;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * Rigs as they stand in JSON: words in lower case with hyphens, lengths as texts in millimetres
 * that read back as the very same length.
 */
final class RigJson {
  private RigJson() {}

  /** One page of rigs. */
  record Page(List<Line> items, int page, int size, long total) {}

  /** A rig in a list. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Line(
      long id,
      String name,
      String state,
      String build,
      String hand,
      Integer bowLengthIn,
      Double markedLb,
      String body,
      String limbs,
      String string,
      LocalDate dueBack,
      List<ConcernJson> concerns) {

    static Line of(RigRow row, Against against) {
      RigCard card = row.card();
      return new Line(
          card.id().value(),
          card.name(),
          row.state().word(),
          card.spec().map(RigSpec::build).map(Words::of).orElse(null),
          row.hand() == null ? null : Words.of(row.hand()),
          row.bowLengthIn().isPresent() ? row.bowLengthIn().getAsInt() : null,
          row.markedLb() == 0 ? null : row.markedLb(),
          code(card.body()),
          code(card.limbs()),
          code(card.string()),
          row.dueBack(),
          ConcernJson.of(against));
    }
  }

  /** One rig in full. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Whole(
      long id,
      String name,
      int version,
      String state,
      String style,
      String level,
      Integer bowLengthIn,
      List<FittedPart> parts,
      List<String> keptWith,
      Long loanId,
      Figures setUp,
      Open openSetUp,
      Bands targets,
      List<ConcernJson> concerns) {}

  /** A part that is fitted. */
  record FittedPart(String place, String code, String name) {
    static FittedPart of(Part part) {
      return new FittedPart(Words.of(part.place()), part.code(), part.name());
    }
  }

  /** What was measured at a set-up; what is unknown is left out. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Figures(
      @JsonUnwrapped ReadingJson measured,
      String tiller,
      String nocking,
      boolean screwsSeen,
      Double turnsUpper,
      Double turnsLower,
      Integer twists) {

    static Figures of(SetUpFigures figures) {
      Reading reading = Reading.of(figures);
      return new Figures(
          ReadingJson.of(reading),
          ReadingJson.exact(reading.tiller()),
          ReadingJson.exact(figures.nocking()),
          figures.lockingScrewsSeen(),
          figures.turnsUpper(),
          figures.turnsLower(),
          figures.twists());
    }
  }

  /** The set-up that is begun and not finished. */
  record Open(
      int version,
      Instant begunAt,
      String begunBy,
      List<String> stepsDone,
      List<String> stepsToDo,
      Figures figures) {

    static Open of(RigRecords.OpenSetUp open, List<SetUpStep> sheet) {
      SetUpProgress progress = new SetUpProgress(sheet, open.done());
      return new Open(
          open.version(),
          open.begunAt(),
          open.begunBy(),
          open.done().keys().stream().map(Words::of).toList(),
          progress.undone().stream().map(step -> Words.of(step.key())).toList(),
          Figures.of(open.figures()));
    }
  }

  /** What a rig should measure. */
  record Bands(Aim brace, Aim tiller, Aim nocking) {
    static Bands of(Targets targets) {
      return targets == null
          ? null
          : new Bands(Aim.of(targets.brace()), Aim.of(targets.tiller()), Aim.of(targets.nocking()));
    }
  }

  /** The bands of one quantity, and what they rest on. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Aim(Ends inner, Ends outer, String basis) {
    static Aim of(Target target) {
      return new Aim(Ends.of(target.inner()), Ends.of(target.outer()), target.basis());
    }
  }

  /** Both ends of a band. */
  record Ends(String low, String high) {
    static Ends of(Band band) {
      return band == null
          ? null
          : new Ends(ReadingJson.exact(band.low()), ReadingJson.exact(band.high()));
    }
  }

  private static String code(Part part) {
    return part == null ? null : part.code();
  }
}
