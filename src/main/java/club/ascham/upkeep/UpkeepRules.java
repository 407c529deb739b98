package club.ascham.upkeep;

import club.ascham.bow.Build;
import club.ascham.bow.StringMaterial;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the rules that plan upkeep. */
@ApplicationScoped
public class UpkeepRules {
  private static final String RULES =
      """
      SELECT r.id, r.item_kind, r.build, r.material, r.work, r.every_days, r.every_loans, r.every_shots,
             r.soon_days, r.blocks, r.beyond_percent, r.source, a.name AS changed_by, r.changed_at, r.version
        FROM upkeep_rule r LEFT JOIN account a ON a.id = r.changed_by
      """;

  private final Rows rows;

  UpkeepRules(Rows rows) {
    this.rows = rows;
  }

  /**
   * A rule in force.
   *
   * @param build null: every build (likewise material)
   * @param everyDays null: days do not count (likewise loans and shots)
   * @param beyondPercent of the interval beyond which the item stays in; null: never by this
   * @param changedBy null: as it came (likewise changedAt)
   */
  public record Rule(
      long id,
      String itemKind,
      Build build,
      StringMaterial material,
      Work work,
      Integer everyDays,
      Integer everyLoans,
      Integer everyShots,
      int soonDays,
      boolean blocks,
      Integer beyondPercent,
      String source,
      String changedBy,
      Instant changedAt,
      int version) {

    /** Which items it is for: {@code riser, screw in}. */
    public String items() {
      String kind = itemKind.equals("BOW") ? "one-piece bow" : itemKind.toLowerCase(Locale.ROOT);
      return Stream.of(
              kind,
              build == null ? "" : Words.said(build),
              material == null
                  ? ""
                  : material == StringMaterial.HMPE || material == StringMaterial.LCP
                      ? material.name()
                      : Words.said(material))
          .filter(part -> !part.isEmpty())
          .collect(Collectors.joining(", "));
    }

    /** How often: {@code 180 days or 12 loans}. */
    public String every() {
      return Stream.of(
              everyDays == null ? "" : count(everyDays, "day"),
              everyLoans == null ? "" : count(everyLoans, "loan"),
              everyShots == null ? "" : count(everyShots, "shot"))
          .filter(part -> !part.isEmpty())
          .collect(Collectors.joining(" or "));
    }

    Typed typed() {
      return Typed.nothing()
          .with("itemKind", itemKind.toLowerCase(Locale.ROOT))
          .with("build", Words.of(build))
          .with("material", Words.of(material))
          .with("work", Words.of(work))
          .with("everyDays", everyDays)
          .with("everyLoans", everyLoans)
          .with("everyShots", everyShots)
          .with("soonDays", soonDays)
          .with("blocks", blocks ? "on" : null)
          .with("beyondPercent", beyondPercent)
          .with("source", source);
    }

    private static String count(int number, String what) {
      return String.format(Locale.UK, "%,d %s%s", number, what, number == 1 ? "" : "s");
    }
  }

  /** All of them, by kind of item. */
  public List<Rule> all() {
    return rows.list(
        Rule.class,
        RULES
            + """
            ORDER BY CASE r.item_kind WHEN 'RISER' THEN 0 WHEN 'LIMBS' THEN 1 WHEN 'BOW' THEN 2
                     WHEN 'STRING' THEN 3 WHEN 'STRINGER' THEN 4 ELSE 5 END, r.work, r.id""");
  }

  Optional<Rule> rule(long id) {
    return rows.one(Rule.class, RULES + "WHERE r.id = ?1", id);
  }
}
