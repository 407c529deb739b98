package club.ascham.bow;

import java.util.List;

/**
 * A one-piece bow: riser and limbs in one item.
 *
 * @param hand the hand it is shaped for; null: either
 * @param markedLb marked weight in lbf at {@code markedAtIn} inches of AMO draw
 * @param makerBrace the maker's own brace range; null: none known
 * @param weighed what a bow scale showed
 */
public record OnePieceSpec(
    Hand hand,
    int bowLengthIn,
    double markedLb,
    double markedAtIn,
    Known hmpeTips,
    Band makerBrace,
    List<ScaleReading> weighed) {

  /** A bow that was never on a bow scale. */
  public OnePieceSpec(
      Hand hand,
      int bowLengthIn,
      double markedLb,
      double markedAtIn,
      Known hmpeTips,
      Band makerBrace) {
    this(hand, bowLengthIn, markedLb, markedAtIn, hmpeTips, makerBrace, List.of());
  }

  /** The same bow, after a bow scale. */
  public OnePieceSpec weighed(List<ScaleReading> readings) {
    return new OnePieceSpec(
        hand, bowLengthIn, markedLb, markedAtIn, hmpeTips, makerBrace, readings);
  }
}
