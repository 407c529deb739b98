package club.ascham.undo;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.people.Actor;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;

/**
 * Keeps what a press moved, inside its use case and after all else that it writes: what is recorded
 * later than the move came since.
 */
@ApplicationScoped
public class Moves {
  private final Rows rows;
  private final Actor actor;
  private final ClubTime time;

  Moves(Rows rows, Actor actor, ClubTime time) {
    this.rows = rows;
    this.actor = actor;
    this.time = time;
  }

  /** A loan's things came back by this receipt. */
  public long received(LoanId loan, long receipt) {
    return cameBack(MoveKind.RECEIPT, loan, List.of(receipt));
  }

  /**
   * A session's bows came back by these receipts.
   *
   * @param looks the looks that were kept with them
   */
  public long returned(LoanId loan, Collection<Long> receipts, Collection<Long> looks) {
    long move = cameBack(MoveKind.SESSION_RETURN, loan, receipts);
    looks.forEach(
        look -> rows.change("INSERT INTO moved (move_id, check_id) VALUES (?1, ?2)", move, look));
    return move;
  }

  /** A bow was put back on this check. */
  public long putBack(long check) {
    return rows.add(
        NewRow.of("move")
            .with("kind", MoveKind.PUT_BACK)
            .with("check_id", check)
            .with("made_at", time.now())
            .with("made_by", actor.id()));
  }

  private long cameBack(MoveKind kind, LoanId loan, Collection<Long> receipts) {
    long move = ofLoan(kind, loan);
    for (long receipt : receipts) {
      rows.change("INSERT INTO moved (move_id, receipt_id) VALUES (?1, ?2)", move, receipt);
      rows.change(
          "INSERT INTO moved (move_id, line_id, went) SELECT ?1, id, 'IN' FROM loan_line WHERE receipt_id = ?2",
          move,
          receipt);
    }
    return move;
  }

  private long ofLoan(MoveKind kind, LoanId loan) {
    return rows.add(
        NewRow.of("move")
            .with("kind", kind)
            .with("loan_id", loan)
            .with("made_at", time.now())
            .with("made_by", actor.id()));
  }

  private record Open(long line) {}

  private record Begun(long line, long item) {}

  private record KeptWith(long item, long rig) {}

  /** What a loan had before an exchange on it. */
  public final class Exchange {
    private final LoanId loan;
    private final List<Open> open;
    private final List<KeptWith> kept;
    private final long newest;

    private Exchange(LoanId loan, Collection<ItemId> goesOn) {
      this.loan = loan;
      this.open =
          rows.list(
              Open.class, "SELECT id FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL", loan);
      this.kept =
          rows.list(
              KeptWith.class,
              "SELECT item_id, rig_id FROM kept_with WHERE item_id IN (SELECT value FROM json_each(?1))",
              goesOn.stream().map(ItemId::value).toList().toString());
      this.newest = rows.number("SELECT coalesce(max(id), 0) FROM loan_line");
    }

    /** Its lines were ended and begun by now. */
    public long made() {
      long move = ofLoan(MoveKind.EXCHANGE, loan);
      for (Open line : open) {
        rows.change(
            """
            INSERT INTO moved (move_id, line_id, went)
            SELECT ?1, id, 'IN' FROM loan_line WHERE id = ?2 AND back_at IS NOT NULL""",
            move,
            line.line());
      }
      for (Begun line :
          rows.list(
              Begun.class,
              "SELECT id AS line, item_id FROM loan_line WHERE loan_id = ?1 AND id > ?2",
              loan,
              newest)) {
        rows.change(
            "INSERT INTO moved (move_id, line_id, went, kept_with) VALUES (?1, ?2, 'OUT', ?3)",
            move,
            line.line(),
            kept.stream()
                .filter(one -> one.item() == line.item())
                .map(KeptWith::rig)
                .findFirst()
                .orElse(null));
      }
      return move;
    }
  }

  /**
   * Asked before anything is exchanged.
   *
   * @param goesOn what is to go out, or on the bow
   */
  public Exchange exchangeOn(LoanId loan, Collection<ItemId> goesOn) {
    return new Exchange(loan, goesOn);
  }
}
