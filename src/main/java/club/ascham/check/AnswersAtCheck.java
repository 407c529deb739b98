package club.ascham.check;

import club.ascham.form.Refusal;
import club.ascham.report.About;
import club.ascham.report.AnswerReport;
import club.ascham.report.Answering;
import club.ascham.report.Report;
import club.ascham.report.TellReport;
import club.ascham.report.Telling;
import club.ascham.rig.RigCard;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps what a check tells and answers of what was told of its bow. */
@ApplicationScoped
class AnswersAtCheck {
  private final TellReport tellReport;
  private final AnswerReport answerReport;

  AnswersAtCheck(TellReport tellReport, AnswerReport answerReport) {
    this.tellReport = tellReport;
    this.answerReport = answerReport;
  }

  boolean mayAnswer(boolean dangerous) {
    return answerReport.mayAnswer(dangerous);
  }

  /**
   * Why an answer can't be kept; empty: each can.
   *
   * @param open the reports that nobody has answered as it is saved
   */
  Optional<Refusal> refusal(CheckEntry entry, List<Report> open) {
    if (entry.notKept() != null) {
      return Optional.of(
          new Refusal(
              "check",
              "Someone answered a moment ago what was told; your answer is not kept, "
                  + entry.notKept()
                  + ". If you saw something, say it below as a sign; then save again."));
    }
    for (Map.Entry<String, Answering> each : entry.answers().entrySet()) {
      String key = each.getKey();
      if (key.equals(CheckEntry.TOLD_NOW)) {
        if (!mayAnswer(entry.dryLooseOrFall())) {
          return refused(key, AnswerReport.NOT_YOURS);
        }
        continue;
      }
      Optional<Report> report =
          open.stream().filter(one -> Long.toString(one.id()).equals(key)).findFirst();
      if (report.isEmpty()) {
        return refused(key, "Someone has answered this meanwhile.");
      }
      Optional<Refusal> refusal = answerReport.refusal(report.get(), each.getValue().answer());
      if (refusal.isPresent()) {
        return refused(key, refusal.get().words());
      }
    }
    return Optional.empty();
  }

  private static Optional<Refusal> refused(String key, String message) {
    return Optional.of(new Refusal(Answering.Fields.of(key).answer(), message));
  }

  void keep(RigCard card, CheckEntry entry, StillOpen told, long check, Instant happened) {
    AnswerReport.Looked looked = AnswerReport.Looked.atCheck(check, happened);
    if (!told.tells().isEmpty()) {
      long report =
          tellReport.tell(
              new Telling(told.tells(), null, null, null),
              new About(card.id(), null, null, About.ToldAt.CHECK, happened));
      Answering answer = entry.answers().get(CheckEntry.TOLD_NOW);
      if (answer != null) {
        answerReport.answer(report, answer, looked);
      }
    }
    entry
        .answers()
        .forEach(
            (key, answer) -> {
              if (!key.equals(CheckEntry.TOLD_NOW)) {
                answerReport.answer(Long.parseLong(key), answer, looked);
              }
            });
  }
}
