package club.ascham.life;

import club.ascham.register.ItemKind;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** Reads how long the parts of one kind were in use: one statement, however many. */
@ApplicationScoped
public class PartLives {
  private final Rows rows;
  private final ClubTime time;

  PartLives(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  private record Row(
      String code,
      String group,
      LocalDate since,
      LocalDate registered,
      LocalDate retiredOn,
      String retiredWhy,
      Instant faultAt,
      Instant lastOut,
      Instant takenOffAt,
      boolean fitted,
      long loans,
      long shots) {}

  /**
   * Those that were ever in use, by code. A string that was never on a bow has no age. A recall is
   * no fault of the part.
   */
  List<PartLife> of(ItemKind kind) {
    return rows
        .list(
            Row.class,
            """
            SELECT i.code, coalesce(s.material, ri.build, li.build, '') AS "group",
                   coalesce(s.first_used, i.bought_on, i.registered_on) AS since, i.registered_on AS registered, i.retired_on, i.retired_why,
                   nullif(max(
                     coalesce((SELECT max(w.happened_at) FROM withdrawal w
                                WHERE w.item_id = i.id AND w.why NOT GLOB 'Recalled: *'), ''),
                     coalesce((SELECT max(u.happened_at) FROM upkeep_record u
                                WHERE u.item_id = i.id AND u.result = 'FAILED'), '')), '') AS fault_at,
                   (SELECT max(l.out_at) FROM loan_line l WHERE l.item_id = i.id
                       AND l.id NOT IN (SELECT line_id FROM undone_line)) AS last_out,
                   (SELECT max(u.happened_at) FROM upkeep_record u
                     WHERE u.item_id = i.id AND u.result = 'REPLACED') AS taken_off_at,
                   EXISTS (SELECT 1 FROM fitting f WHERE f.item_id = i.id AND f.until_at IS NULL) AS fitted,
                   (SELECT count(*) FROM loan_line l WHERE l.item_id = i.id
                       AND l.id NOT IN (SELECT line_id FROM undone_line)) AS loans,
                   (SELECT coalesce(sum(l.shots), 0) FROM loan_line l WHERE l.item_id = i.id) AS shots
              FROM item i
              LEFT JOIN bowstring s ON s.id = i.id
              LEFT JOIN riser ri ON ri.id = i.id
              LEFT JOIN limbs li ON li.id = i.id
             WHERE i.kind = ?1 AND (s.id IS NULL OR s.first_used IS NOT NULL)
             ORDER BY i.code""",
            kind)
        .stream()
        .map(this::life)
        .toList();
  }

  private PartLife life(Row row) {
    End end = end(row);
    LocalDate until =
        switch (end) {
          case IN_USE -> time.today();
          case FAILED -> time.dayOf(row.faultAt());
          case TAKEN_OFF -> time.dayOf(row.takenOffAt());
          case SCRAPPED, SOLD, LOST -> row.retiredOn();
        };
    LocalDate watched = row.registered().isAfter(row.since()) ? row.registered() : row.since();
    return new PartLife(
        row.code(),
        PartLife.groupSaid(row.group()),
        row.since(),
        watched,
        until,
        end,
        row.loans(),
        row.shots());
  }

  private static End end(Row row) {
    if (row.retiredOn() == null) {
      return row.takenOffAt() != null && !row.fitted() ? End.TAKEN_OFF : End.IN_USE;
    }
    return switch (row.retiredWhy()) {
      case "SOLD" -> End.SOLD;
      case "LOST" -> End.LOST;
      default -> failed(row) ? End.FAILED : End.SCRAPPED;
    };
  }

  /** A fault after which it never went out again. */
  private static boolean failed(Row row) {
    return row.faultAt() != null
        && (row.lastOut() == null || !row.lastOut().isAfter(row.faultAt()));
  }
}
