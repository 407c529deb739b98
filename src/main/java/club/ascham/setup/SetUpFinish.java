package club.ascham.setup;

import club.ascham.bow.Build;
import club.ascham.bow.Gauge;
import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.SetUpStep;
import club.ascham.bow.Targets;
import club.ascham.rig.Obstacle;
import club.ascham.rig.SetUpProgress;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Whether a set-up may be finished: nothing is missing, and nothing lies where it must not. */
public final class SetUpFinish {
  private SetUpFinish() {}

  /**
   * Everything that keeps the set-up open.
   *
   * @param targets of the rig as if it had never been set up: its own old figures are no limit to
   *     new ones
   */
  public static List<Obstacle> refusals(
      RigSpec rig, Targets targets, SetUpFigures figures, SetUpProgress progress) {
    List<Obstacle> found = new ArrayList<>();
    List<String> missing = missing(rig, figures);
    if (!missing.isEmpty()) {
      found.add(
          new Obstacle(
              "",
              "Still missing: " + String.join("; ", missing) + ".",
              "A bow without them is not issued, since nothing could tell later whether it has"
                  + " changed."));
    }
    if (!progress.isThrough()) {
      found.add(
          new Obstacle(
              "stepsDone",
              "Not done yet: "
                  + progress.undone().stream()
                      .map(SetUpStep::title)
                      .collect(Collectors.joining(", "))
                  + ".",
              ""));
    }
    if (missing.isEmpty()) {
      beyond(found, rig, targets, figures);
    }
    return List.copyOf(found);
  }

  /** What a complete set-up has and this one lacks, in words. */
  public static List<String> missing(RigSpec rig, SetUpFigures figures) {
    List<String> missing = new ArrayList<>();
    if (figures.brace() == null) {
      missing.add("brace height");
    } else if (figures.braceFrom() == null) {
      missing.add("the point that brace was measured from");
    }
    if (figures.tillerUpper() == null || figures.tillerLower() == null) {
      missing.add("both tiller distances");
    }
    if (figures.nocking() == null) {
      missing.add("the height of the nocking point");
    }
    if (!figures.lockingScrewsSeen() && rig.build() != Build.ONE_PIECE) {
      missing.add(
          rig.build() == Build.ADJUSTABLE
              ? "that the locking screws were seen"
              : "that the limb bolts were seen");
    }
    return missing;
  }

  private static void beyond(
      List<Obstacle> found, RigSpec rig, Targets targets, SetUpFigures figures) {
    if ("stop".equals(Gauge.sign(targets.brace(), figures.brace()))) {
      found.add(
          new Obstacle(
              "brace",
              "Brace "
                  + outside(
                      figures.brace(),
                      targets.brace().outer().low(),
                      targets.brace().outer().high()),
              "Twist or untwist the string until it lies within, or fit another string."));
    }
    if ("stop".equals(Gauge.sign(targets.tiller(), figures.tiller()))) {
      found.add(
          new Obstacle(
              "tillerUpper",
              "Tiller "
                  + outside(
                      figures.tiller(),
                      targets.tiller().outer().low(),
                      targets.tiller().outer().high()),
              rig.tillerAdjusts()
                  ? "See that the limbs are the right way up and seated, then set it by the bolts."
                  : "Nothing sets it on this bow: withdraw it, and ask its maker or a bowyer."));
    }
  }

  private static String outside(Length figure, Length low, Length high) {
    return "is %s, beyond the limits %s to %s."
        .formatted(LengthText.both(figure), LengthText.both(low), LengthText.both(high));
  }
}
