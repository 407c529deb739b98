package club.ascham.report;

import club.ascham.form.Typed;
import java.util.Map;

/**
 * What is answered to a report in JSON.
 *
 * @param answer nothing-there, stop or watch
 * @param part of several, the one that is stopped
 * @param until the last day of being watched
 */
public record ReportAnswer(String answer, String words, String part, String until) {
  /** Turns answers by the numbers of their reports into the fields of a form; null: none. */
  public static void into(Typed typed, Map<String, ReportAnswer> reports) {
    if (reports == null) {
      return;
    }
    reports.forEach(
        (report, given) -> {
          Answering.Fields fields = Answering.Fields.of(report);
          if (given != null) {
            typed
                .with(fields.answer(), given.answer())
                .with(fields.words(), given.words())
                .with(fields.part(), given.part())
                .with(fields.until(), given.until());
          }
        });
  }
}
