package club.ascham.rules;

import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.units.Money;
import club.ascham.upkeep.Work;
import java.util.Currency;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What the plan takes for granted, as a person gives it. */
record PlanRuleDetails(
    double hoursAWeek,
    int termsAYear,
    int archersACourse,
    int eveningsACourse,
    int earlyFailurePercent,
    int usageSpreadPercent,
    Map<Work, Integer> minutes,
    String source,
    int version) {
  private static final int LONGEST_SOURCE = 500;
  private static final int LONGEST_WORK = 600;
  private static final String WHENCE = "Where does it come from? If from nowhere: judged.";

  /** What a new part of one kind costs and takes; without a price, what the club paid. */
  record Replacement(
      Money price,
      int leadDays,
      int minutes,
      int years,
      double failureTimes,
      String source,
      int version) {
    static Optional<Replacement> parse(Typed typed, Currency currency) {
      Money price = typed.money("price", currency);
      Integer lead = typed.requiredWhole("leadDays", 0, 365);
      Integer minutes = typed.requiredWhole("minutes", 1, LONGEST_WORK);
      Integer years = typed.requiredWhole("years", 1, 50);
      Double failure = typed.decimal("failureTimes", 1, 1000);
      if (failure == null) {
        typed.fault("failureTimes", "From 1 to 1000, please: 1 where it costs no more.");
      }
      String source = typed.source("source", LONGEST_SOURCE, WHENCE);
      return typed.sound()
          ? Optional.of(
              new Replacement(
                  price, lead, minutes, years, failure, source, typed.version().orElse(-1)))
          : Optional.empty();
    }
  }

  /** Reads the components by their names, the minutes of each work by its word. */
  static Optional<PlanRuleDetails> parse(Typed typed) {
    Double hours = typed.decimal("hoursAWeek", 0, 200);
    if (hours == null) {
      typed.fault("hoursAWeek", "How many hours have volunteers for upkeep in a week?");
    }
    Integer terms = typed.requiredWhole("termsAYear", 1, 12);
    Integer archers = typed.requiredWhole("archersACourse", 1, 200);
    Integer evenings = typed.requiredWhole("eveningsACourse", 1, 60);
    Integer early = typed.requiredWhole("earlyFailurePercent", 0, 90);
    Integer spread = typed.requiredWhole("usageSpreadPercent", 0, 90);
    Map<Work, Integer> minutes = new EnumMap<>(Work.class);
    for (Work work : Work.values()) {
      minutes.put(work, typed.requiredWhole(Words.of(work), 1, LONGEST_WORK));
    }
    String source = typed.source("source", LONGEST_SOURCE, WHENCE);
    return typed.sound()
        ? Optional.of(
            new PlanRuleDetails(
                hours,
                terms,
                archers,
                evenings,
                early,
                spread,
                minutes,
                source,
                typed.version().orElse(-1)))
        : Optional.empty();
  }
}
