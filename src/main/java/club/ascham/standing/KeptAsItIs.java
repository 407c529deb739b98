package club.ascham.standing;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;

/**
 * What is kept as it is after an accident: nobody works on it until an officer ends that. What was
 * done before it happened, and is typed in late, is a fact like any other.
 */
@ApplicationScoped
public class KeptAsItIs {
  public static final String SAID =
      "It is kept as it is after an accident, until an officer ends that.";

  private static final String KEPT =
      """
       FROM accident a JOIN accident_item k ON k.accident_id = a.id
       WHERE a.ended_at IS NULL AND k.withdrawal_id IS NOT NULL AND a.happened_at <= ?2 AND """;

  private final Rows rows;

  KeptAsItIs(Rows rows) {
    this.rows = rows;
  }

  /** Whether work done on the item at that moment would change what is kept. */
  public boolean keeps(ItemId item, Instant at) {
    return rows.number("SELECT count(*)" + KEPT + " k.item_id = ?1", item, at) > 0;
  }

  /** The same of any part that the rig has now. */
  public boolean keeps(RigId rig, Instant at) {
    return rows.number(
            "SELECT count(*)"
                + KEPT
                + " k.item_id IN (SELECT f.item_id FROM fitting f WHERE f.rig_id = ?1 AND f.until_at IS NULL)",
            rig,
            at)
        > 0;
  }

  /** Whether all that a borrower has by this loan is kept; of a session, one bow alone would be. */
  public boolean keeps(LoanId loan, Instant at) {
    return rows.number(
            "SELECT count(*)"
                + KEPT
                + " a.loan_id = ?1 AND (SELECT l.kind FROM loan l WHERE l.id = a.loan_id) = 'KIT'",
            loan,
            at)
        > 0;
  }
}
