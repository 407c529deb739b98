package club.ascham.report;

import club.ascham.form.Typed;
import java.util.List;

/**
 * An open report with the fields of its answer, as a form shows them.
 *
 * @param among what of it may be stopped here
 * @param may whether the person at this page may answer it
 */
public record ToAnswer(
    Report report, Answering.Fields fields, List<PartChoice> among, boolean may, Typed typed) {

  /** A part to choose. */
  public record Part(String value, String label) {}

  /** Several were on the bow: which is stopped must be said. */
  public List<Part> parts() {
    return among.size() < 2
        ? List.of()
        : among.stream().map(part -> new Part(part.code(), part.label())).toList();
  }

  public String current() {
    return typed.value(fields.answer());
  }

  public String error() {
    return typed.messageAt(fields.answer());
  }

  public String part() {
    return typed.value(fields.part());
  }

  public String partError() {
    return typed.messageAt(fields.part());
  }
}
