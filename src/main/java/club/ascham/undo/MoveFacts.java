package club.ascham.undo;

import club.ascham.concern.Concern;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads moves, and what became of what they moved. */
@ApplicationScoped
class MoveFacts {
  private static final String COLUMNS =
      """
      SELECT m.id, m.kind, m.loan_id, coalesce(l.kind = 'SESSION', 0) AS session, m.check_id, c.rig_id, m.made_at, m.made_by,
             a.name AS "by", m.undone_at, u.name AS undone_by,
             (SELECT group_concat(i.code ORDER BY x.id) FROM moved d JOIN loan_line x ON x.id = d.line_id
                JOIN item i ON i.id = x.item_id WHERE d.move_id = m.id) AS bare_codes
        FROM move m JOIN account a ON a.id = m.made_by
        LEFT JOIN account u ON u.id = m.undone_by
        LEFT JOIN loan l ON l.id = m.loan_id
        LEFT JOIN bow_check c ON c.id = m.check_id
       """;

  private static final String MOVED =
      """
      WITH line AS (SELECT x.id, x.item_id, x.rig_id, x.loan_id, x.out_at, x.back_at, x.arrow_count, d.went, i.code
                      FROM moved d JOIN loan_line x ON x.id = d.line_id JOIN item i ON i.id = x.item_id
                     WHERE d.move_id = ?1),
           put AS (SELECT c.id, c.rig_id, c.happened_at FROM move m JOIN bow_check c ON c.id = m.check_id WHERE m.id = ?1),
           bow AS (SELECT rig_id FROM line WHERE rig_id IS NOT NULL UNION SELECT rig_id FROM put),
           part AS (SELECT item_id FROM line),
           took AS (SELECT receipt_id FROM moved WHERE move_id = ?1 AND receipt_id IS NOT NULL)
      """;

  private static final String RESTING =
      MOVED
          + """
          SELECT nth, what, code AS bare_code, loan_id FROM (
            SELECT 1 AS nth, 'LENT' AS what, l.code, o.loan_id FROM line l JOIN loan_line o ON o.item_id = l.item_id
             WHERE l.went = 'IN' AND l.arrow_count IS NULL AND o.id <> l.id AND o.out_at >= l.back_at
               AND o.id NOT IN (SELECT id FROM line) AND o.id NOT IN (SELECT line_id FROM undone_line)
            UNION ALL
            SELECT 1, 'LENT', NULL, o.loan_id FROM put p JOIN loan_line o ON o.rig_id = p.rig_id
             WHERE o.out_at >= p.happened_at AND o.id NOT IN (SELECT line_id FROM undone_line)
            UNION ALL
            SELECT 2, 'BODY', NULL, NULL FROM line l JOIN item i ON i.id = l.item_id, move m
             WHERE m.id = ?1 AND m.kind = 'EXCHANGE' AND l.rig_id IS NOT NULL AND i.kind IN ('RISER', 'BOW')
            UNION ALL
            SELECT 2, 'EXCHANGED', l.code, NULL FROM line l WHERE l.went = 'OUT' AND l.back_at IS NOT NULL
            UNION ALL
            SELECT 3, 'RETIRED', i.code, NULL FROM part p JOIN item i ON i.id = p.item_id WHERE i.retired_on IS NOT NULL
            UNION ALL
            SELECT 4, 'CHECKED', NULL, NULL FROM bow_check c
             WHERE c.rig_id IN (SELECT rig_id FROM bow) AND c.recorded_at > ?2
               AND c.id NOT IN (SELECT check_id FROM moved WHERE move_id = ?1 AND check_id IS NOT NULL)
               AND c.id NOT IN (SELECT check_id FROM undone_look)
            UNION ALL
            SELECT 4, 'CHECKED', NULL, NULL FROM bow_check c
             WHERE c.rig_id IN (SELECT rig_id FROM bow) AND c.released_at > ?2
               AND c.id NOT IN (SELECT id FROM put)
            UNION ALL
            SELECT 5, 'SET_UP', NULL, NULL FROM set_up u
             WHERE u.rig_id IN (SELECT rig_id FROM bow) AND (u.begun_at > ?2 OR u.finished_at > ?2)
            UNION ALL
            SELECT 6, 'PARTS', NULL, NULL FROM fitting f
             WHERE f.rig_id IN (SELECT rig_id FROM bow) AND (f.from_at > ?2 OR f.until_at > ?2)
            UNION ALL
            SELECT 6, 'PARTS', l.code, NULL FROM line l, move m
             WHERE m.id = ?1 AND m.kind <> 'EXCHANGE' AND l.rig_id IS NOT NULL
               AND NOT EXISTS (SELECT 1 FROM fitting f WHERE f.rig_id = l.rig_id AND f.item_id = l.item_id AND f.until_at IS NULL)
            UNION ALL
            SELECT 6, 'FITTED', l.code, NULL FROM line l JOIN fitting f ON f.item_id = l.item_id AND f.until_at IS NULL
             WHERE l.went = 'IN' AND f.rig_id IS NOT l.rig_id
            UNION ALL
            SELECT 7, 'ADJUSTED', NULL, NULL FROM adjustment a
             WHERE a.rig_id IN (SELECT rig_id FROM bow) AND a.recorded_at > ?2
            UNION ALL
            SELECT 8, 'INSPECTED', i.code, NULL FROM part p JOIN upkeep_record n ON n.item_id = p.item_id JOIN item i ON i.id = p.item_id
             WHERE n.recorded_at > ?2
            UNION ALL
            SELECT 9, 'WITHDRAWN', i.code, NULL FROM part p JOIN withdrawal w ON w.item_id = p.item_id JOIN item i ON i.id = p.item_id
             WHERE w.recorded_at > ?2 OR w.decided_at > ?2 OR w.released_at > ?2
            UNION ALL
            SELECT 10, 'TOLD', i.code, NULL FROM part p JOIN report_part t ON t.item_id = p.item_id
              JOIN report r ON r.id = t.report_id JOIN item i ON i.id = p.item_id
             WHERE r.recorded_at > ?2 AND (r.receipt_id IS NULL OR r.receipt_id NOT IN (SELECT receipt_id FROM took))
            UNION ALL
            SELECT 11, 'ANSWERED', NULL, NULL FROM report r
             WHERE r.answered_at IS NOT NULL AND r.receipt_id IN (SELECT receipt_id FROM took)
            UNION ALL
            SELECT 12, 'SETTLED', NULL, m.loan_id FROM move m JOIN loan o ON o.id = m.loan_id
             WHERE m.id = ?1 AND o.deposit_minor > 0 AND o.deposit_back_minor IS NOT NULL
               AND EXISTS (SELECT 1 FROM loan_line x WHERE x.loan_id = m.loan_id AND x.id NOT IN (SELECT id FROM line)
                              AND (x.receipt_id > (SELECT max(receipt_id) FROM took) OR x.receipt_id IS NULL AND x.back_at > ?2))
            UNION ALL
            SELECT 13, 'FORGOTTEN', NULL, m.loan_id FROM move m JOIN loan o ON o.id = m.loan_id
              JOIN borrower b ON b.id = o.borrower_id
             WHERE m.id = ?1 AND b.erased_on IS NOT NULL)
           ORDER BY nth""";

  /** The rows of what may keep something in that were written since. */
  private static final String WRITTEN_SINCE =
      MOVED
          + """
          SELECT 'WITHDRAWN' AS matter, w.id FROM withdrawal w JOIN part p ON p.item_id = w.item_id WHERE w.recorded_at > ?2
          UNION SELECT 'REPORTED', r.id FROM report r JOIN report_part t ON t.report_id = r.id JOIN part p ON p.item_id = t.item_id
           WHERE r.recorded_at > ?2 AND (r.receipt_id IS NULL OR r.receipt_id NOT IN (SELECT receipt_id FROM took))
          UNION SELECT 'INSPECTION_FAILED', n.id FROM upkeep_record n JOIN part p ON p.item_id = n.item_id
           WHERE n.recorded_at > ?2
          UNION SELECT iif(k.cause = 'CHANGING', 'CHANGING', 'ASKED'), k.id FROM upkeep_task k JOIN part p ON p.item_id = k.item_id
           WHERE k.opened_at > ?2""";

  private final Rows rows;
  private final Concerns concerns;
  private final ClubTime time;

  MoveFacts(Rows rows, Concerns concerns, ClubTime time) {
    this.rows = rows;
    this.concerns = concerns;
    this.time = time;
  }

  Optional<Move> one(long id) {
    return rows.one(Move.class, COLUMNS + "WHERE m.id = ?1", id);
  }

  /** Those of a loan, the last first. */
  List<Move> of(LoanId loan) {
    return rows.list(Move.class, COLUMNS + "WHERE m.loan_id = ?1 ORDER BY m.id DESC", loan);
  }

  /** The last few of a bow: as it came back, had a part exchanged or was put back. */
  List<Move> of(RigId rig, int atMost) {
    return rows.list(
        Move.class,
        COLUMNS
            + """
            WHERE m.id IN (
              SELECT d.move_id FROM loan_line x JOIN moved d ON d.line_id = x.id WHERE x.rig_id = ?1
              UNION SELECT p.id FROM bow_check k JOIN move p ON p.check_id = k.id WHERE k.rig_id = ?1)
            ORDER BY m.id DESC LIMIT ?2""",
        rig,
        atMost);
  }

  /** All of them, the last first. */
  List<Move> page(int skipped, int atMost) {
    return rows.list(
        Move.class, COLUMNS + "ORDER BY m.id DESC LIMIT ?1 OFFSET ?2", atMost, skipped);
  }

  Optional<Move> ofReceipt(long receipt) {
    return rows.one(
        Move.class,
        COLUMNS + "WHERE m.id = (SELECT max(move_id) FROM moved WHERE receipt_id = ?1)",
        receipt);
  }

  /** What a move moved: a line of a loan, in or out. */
  record Line(
      long id,
      ItemId item,
      String bareCode,
      String kind,
      RigId rig,
      boolean cameIn,
      Integer arrowCount,
      Integer missing,
      RigId keptWith) {
    String code() {
      return new ItemCode(bareCode).display();
    }

    /** Whether a part of a bow was taken off or fitted. */
    boolean isPart() {
      return rig != null;
    }

    boolean isBody() {
      return kind.equals("RISER") || kind.equals("BOW");
    }
  }

  List<Line> lines(long move) {
    return rows.list(
        Line.class,
        """
        SELECT x.id, x.item_id, i.code AS bare_code, i.kind, x.rig_id, d.went = 'IN' AS came_in, x.arrow_count,
               x.missing_count AS missing, d.kept_with
          FROM moved d JOIN loan_line x ON x.id = d.line_id JOIN item i ON i.id = x.item_id
         WHERE d.move_id = ?1 ORDER BY x.id""",
        move);
  }

  private record Part(ItemId item) {}

  /** What is fitted to a bow now. */
  List<ItemId> partsOf(RigId rig) {
    return rows
        .list(
            Part.class,
            "SELECT item_id FROM fitting WHERE rig_id = ?1 AND until_at IS NULL ORDER BY id",
            rig)
        .stream()
        .map(Part::item)
        .toList();
  }

  private record Source(Matter matter, long id) {}

  private record Rests(int nth, Resting what, String bareCode, LoanId loan) {}

  /** What became of what it moved. */
  MayUndo.Since since(Move move) {
    List<String> resting =
        rows.list(Rests.class, RESTING, move.id(), move.madeAt()).stream()
            .filter(one -> move.kind().sendsOut() || one.what().restsOnPutBack())
            .map(
                one ->
                    one.what()
                        .said(
                            one.bareCode() == null ? null : new ItemCode(one.bareCode()).display(),
                            one.loan()))
            .toList();
    return move.kind().sendsOut()
        ? keptIn(move, resting)
        : new MayUndo.Since(resting, List.of(), false);
  }

  private MayUndo.Since keptIn(Move move, List<String> resting) {
    List<ItemId> out =
        lines(move.id()).stream().filter(Line::cameIn).map(Line::item).distinct().toList();
    List<Concern> blocking =
        concerns.ofItems(out).values().stream()
            .flatMap(against -> against.blocking().all().stream())
            .toList();
    LocalDate day = time.dayOf(move.madeAt());
    Set<Source> since =
        new HashSet<>(rows.list(Source.class, WRITTEN_SINCE, move.id(), move.madeAt()));
    return new MayUndo.Since(
        resting,
        blocking.stream()
            .filter(
                one ->
                    one.since().isAfter(day)
                        || since.contains(new Source(one.matter(), one.source())))
            .toList(),
        !blocking.isEmpty());
  }
}
