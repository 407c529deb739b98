package club.ascham.assembly;

import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.rig.Obstacle;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The moment at which parts come off a rig and others go on: now, or the evening of an earlier day
 * for what is typed in late. What the record knows of the rig and of the new parts must lie before
 * it: a check of later judged the parts that were on it then.
 */
@ApplicationScoped
public class ChangeMoment {
  /** The name of the answer. */
  public static final String ON = "on";

  private static final LocalTime EVENING = LocalTime.of(21, 0);

  private final Rows rows;
  private final ClubTime time;

  ChangeMoment(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /**
   * A moment, or why it can't be.
   *
   * @param refused null: nothing speaks against it
   */
  public record Found(Instant at, Obstacle refused) {}

  private record Known(Instant at, String what) {}

  /** The day typed at {@code on}; null: now. */
  public static LocalDate read(Typed typed, LocalDate today) {
    LocalDate on = typed.day(ON);
    if (on == null || on.equals(today)) {
      return null;
    }
    if (on.isAfter(today)) {
      typed.fault(ON, "That day is still to come.");
    }
    return on;
  }

  /**
   * @param on null: now
   * @param rig null: it is made of these parts only now
   * @param parts what is fitted
   */
  public Found of(LocalDate on, RigId rig, Collection<ItemId> parts) {
    if (on == null) {
      return new Found(time.now(), null);
    }
    Instant evening = time.momentOf(on.atTime(EVENING));
    Optional<Known> last = last(rig, parts);
    if (last.isEmpty() || !last.get().at().isAfter(evening)) {
      return new Found(evening, null);
    }
    Instant known = last.get().at();
    LocalDate day = time.dayOf(known);
    if (day.equals(on)) {
      // Late that evening: received first, then changed.
      return new Found(known.plusMillis(1), null);
    }
    return new Found(
        evening,
        new Obstacle(
            ON,
            last.get().what() + " " + ClubTime.said(day) + ".",
            "Give that day or a later one."));
  }

  private Optional<Known> last(RigId rig, Collection<ItemId> parts) {
    String these =
        parts.stream()
            .map(part -> String.valueOf(part.value()))
            .collect(Collectors.joining(",", "[", "]"));
    return rows.one(
        Known.class,
        """
        WITH part AS (SELECT value AS id FROM json_each(?2))
        SELECT at, what FROM (
          SELECT max(happened_at) AS at, 'The bow was checked on' AS what FROM bow_check
           WHERE rig_id = ?1 AND id NOT IN (SELECT check_id FROM undone_look)
          UNION ALL
          SELECT max(finished_at), 'The bow was set up on' FROM set_up WHERE rig_id = ?1
          UNION ALL
          SELECT max(happened_at), 'The bow was adjusted on' FROM adjustment WHERE rig_id = ?1
          UNION ALL
          SELECT max(max(from_at, coalesce(until_at, ''))), 'Parts of the bow were changed on'
            FROM fitting WHERE rig_id = ?1
          UNION ALL
          SELECT max(out_at), 'The bow was lent on' FROM loan_line WHERE rig_id = ?1
          UNION ALL
          SELECT max(back_at), 'The bow was received on' FROM loan_line WHERE rig_id = ?1
          UNION ALL
          SELECT max(until_at), 'What goes on was still fitted to another rig on'
            FROM fitting WHERE item_id IN (SELECT id FROM part) AND coalesce(rig_id, 0) IS NOT ?1
          UNION ALL
          SELECT max(back_at), 'What goes on was still out on loan on'
            FROM loan_line WHERE item_id IN (SELECT id FROM part) AND coalesce(rig_id, 0) IS NOT ?1
          UNION ALL
          SELECT max(max(happened_at, coalesce(released_at, ''))), 'A part of it was withdrawn or released on'
            FROM withdrawal WHERE item_id IN (SELECT id FROM part)
          UNION ALL
          SELECT max(bought_on) || 'T12:00:00.000Z', 'What goes on was only bought on'
            FROM item WHERE id IN (SELECT id FROM part))
         WHERE at IS NOT NULL ORDER BY at DESC LIMIT 1\
        """,
        rig,
        these);
  }
}
