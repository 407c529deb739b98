package club.ascham.upkeep;

import club.ascham.id.ItemId;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;

/** Reads what work is due, from the view that derives it. */
@ApplicationScoped
public class DueWork {
  private static final String ROWS =
      """
      SELECT w.item_id, i.code AS bare_code, i.kind, i.maker, i.model, w.work, w.due_on, w.soon_days, w.blocks,
             w.task_id IS NOT NULL AS asked, w.because, %s AS state, s.rig_id, bi.code AS rig_bare_code, o.due_on AS back_by
        FROM work_due w
        JOIN item i ON i.id = w.item_id
        JOIN item_standing s ON s.item_id = w.item_id
        LEFT JOIN fitting b ON b.rig_id = s.rig_id AND b.place = 'BODY' AND b.until_at IS NULL
        LEFT JOIN item bi ON bi.id = b.item_id
        LEFT JOIN loan o ON o.id = s.loan_id
       """
          .formatted(Standing.STATE_TODAY);
  private static final String NARROWED =
      "(?2 IS NULL OR i.kind = ?2) AND (?3 IS NULL OR w.work = ?3)";
  private static final String SOONEST_FIRST =
      " ORDER BY w.due_on, w.blocks DESC, i.code, w.work LIMIT ?4 OFFSET ?5";

  /** {@link Urgency} as a condition on a row of the view, with today as {@code ?1}. */
  private static final String OVERDUE =
      "(w.due_on < ?1 OR (w.task_id IS NOT NULL AND w.due_on <= ?1))";

  private static final String SOON =
      "(NOT " + OVERDUE + " AND w.due_on <= date(?1, '+' || w.soon_days || ' days'))";
  private static final String LATER = "(w.due_on > date(?1, '+' || w.soon_days || ' days'))";

  private final Rows rows;
  private final ClubTime time;

  DueWork(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /**
   * How much work presses today.
   *
   * @param keepingIn overdue, and its item stays in until it is done
   * @param overdue all that is overdue, those included
   */
  public record Pressing(int keepingIn, int overdue, int dueSoon) {}

  public Pressing pressing() {
    return rows.one(
            Pressing.class,
            "SELECT coalesce(sum(%1$s AND w.blocks), 0) AS keeping_in, coalesce(sum(%1$s), 0) AS overdue, coalesce(sum(%2$s), 0) AS due_soon FROM work_due w"
                .formatted(OVERDUE, SOON),
            time.today())
        .orElseThrow();
  }

  /** What is overdue and keeps its item in, the longest overdue first. */
  public List<DueRow> keepingIn(int atMost) {
    return list(OVERDUE + " AND w.blocks = 1", null, atMost, 0);
  }

  /** What falls due up to a day, that day included, the soonest first: strings of a quarter. */
  public List<DueRow> until(LocalDate day, Work work) {
    return rows.list(
        DueRow.class,
        ROWS + "WHERE w.due_on <= ?2 AND (?3 IS NULL OR w.work = ?3) ORDER BY w.due_on, i.code",
        time.today(),
        day,
        work);
  }

  /** All that an item is planned for, the soonest first; what no count has reached is left out. */
  public List<Due> of(ItemId item) {
    return rows.list(
        Due.class,
        """
        SELECT work, due_on, soon_days, blocks, task_id IS NOT NULL AS asked, because
          FROM work_due WHERE item_id = ?1 AND due_on IS NOT NULL ORDER BY due_on""",
        item);
  }

  /** The plan of the coming month, all that is overdue included. */
  List<DueRow> month(DueFilter filter) {
    return list("w.due_on < date(?1, '+" + Due.MONTH + " days')", filter, 1000, 0);
  }

  /** One page of what comes after the month. */
  List<DueRow> later(DueFilter filter) {
    return list(
        "w.due_on >= date(?1, '+" + Due.MONTH + " days')", filter, filter.size(), filter.skipped());
  }

  int countLater(DueFilter filter) {
    return count("w.due_on >= date(?1, '+" + Due.MONTH + " days')", filter);
  }

  List<DueRow> page(DueFilter filter) {
    return list(condition(filter.urgency()), filter, filter.size(), filter.skipped());
  }

  int count(DueFilter filter) {
    return count(condition(filter.urgency()), filter);
  }

  private static String condition(Urgency urgency) {
    if (urgency == null) {
      return "w.due_on IS NOT NULL";
    }
    return switch (urgency) {
      case OVERDUE -> OVERDUE;
      case DUE_SOON -> SOON;
      case LATER -> LATER;
    };
  }

  private List<DueRow> list(String condition, DueFilter filter, int atMost, int skipped) {
    return rows.list(
        DueRow.class,
        ROWS + "WHERE " + condition + " AND " + NARROWED + SOONEST_FIRST,
        time.today(),
        filter == null ? null : filter.kind(),
        filter == null ? null : filter.work(),
        atMost,
        skipped);
  }

  private int count(String condition, DueFilter filter) {
    return (int)
        rows.number(
            "SELECT count(*) FROM work_due w JOIN item i ON i.id = w.item_id WHERE "
                + condition
                + " AND "
                + NARROWED,
            time.today(),
            filter.kind(),
            filter.work());
  }
}
