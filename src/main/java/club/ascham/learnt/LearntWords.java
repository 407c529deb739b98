package club.ascham.learnt;

import club.ascham.bow.RigSpec;
import club.ascham.mechanics.BoltReckoning;
import club.ascham.mechanics.Posterior;
import club.ascham.mechanics.TwistLimits;
import club.ascham.verdict.BenchAdvice;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a bow has shown of itself, in plain lines for its page. */
public final class LearntWords {
  private LearntWords() {}

  /** Two lines at most; one that says so where nothing was shown yet. */
  public static List<String> of(Learnt learnt, RigSpec rig, TwistLimits limits) {
    List<String> lines = new ArrayList<>();
    new BenchAdvice(limits, learnt.record())
        .response(learnt.now(rig))
        .filter(response -> response.shown() > 0)
        .ifPresent(response -> lines.add(line("A twist in raises brace by", response.oneTwist())));
    Posterior bolt = BoltReckoning.mmPerTurn(learnt.record());
    if (rig.tillerAdjusts() && bolt.shown() > 0) {
      lines.add(line("A turn of one bolt moves tiller by", bolt));
    }
    if (lines.isEmpty()) {
      lines.add(
          "Nothing yet: measure before and after the next adjustment, and say how much was done.");
    }
    return lines;
  }

  private static String line(String what, Posterior of) {
    String figures = Math.abs(of.mean()) < 2 ? "%.2f mm (%.2f to %.2f)" : "%.1f mm (%.1f to %.1f)";
    return "%s %s, from %d %s."
        .formatted(
            what,
            String.format(Locale.ROOT, figures, of.mean(), of.low(), of.high()),
            of.shown(),
            of.shown() == 1 ? "adjustment" : "adjustments");
  }
}
