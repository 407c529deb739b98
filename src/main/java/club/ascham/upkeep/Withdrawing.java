package club.ascham.upkeep;

import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;

/** Takes items out of use, inside a use case's transaction. */
@ApplicationScoped
class Withdrawing {
  private final Rows rows;
  private final ClubTime time;
  private final Actor actor;

  Withdrawing(Rows rows, ClubTime time, Actor actor) {
    this.rows = rows;
    this.time = time;
    this.actor = actor;
  }

  /**
   * Withdraws an item, unless it is withdrawn already; answers whether it was not.
   *
   * @param work what it needs before it may be released; null: to be decided
   */
  boolean withdraw(ItemId item, Instant happened, String why, Work work) {
    return rows.change(
            """
            INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why, work)
            SELECT ?1, ?2, ?3, ?4, ?5, ?6
             WHERE NOT EXISTS (SELECT 1 FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL)""",
            item,
            happened,
            time.now(),
            actor.id(),
            why,
            work)
        == 1;
  }
}
