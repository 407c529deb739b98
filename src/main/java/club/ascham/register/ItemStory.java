package club.ascham.register;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** Reads where an item is, where it was, and what waits to be done to it. */
@ApplicationScoped
class ItemStory {
  private final Rows rows;

  ItemStory(Rows rows) {
    this.rows = rows;
  }

  /**
   * Work that is planned or was asked for.
   *
   * @param dueOn null: on no day yet
   * @param blocks whether the item waits once it is overdue
   */
  @TemplateData
  record Due(String work, LocalDate dueOn, String because, boolean blocks) {
    /** {@code bolt inspection}. */
    public String said() {
      return work.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public String capital() {
      return Character.toUpperCase(said().charAt(0)) + said().substring(1);
    }

    /** Its word in addresses. */
    public String word() {
      return work.toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** A loan that it is out with; a count where arrows were given out by count. */
  @TemplateData
  record Out(LoanId loan, boolean session, LocalDate dueOn, Integer arrows) {}

  /** A time that it was fitted to a rig; the code is that of the rig's riser or bow then. */
  @TemplateData
  record Fitting(RigId rig, String bareCode, Instant from, Instant until, boolean dissolved) {
    public String code() {
      return bareCode == null ? null : new ItemCode(bareCode).display();
    }
  }

  List<Due> due(ItemId item) {
    return rows.list(
        Due.class,
        """
        SELECT work, due_on, because, blocks FROM work_due WHERE item_id = ?1
         ORDER BY due_on IS NULL, due_on""",
        item);
  }

  List<Out> out(ItemId item) {
    return rows.list(
        Out.class,
        """
        SELECT l.id AS loan, l.kind = 'SESSION' AS session, l.due_on, x.arrow_count AS arrows FROM loan_line x JOIN loan l ON l.id = x.loan_id
         WHERE x.item_id = ?1 AND x.back_at IS NULL ORDER BY l.due_on""",
        item);
  }

  /** Newest first. */
  List<Fitting> fittings(ItemId item) {
    return rows.list(
        Fitting.class,
        """
        SELECT f.rig_id,
               (SELECT i.code FROM fitting b JOIN item i ON i.id = b.item_id
                 WHERE b.rig_id = f.rig_id AND b.place = 'BODY' AND b.from_at <= coalesce(f.until_at, '9999')
                 ORDER BY b.from_at DESC LIMIT 1) AS bare_code,
               f.from_at AS "from", f.until_at AS until, r.dissolved_at IS NOT NULL AS dissolved
          FROM fitting f JOIN rig r ON r.id = f.rig_id WHERE f.item_id = ?1
         ORDER BY f.from_at DESC LIMIT 20""",
        item);
  }
}
