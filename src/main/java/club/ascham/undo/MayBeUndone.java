package club.ascham.undo;

import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** What whoever looks may undo now: the buttons of a page. */
@ApplicationScoped
public class MayBeUndone {
  private static final int OF_A_BOW = 4;

  private final MoveFacts facts;
  private final UndoMove undoMove;

  MayBeUndone(MoveFacts facts, UndoMove undoMove) {
    this.facts = facts;
    this.undoMove = undoMove;
  }

  /** Presses on a loan or a session, the last first. */
  public record OfLoan(List<Move> may, List<Move> undone) {}

  public OfLoan of(LoanId loan) {
    List<Move> all = facts.of(loan);
    return new OfLoan(may(all), all.stream().filter(Move::isUndone).toList());
  }

  /** Of a bow: how it came back, what was exchanged on it, that it was put back. */
  public List<Move> of(RigId rig) {
    return may(facts.of(rig, OF_A_BOW));
  }

  /** The press that this receipt was. */
  public List<Move> ofReceipt(long receipt) {
    return may(facts.ofReceipt(receipt).stream().toList());
  }

  private List<Move> may(List<Move> moves) {
    return moves.stream().filter(move -> undoMove.refusal(move).isEmpty()).toList();
  }
}
