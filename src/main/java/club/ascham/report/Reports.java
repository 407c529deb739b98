package club.ascham.report;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Reads what was told of bows. */
@ApplicationScoped
public class Reports {
  static final String HOME = "/reports";

  private static final String COLUMNS =
      """
      SELECT r.id, r.rig_id,
             (SELECT i.code FROM fitting f JOIN item i ON i.id = f.item_id WHERE f.rig_id = r.rig_id AND f.place = 'BODY'
               ORDER BY f.until_at IS NULL DESC, f.from_at DESC LIMIT 1) AS rig_bare_code,
             r.loan_id, r.receipt_id, r.told_at, r.happened_at, r.recorded_at, a.name AS told_to, r.part_known, r.dangerous,
             r.words, r.answer, r.answered_at, b.name AS answered_by, r.answer_words, r.watch_until, r.check_id, r.record_id,
             (SELECT group_concat(s.sign) FROM report_sign s WHERE s.report_id = r.id) AS sign_list,
             (SELECT group_concat(p.item_id || ':' || i.code || ':' || i.kind) FROM report_part p
                JOIN item i ON i.id = p.item_id WHERE p.report_id = r.id) AS part_list,
             EXISTS (SELECT 1 FROM report_part p JOIN loan_line x ON x.item_id = p.item_id
                      WHERE p.report_id = r.id AND x.back_at IS NULL AND x.arrow_count IS NULL) AS out
        FROM report r JOIN account a ON a.id = r.told_to LEFT JOIN account b ON b.id = r.answered_by
       """;
  private static final String OLDEST_FIRST = " ORDER BY r.dangerous DESC, r.happened_at, r.id";

  private static final String PART =
      "SELECT i.id AS item, i.code AS bare_code, i.kind, %s FROM item i ";

  private final Rows rows;

  Reports(Rows rows) {
    this.rows = rows;
  }

  public static String page(long report) {
    return HOME + "/" + report;
  }

  public Optional<Report> one(long id) {
    return rows.one(Report.class, COLUMNS + "WHERE r.id = ?1", id);
  }

  /** The open ones first, the dangerous of them before the others; then the newest. */
  List<Report> page(Boolean open, int skipped, int atMost) {
    return rows.list(
        Report.class,
        COLUMNS
            + """
              WHERE ?1 IS NULL OR (r.answer IS NULL) = ?1
              ORDER BY r.answer IS NOT NULL, (r.answer IS NULL AND r.dangerous) DESC, r.happened_at DESC, r.id DESC
              LIMIT ?2 OFFSET ?3""",
        open,
        atMost,
        skipped);
  }

  long count(Boolean open) {
    return rows.number(
        "SELECT count(*) FROM report r WHERE ?1 IS NULL OR (r.answer IS NULL) = ?1", open);
  }

  /** What nobody has answered yet of anything, the dangerous first. */
  public List<Report> open() {
    return rows.list(Report.class, COLUMNS + "WHERE r.answer IS NULL" + OLDEST_FIRST);
  }

  /** What nobody has answered yet of a bow's parts as they are fitted now. */
  public List<Report> openOf(RigId rig) {
    return rows.list(
        Report.class,
        COLUMNS
            + """
              WHERE r.answer IS NULL AND r.id IN (SELECT p.report_id FROM fitting f JOIN report_part p ON p.item_id = f.item_id
                                                   WHERE f.rig_id = ?1 AND f.until_at IS NULL)"""
            + OLDEST_FIRST,
        rig);
  }

  /** What nobody has answered yet of one thing. */
  public List<Report> openOf(ItemId item) {
    return rows.list(
        Report.class,
        COLUMNS
            + "WHERE r.answer IS NULL AND r.id IN (SELECT report_id FROM report_part WHERE item_id = ?1)"
            + OLDEST_FIRST,
        item);
  }

  /** All that was told of what went out with a loan, as it was out. */
  public List<Report> of(LoanId loan) {
    return rows.list(
        Report.class, COLUMNS + "WHERE r.loan_id = ?1 ORDER BY r.happened_at, r.id", loan);
  }

  public List<Report> ofReceipt(long receipt) {
    return rows.list(Report.class, COLUMNS + "WHERE r.receipt_id = ?1 ORDER BY r.id", receipt);
  }

  /** Whether a check said at that moment what it would say again when it is corrected. */
  public boolean wasToldAtCheck(RigId rig, Instant happened) {
    return rows.number(
            "SELECT count(*) FROM report WHERE rig_id = ?1 AND told_at = 'CHECK' AND happened_at = ?2",
            rig,
            happened)
        > 0;
  }

  /**
   * What was fitted to a bow at a moment.
   *
   * @param rig null: none, and nothing was
   */
  public List<PartChoice> partsOf(RigId rig, Instant at) {
    return rows.list(
        PartChoice.class,
        PART.formatted("f.rig_id")
            + """
              JOIN fitting f ON f.item_id = i.id
               WHERE f.rig_id = ?1 AND f.from_at <= ?2 AND (f.until_at IS NULL OR f.until_at > ?2)
               ORDER BY f.place""",
        rig,
        at);
  }

  /** What is out with a loan, or was where all of it is back. */
  public List<PartChoice> outWith(LoanId loan) {
    return rows.list(
        PartChoice.class,
        PART.formatted("x.rig_id")
            + """
              JOIN loan_line x ON x.item_id = i.id
               WHERE x.loan_id = ?1 AND x.id = (SELECT max(y.id) FROM loan_line y WHERE y.loan_id = ?1 AND y.item_id = i.id)
                 AND (x.back_at IS NULL
                   OR NOT EXISTS (SELECT 1 FROM loan_line y WHERE y.loan_id = ?1 AND y.back_at IS NULL))
               ORDER BY x.rig_id IS NULL, x.rig_id, x.id""",
        loan);
  }

  /**
   * The loan that a bow, or a thing beside one, was out with at a moment; empty: it was in the
   * room.
   *
   * @param rig null: none (likewise item)
   */
  Optional<LoanId> loanOf(RigId rig, ItemId item, Instant at) {
    return rows
        .list(
            Out.class,
            """
            SELECT loan_id FROM loan_line
             WHERE (rig_id = ?1 OR item_id = ?2 AND arrow_count IS NULL)
               AND out_at <= ?3 AND (back_at IS NULL OR back_at > ?3) ORDER BY out_at DESC LIMIT 1""",
            rig,
            item,
            at)
        .stream()
        .map(Out::loan)
        .findFirst();
  }

  private record Out(LoanId loan) {}

  Optional<PartChoice> part(ItemCode code) {
    return rows.one(
        PartChoice.class,
        PART.formatted("f.rig_id")
            + "LEFT JOIN fitting f ON f.item_id = i.id AND f.until_at IS NULL WHERE i.code = ?1",
        code);
  }

  /** When a bow was put together; empty: there is none, or it was taken apart. */
  Optional<Instant> assembled(RigId rig) {
    return rows.one(
            At.class, "SELECT assembled_at FROM rig WHERE id = ?1 AND dissolved_at IS NULL", rig)
        .map(At::at);
  }

  private record At(Instant at) {}
}
