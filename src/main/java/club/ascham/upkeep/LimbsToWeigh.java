package club.ascham.upkeep;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads which limbs and one-piece bows belong on the bow scale by the club's rule.
 *
 * <p>Late is a note and keeps nothing in, since a club may have no scale; a year is judged. It is a
 * rule of the club and no {@link Work}: the reading itself is what was done, and a second record of
 * it could only differ.
 */
@ApplicationScoped
public class LimbsToWeigh {
  private final Rows rows;

  LimbsToWeigh(Rows rows) {
    this.rows = rows;
  }

  /**
   * The last day in time of each thing: so long after its last reading, else after it was bought or
   * entered. With the moment as {@code ?2} and its day as {@code ?3}; a reading's day is the
   * club's.
   *
   * @param things SQL of the items {@code i}
   */
  public static String duesOf(String things) {
    return """
    SELECT d.item_id, d.code, d.last_on,
           date(coalesce(d.last_on, d.bought_on, d.registered_on), '+' || c.weigh_limbs_days || ' days') AS due_on
      FROM club c JOIN (
        SELECT i.id AS item_id, i.code, i.bought_on, i.registered_on,
               (SELECT date(s.happened_at, coalesce((SELECT o.ahead_s FROM clock_offset o
                         WHERE o.from_at <= s.happened_at ORDER BY o.from_at DESC LIMIT 1), 0) || ' seconds')
                  FROM scale_reading s WHERE s.item_id = i.id AND s.happened_at <= ?2
                 ORDER BY s.happened_at DESC LIMIT 1) AS last_on
          FROM """
        + " "
        + things
        + """

         WHERE i.kind IN ('LIMBS', 'BOW') AND i.registered_on <= ?3 AND (i.retired_on IS NULL OR i.retired_on > ?3)) d
     WHERE c.weigh_limbs_days IS NOT NULL""";
  }

  /**
   * Limbs that are due.
   *
   * @param lastOn null: never weighed
   * @param dueOn the last day in time
   * @param rig that they sit on; null: none, and then they can't be drawn
   */
  public record Due(
      ItemId item,
      String bareCode,
      String maker,
      String model,
      LocalDate lastOn,
      LocalDate dueOn,
      RigId rig) {
    public String code() {
      return new ItemCode(bareCode).display();
    }

    public String name() {
      return Stream.of(maker, model).filter(part -> part != null).collect(Collectors.joining(" "));
    }

    public String itemPage() {
      return "/items/" + code();
    }

    /** Where they are weighed; null: nowhere as long as they sit on no riser. */
    public String weighPage() {
      return rig == null ? null : "/rigs/" + rig.value() + "/weigh";
    }
  }

  /** All that is due on a day, the longest overdue first. */
  List<Due> on(LocalDate today) {
    return rows.list(
        Due.class,
        """
        SELECT w.item_id, w.code AS bare_code, m.maker, m.model, w.last_on, w.due_on, f.rig_id
          FROM (%s) w JOIN item m ON m.id = w.item_id
          LEFT JOIN fitting f ON f.item_id = w.item_id AND f.until_at IS NULL
         WHERE w.due_on < ?1 ORDER BY w.due_on, w.code"""
            .formatted(duesOf("item i")),
        today,
        "9999-12-31T23:59:59.999Z",
        today);
  }
}
