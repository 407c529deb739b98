package club.ascham.loan;

import club.ascham.id.RigId;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;

/** Takes lost things out of the club's stock. */
@ApplicationScoped
class LostItems {
  private final Rows rows;

  LostItems(Rows rows) {
    this.rows = rows;
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
    rows.change("DELETE FROM kept_with WHERE item_id = ?1", line.item());
    rows.change(
        """
        UPDATE item SET retired_on = ?2, retired_why = 'LOST', retired_note = ?3, version = version + 1
         WHERE id = ?1 AND retired_on IS NULL""",
        line.item(),
        today,
        words);
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
