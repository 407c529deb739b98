package club.ascham.rig;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;

/** Takes what is lost off the rigs it was fitted to; a rig with nothing left on it is no more. */
@ApplicationScoped
public class LoseParts {
  private final Rigs rigs;
  private final Rows rows;

  LoseParts(Rigs rigs, Rows rows) {
    this.rigs = rigs;
    this.rows = rows;
  }

  private record FittedTo(RigId rig) {}

  /**
   * Within the transaction of the use case that knows of the loss; what is not fitted is passed
   * over.
   */
  public void lose(Collection<ItemId> items, Instant at) {
    Set<RigId> touched = new LinkedHashSet<>();
    for (ItemId item : items) {
      rows.one(
              FittedTo.class,
              "SELECT rig_id FROM fitting WHERE item_id = ?1 AND until_at IS NULL",
              item)
          .ifPresent(
              fitted -> {
                rigs.takeOff(fitted.rig(), item, at);
                touched.add(fitted.rig());
              });
    }
    touched.forEach(rig -> keepOrDissolve(rig, at));
  }

  private void keepOrDissolve(RigId id, Instant at) {
    Rig rig = rigs.findById(id.value());
    boolean bare =
        rows.number("SELECT count(*) FROM fitting WHERE rig_id = ?1 AND until_at IS NULL", id) == 0;
    if (bare) {
      rows.change("DELETE FROM kept_with WHERE rig_id = ?1", id);
      rig.dissolve(at);
    } else {
      rigs.changed(rig);
    }
  }
}
