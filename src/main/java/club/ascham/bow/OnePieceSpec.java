package club.ascham.bow;

/**
 * A one-piece bow: riser and limbs in one item.
 *
 * @param hand the hand it is shaped for; null: either
 * @param markedLb marked weight in lbf at {@code markedAtIn} inches of AMO draw
 * @param makerBrace the maker's own brace range; null: none known
 */
public record OnePieceSpec(
    Hand hand,
    int bowLengthIn,
    double markedLb,
    double markedAtIn,
    Known hmpeTips,
    Band makerBrace) {}
