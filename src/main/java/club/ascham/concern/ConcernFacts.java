package club.ascham.concern;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.report.Noticed;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.LimbsToWeigh;
import club.ascham.upkeep.Work;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The statements that read the facts, and the shapes of their rows. Ids come as a JSON array in
 * {@code ?1}, the moment as {@code ?2}, its day as {@code ?3}.
 */
final class ConcernFacts {
  private ConcernFacts() {}

  /** What was fitted to each rig at the moment. */
  static final String PARTS =
      """
      SELECT f.rig_id, f.item_id FROM json_each(?1) t CROSS JOIN fitting f ON f.rig_id = t.value
       WHERE f.from_at <= ?2 AND (f.until_at IS NULL OR f.until_at > ?2)""";

  /** What was out with each loan at the moment. */
  static final String OUT =
      """
      SELECT x.loan_id, x.item_id, x.rig_id FROM json_each(?1) t CROSS JOIN loan_line x ON x.loan_id = t.value
       WHERE x.out_at <= ?2 AND (x.back_at IS NULL OR x.back_at > ?2)""";

  /** What went out with a loan as it was issued, and when that was. */
  static final String LENT =
      """
      SELECT x.item_id, x.out_at FROM loan_line x
       WHERE x.loan_id = ?1 AND x.out_at = (SELECT min(y.out_at) FROM loan_line y WHERE y.loan_id = ?1)""";

  /** Items in use that something may keep in: withdrawn, or past the last day they may leave. */
  static final String KEPT_IN =
      """
      SELECT i.id AS item FROM item i WHERE i.retired_on IS NULL AND i.id IN (
        SELECT b.item_id FROM item_blocked b WHERE b.blocked_from < ?1
        UNION ALL SELECT w.item_id FROM withdrawal w WHERE w.released_at IS NULL)
       ORDER BY i.code""";

  static final String OF_ITEMS_NOW = ofItems("");

  /**
   * Of a day that is over: what is planned now was planned then, where nothing was passed since.
   */
  static final String OF_ITEMS_THEN = ofItems(" AND NOT EXISTS (" + passedSince("u.work") + ")");

  /** Those of the items that were passed since in any work, or have retired. */
  static final String ANOTHER_PLAN_THEN =
      """
      SELECT i.id FROM json_each(?1) t JOIN item i ON i.id = t.value
       WHERE i.retired_on > ?3 OR EXISTS ("""
          + passedSince("n.work")
          + ")";

  /**
   * What was overdue then by a plan that ended since: by the spell counts that ran. Spells are
   * counted for items that the statement names itself; of any others SQLite would count all of the
   * club's first.
   */
  static String overdueThen(List<String> items) {
    return overdue(
        "upkeep_spell",
        " AND p.since_at <= ?2 AND (p.until_at IS NULL OR p.until_at > ?2)"
            + " AND (i.retired_on > ?3 OR EXISTS ("
            + passedSince("u.work")
            + ")) AND p.item_id IN (%s)".formatted(String.join(", ", items)));
  }

  /** The bow, by the code on its body, of which nobody knows the part; null: the part is known. */
  private static final String UNSURE_OF =
      """
      CASE WHEN r.part_known = 0 THEN (SELECT b.code FROM fitting g JOIN item b ON b.id = g.item_id
             WHERE g.rig_id = r.rig_id AND g.place = 'BODY'
             ORDER BY g.from_at <= r.happened_at DESC, g.from_at DESC LIMIT 1) END""";

  private static String passedSince(String work) {
    return "SELECT 1 FROM upkeep_record n WHERE n.item_id = i.id AND n.work = "
        + work
        + " AND n.work <> 'STRING_REPLACEMENT' AND n.result = 'PASSED' AND n.happened_at > ?2";
  }

  private static String overdue(String planned, String andWhere) {
    return
"""
SELECT 'OVERDUE' AS matter, i.id AS item, i.code AS bare_code, NULL AS at, p.due_on AS day, p.beyond_on AS until, u.blocks AS grave, u.work, p.because AS why, NULL AS more, u.id AS source, NULL AS unsure_of
  FROM json_each(?1) t CROSS JOIN %s p ON p.item_id = t.value JOIN upkeep_rule u ON u.id = p.rule_id
  JOIN item i ON i.id = t.value
 WHERE p.due_on < ?3 AND (i.retired_on IS NULL OR i.retired_on > ?3)"""
            .formatted(planned)
        + andWhere;
  }

  private static String ofItems(String andPlanned) {
    return
"""
SELECT 'RETIRED' AS matter, i.id AS item, i.code AS bare_code, NULL AS at, i.retired_on AS day, NULL AS until, 1 AS grave,
       NULL AS work, i.retired_why AS why, NULL AS more, i.id AS source, NULL AS unsure_of
  FROM json_each(?1) t CROSS JOIN item i ON i.id = t.value WHERE i.retired_on <= ?3
UNION ALL
SELECT 'WITHDRAWN', i.id, i.code, w.happened_at, NULL, NULL, w.work IS NULL AND (w.decided_at IS NULL OR w.decided_at > ?2), w.work, w.why,
       (SELECT 'KEPT' FROM accident_item k JOIN accident a ON a.id = k.accident_id
         WHERE k.withdrawal_id = w.id AND a.recorded_at <= ?2 AND (a.ended_at IS NULL OR a.ended_at > ?2) LIMIT 1), w.id, NULL
  FROM json_each(?1) t CROSS JOIN withdrawal w ON w.item_id = t.value JOIN item i ON i.id = t.value
 WHERE w.happened_at <= ?2 AND (w.released_at IS NULL OR w.released_at > ?2)
UNION ALL
SELECT 'INSPECTION_FAILED', i.id, i.code, f.happened_at, NULL, NULL, 1, f.work, f.found, NULL, f.id, NULL
  FROM json_each(?1) t CROSS JOIN upkeep_record f ON f.item_id = t.value JOIN item i ON i.id = t.value
 WHERE f.result = 'FAILED' AND f.happened_at <= ?2
   AND NOT EXISTS (SELECT 1 FROM upkeep_record n WHERE n.item_id = f.item_id AND n.work = f.work
                      AND n.result IN ('PASSED', 'FAILED') AND n.happened_at <= ?2
                      AND (n.happened_at, n.id) > (f.happened_at, f.id))
UNION ALL
SELECT 'REPORTED', i.id, i.code, r.happened_at, NULL, NULL, r.dangerous, NULL, r.words,
       (SELECT group_concat(s.sign) FROM report_sign s WHERE s.report_id = r.id), r.id, %1$s
  FROM json_each(?1) t CROSS JOIN report_part p ON p.item_id = t.value JOIN report r ON r.id = p.report_id
  JOIN item i ON i.id = t.value
 WHERE r.happened_at <= ?2 AND (r.answered_at IS NULL OR r.answered_at > ?2)
UNION ALL
SELECT 'WATCHED', i.id, i.code, r.answered_at, NULL, r.watch_until, r.dangerous, NULL, r.answer_words,
       (SELECT group_concat(s.sign) FROM report_sign s WHERE s.report_id = r.id), r.id, %1$s
  FROM json_each(?1) t CROSS JOIN report_part p ON p.item_id = t.value JOIN report r ON r.id = p.report_id
  JOIN item i ON i.id = t.value
 WHERE r.answer = 'WATCH' AND r.answered_at <= ?2
UNION ALL
%2$s
UNION ALL
SELECT iif(k.cause = 'CHANGING', 'CHANGING', 'ASKED'), i.id, i.code, k.opened_at, NULL, NULL, k.blocks, k.work,
       k.why, NULL, k.id, NULL
  FROM json_each(?1) t CROSS JOIN upkeep_task k ON k.item_id = t.value JOIN item i ON i.id = t.value
  LEFT JOIN upkeep_record d ON d.id = k.closed_by_record
 WHERE k.opened_at <= ?2 AND (k.closed_by_record IS NULL OR d.happened_at > ?2)
   AND NOT (k.cause = 'REPORTED' AND EXISTS (
         SELECT 1 FROM report_part p JOIN report r ON r.id = p.report_id WHERE p.item_id = k.item_id AND r.dangerous = 1
            AND r.happened_at <= ?2 AND (r.answered_at IS NULL OR r.answered_at > ?2)))
   AND (i.retired_on IS NULL OR i.retired_on > ?3)
UNION ALL
SELECT 'WEIGHING_DUE', w.item_id, w.code, NULL, date(w.due_on, '+1 day'), NULL, 0, NULL, w.last_on, NULL, w.item_id, NULL
  FROM (%3$s) w WHERE w.due_on < ?3
UNION ALL
SELECT 'ARROWS_NOT_WEIGHED', i.id, i.code, NULL, i.registered_on, NULL, 0, NULL, NULL, NULL, i.id, NULL
  FROM json_each(?1) t CROSS JOIN item i ON i.id = t.value JOIN kit_item a ON a.id = i.id
 WHERE i.kind = 'ARROWS' AND a.arrow_mass_gr IS NULL AND i.retired_on IS NULL AND i.registered_on <= ?3
UNION ALL
SELECT 'ARROWS_MISSING', i.id, i.code, x.back_at, NULL, NULL, 0, NULL, x.back_count || ' of ' || (x.back_count + x.missing_count), NULL, x.loan_id, NULL
  FROM json_each(?1) t CROSS JOIN kit_item a ON a.id = t.value JOIN item i ON i.id = a.id
  JOIN loan_line x ON x.id = (SELECT n.id FROM loan_line n WHERE n.item_id = a.id AND n.back_at <= ?2 AND n.missing_count IS NOT NULL
                               ORDER BY n.back_at DESC, n.id DESC LIMIT 1)
 WHERE a.pool = 0 AND x.missing_count > 0 AND a.arrow_count <= x.back_count AND i.retired_on IS NULL"""
        .formatted(
            UNSURE_OF,
            overdue("upkeep_plan", andPlanned),
            LimbsToWeigh.duesOf("json_each(?1) t CROSS JOIN item i ON i.id = t.value"));
  }

  /**
   * How far each rig's own facts let it go: its parts, its set-up in force, and whether it came
   * back or was checked since it was last put back.
   */
  static final String OF_RIGS =
      """
      SELECT g.id AS rig, g.code AS bare_code, g.body, g.limbs, g.string, g.one_piece, g.body_off, g.limbs_off, g.string_off, g.parts_since,
             g.begun_at, g.set_up, nullif(g.last_event, '') AS last_event, g.last_event > g.cleared_at AS needs_check FROM (
        SELECT r.id, (SELECT i.code FROM fitting f JOIN item i ON i.id = f.item_id
                       WHERE f.rig_id = r.id AND f.place = 'BODY' AND f.from_at <= ?2
                       ORDER BY f.from_at DESC LIMIT 1) AS code,
               p.body, p.limbs, p.string, p.one_piece,
               (SELECT max(f.until_at) FROM fitting f WHERE f.rig_id = r.id AND f.place = 'BODY' AND f.until_at <= ?2) AS body_off,
               (SELECT max(f.until_at) FROM fitting f WHERE f.rig_id = r.id AND f.place = 'LIMBS' AND f.until_at <= ?2) AS limbs_off,
               (SELECT max(f.until_at) FROM fitting f WHERE f.rig_id = r.id AND f.place = 'STRING' AND f.until_at <= ?2) AS string_off,
               coalesce(p.since, r.assembled_at) AS parts_since,
               (SELECT u.begun_at FROM set_up u WHERE u.rig_id = r.id AND u.begun_at <= ?2
                   AND (u.finished_at IS NULL OR u.finished_at > ?2)) AS begun_at,
               EXISTS (SELECT 1 FROM set_up u WHERE u.rig_id = r.id AND u.finished_at <= ?2
                          AND u.begun_at >= p.since) AS set_up,
               max(coalesce((SELECT max(x.back_at) FROM loan_line x WHERE x.rig_id = r.id AND x.back_at <= ?2
                                AND x.loan_id IS NOT away.loan_id), ''),
                   coalesce((SELECT max(c.happened_at) FROM bow_check c WHERE c.rig_id = r.id AND c.happened_at <= ?2
                                AND c.id NOT IN (SELECT check_id FROM undone_look)), '')) AS last_event,
               max(coalesce((SELECT max(c.happened_at) FROM bow_check c WHERE c.rig_id = r.id AND c.happened_at <= ?2
                                AND c.released_at <= ?2 AND c.id NOT IN (SELECT check_id FROM undone_look)), ''),
                   coalesce((SELECT max(u.finished_at) FROM set_up u WHERE u.rig_id = r.id AND u.finished_at <= ?2), '')) AS cleared_at
          FROM json_each(?1) t CROSS JOIN rig r ON r.id = t.value
          LEFT JOIN (SELECT f.rig_id, max(f.place = 'BODY') AS body, max(f.place = 'LIMBS') AS limbs,
                            max(f.place = 'STRING') AS string, max(i.kind = 'BOW') AS one_piece, max(f.from_at) AS since
                       FROM json_each(?1) t CROSS JOIN fitting f ON f.rig_id = t.value JOIN item i ON i.id = f.item_id
                      WHERE f.from_at <= ?2 AND (f.until_at IS NULL OR f.until_at > ?2)
                      GROUP BY f.rig_id) p ON p.rig_id = r.id
          -- while the body is out, a part that was exchanged came back, and the bow did not
          LEFT JOIN (SELECT o.rig_id, max(o.loan_id) AS loan_id
                       FROM (SELECT x.rig_id, x.loan_id, x.item_id, x.out_at FROM json_each(?1) t CROSS JOIN loan_line x
                              WHERE x.rig_id = t.value AND x.back_at IS NULL
                             UNION ALL
                             SELECT x.rig_id, x.loan_id, x.item_id, x.out_at FROM json_each(?1) t CROSS JOIN loan_line x
                              WHERE x.rig_id = t.value AND x.back_at > ?2) o
                       JOIN item i ON i.id = o.item_id
                      WHERE i.kind IN ('RISER', 'BOW') AND o.out_at <= ?2
                      GROUP BY o.rig_id) away ON away.rig_id = r.id
         WHERE r.assembled_at <= ?2 AND (r.dissolved_at IS NULL OR r.dissolved_at > ?2)) g""";

  /**
   * @param more of a report, its signs; of a withdrawal, that it is kept after an accident
   */
  record ItemRow(
      Matter matter,
      ItemId item,
      String bareCode,
      Instant at,
      LocalDate day,
      LocalDate until,
      boolean grave,
      Work work,
      String why,
      String more,
      long source,
      String unsureOf) {
    Fact fact(Function<Instant, LocalDate> dayOf) {
      return new Fact(
          matter,
          item,
          new ItemCode(bareCode).display(),
          null,
          day == null ? dayOf.apply(at) : day,
          until,
          grave,
          work,
          matter == Matter.WITHDRAWN && more != null,
          whySaid(),
          source,
          unsureOf == null ? null : new ItemCode(unsureOf).display());
    }

    private String whySaid() {
      return switch (matter) {
        case RETIRED -> why.toLowerCase(Locale.ROOT);
        case WEIGHING_DUE ->
            why == null
                ? "it never was there"
                : "last there on " + ClubTime.said(LocalDate.parse(why));
        case REPORTED ->
            Stream.concat(told(), why == null ? Stream.empty() : Stream.of("“" + why + "”"))
                .collect(Collectors.joining("; "));
        case WATCHED ->
            more == null ? why : told().collect(Collectors.joining("; ")) + ". Seen: " + why;
        default -> why == null ? "" : why;
      };
    }

    private Stream<String> told() {
      return more == null
          ? Stream.empty()
          : Arrays.stream(more.split(",")).map(Noticed::valueOf).sorted().map(Noticed::said);
    }
  }

  record RigRow(
      RigId rig,
      String bareCode,
      boolean body,
      boolean limbs,
      boolean string,
      boolean onePiece,
      Instant bodyOff,
      Instant limbsOff,
      Instant stringOff,
      Instant partsSince,
      Instant begunAt,
      boolean setUp,
      Instant lastEvent,
      boolean needsCheck) {

    List<Fact> facts(Function<Instant, LocalDate> dayOf) {
      List<Fact> facts = new ArrayList<>();
      if (!body || !string || !(limbs || onePiece)) {
        facts.add(
            fact(Matter.NOT_SET_UP, true, dayOf.apply(lackingSince()), "It lacks " + missing()));
      } else if (begunAt != null) {
        facts.add(fact(Matter.NOT_SET_UP, false, dayOf.apply(begunAt), "Its set-up is begun"));
      } else if (!setUp) {
        facts.add(
            fact(
                Matter.NOT_SET_UP,
                false,
                dayOf.apply(partsSince),
                "It has no complete set-up figures for these parts"));
      }
      if (needsCheck) {
        facts.add(
            fact(
                Matter.NOT_CHECKED,
                true,
                dayOf.apply(lastEvent),
                "It came back, or was checked, and nobody has put it back since"));
      }
      return facts;
    }

    private boolean lacksLimbs() {
      return !limbs && !onePiece && body;
    }

    private String missing() {
      return Stream.of(
              body ? null : "a riser", lacksLimbs() ? "limbs" : null, string ? null : "a string")
          .filter(part -> part != null)
          .collect(Collectors.joining(" and "));
    }

    /** When the first of what is missing was taken off; what never was on, since it was built. */
    private Instant lackingSince() {
      return Stream.of(
              body ? null : bodyOff, lacksLimbs() ? limbsOff : null, string ? null : stringOff)
          .filter(off -> off != null)
          .min(Comparator.naturalOrder())
          .orElse(partsSince);
    }

    private Fact fact(Matter matter, boolean grave, LocalDate since, String why) {
      String name = bareCode == null ? "rig " + rig.value() : new ItemCode(bareCode).display();
      return new Fact(
          matter, null, name, rig, since, null, grave, null, false, why, rig.value(), null);
    }
  }
}
