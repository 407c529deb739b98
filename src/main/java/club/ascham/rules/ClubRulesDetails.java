package club.ascham.rules;

import club.ascham.bow.BraceTable;
import club.ascham.form.Typed;
import club.ascham.mechanics.TwistLimits;
import club.ascham.units.Money;
import java.util.Currency;
import java.util.Optional;

/**
 * The club's settings as a person gives them.
 *
 * @param weighLimbsDays null: by no rule
 */
record ClubRulesDetails(
    String name,
    BraceTable braceTable,
    int fullCheckEveryLooks,
    int loanDays,
    Money deposit,
    double sessionsAWeek,
    int shotsASession,
    int keepNamesDays,
    TwistLimits twists,
    String twistsSource,
    Integer weighLimbsDays,
    int version) {
  private static final int LONGEST_NAME = 80;
  private static final int LONGEST_SOURCE = 500;

  /** Fewer twists than these between the limits leave no room to set a brace. */
  private static final int LEAST_ROOM = 10;

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
    Integer weigh = typed.whole("weighLimbsDays", 30, 4000);
    TwistLimits twists = twists(typed);
    String source =
        typed.source(
            "twistsSource", LONGEST_SOURCE, "Where do they come from: in print, or whose eye?");
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
                twists,
                source,
                weigh,
                typed.version().getAsInt()))
        : Optional.empty();
  }

  /** Null where it can't be read; its faults are told. */
  private static TwistLimits twists(Typed typed) {
    Integer fewest = needed(typed, "fewestTwists", 0, TwistLimits.MOST_AT_ALL - LEAST_ROOM);
    Integer most = needed(typed, "mostTwists", LEAST_ROOM, TwistLimits.MOST_AT_ALL);
    if (fewest == null || most == null) {
      return null;
    }
    if (most < fewest + LEAST_ROOM) {
      typed.fault("mostTwists", "At least %d more than the fewest, please.".formatted(LEAST_ROOM));
      return null;
    }
    return new TwistLimits(fewest, most);
  }

  private static Integer needed(Typed typed, String field, int low, int high) {
    Integer number = typed.whole(field, low, high);
    if (number == null) {
      typed.fault(field, "A whole number from " + low + " to " + high + ", please.");
    }
    return number;
  }
}
