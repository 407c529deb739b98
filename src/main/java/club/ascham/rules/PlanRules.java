package club.ascham.rules;

import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.plan.Kind;
import club.ascham.store.Rows;
import club.ascham.units.Money;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Comparator;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Reads what the plan of the coming months takes for granted. */
@ApplicationScoped
public class PlanRules {
  private final Rows rows;

  PlanRules(Rows rows) {
    this.rows = rows;
  }

  /**
   * What holds for the whole club.
   *
   * @param earlyFailurePercent of what is replaced after a time: how many fail before
   * @param usageSpreadPercent how far use may differ from last year's, either way
   * @param changedBy null: as it came (likewise changedAt)
   */
  public record Basis(
      double hoursAWeek,
      int termsAYear,
      int archersACourse,
      int eveningsACourse,
      int earlyFailurePercent,
      int usageSpreadPercent,
      String source,
      String changedBy,
      Instant changedAt,
      int version) {
    Typed typed() {
      return Typed.nothing()
          .with("hoursAWeek", hoursAWeek)
          .with("termsAYear", termsAYear)
          .with("archersACourse", archersACourse)
          .with("eveningsACourse", eveningsACourse)
          .with("earlyFailurePercent", earlyFailurePercent)
          .with("usageSpreadPercent", usageSpreadPercent)
          .with("source", source);
    }
  }

  /**
   * What a new part of one kind costs and takes.
   *
   * @param priceMinor null: what the club paid on average
   * @param leadDays from order to the kit room
   * @param minutes to put it in the place of one that failed
   * @param years over which the club writes it down, and which it thinks it lasts
   * @param failureTimes what one that fails costs in all, in prices of one replaced in time: an
   *     evening, and perhaps what it takes along
   */
  public record Terms(
      Kind kind,
      Long priceMinor,
      int leadDays,
      int minutes,
      int years,
      double failureTimes,
      String source,
      String changedBy,
      Instant changedAt,
      int version) {
    public String said() {
      return kindSaid(kind);
    }

    public String href() {
      return "/rules/plan/" + Words.of(kind);
    }

    Typed typed(Currency currency) {
      return Typed.nothing()
          .with("price", priceMinor == null ? null : new Money(priceMinor).plain(currency))
          .with("leadDays", leadDays)
          .with("minutes", minutes)
          .with("years", years)
          .with("failureTimes", failureTimes)
          .with("source", source);
    }
  }

  /** How long a kind of work takes. */
  public record Time(Work work, int minutes) {}

  /** {@code one-piece bow}, {@code set of arrows}. */
  public static String kindSaid(Kind kind) {
    return switch (kind) {
      case BOW -> "one-piece bow";
      case LIMBS -> "pair of limbs";
      case ARROWS -> "set of arrows";
      case RISER, STRING, STRINGER -> Words.said(kind);
    };
  }

  public Basis basis() {
    return rows.one(
            Basis.class,
            """
            SELECT p.hours_a_week, p.terms_a_year, p.archers_a_course, p.evenings_a_course,
                   p.early_failure_percent, p.usage_spread_percent, p.source, a.name AS changed_by, p.changed_at, p.version
              FROM plan_rule p LEFT JOIN account a ON a.id = p.changed_by""")
        .orElseThrow();
  }

  /** Of every kind, in the order of the enum. */
  public List<Terms> terms() {
    return rows
        .list(
            Terms.class,
            """
            SELECT t.item_kind AS kind, t.price_minor, t.lead_days, t.minutes, t.years, t.failure_times, t.source, a.name AS changed_by,
                   t.changed_at, t.version
              FROM replacement_terms t LEFT JOIN account a ON a.id = t.changed_by""")
        .stream()
        .sorted(Comparator.comparing(Terms::kind))
        .toList();
  }

  public Map<Work, Integer> minutes() {
    Map<Work, Integer> minutes = new EnumMap<>(Work.class);
    rows.list(Time.class, "SELECT work, minutes FROM work_time")
        .forEach(time -> minutes.put(time.work(), time.minutes()));
    return minutes;
  }
}
