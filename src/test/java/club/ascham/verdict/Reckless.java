package club.ascham.verdict;

import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.units.Length;

/** Advice that knows no limits, to show that the judge keeps them all the same. */
final class Reckless implements Advice {
  @Override
  public TwistAdvice twists(RigSpec rig, Length braceNow, Length aim) {
    return new TwistAdvice(
        500, 500, 500, 500, 1, TwistAdvice.Reach.THIS_STRING, null, aim, aim, aim, "none", "none");
  }

  @Override
  public BoltAdvice bolts(RigSpec rig, SetUpFigures setUp, Length tillerNow, Length aim) {
    Turns out = new Turns(0.25, -0.25);
    return new BoltAdvice(out, out, aim, aim, aim, "none", "none");
  }
}
