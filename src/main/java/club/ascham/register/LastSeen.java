package club.ascham.register;

import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The last day on which the record knows that the club still had an item.
 *
 * <p>Paper may be typed in late, but not against the record: nothing leaves the club before the
 * record last saw it.
 */
@ApplicationScoped
class LastSeen {
  private final Rows rows;
  private final ClubTime time;

  LastSeen(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  private record Seen(Instant at, String how) {}

  /** Why it can't have left on this day, in a sentence; empty where nothing speaks against it. */
  Optional<String> since(ItemId item, LocalDate registeredOn, LocalDate left) {
    // A check is of a rig, so the end of the fitting to it is never before the check.
    Optional<Seen> seen =
        rows.one(
            Seen.class,
            """
            SELECT at, how FROM (
              SELECT max(until_at) AS at, 'It was still fitted to a rig on' AS how
                FROM fitting WHERE item_id = ?1
              UNION ALL
              SELECT max(back_at), 'It was still out on loan on' FROM loan_line WHERE item_id = ?1
              UNION ALL
              SELECT max(happened_at), 'It was still looked over or mended on'
                FROM upkeep_record WHERE item_id = ?1
              UNION ALL
              SELECT max(max(happened_at, coalesce(released_at, ''))), 'It was still here, out of use, on'
                FROM withdrawal WHERE item_id = ?1)
             WHERE at IS NOT NULL ORDER BY at DESC LIMIT 1\
            """,
            item);
    if (seen.isPresent() && time.dayOf(seen.get().at()).isAfter(left)) {
      return Optional.of(seen.get().how() + " " + ClubTime.said(time.dayOf(seen.get().at())) + ".");
    }
    return registeredOn.isAfter(left)
        ? Optional.of("It only came on the register on " + ClubTime.said(registeredOn) + ".")
        : Optional.empty();
  }
}
