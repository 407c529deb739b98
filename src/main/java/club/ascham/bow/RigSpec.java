package club.ascham.bow;

import java.util.OptionalInt;

/**
 * The parts fitted to one rig, as far as the trade's rules look at them. Either {@code onePiece} is
 * given, or riser and limbs are.
 *
 * @param string null: none fitted
 */
public record RigSpec(
    RiserSpec riser, LimbsSpec limbs, OnePieceSpec onePiece, StringSpec string, Style style) {
  private static final double USUAL_DRAW_IN = 28;
  private static final int CHILDS_BOW_IN = 62;
  private static final double CHILDS_DRAW_IN = 24;

  public Build build() {
    return onePiece != null ? Build.ONE_PIECE : riser.build();
  }

  /** The hand it is for; null where a one-piece bow suits either. */
  public Hand hand() {
    return onePiece != null ? onePiece.hand() : riser.hand();
  }

  /** The bow length in inches, where it is known. */
  public OptionalInt bowLengthIn() {
    return onePiece != null ? OptionalInt.of(onePiece.bowLengthIn()) : BowLength.of(riser, limbs);
  }

  /**
   * Whether it is a child's: marked at less than the usual draw, or no longer than the longest of
   * the sizes that a French club's page (undated) gives for youngsters, 54, 58 and 62 in.
   */
  public boolean isAChilds() {
    OptionalInt bowIn = bowLengthIn();
    return markedAtIn() < USUAL_DRAW_IN || (bowIn.isPresent() && bowIn.getAsInt() <= CHILDS_BOW_IN);
  }

  /** The AMO draw in inches that its weight was marked at. */
  public double markedAtIn() {
    return onePiece != null ? onePiece.markedAtIn() : limbs.markedAtIn();
  }

  /**
   * The longest draw in inches that this bow's force is told for: a child's limbs are drawn no
   * further than they were marked at, or 24 in where only the usual mark is known, since nobody
   * typed one (judged).
   *
   * @param longestIn for any other bow
   */
  public double drawnToIn(double longestIn) {
    if (!isAChilds()) {
      return longestIn;
    }
    return markedAtIn() == USUAL_DRAW_IN ? CHILDS_DRAW_IN : Math.min(longestIn, markedAtIn());
  }

  /** The maker's own brace range; null: none known. */
  public Band makerBrace() {
    return onePiece != null ? onePiece.makerBrace() : limbs.makerBrace();
  }

  /** Whether the limb tips are fit for HMPE strings. */
  public Known hmpeTips() {
    return onePiece != null ? onePiece.hmpeTips() : limbs.hmpeTips();
  }

  /** Whether limb bolts set this rig's tiller. */
  public boolean tillerAdjusts() {
    return build() == Build.ADJUSTABLE;
  }

  /** The same rig with so many twists in its string; null: not counted. */
  public RigSpec withTwists(Integer twists) {
    if (string == null) {
      return this;
    }
    StringSpec counted =
        new StringSpec(
            string.forBowIn(),
            string.measured(),
            string.material(),
            string.strands(),
            string.strandDiameter(),
            twists);
    return new RigSpec(riser, limbs, onePiece, counted, style);
  }
}
