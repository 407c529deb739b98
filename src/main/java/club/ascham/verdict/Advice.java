package club.ascham.verdict;

import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.units.Length;

/** How much to twist and to turn. */
public interface Advice {

  /**
   * The twists that bring brace from what it is to its aim.
   *
   * @param rig its string's twists are those in it now, null where nobody counted
   */
  TwistAdvice twists(RigSpec rig, Length braceNow, Length aim);

  /**
   * The bolt turns that bring tiller (upper minus lower) from what it is to its aim. Never out
   * where the maker's turns, or the bolt's own, are unknown.
   *
   * @param setUp its turns are those the bolts stand out now, null where unknown
   * @throws IllegalArgumentException when no bolt sets this rig's tiller
   */
  BoltAdvice bolts(RigSpec rig, SetUpFigures setUp, Length tillerNow, Length aim);
}
