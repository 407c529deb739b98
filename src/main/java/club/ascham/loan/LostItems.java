package club.ascham.loan;

import club.ascham.id.RigId;
import club.ascham.register.RetireItem;
import club.ascham.register.RetiredWhy;
import club.ascham.register.Retirement;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;

/** Takes lost things out of the club's stock. */
@ApplicationScoped
class LostItems {
  private final Rows rows;
  private final RetireItem retireItem;

  LostItems(Rows rows, RetireItem retireItem) {
    this.rows = rows;
    this.retireItem = retireItem;
  }

  /** Arrows out of a pool are counted off; anything else comes off its rig and is retired. */
  void takeOut(LoanLine line, Instant at, LocalDate today, String words) {
    if (line.arrowCount() != null) {
      rows.change(
          "UPDATE kit_item SET arrow_count = max(0, arrow_count - ?2) WHERE id = ?1",
          line.item(),
          line.arrowCount());
      return;
    }
    rows.change(
        "UPDATE fitting SET until_at = ?2 WHERE item_id = ?1 AND until_at IS NULL",
        line.item(),
        at);
    retireItem.retire(line.item(), new Retirement(today, RetiredWhy.LOST, words), null);
  }

  /** A rig with nothing left on it is no more. */
  void dissolveIfBare(RigId rig, Instant at) {
    rows.change(
        """
        UPDATE rig SET dissolved_at = ?2, version = version + 1
         WHERE id = ?1 AND dissolved_at IS NULL
           AND NOT EXISTS (SELECT 1 FROM fitting WHERE rig_id = ?1 AND until_at IS NULL)""",
        rig,
        at);
  }
}
