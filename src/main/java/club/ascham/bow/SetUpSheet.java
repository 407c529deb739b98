package club.ascham.bow;

import static club.ascham.bow.Who.PERMIT_HOLDER;
import static club.ascham.bow.Who.VOLUNTEER;

import club.ascham.bow.SetUpStep.Figure;
import club.ascham.bow.SetUpStep.Key;
import club.ascham.units.LengthText;
import java.util.ArrayList;
import java.util.List;

/**
 * The set-up sheet of one rig: its steps in the order that is safe, since a string out of line can
 * jump off a limb that is drawn, and each later figure rests on the earlier ones.
 */
public final class SetUpSheet {
  private final RigSpec rig;
  private final Targets targets;

  private SetUpSheet(RigSpec rig, Targets targets) {
    this.rig = rig;
    this.targets = targets;
  }

  /**
   * The steps for this rig.
   *
   * @param targets as computed for this rig; a target without an inner band sends the reader to the
   *     maker's figure
   */
  public static List<SetUpStep> steps(RigSpec rig, Targets targets, Level level) {
    SetUpSheet sheet = new SetUpSheet(rig, targets);
    List<SetUpStep> steps = new ArrayList<>(sheet.strung());
    steps.addAll(sheet.measured());
    steps.addAll(sheet.arrowSide());
    if (level == Level.FULLER) {
      steps.addAll(FullerSteps.all());
    }
    return List.copyOf(steps);
  }

  private List<SetUpStep> strung() {
    List<SetUpStep> steps = new ArrayList<>();
    if (rig.build() != Build.ONE_PIECE) {
      steps.add(limbs());
    }
    steps.add(
        new SetUpStep(
            Key.LOOPS,
            "String loops",
            "Slide the larger loop over the upper limb, the smaller one into the groove of the"
                + " lower tip. Look along the string: strands whole, serving tight, loops sound.",
            "Larger loop at the top",
            "None: a frayed or cut string is not fitted",
            "The larger loop slides down the upper limb while the bow is strung.",
            VOLUNTEER,
            null,
            null));
    steps.add(
        new SetUpStep(
            Key.STRING_ON,
            "String on, with the stringer",
            "Put the stringer on, its larger pocket on the lower tip. Stand on the cord, lift the"
                + " bow by the grip, slide the upper loop into its groove. Press both loops home"
                + " and let the bow down slowly.",
            "Both loops down in their grooves, on both sides of the tip",
            "None",
            "Strung without a stringer, limbs get twisted, and a string can jump off.",
            VOLUNTEER,
            null,
            "Keep your face away from the tips. Nobody stands in line with them."));
    steps.add(
        new SetUpStep(
            Key.STRING_LINE,
            "String down the middle",
            "Before anything is drawn, look along the bow from behind: the string lies in both"
                + " grooves and down the middle of both limbs.",
            "String over the middle of both limbs, loops in their grooves",
            "If it lies off to one side, take it off again with the stringer and look why",
            "A string that is out of line can jump off when the bow is drawn.",
            VOLUNTEER,
            null,
            "Do not draw the bow before this is right. Never let the string go without an"
                + " arrow."));
    return steps;
  }

  private SetUpStep limbs() {
    boolean slotsIn = rig.build() == Build.ADJUSTABLE;
    return new SetUpStep(
        Key.LIMBS,
        "The right limb up",
        slotsIn
            ? "Both halves carry the same pair code. Slot the one marked U or upper into the"
                + " upper pocket and the other into the lower one, until each clicks or seats."
            : "Both halves carry the same pair code. Bolt the one marked U or upper to the upper"
                + " end and the other to the lower end, washers in place, bolts hand-tight.",
        "Upper limb at the top, both limbs flat in their seats",
        "No gap, no rocking",
        "The two limbs of a pair are not alike: swapped, they turn the tiller over.",
        VOLUNTEER,
        null,
        "Never use halves of two different pairs together.");
  }

  private List<SetUpStep> measured() {
    List<SetUpStep> steps = new ArrayList<>();
    boolean adjusts = rig.tillerAdjusts();
    // Where bolts may still turn, brace is written down only once they have: they move it.
    steps.add(brace(adjusts ? null : Figure.BRACE));
    steps.add(adjusts ? tillerAdjusted() : tillerLookedAt());
    if (adjusts) {
      steps.add(
          new SetUpStep(
              Key.BRACE_AGAIN,
              "Brace again",
              "Measure brace once more, from the same point. If twists are put right now, measure"
                  + " both tiller distances again and write down the new ones.",
              inner(targets.brace()),
              outer(targets.brace()),
              "Each turn of a limb bolt moves brace a little. " + targets.brace().basis(),
              VOLUNTEER,
              Figure.BRACE,
              null));
    }
    steps.add(alignment());
    if (rig.build() != Build.ONE_PIECE) {
      steps.add(boltsHeld());
    }
    return steps;
  }

  private SetUpStep brace(Figure entered) {
    return new SetUpStep(
        Key.BRACE,
        "Brace height",
        "Measure square from the string to the deepest part of the grip, or to the button, and say"
            + " which. Too low: string off with the stringer, add twists the way the string is"
            + " already twisted. Too high: take some out. String on, loops and line again.",
        inner(targets.brace()),
        outer(targets.brace()),
        targets.brace().basis(),
        VOLUNTEER,
        entered,
        "String off, with the stringer, before it is twisted.");
  }

  private SetUpStep tillerAdjusted() {
    return new SetUpStep(
        Key.TILLER,
        "Tiller",
        "Measure square from the string to each limb where it leaves the riser: upper, then lower."
            + " Tiller is upper minus lower. To change it: string off, loosen the locking screws,"
            + " turn the bolts a quarter turn at most, tighten the locking screws, string on,"
            + " loops and line, measure again. Tightening a bolt makes that limb's distance"
            + " smaller.",
        inner(targets.tiller()),
        outer(targets.tiller()),
        targets.tiller().basis(),
        PERMIT_HOLDER,
        Figure.TILLER_UPPER_AND_LOWER,
        "Never turn a limb bolt on a strung bow. "
            + (rig.riser().maxTurnsOut() == null
                ? "The maker's turns out are not known for this riser: turn no bolt out."
                : "Never further out than the maker's %s turns."
                    .formatted(plain(rig.riser().maxTurnsOut()))));
  }

  private SetUpStep tillerLookedAt() {
    String where =
        rig.build() == Build.ONE_PIECE
            ? "where the limb begins to curve"
            : "where it meets the riser";
    return new SetUpStep(
        Key.TILLER,
        "Tiller",
        "Measure square from the string to each limb "
            + where
            + ": upper, then lower. Tiller is upper minus lower. Nothing sets it on this bow; the"
            + " two figures are what later checks compare with.",
        inner(targets.tiller()),
        outer(targets.tiller()) + "; then withdraw the bow, nothing is adjusted",
        "Fixed when the bow was made, it changes only when a limb does. "
            + targets.tiller().basis(),
        VOLUNTEER,
        Figure.TILLER_UPPER_AND_LOWER,
        null);
  }

  private SetUpStep alignment() {
    boolean lateral = rig.tillerAdjusts() && rig.riser().lateral();
    return new SetUpStep(
        Key.ALIGNMENT,
        "Limb alignment",
        "Rest the bow level and look along it from one end, then from the other. Lay an arrow"
            + " across each limb near its tip: both lie square to the string and in one plane."
            + (lateral
                ? " Where the string is off the middle: string off, move the limb sideways at its"
                    + " pocket by the maker's instructions, string on, look from both ends again."
                : " Nothing moves the limbs sideways on this bow: where the string is off the"
                    + " middle, look whether the limbs are seated and the string is in its"
                    + " grooves."),
        "String over the middle of riser and both limbs, from both ends",
        "If you can see that it is off, it is off; a limb that turns is not shot",
        "A twisted limb throws the string. Looking from one end only hides half of it.",
        lateral ? PERMIT_HOLDER : VOLUNTEER,
        null,
        lateral ? "Never move a limb at its pocket on a strung bow." : null);
  }

  private SetUpStep boltsHeld() {
    if (rig.tillerAdjusts()) {
      return new SetUpStep(
          Key.BOLTS_HELD,
          "Locking screws",
          "String off. See that the locking screw of each limb bolt is there and tight. Where the"
              + " club paints a mark across bolt and riser, paint it now. String on with the"
              + " stringer: loops in their grooves, the string down the middle of both limbs.",
          "Both there, both tight",
          "None: a bow without a locking screw is not issued",
          "A locking screw can shake out unnoticed, and then the bolt walks.",
          PERMIT_HOLDER,
          Figure.LOCKING_SCREWS_SEEN,
          "String off before any screw at the limbs is touched.");
    }
    return new SetUpStep(
        Key.BOLTS_HELD,
        "Limb bolts",
        "String off. Look at each limb bolt: thread clean, washer there, head down on its seat,"
            + " hand-tight.",
        "Both home and hand-tight",
        "None: a worn thread or a missing washer is not issued",
        "These bolts hold the limbs and set nothing; a loose one lets the limb rock.",
        VOLUNTEER,
        Figure.LOCKING_SCREWS_SEEN,
        "String off before a limb bolt is touched. A tool can strip the thread.");
  }

  private List<SetUpStep> arrowSide() {
    return List.of(
        new SetUpStep(
            Key.REST,
            "Arrow rest",
            "Stick or screw the rest on so that the arrow lies across the button hole, or level"
                + " with the shelf where there is no hole. Nock an arrow: it stays on by itself.",
            "The middle of the shaft at the middle of the button hole",
            "Half a shaft up or down",
            "Lower or higher, the button pushes the arrow up or down instead of sideways. Common"
                + " practice.",
            VOLUNTEER,
            null,
            null),
        new SetUpStep(
            Key.CENTRE_SHOT,
            "Centre shot",
            "String on. Nock an arrow, stand behind the bow and bring the string over the middle of"
                + " both limbs. Look where the point of the arrow lies.",
            "Point of the arrow 1/16 to 1/8 in (1.6 to 3.2 mm) " + outside(rig.hand()),
            "A point on the other side of the string is wrong",
            "The arrow bends round the bow when fingers let go; it starts a little outside. From "
                + InPrint.ARROW_MAKER_GUIDE
                + ".",
            VOLUNTEER,
            null,
            "Sight along it without drawing. Nobody stands in front."),
        new SetUpStep(
            Key.BUTTON,
            "Button",
            "Where the bow has one: its tip sets the centre shot. Lock it there, and set the spring"
                + " to the middle of its range. No button: the side of the rest does its work.",
            "Middle of the spring's range, lock rings tight",
            "Fine tuning is for later",
            "A beginner's arrows land too far apart to tune a spring by. Common practice.",
            VOLUNTEER,
            null,
            null),
        new SetUpStep(
            Key.NOCKING_POINT,
            "Nocking point",
            "Clip the bow square to the string, its arm on the rest. Mark where the underside of"
                + " the upper locator sits: start as far above square as the tiller is, and at"
                + " square where the tiller is none or negative. Tie or pinch the locator on.",
            inner(targets.nocking()),
            targets.nocking().outer() == null
                ? "Outside that window: tie it again"
                : outer(targets.nocking()),
            targets.nocking().basis(),
            VOLUNTEER,
            Figure.NOCKING,
            "An arrow that slips off the string is a loose without an arrow: its nock must hold by"
                + " itself."));
  }

  /**
   * Where the point lies, seen from behind: away from the riser, so mirrored for the other hand.
   */
  private static String outside(Hand hand) {
    if (hand == null) {
      return "outside the string, on the side away from the riser";
    }
    return switch (hand) {
      case RIGHT -> "to the left of the string, seen from behind";
      case LEFT -> "to the right of the string, seen from behind";
    };
  }

  private static String inner(Target target) {
    return target.inner() == null
        ? "The maker's own figure; none is published for this bow"
        : between(target.inner());
  }

  private static String outer(Target target) {
    return target.outer() == null
        ? "Nothing published: write down what was measured"
        : "Outside " + between(target.outer()) + " something is wrong";
  }

  private static String between(Band band) {
    return LengthText.both(band.low()) + " to " + LengthText.both(band.high());
  }

  private static String plain(double turns) {
    return turns == Math.rint(turns) ? Long.toString((long) turns) : Double.toString(turns);
  }
}
