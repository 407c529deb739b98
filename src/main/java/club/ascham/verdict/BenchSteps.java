package club.ascham.verdict;

import static club.ascham.bow.Who.PERMIT_HOLDER;
import static club.ascham.bow.Who.VOLUNTEER;
import static club.ascham.verdict.BenchStep.Key.ANSWER_TOLD;
import static club.ascham.verdict.BenchStep.Key.COUNT_TWISTS;
import static club.ascham.verdict.BenchStep.Key.LOCK_LOOSENED;
import static club.ascham.verdict.BenchStep.Key.LOCK_TIGHTENED;
import static club.ascham.verdict.BenchStep.Key.LOOK_ALONG;
import static club.ascham.verdict.BenchStep.Key.LOOK_AT_LIMBS;
import static club.ascham.verdict.BenchStep.Key.LOOPS;
import static club.ascham.verdict.BenchStep.Key.LOWER_BOLT;
import static club.ascham.verdict.BenchStep.Key.MEASURE_AGAIN;
import static club.ascham.verdict.BenchStep.Key.OTHER_STRING;
import static club.ascham.verdict.BenchStep.Key.PARTS_RIGHT;
import static club.ascham.verdict.BenchStep.Key.SAME_POINT;
import static club.ascham.verdict.BenchStep.Key.STRING_LINE;
import static club.ascham.verdict.BenchStep.Key.STRING_OFF;
import static club.ascham.verdict.BenchStep.Key.STRING_ON;
import static club.ascham.verdict.BenchStep.Key.TO_WORKSHOP;
import static club.ascham.verdict.BenchStep.Key.TWISTS;
import static club.ascham.verdict.BenchStep.Key.UPPER_BOLT;

import club.ascham.bow.BracePoint;
import club.ascham.bow.Build;
import club.ascham.bow.RigSpec;
import club.ascham.bow.Who;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import java.util.ArrayList;
import java.util.List;

/**
 * The safe order of an adjustment: whatever is done is done with the string off, and nothing is
 * drawn before loops and line were looked at.
 */
final class BenchSteps {
  private BenchSteps() {}

  /**
   * A whole pass: string off, the work, string on, look, measure. Where the work goes to someone
   * else, or another string is fitted, it ends there.
   *
   * @param who who puts the string back on and measures
   */
  static List<BenchStep> pass(List<BenchStep> work, Who who) {
    List<BenchStep> steps = new ArrayList<>();
    steps.add(
        new BenchStep(
            STRING_OFF,
            "Take the string off with the stringer.",
            VOLUNTEER,
            null,
            "Keep your face away from the tips; nobody stands in line with them."));
    steps.addAll(work);
    BenchStep.Key last = work.get(work.size() - 1).key();
    if (last == TO_WORKSHOP || last == OTHER_STRING) {
      return steps;
    }
    steps.add(
        new BenchStep(
            STRING_ON,
            "Put the string on with the stringer.",
            who,
            null,
            "Keep your face away from the tips."));
    steps.add(
        new BenchStep(
            LOOPS,
            "See that both loops sit in their grooves, the larger one at the top.",
            who,
            null,
            null));
    steps.add(
        new BenchStep(
            STRING_LINE,
            "Before anything is drawn, look along the bow: the string runs down the middle of both"
                + " limbs.",
            who,
            null,
            "Don't draw it while the string is out of line. Never let it go without an arrow."));
    steps.add(
        new BenchStep(
            MEASURE_AGAIN,
            "Measure brace and both tiller distances again: each moves the others.",
            who,
            null,
            null));
    return steps;
  }

  /** Nothing is adjusted before what was told is answered. */
  static List<BenchStep> answerTold() {
    return List.of(
        new BenchStep(ANSWER_TOLD, "Look at what was told, and answer it.", VOLUNTEER, null, null),
        new BenchStep(MEASURE_AGAIN, "Then check the bow again.", VOLUNTEER, null, null));
  }

  static BenchStep partsRight(List<String> missing) {
    return new BenchStep(
        PARTS_RIGHT,
        "Put the parts right, or correct the record: " + String.join("; ", missing) + ".",
        VOLUNTEER,
        null,
        "Never use halves of two different pairs together.");
  }

  static BenchStep lookAtLimbs(RigSpec rig) {
    return switch (rig.build()) {
      case ADJUSTABLE ->
          new BenchStep(
              LOOK_AT_LIMBS,
              "Look before anything is turned: the limb marked U or upper is the upper one, and both"
                  + " are seated in their pockets.",
              VOLUNTEER,
              null,
              null);
      case SCREW_IN ->
          new BenchStep(
              LOOK_AT_LIMBS,
              "Look first: the limb marked U or upper is the upper one, both lie flat on their seats"
                  + " and are held hand-tight.",
              VOLUNTEER,
              null,
              null);
      case ONE_PIECE ->
          new BenchStep(
              LOOK_AT_LIMBS,
              "Look first: no loop is caught beside its groove, and it is this bow's own string.",
              VOLUNTEER,
              null,
              null);
    };
  }

  /** Before anything is put right that may only hide what is wrong. */
  static BenchStep lookAlong() {
    return new BenchStep(
        LOOK_ALONG,
        "Look first: both loops in their grooves, no strand cut, the servings tight, the grooves"
            + " smooth, and along both limbs for a crack, a delamination or a twist. If anything is"
            + " not as it should be, stop here and check the bow again.",
        VOLUNTEER,
        null,
        "Don't draw it before you have looked.");
  }

  /** Before the string comes off: it may be nothing but the measuring. */
  static BenchStep samePoint(BracePoint from) {
    return new BenchStep(
        SAME_POINT,
        "Before the string comes off, measure brace and both tiller distances again, brace from "
            + Judge.words(from)
            + " as at the set-up. If you read something else now, check the bow again with that.",
        VOLUNTEER,
        null,
        null);
  }

  /** Brace is too high: someone may have put twists in, or another string on, without a note. */
  static BenchStep countTwists(RigSpec rig) {
    Integer known = rig.string().twists();
    return new BenchStep(
        COUNT_TWISTS,
        "Count the twists%s, and see that it is this bow's own string. Were some put in without a"
                .formatted(known == null ? "" : " (on record: %d)".formatted(known))
            + " note: take those out, string the bow and check it again.",
        VOLUNTEER,
        null,
        null);
  }

  /** Nothing moved: before more are advised, how many were there? */
  static BenchStep howManyTwists() {
    return new BenchStep(
        COUNT_TWISTS,
        "How many twists were put in or taken out? Count them, and see that they stayed in when the"
            + " string went on; then measure again. More come after that.",
        VOLUNTEER,
        null,
        null);
  }

  static BenchStep twists(RigSpec rig, TwistAdvice advice) {
    int count = Math.abs(advice.turns());
    String about =
        "about %d %s (%s)".formatted(count, count == 1 ? "twist" : "twists", range(advice));
    return new BenchStep(
        TWISTS,
        advice.turns() > 0
            ? "Put in "
                + about
                + ", turning a loop the way the "
                + (isUntwisted(rig) ? "serving is wound." : "string is already twisted.")
            : "Take out " + about + ", turning a loop against the way the string is twisted.",
        VOLUNTEER,
        (double) advice.turns(),
        null);
  }

  private static boolean isUntwisted(RigSpec rig) {
    return rig.string().twists() != null && rig.string().twists() == 0;
  }

  private static String range(TwistAdvice advice) {
    Integer low = advice.low();
    Integer high = advice.high();
    String range =
        high == null
            ? "%d or more may be needed".formatted(Math.abs(low))
            : low.equals(high)
                ? "as far as can be told"
                : "%d to %d may be needed".formatted(Math.abs(low), Math.abs(high));
    boolean mayLack = advice.room() != null && (high == null || Math.abs(high) > advice.room());
    return mayLack
        ? range
            + "; it has room for %d and gets there with a chance of about %.0f in 100, else another string"
                .formatted(advice.room(), 100 * advice.chance())
        : range;
  }

  /**
   * @param rig whose string can't do it
   */
  static BenchStep otherString(RigSpec rig, TwistAdvice advice) {
    boolean longer = advice.reach() == TwistAdvice.Reach.LONGER_STRING;
    Length by = advice.otherLonger();
    Length measured = rig.string().measured();
    return new BenchStep(
        OTHER_STRING,
        "%s another string: %s. One made for a %d in bow, untwisted about %s %s than this one%s. Then"
                .formatted(
                    longer ? "Only then fit" : "Fit",
                    longer
                        ? "too few twists would be left in this one"
                        : "this one would be overtwisted",
                    rig.bowLengthIn().orElse(rig.string().forBowIn()),
                    LengthText.both(by.abs()),
                    by.compareTo(Length.ZERO) >= 0 ? "longer" : "shorter",
                    measured == null ? "" : ": " + LengthText.both(measured.plus(by)))
            + " set the bow up again from brace to nocking point.",
        VOLUNTEER,
        null,
        null);
  }

  /**
   * @param why it takes no more twists: <i>it is overdue</i>
   */
  static BenchStep wornString(RigSpec rig, String why, boolean tooHigh) {
    return new BenchStep(
        OTHER_STRING,
        "%s another string, one made for a %d in bow: %s, %s. Then set the bow up again from brace to nocking point. Or somebody looks at this one and keeps it on first."
            .formatted(
                tooHigh ? "Only then fit" : "Fit",
                rig.bowLengthIn().orElse(rig.string().forBowIn()),
                tooHigh ? "this one is not adjusted any more" : "no twists go into this one",
                why),
        VOLUNTEER,
        null,
        null);
  }

  static BenchStep toWorkshop(String why) {
    return new BenchStep(
        TO_WORKSHOP,
        "Send it to the workshop: " + why,
        VOLUNTEER,
        null,
        "Leave the string off and the limb bolts alone.");
  }

  /** Locking screws loosened, bolts turned, locking screws tightened. */
  static List<BenchStep> bolts(RigSpec rig, Turns turns) {
    List<BenchStep> steps = new ArrayList<>();
    steps.add(
        new BenchStep(
            LOCK_LOOSENED,
            "Loosen the locking screw of each bolt that is to be turned.",
            PERMIT_HOLDER,
            null,
            "Never touch a limb bolt on a strung bow."));
    if (turns.upper() != 0) {
      steps.add(bolt(rig, UPPER_BOLT, "upper", turns.upper()));
    }
    if (turns.lower() != 0) {
      steps.add(bolt(rig, LOWER_BOLT, "lower", turns.lower()));
    }
    steps.add(
        new BenchStep(
            LOCK_TIGHTENED,
            "Tighten the locking screws.",
            PERMIT_HOLDER,
            null,
            "A bow with a loose locking screw is not strung."));
    return steps;
  }

  private static BenchStep bolt(RigSpec rig, BenchStep.Key key, String which, double turns) {
    boolean in = turns > 0;
    Double most = rig.riser().maxTurnsOut();
    return new BenchStep(
        key,
        "Turn the %s limb bolt %s by %s."
            .formatted(which, in ? "in (tighten)" : "out (loosen)", fraction(Math.abs(turns))),
        PERMIT_HOLDER,
        turns,
        in
            ? "Stop where it comes to its seat; never force it."
            : most == null
                ? "Only back to where it stood."
                : "Never beyond the maker's %s turns out.".formatted(plain(most)));
  }

  private static String fraction(double turns) {
    if (turns == 0.125) {
      return "an eighth of a turn";
    }
    if (turns == 0.25) {
      return "a quarter of a turn";
    }
    return plain(turns) + " of a turn";
  }

  private static String plain(double turns) {
    return turns == Math.rint(turns) ? Long.toString((long) turns) : Double.toString(turns);
  }

  /** What a withdrawn part needs. */
  static String work(Part part, Build build) {
    return switch (part) {
      case STRING ->
          "String: fit another one, then set the bow up again from brace to nocking point.";
      case LIMBS ->
          "Limbs: someone competent looks at both, unstrung; a limb with a crack, a delamination or"
              + " a twist is not shot again.";
      case BOLTS ->
          build == Build.SCREW_IN
              ? "Limb bolts: string off, then look at thread, seat, washer and tightness."
              : "Limb bolts: string off, then inspect thread, seat, washer, locking screw and turns"
                  + " out on both sides.";
      case RISER ->
          "Riser: someone competent looks at it, unstrung: limb seats, bushes, sight window, grip.";
      case REST ->
          "Arrow rest: fit another, then set its height, the centre shot and the nocking point.";
    };
  }
}
