package club.ascham.bow;

import club.ascham.units.Length;

/**
 * What a rig measured when its set-up was finished.
 *
 * @param nocking height of the nocking point above square; null: not yet measured
 * @param turnsUpper turns out of the upper limb bolt; null: unknown (likewise lower)
 * @param twists turns in the string; null: unknown
 */
public record SetUpFigures(
    Length brace,
    BracePoint braceFrom,
    Length tillerUpper,
    Length tillerLower,
    Length nocking,
    boolean lockingScrewsSeen,
    Double turnsUpper,
    Double turnsLower,
    Integer twists) {

  /** Upper minus lower: positive when the lower limb is the stiffer. Both must be measured. */
  public Length tiller() {
    return tillerUpper.minus(tillerLower);
  }

  /** The same figures with the bolts standing out so far; null: unknown. */
  public SetUpFigures withTurns(Double upper, Double lower) {
    return new SetUpFigures(
        brace,
        braceFrom,
        tillerUpper,
        tillerLower,
        nocking,
        lockingScrewsSeen,
        upper,
        lower,
        twists);
  }
}
