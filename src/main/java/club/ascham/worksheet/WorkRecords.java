package club.ascham.worksheet;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Keeps and reads what upkeep was done. */
@ApplicationScoped
class WorkRecords {
  private static final String ROWS =
      """
      SELECT u.id, u.item_id, i.code AS bare_code, i.kind, u.work, u.result, u.happened_at AS happened, u.recorded_at AS recorded, a.name AS "by",
             u.found, u.measured, u.parts_used, n.code AS new_bare_code, f.rig_id
        FROM upkeep_record u
        JOIN item i ON i.id = u.item_id
        JOIN account a ON a.id = u.done_by
        LEFT JOIN item n ON n.id = u.replaced_by
        LEFT JOIN fitting f ON f.item_id = coalesce(u.replaced_by, u.item_id) AND f.until_at IS NULL
       """;

  private final Rows rows;
  private final ClubTime time;
  private final Actor actor;

  WorkRecords(Rows rows, ClubTime time, Actor actor) {
    this.rows = rows;
    this.time = time;
    this.actor = actor;
  }

  boolean isRetired(ItemId item) {
    return rows.number("SELECT retired_on IS NOT NULL FROM item WHERE id = ?1", item) == 1;
  }

  /**
   * Work that was done.
   *
   * @param measured null: nothing (likewise found, partsUsed)
   * @param newBareCode the item that took its place; null: none did
   * @param rig the rig that it, or what took its place, is fitted to now; null: none
   */
  record Done(
      long id,
      ItemId item,
      String bareCode,
      String kind,
      Work work,
      Result result,
      Instant happened,
      Instant recorded,
      String by,
      String found,
      String measured,
      String partsUsed,
      String newBareCode,
      RigId rig) {

    public String code() {
      return new ItemCode(bareCode).display();
    }

    public String page() {
      return "/items/" + code();
    }

    public String newPage() {
      return newBareCode == null ? null : "/items/" + newCode();
    }

    public String newCode() {
      return newBareCode == null ? null : new ItemCode(newBareCode).display();
    }
  }

  Optional<Done> record(long id) {
    return rows.one(Done.class, ROWS + "WHERE u.id = ?1", id);
  }

  /** One page, newest first; replacements or inspections. */
  List<Done> page(boolean replacements, int page, int size) {
    return rows.list(
        Done.class,
        ROWS
            + "WHERE (u.work = 'STRING_REPLACEMENT') = ?1"
            + " ORDER BY u.happened_at DESC, u.id DESC LIMIT ?2 OFFSET ?3",
        replacements,
        size,
        (page - 1) * size);
  }

  long count(boolean replacements) {
    return rows.number(
        "SELECT count(*) FROM upkeep_record WHERE (work = 'STRING_REPLACEMENT') = ?1",
        replacements);
  }

  /** Keeps what was done, inside the use case's transaction, and closes what was asked for. */
  long keep(
      ItemId item,
      Work work,
      Instant happened,
      Inspected.Outcome outcome,
      String partsUsed,
      ItemId replacedBy) {
    long record =
        rows.add(
            NewRow.of("upkeep_record")
                .with("item_id", item)
                .with("work", work)
                .with("happened_at", happened)
                .with("recorded_at", time.now())
                .with("done_by", actor.id())
                .with("result", outcome.result())
                .with("found", outcome.found())
                .with("measured", outcome.measured())
                .with("parts_used", partsUsed)
                .with("replaced_by", replacedBy));
    rows.change(
        """
        UPDATE upkeep_task SET closed_by_record = ?1
         WHERE item_id = ?2 AND work = ?3 AND closed_by_record IS NULL AND opened_at <= ?4""",
        record,
        item,
        work,
        happened);
    return record;
  }

  /** The day this work is due next on the item; empty where nothing says. */
  Optional<LocalDate> nextDue(ItemId item, Work work) {
    return rows
        .texts("SELECT min(due_on) FROM work_due WHERE item_id = ?1 AND work = ?2", item, work)
        .stream()
        .filter(day -> day != null)
        .findFirst()
        .map(LocalDate::parse);
  }
}
