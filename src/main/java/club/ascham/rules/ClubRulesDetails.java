package club.ascham.rules;

import club.ascham.bow.BraceTable;
import club.ascham.form.Typed;
import club.ascham.mechanics.TwistLimits;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Money;
import club.ascham.units.Plausible;
import java.util.Currency;
import java.util.Optional;
import java.util.regex.Pattern;

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
    Club.OnTheSlip slip,
    int version) {
  private static final int LONGEST_NAME = 80;
  private static final int LONGEST_SOURCE = 500;
  private static final int LONGEST_TELEPHONE = 60;
  private static final int LONGEST_MAIL = 200;

  /** What still fits a slip of one sheet. */
  private static final int LONGEST_TERMS = 1200;

  private static final Pattern MAIL = Pattern.compile("[^\\s@]+@[^\\s@]+");

  /** Fewer twists than these between the limits leave no room to set a brace. */
  private static final int LEAST_ROOM = 10;

  /**
   * Reads the components by their names; {@code deposit} may be left empty: none. So may what
   * stands on the slip: telephone, mail, terms, and how far a brace height may move.
   */
  static Optional<ClubRulesDetails> parse(Typed typed, Currency currency, LengthUnit unit) {
    String name = typed.required("name", LONGEST_NAME, "The club's name, please.");
    BraceTable table =
        typed.requiredWord("braceTable", BraceTable.class, "Which table is in force?");
    Integer looks = typed.requiredWhole("fullCheckEveryLooks", 0, 100);
    Integer days = typed.requiredWhole("loanDays", 1, 400);
    Money deposit = typed.money("deposit", currency);
    Double sessions = typed.decimal("sessionsAWeek", 0, 14);
    if (sessions == null) {
      typed.fault("sessionsAWeek", "How many, on average?");
    }
    Integer shots = typed.requiredWhole("shotsASession", 0, 1000);
    Integer names = typed.requiredWhole("keepNamesDays", 1, 4000);
    Integer weigh = typed.whole("weighLimbsDays", 30, 4000);
    TwistLimits twists = twists(typed);
    String source =
        typed.source(
            "twistsSource", LONGEST_SOURCE, "Where do they come from: in print, or whose eye?");
    Club.OnTheSlip slip = slip(typed, unit);
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
                slip,
                typed.version().orElse(-1)))
        : Optional.empty();
  }

  private static Club.OnTheSlip slip(Typed typed, LengthUnit unit) {
    String telephone = typed.optional("telephone", LONGEST_TELEPHONE);
    if (telephone != null && telephone.chars().filter(Character::isDigit).count() < 3) {
      typed.fault("telephone", "A number that can be dialled, please: 01632 960142.");
    }
    String mail = typed.optional("mail", LONGEST_MAIL);
    if (mail != null && !MAIL.matcher(mail).matches()) {
      typed.fault("mail", "An e-mail address, please: bows@club.example.");
    }
    Length mayMove = typed.length("braceMayMove", unit, Plausible.BRACE_CHANGE);
    String source =
        typed.has("braceMayMove")
            ? typed.source(
                "braceMayMoveSource",
                LONGEST_SOURCE,
                "Who stands behind it: the maker, or whose eye?")
            : null;
    if (!typed.has("braceMayMove") && typed.has("braceMayMoveSource")) {
      typed.fault("braceMayMove", "How far, please; or leave its source empty too.");
    }
    return new Club.OnTheSlip(telephone, mail, typed.text("terms", LONGEST_TERMS), mayMove, source);
  }

  /** Null where it can't be read; its faults are told. */
  private static TwistLimits twists(Typed typed) {
    Integer fewest = typed.requiredWhole("fewestTwists", 0, TwistLimits.MOST_AT_ALL - LEAST_ROOM);
    Integer most = typed.requiredWhole("mostTwists", LEAST_ROOM, TwistLimits.MOST_AT_ALL);
    if (fewest == null || most == null) {
      return null;
    }
    if (most < fewest + LEAST_ROOM) {
      typed.fault("mostTwists", "At least %d more than the fewest, please.".formatted(LEAST_ROOM));
      return null;
    }
    return new TwistLimits(fewest, most);
  }
}
