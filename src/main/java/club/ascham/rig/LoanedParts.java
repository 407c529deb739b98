package club.ascham.rig;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;

/** The lines of a loan that follow the parts of a lent rig, so that a change of parts keeps it. */
@ApplicationScoped
class LoanedParts {
  private final Rows rows;

  LoanedParts(Rows rows) {
    this.rows = rows;
  }

  /** The loan that this rig is out on; empty: it is in the room. */
  Optional<LoanId> loanOf(RigId rig) {
    return rows
        .list(
            OfLoan.class,
            "SELECT loan_id FROM loan_line WHERE rig_id = ?1 AND back_at IS NULL LIMIT 1",
            rig)
        .stream()
        .map(OfLoan::loan)
        .findFirst();
  }

  void takenOff(LoanId loan, ItemId part, Instant at) {
    rows.change(
        """
        UPDATE loan_line SET back_at = max(?3, out_at), outcome = 'CHANGED'
         WHERE loan_id = ?1 AND item_id = ?2 AND back_at IS NULL\
        """,
        loan,
        part,
        at);
  }

  void fitted(LoanId loan, RigId rig, ItemId part, Instant at) {
    rows.change(
        "INSERT INTO loan_line (loan_id, item_id, rig_id, out_at) VALUES (?1, ?2, ?3, ?4)",
        loan,
        part,
        rig,
        at);
  }

  private record OfLoan(LoanId loan) {}
}
