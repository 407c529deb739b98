package club.ascham.fleet;

import club.ascham.form.Words;
import java.util.Arrays;
import java.util.Optional;

/** The lists that figures open into. */
public enum FleetList {
  RIGS("Rigs"),
  LOANS_OVERDUE("Loans overdue"),
  INSPECTIONS_OVERDUE("Safety inspections asked for or overdue"),
  STRINGS_DUE("Strings due in the next three months"),
  WITHDRAWALS("Parts withdrawn"),
  ASK_BACK("Things to be asked back"),
  TROUBLE("What went wrong in the last twelve months");

  private final String title;

  FleetList(String title) {
    this.title = title;
  }

  static Optional<FleetList> of(String word) {
    return Arrays.stream(values()).filter(list -> list.word().equals(word)).findFirst();
  }

  public String title() {
    return title;
  }

  public String word() {
    return Words.of(this);
  }

  /** Of one rig alone. */
  Figure figure(int count, long rig) {
    return new Figure(word(), title, count, "list=" + word() + "&rig=" + rig);
  }

  Figure figure(int count) {
    return new Figure(word(), title, count, "list=" + word());
  }
}
