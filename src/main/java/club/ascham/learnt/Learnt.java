package club.ascham.learnt;

import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.mechanics.OwnRecord;
import club.ascham.verdict.Reading;

/**
 * What the record says of a bow as it is now: what its adjustments showed, and how string and bolts
 * stand after them.
 *
 * <p>How string and bolts stand is the last set-up's count and what was put in or turned since.
 * Work that was advised and done without a count ends the count: twists go by the rule of thumb
 * then, and no bolt goes out until the next set-up counts anew.
 *
 * @param record what was tried with these parts
 * @param twists in the string now; null: nobody can tell
 * @param turnsUpper that the upper bolt stands out now; null: nobody can tell (likewise lower)
 * @param sinceBolts what it measured after its limb bolts were last turned; null: not turned since
 *     the set-up, or not measured
 */
public record Learnt(
    OwnRecord record, Integer twists, Double turnsUpper, Double turnsLower, Reading sinceBolts) {
  /** Of a bow that nobody kept a record of. */
  public static final Learnt NOTHING = new Learnt(OwnRecord.NONE, null, null, null, null);

  /** The rig with the twists that are in its string now. */
  public RigSpec now(RigSpec rig) {
    return rig.withTwists(twists);
  }

  /** The set-up figures with the turns that the bolts stand out now. */
  public SetUpFigures now(SetUpFigures setUp) {
    return setUp.withTurns(turnsUpper, turnsLower);
  }
}
