package club.ascham.verdict;

import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.units.Length;
import java.util.List;

/**
 * What is on record about a bow before it is looked at: its parts, what it measured when it was set
 * up, and what it should measure.
 *
 * @param rig its string's twists are those in it now; null: not counted
 * @param setUp its bolt turns are those the bolts stand out now; null: unknown
 * @param scatter how far two readings may lie apart without a change of the bow
 * @param sinceBolts what it measured after its limb bolts were last turned; null: not turned since
 *     the set-up, or not measured
 * @param changing its readings change by more than readers differ
 * @param noTwists why no twists go into its string any more: <i>it is overdue</i>; null: they may
 * @param dangers what is withdrawn or did not pass, one sentence each: until it is decided and
 *     released nobody strings the bow
 * @throws IllegalArgumentException when brace or tiller has no set-up figure or no outer band; a
 *     bow like that is still in the workshop and there is nothing to judge it by
 */
public record OnRecord(
    RigSpec rig,
    SetUpFigures setUp,
    Targets targets,
    Length scatter,
    Reading sinceBolts,
    boolean changing,
    String noTwists,
    List<String> dangers) {
  public OnRecord {
    if (!Reading.of(setUp).isWhole()) {
      throw new IllegalArgumentException("the set-up figures of brace and tiller are not complete");
    }
    for (Target target : new Target[] {targets.brace(), targets.tiller()}) {
      if (target.outer() == null) {
        throw new IllegalArgumentException("brace and tiller need an outer band each");
      }
    }
    targets = targets.withFixedTiller(rig, setUp, scatter);
    dangers = List.copyOf(dangers);
  }

  /** What the two tiller distances are compared with. */
  Reading distancesFrom() {
    return sinceBolts != null ? sinceBolts : Reading.of(setUp);
  }
}
