package club.ascham.planning;

import club.ascham.plan.Kind;
import club.ascham.plan.Lifetime;
import club.ascham.plan.PlannedFleet;
import club.ascham.plan.PlannedPart;
import club.ascham.plan.Routine;
import club.ascham.plan.Terms;
import club.ascham.rules.PlanRules;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the fleet as the plan needs it: at most fourteen statements, whatever its size. */
@ApplicationScoped
class FleetToPlan {
  /** What is withdrawn or in the workshop now is thought to be back after so long (judged). */
  static final int BACK_AFTER_DAYS = 28;

  private static final int YEAR = 365;

  /** A shorter record says little of a year's use. */
  private static final int SHORTEST_RECORD = 30;

  private final Rows rows;
  private final PlanRules rules;
  private final Lives lives;
  private final ClubTime time;

  FleetToPlan(Rows rows, PlanRules rules, Lives lives, ClubTime time) {
    this.rows = rows;
    this.rules = rules;
    this.lives = lives;
    this.time = time;
  }

  private record RigRow(long id, String code, boolean out) {}

  private record Use(long item, int loans, int shots) {}

  private record Asked(long item, Work work, LocalDate day, boolean blocks) {}

  private record Planned(
      long item,
      Work work,
      Integer everyDays,
      Integer everyLoans,
      Integer everyShots,
      int soonDays,
      boolean blocks,
      LocalDate dueOn,
      int loans,
      int shots) {

    /**
     * From when it is due soon, or a sixth of its interval before (judged): done any earlier, too
     * much of the interval would be given away.
     */
    private int slackDays() {
      return everyDays == null ? soonDays : Math.max(soonDays, everyDays / 6);
    }

    Routine routine(LocalDate today, int minutes) {
      return new Routine(
          work.word(),
          minutes,
          everyDays,
          everyLoans,
          everyShots,
          dueOn == null ? null : days(today, dueOn),
          everyLoans == null ? null : Math.max(0, everyLoans - loans),
          everyShots == null ? null : Math.max(0, everyShots - shots),
          slackDays(),
          blocks,
          work == Work.STRING_REPLACEMENT);
    }
  }

  /**
   * An item in use.
   *
   * @param alike what tells it from others of its kind that can't stand in for it
   * @param rig null: it is fitted to none
   * @param free neither fitted, nor lent, nor withdrawn
   */
  record ItemRow(
      long id,
      ItemCode code,
      Kind kind,
      String maker,
      String model,
      String alike,
      LocalDate since,
      LocalDate boughtOn,
      Long priceMinor,
      Long rig,
      boolean free,
      boolean pool) {
    String name() {
      String name =
          Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
      return name.isEmpty() ? PlanRules.kindSaid(kind) : name;
    }
  }

  List<ItemRow> items() {
    return rows.list(
        ItemRow.class,
        """
        SELECT i.id, i.code, i.kind, i.maker, i.model,
               CASE i.kind
                 WHEN 'RISER' THEN lower(ri.hand) || '-handed riser, ' || ri.length_in || ' in' || iif(ri.build = 'SCREW_IN', ', screw-in', '')
                 WHEN 'LIMBS' THEN coalesce(lower(li.size), li.bow_length_in || ' in') || ' limbs, ' || printf('%g', li.marked_lb) || ' lb' || iif(li.build = 'SCREW_IN', ', screw-in', '')
                 WHEN 'BOW' THEN 'one-piece bow, ' || bo.bow_length_in || ' in, ' || printf('%g', bo.marked_lb) || ' lb'
                 WHEN 'STRING' THEN 'string for ' || s.for_bow_in || ' in, ' || iif(s.material IN ('HMPE', 'LCP'), s.material, lower(s.material))
                 WHEN 'STRINGER' THEN 'stringer for ' || st.bow_from_in || ' to ' || st.bow_to_in || ' in'
                 ELSE 'arrows' || coalesce(', spine ' || k.spine, '')
               END AS alike,
               coalesce(s.first_used, i.bought_on, i.registered_on) AS since, i.bought_on, i.price_minor, g.rig_id,
               g.rig_id IS NULL
                 AND NOT EXISTS (SELECT 1 FROM loan_line l WHERE l.item_id = i.id AND l.back_at IS NULL)
                 AND NOT EXISTS (SELECT 1 FROM withdrawal w WHERE w.item_id = i.id AND w.released_at IS NULL) AS free,
               coalesce(k.pool, 0) AS pool
          FROM item i
          LEFT JOIN riser ri ON ri.id = i.id
          LEFT JOIN limbs li ON li.id = i.id
          LEFT JOIN bow bo ON bo.id = i.id
          LEFT JOIN bowstring s ON s.id = i.id
          LEFT JOIN stringer st ON st.id = i.id
          LEFT JOIN kit_item k ON k.id = i.id
          LEFT JOIN fitting g ON g.item_id = i.id AND g.until_at IS NULL
         WHERE i.retired_on IS NULL
           AND i.kind IN ('RISER', 'LIMBS', 'BOW', 'STRING', 'STRINGER', 'ARROWS')
         ORDER BY i.code""");
  }

  private List<RigRow> rigs() {
    return rows.list(
        RigRow.class,
        """
        SELECT s.rig_id AS id, i.code, s.state_if_inspected IN ('WITHDRAWN', 'IN_THE_WORKSHOP') AS out
          FROM rig_standing s LEFT JOIN item i ON i.id = s.body_id
         ORDER BY s.rig_id""");
  }

  /** With the plus SQLite takes the year's lines by their time, and not all there are by item. */
  private Map<Long, Use> use(LocalDate today) {
    return rows
        .list(
            Use.class,
            """
            SELECT item_id, count(*) AS loans, coalesce(sum(shots), 0) AS shots FROM loan_line
             WHERE out_at >= ?1 AND id NOT IN (SELECT line_id FROM undone_line) GROUP BY +item_id""",
            time.beginOf(today.minusDays(YEAR)))
        .stream()
        .collect(Collectors.toMap(Use::item, Function.identity()));
  }

  /** Counts run from the day, not the moment: enough for months to come. */
  private Map<Long, List<Planned>> planned() {
    return rows
        .list(
            Planned.class,
            """
            SELECT p.item_id, p.work, p.every_days, p.every_loans, p.every_shots, p.soon_days, p.blocks, p.due_on,
                   CASE WHEN p.every_loans IS NULL THEN 0 ELSE
                     (SELECT count(*) FROM loan_line l WHERE l.item_id = p.item_id AND l.out_at > p.since
                                                AND l.id NOT IN (SELECT line_id FROM undone_line)) END AS loans,
                   CASE WHEN p.every_shots IS NULL THEN 0 ELSE
                     (SELECT coalesce(sum(l.shots), 0) FROM loan_line l WHERE l.item_id = p.item_id AND l.back_at > p.since) END AS shots
              FROM (SELECT q.item_id, q.due_on, r.work, r.every_days, r.every_loans, r.every_shots, r.soon_days, r.blocks,
                           coalesce((SELECT max(u.happened_at) FROM upkeep_record u
                                      WHERE u.item_id = q.item_id AND u.work = r.work AND u.result = 'PASSED'
                                        AND u.work <> 'STRING_REPLACEMENT'),
                                    s.first_used, i.bought_on, i.registered_on) AS since
                      FROM upkeep_plan q
                      JOIN upkeep_rule r ON r.id = q.rule_id
                      JOIN item i ON i.id = q.item_id
                      LEFT JOIN bowstring s ON s.id = q.item_id) p
             ORDER BY p.item_id, p.work, p.due_on""")
        .stream()
        .collect(Collectors.groupingBy(Planned::item));
  }

  private Map<Long, List<Asked>> asked() {
    return rows
        .list(
            Asked.class,
            "SELECT item_id, work, due_on AS day, blocks FROM work_due WHERE task_id IS NOT NULL"
                + " ORDER BY item_id, work")
        .stream()
        .collect(Collectors.groupingBy(Asked::item));
  }

  /** The fleet with what its parts cost. */
  record Read(
      PlannedFleet fleet, PlanRules.Basis basis, List<ItemRow> items, Map<Kind, Priced> prices) {}

  /**
   * The price of a new part.
   *
   * @param minor 0 where nothing is known
   */
  record Priced(PlanRules.Terms terms, long minor, String whence) {}

  Read read(LocalDate today) {
    List<ItemRow> items = items();
    PlanRules.Basis basis = rules.basis();
    Map<Kind, Priced> prices = prices(items);
    List<RigRow> rigRows = rigs();
    Map<Long, Integer> placeOf = new HashMap<>();
    List<PlannedFleet.Rig> rigs = new ArrayList<>();
    for (RigRow rig : rigRows) {
      placeOf.put(rig.id(), rigs.size());
      rigs.add(
          new PlannedFleet.Rig(
              rig.code() == null ? "rig " + rig.id() : new ItemCode(rig.code()).display(),
              rig.out() ? BACK_AFTER_DAYS : 0));
    }
    Gathered gathered =
        new Gathered(
            today,
            placeOf,
            use(today),
            planned(),
            asked(),
            rules.minutes(),
            prices,
            lives.onRecord(),
            basis,
            bodies(items));
    List<PlannedPart> parts = new ArrayList<>();
    Map<String, Integer> spares = new HashMap<>();
    for (ItemRow item : items) {
      boolean spare = item.free() && hasRigs(item.kind());
      if (spare) {
        spares.merge(item.alike(), 1, Integer::sum);
      }
      parts.add(part(item, spare, gathered));
    }
    Map<Kind, Terms> terms = new EnumMap<>(Kind.class);
    prices.forEach(
        (kind, price) ->
            terms.put(
                kind,
                new Terms(
                    price.minor(),
                    price.terms().leadDays(),
                    price.terms().minutes(),
                    price.terms().failureTimes())));
    return new Read(new PlannedFleet(today, rigs, parts, spares, terms), basis, items, prices);
  }

  /** Everything that the parts are made from. */
  private record Gathered(
      LocalDate today,
      Map<Long, Integer> placeOf,
      Map<Long, Use> use,
      Map<Long, List<Planned>> planned,
      Map<Long, List<Asked>> asked,
      Map<Work, Integer> minutes,
      Map<Kind, Priced> prices,
      Map<Kind, Lifetime> lives,
      PlanRules.Basis basis,
      Map<Long, ItemRow> bodies) {}

  /** The body of each rig. */
  private static Map<Long, ItemRow> bodies(List<ItemRow> items) {
    return items.stream()
        .filter(item -> item.rig() != null)
        .filter(item -> item.kind() == Kind.RISER || item.kind() == Kind.BOW)
        .collect(Collectors.toMap(ItemRow::rig, Function.identity()));
  }

  private PlannedPart part(ItemRow item, boolean spare, Gathered of) {
    List<Routine> routines = routines(item, spare, of);
    Integer everyDays =
        routines.stream()
            .filter(Routine::replaces)
            .map(Routine::everyDays)
            .filter(Objects::nonNull)
            .findFirst()
            .orElse(null);
    Lifetime life =
        spare || item.pool()
            ? null
            : lives.of(
                of.lives().get(item.kind()),
                of.prices().get(item.kind()).terms(),
                of.basis(),
                everyDays);
    // What is fitted is used as its rig is, whose body has been in it the longest.
    ItemRow used = item.rig() == null ? item : of.bodies().getOrDefault(item.rig(), item);
    Use use = of.use().getOrDefault(used.id(), new Use(used.id(), 0, 0));
    double days = Math.max(SHORTEST_RECORD, Math.min(YEAR, days(used.since(), of.today())));
    return new PlannedPart(
        item.code().display(),
        item.name(),
        item.kind(),
        item.alike(),
        item.rig() == null ? -1 : of.placeOf().getOrDefault(item.rig(), -1),
        Math.max(0, days(item.since(), of.today())),
        use.loans() / days,
        use.shots() / days,
        life,
        routines);
  }

  /** A spare string waits to be used: it is not replaced. */
  private static List<Routine> routines(ItemRow item, boolean spare, Gathered of) {
    List<Routine> routines = new ArrayList<>();
    for (Planned each : of.planned().getOrDefault(item.id(), List.of())) {
      if (!spare || each.work().isInspection()) {
        routines.add(each.routine(of.today(), of.minutes().get(each.work())));
      }
    }
    for (Asked each : of.asked().getOrDefault(item.id(), List.of())) {
      routines.add(
          Routine.once(
              each.work().word(),
              of.minutes().get(each.work()),
              days(of.today(), each.day()),
              each.blocks()));
    }
    return routines;
  }

  private Map<Kind, Priced> prices(List<ItemRow> items) {
    Map<Kind, Priced> prices = new EnumMap<>(Kind.class);
    for (PlanRules.Terms terms : rules.terms()) {
      OptionalDouble paid =
          items.stream()
              .filter(item -> item.kind() == terms.kind() && item.priceMinor() != null)
              .mapToLong(ItemRow::priceMinor)
              .average();
      prices.put(
          terms.kind(),
          terms.priceMinor() != null
              ? new Priced(terms, terms.priceMinor(), "the club’s rule")
              : paid.isPresent()
                  ? new Priced(terms, Math.round(paid.getAsDouble()), "paid on average")
                  : new Priced(terms, 0, "not known: counts as nothing"));
    }
    return prices;
  }

  private static boolean hasRigs(Kind kind) {
    return kind == Kind.RISER || kind == Kind.LIMBS || kind == Kind.STRING || kind == Kind.BOW;
  }

  private static int days(LocalDate from, LocalDate to) {
    return (int) ChronoUnit.DAYS.between(from, to);
  }
}
