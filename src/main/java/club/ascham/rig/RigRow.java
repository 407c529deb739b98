package club.ascham.rig;

import club.ascham.bow.Hand;
import club.ascham.standing.State;
import java.time.LocalDate;
import java.util.OptionalInt;

/**
 * A rig as a line of a list.
 *
 * @param loanId null: in the room
 * @param dueBack null: in the room
 */
public record RigRow(RigCard card, State state, Long loanId, LocalDate dueBack) {

  public OptionalInt bowLengthIn() {
    return card.spec().map(spec -> spec.bowLengthIn()).orElse(OptionalInt.empty());
  }

  /** Marked weight in lbf; 0 where limbs are missing. */
  public double markedLb() {
    return card.spec()
        .map(spec -> spec.onePiece() != null ? spec.onePiece().markedLb() : spec.limbs().markedLb())
        .orElse(0.0);
  }

  /** The hand that draws it; null where it suits either, or the body is missing. */
  public Hand hand() {
    return card.spec().map(spec -> spec.hand()).orElse(bodyHand());
  }

  private Hand bodyHand() {
    return card.body() == null || card.body().riser() == null ? null : card.body().riser().hand();
  }
}
