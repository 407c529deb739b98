package club.ascham.recall;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Traces what a recall names: where each item is, and whose hands and rigs it has been in. */
@ApplicationScoped
class Recalls {
  private static final String MATCHING =
      """
      SELECT i.id FROM item i LEFT JOIN limbs l ON l.id = i.id
       WHERE (?%1$d IS NULL OR lower(i.maker) = lower(?%1$d))
         AND (?%2$d IS NULL OR lower(i.model) = lower(?%2$d))
         AND (?%3$d IS NULL OR substr(lower(i.batch), 1, length(?%3$d)) = lower(?%3$d))
         AND (?%4$d IS NULL OR substr(lower(i.serial), 1, length(?%4$d)) = lower(?%4$d)
              OR substr(lower(l.serial_upper), 1, length(?%4$d)) = lower(?%4$d)
              OR substr(lower(l.serial_lower), 1, length(?%4$d)) = lower(?%4$d))""";

  private final Rows rows;
  private final ClubTime time;

  Recalls(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /** Every item that the recall names, retired ones too, by code. */
  List<Recalled> of(RecallQuery query) {
    return rows.list(
        Recalled.class,
        """
        SELECT i.id, i.code AS bare_code, i.kind, i.maker, i.model, i.batch,
               nullif(concat_ws(' / ', i.serial, l.serial_upper, l.serial_lower), '') AS serials,
               %s AS state, w.why AS withdrawn_why,
               (SELECT group_concat(r.words, ' ') FROM report_part p JOIN report r ON r.id = p.report_id
                 WHERE p.item_id = i.id AND r.answer IS NULL AND r.words LIKE '%s%%') AS told_why,
               s.rig_id, bi.code AS rig_bare_code, s.loan_id, o.due_on AS back_by, o.leader
          FROM item_standing s
          JOIN item i ON i.id = s.item_id
          LEFT JOIN limbs l ON l.id = i.id
          LEFT JOIN withdrawal w ON w.item_id = i.id AND w.released_at IS NULL
          LEFT JOIN fitting b ON b.rig_id = s.rig_id AND b.place = 'BODY' AND b.until_at IS NULL
          LEFT JOIN item bi ON bi.id = b.item_id
          LEFT JOIN loan o ON o.id = s.loan_id
         WHERE i.id IN (%s)
         ORDER BY s.retired, i.code"""
            .formatted(Standing.STATE_TODAY, Recalled.RECALL, MATCHING.formatted(2, 3, 4, 5)),
        time.today(),
        query.maker(),
        query.model(),
        query.batch(),
        query.serial());
  }

  /** Whether this very recall stands against an item already. */
  boolean standsAgainst(ItemId item, String words) {
    return rows.number(
            """
            SELECT (SELECT count(*) FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL AND why = ?2)
                 + (SELECT count(*) FROM report_part p JOIN report r ON r.id = p.report_id
                     WHERE p.item_id = ?1 AND r.answer IS NULL AND r.words = ?2)""",
            item,
            words)
        > 0;
  }

  /**
   * Someone who has or had an item.
   *
   * @param borrower null: sessions, counted together
   * @param name null likewise
   * @param contact null likewise
   * @param guardian null likewise, and for a grown-up
   * @param until null: has it now
   */
  public record Holder(
      ItemId item,
      Long borrower,
      String name,
      String contact,
      String guardian,
      Instant from,
      Instant until,
      int times) {}

  /** Who has or had each of these items, the latest first. */
  Map<ItemId, List<Holder>> holders(Collection<ItemId> items) {
    return rows
        .list(
            Holder.class,
            """
            SELECT x.item_id, o.borrower_id, b.name, b.contact, b.guardian, min(x.out_at) AS "from",
                   CASE WHEN count(*) = count(x.back_at) THEN max(x.back_at) END AS until, count(*) AS times
              FROM loan_line x JOIN loan o ON o.id = x.loan_id LEFT JOIN borrower b ON b.id = o.borrower_id
             WHERE x.item_id IN (SELECT value FROM json_each(?1))
               AND x.id NOT IN (SELECT line_id FROM undone_line)
             GROUP BY x.item_id, o.borrower_id
             ORDER BY x.item_id, count(*) = count(x.back_at), max(x.out_at) DESC""",
            ids(items))
        .stream()
        .collect(Collectors.groupingBy(Holder::item));
  }

  /** Each time that somebody had what the recall names: by item, who has it now first. */
  List<HolderRow> holderRows(RecallQuery query) {
    return rows.list(
        HolderRow.class,
        """
        SELECT i.code AS bare_code, i.maker, i.model, i.batch,
               (SELECT c.code FROM fitting f JOIN item c ON c.id = f.item_id
                 WHERE f.rig_id = x.rig_id AND f.place = 'BODY' AND f.from_at <= x.out_at
                 ORDER BY f.from_at DESC LIMIT 1) AS rig_bare_code,
               o.id AS loan, o.kind = 'SESSION' AS session, coalesce(b.name, o.leader) AS who, b.contact, b.guardian,
               x.out_at AS "from", x.back_at AS until
          FROM loan_line x JOIN item i ON i.id = x.item_id
          JOIN loan o ON o.id = x.loan_id LEFT JOIN borrower b ON b.id = o.borrower_id
         WHERE i.id IN (%s) AND x.id NOT IN (SELECT line_id FROM undone_line)
         ORDER BY i.code, x.back_at IS NOT NULL, x.out_at DESC, x.id"""
            .formatted(MATCHING.formatted(1, 2, 3, 4)),
        query.maker(),
        query.model(),
        query.batch(),
        query.serial());
  }

  /**
   * A rig that an item is or was fitted to.
   *
   * @param bareCode of the rig's body then or now; null: it never had one
   * @param until null: it is fitted there now
   */
  public record Touched(ItemId item, RigId rig, String bareCode, Instant from, Instant until) {
    public String code() {
      return bareCode == null ? "rig " + rig.value() : new ItemCode(bareCode).display();
    }
  }

  /** The rigs that each of these items was fitted to, the latest first. */
  Map<ItemId, List<Touched>> rigs(Collection<ItemId> items) {
    return rows
        .list(
            Touched.class,
            """
            SELECT f.item_id, f.rig_id,
                   (SELECT i.code FROM fitting b JOIN item i ON i.id = b.item_id
                     WHERE b.rig_id = f.rig_id AND b.place = 'BODY' ORDER BY b.from_at DESC LIMIT 1) AS bare_code,
                   f.from_at AS "from", f.until_at AS until
              FROM fitting f WHERE f.item_id IN (SELECT value FROM json_each(?1))
             ORDER BY f.item_id, f.from_at DESC""",
            ids(items))
        .stream()
        .collect(Collectors.groupingBy(Touched::item));
  }

  /** Makers and models on the register, to choose from. */
  List<String> makers() {
    return rows.texts("SELECT DISTINCT maker FROM item WHERE maker IS NOT NULL ORDER BY maker");
  }

  List<String> models() {
    return rows.texts("SELECT DISTINCT model FROM item WHERE model IS NOT NULL ORDER BY model");
  }

  private static String ids(Collection<ItemId> items) {
    return items.stream()
        .map(item -> Long.toString(item.value()))
        .collect(Collectors.joining(",", "[", "]"));
  }
}
