package club.ascham.rules;

import club.ascham.bow.BraceTable;
import club.ascham.form.Typed;
import club.ascham.units.Money;
import java.util.Currency;
import java.util.Optional;

/** The club's settings as a person gives them. */
record ClubRulesDetails(
    String name,
    BraceTable braceTable,
    int fullCheckEveryLooks,
    int loanDays,
    Money deposit,
    double sessionsAWeek,
    int shotsASession,
    int keepNamesDays,
    int version) {
  private static final int LONGEST_NAME = 80;

  /** Reads the components by their names; {@code deposit} may be left empty: none. */
  static Optional<ClubRulesDetails> parse(Typed typed, Currency currency) {
    String name = typed.required("name", LONGEST_NAME, "The club's name, please.");
    BraceTable table =
        typed.requiredWord("braceTable", BraceTable.class, "Which table is in force?");
    Integer looks = needed(typed, "fullCheckEveryLooks", 0, 100);
    Integer days = needed(typed, "loanDays", 1, 400);
    Money deposit = typed.money("deposit", currency);
    Double sessions = typed.decimal("sessionsAWeek", 0, 14);
    if (sessions == null) {
      typed.fault("sessionsAWeek", "How many, on average?");
    }
    Integer shots = needed(typed, "shotsASession", 0, 1000);
    Integer names = needed(typed, "keepNamesDays", 1, 4000);
    if (typed.version().isEmpty()) {
      typed.fault("version", "This form is from before: open it again.");
    }
    return typed.sound()
        ? Optional.of(
            new ClubRulesDetails(
                name,
                table,
                looks,
                days,
                deposit == null ? Money.ZERO : deposit,
                sessions,
                shots,
                names,
                typed.version().getAsInt()))
        : Optional.empty();
  }

  private static Integer needed(Typed typed, String field, int low, int high) {
    Integer number = typed.whole(field, low, high);
    if (number == null) {
      typed.fault(field, "A whole number from " + low + " to " + high + ", please.");
    }
    return number;
  }
}
