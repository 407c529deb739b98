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
