package club.ascham.receive;

import club.ascham.form.Typed;
import club.ascham.loan.LoanLine;

/** A line still out with the names of its fields, as a form asks what came back of it. */
public record LineAsked(LoanLine line, Typed typed) {
  public String backField() {
    return "back-" + line.id();
  }

  /** Where it is taken to be back unless it is said not to be. */
  public String stillOutField() {
    return "out-line-" + line.id();
  }

  public String countLabel() {
    return "Arrows back, of " + line.arrows();
  }

  public String countField() {
    return "count-" + line.id();
  }

  public String damageField() {
    return LineBack.damageField(line);
  }

  /** All are ticked until the person says otherwise. */
  public boolean here() {
    return typed.all().isEmpty() || typed.ticked(backField());
  }

  public String label() {
    String what = line.kindWord() + " " + line.code();
    return line.arrowCount() == null ? what : line.arrowCount() + " " + what;
  }
}
