package club.ascham.rig;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;

/** Finds rigs, and keeps the dated facts of what is fitted to them. */
@ApplicationScoped
public class Rigs implements PanacheRepository<Rig> {
  private final Rows rows;
  private final ClubTime time;

  Rigs(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /**
   * Whoever holds a page of this rig from before sees that someone changed it first. Counted at
   * once: what the optimistic mode counts as the transaction ends comes after the seal.
   */
  public void changed(Rig rig) {
    getEntityManager().lock(rig, LockModeType.PESSIMISTIC_FORCE_INCREMENT);
  }

  public void fit(RigId rig, Place place, ItemId part, Instant at) {
    rows.add(
        NewRow.of("fitting")
            .with("rig_id", rig)
            .with("item_id", part)
            .with("place", place)
            .with("from_at", at));
    rows.change("DELETE FROM kept_with WHERE item_id = ?1", part);
    // A string's age counts from here.
    rows.change(
        "UPDATE bowstring SET first_used = ?2 WHERE id = ?1 AND first_used IS NULL",
        part,
        time.dayOf(at));
  }

  public void takeOff(RigId rig, ItemId part, Instant at) {
    rows.change(
        "UPDATE fitting SET until_at = max(?3, from_at) WHERE rig_id = ?1 AND item_id = ?2 AND until_at IS NULL",
        rig,
        part,
        at);
  }
}
