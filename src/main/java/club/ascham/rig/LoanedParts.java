package club.ascham.rig;

import club.ascham.bow.AgainstAdvice;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
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

  /** Who draws a bow that is out, as far as their draw is known. */
  List<HeavierBow.Archer> archersOf(RigId rig) {
    return rows.list(
        HeavierBow.Archer.class,
        """
        SELECT b.age_band, l.experience, l.draw_length
          FROM loan l JOIN borrower b ON b.id = l.borrower_id
         WHERE l.draw_length IS NOT NULL
           AND l.id IN (SELECT loan_id FROM loan_line WHERE rig_id = ?1 AND back_at IS NULL)
        UNION ALL
        SELECT a.age_band, NULL, a.draw_length FROM session_archer a
         WHERE a.rig_id = ?1 AND a.age_band IS NOT NULL
           AND a.loan_id IN (SELECT loan_id FROM loan_line WHERE rig_id = ?1 AND back_at IS NULL)""",
        rig);
  }

  /** Keeps with the loan why its bow got heavier, and who agreed. */
  void agreed(LoanId loan, AgainstAdvice given) {
    rows.change(
        """
        UPDATE loan SET override_why = ?2, override_coach = ?3, version = version + 1
         WHERE id = ?1""",
        loan,
        given.why(),
        given.coach());
  }

  private record OfLoan(LoanId loan) {}
}
