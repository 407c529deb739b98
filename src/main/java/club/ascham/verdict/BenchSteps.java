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
    steps.add(step(STRING_OFF, VOLUNTEER, Saying.STRING_OFF));
    steps.addAll(work);
    BenchStep.Key last = work.get(work.size() - 1).key();
    if (last == TO_WORKSHOP || last == OTHER_STRING) {
      return steps;
    }
    steps.add(step(STRING_ON, who, Saying.STRING_ON));
    steps.add(step(LOOPS, who, Saying.LOOPS));
    steps.add(step(STRING_LINE, who, Saying.STRING_LINE));
    steps.add(step(MEASURE_AGAIN, who, Saying.MEASURE_AGAIN));
    return steps;
  }

  static BenchStep step(BenchStep.Key key, Who who, Saying saying, Object... of) {
    return new BenchStep(key, who, null, Remark.of(saying, of));
  }

  /** Nothing is adjusted before what was told is answered. */
  static List<BenchStep> answerTold() {
    return List.of(
        step(ANSWER_TOLD, VOLUNTEER, Saying.ANSWER_TOLD),
        step(MEASURE_AGAIN, VOLUNTEER, Saying.CHECK_AGAIN));
  }

  static BenchStep partsRight(List<String> missing) {
    return step(PARTS_RIGHT, VOLUNTEER, Saying.PARTS_RIGHT, String.join("; ", missing));
  }

  static BenchStep lookAtLimbs(RigSpec rig) {
    return step(
        LOOK_AT_LIMBS,
        VOLUNTEER,
        switch (rig.build()) {
          case ADJUSTABLE -> Saying.LOOK_AT_POCKETS;
          case SCREW_IN -> Saying.LOOK_AT_SEATS;
          case ONE_PIECE -> Saying.LOOK_AT_LOOPS;
        });
  }

  /** Before anything is put right that may only hide what is wrong. */
  static BenchStep lookAlong() {
    return step(LOOK_ALONG, VOLUNTEER, Saying.LOOK_ALONG);
  }

  /** Before the string comes off: it may be nothing but the measuring. */
  static BenchStep samePoint(BracePoint from) {
    return step(SAME_POINT, VOLUNTEER, Saying.SAME_POINT, from);
  }

  /** Brace is too high: someone may have put twists in, or another string on, without a note. */
  static BenchStep countTwists(RigSpec rig) {
    Integer known = rig.string().twists();
    return known == null
        ? step(COUNT_TWISTS, VOLUNTEER, Saying.COUNT_TWISTS)
        : step(COUNT_TWISTS, VOLUNTEER, Saying.COUNT_TWISTS_ON_RECORD, known);
  }

  /** Nothing moved: before more are advised, how many were there? */
  static BenchStep howManyTwists() {
    return step(COUNT_TWISTS, VOLUNTEER, Saying.HOW_MANY_TWISTS);
  }

  static BenchStep twists(RigSpec rig, TwistAdvice advice) {
    Saying saying =
        advice.turns() < 0
            ? Saying.TWISTS_OUT
            : isUntwisted(rig) ? Saying.TWISTS_IN_UNTWISTED : Saying.TWISTS_IN;
    return new BenchStep(
        TWISTS,
        VOLUNTEER,
        advice.turns() * 1000,
        Remark.of(saying, Math.abs(advice.turns()), range(advice)));
  }

  private static boolean isUntwisted(RigSpec rig) {
    return rig.string().twists() != null && rig.string().twists() == 0;
  }

  private static Remark range(TwistAdvice advice) {
    Integer low = advice.low();
    Integer high = advice.high();
    Remark range =
        high == null
            ? Remark.of(Saying.AT_LEAST, Math.abs(low))
            : low.equals(high)
                ? Remark.of(Saying.AS_FAR_AS_CAN_BE_TOLD)
                : Remark.of(Saying.BETWEEN, Math.abs(low), Math.abs(high));
    boolean mayLack = advice.room() != null && (high == null || Math.abs(high) > advice.room());
    return mayLack
        ? Remark.of(Saying.ROOM, range, advice.room(), (int) Math.round(100 * advice.chance()))
        : range;
  }

  /**
   * @param rig whose string can't do it
   */
  static BenchStep otherString(RigSpec rig, TwistAdvice advice) {
    Saying why =
        advice.reach() == TwistAdvice.Reach.LONGER_STRING
            ? Saying.TOO_FEW_TWISTS
            : Saying.OVERTWISTED;
    Length by = advice.otherLonger();
    Length measured = rig.string().measured();
    Remark other =
        measured == null
            ? Remark.of(Saying.ANOTHER_STRING, madeFor(rig), by)
            : Remark.of(Saying.ANOTHER_STRING_MEASURED, madeFor(rig), by, measured.plus(by));
    return step(OTHER_STRING, VOLUNTEER, why, other);
  }

  private static int madeFor(RigSpec rig) {
    return rig.bowLengthIn().orElse(rig.string().forBowIn());
  }

  /**
   * @param why it takes no more twists: <i>it is overdue</i>
   */
  static BenchStep wornString(RigSpec rig, String why, boolean tooHigh) {
    return step(
        OTHER_STRING,
        VOLUNTEER,
        tooHigh ? Saying.WORN_STRING_TOO_HIGH : Saying.WORN_STRING,
        madeFor(rig),
        why);
  }

  static BenchStep toWorkshop(Saying why) {
    return step(TO_WORKSHOP, VOLUNTEER, Saying.TO_WORKSHOP_SINCE, Remark.of(why));
  }

  /** Locking screws loosened, bolts turned, locking screws tightened. */
  static List<BenchStep> bolts(RigSpec rig, Turns turns) {
    List<BenchStep> steps = new ArrayList<>();
    steps.add(step(LOCK_LOOSENED, PERMIT_HOLDER, Saying.LOCK_LOOSENED));
    if (turns.upper() != 0) {
      steps.add(bolt(rig, UPPER_BOLT, Side.UPPER, turns.upper()));
    }
    if (turns.lower() != 0) {
      steps.add(bolt(rig, LOWER_BOLT, Side.LOWER, turns.lower()));
    }
    steps.add(step(LOCK_TIGHTENED, PERMIT_HOLDER, Saying.LOCK_TIGHTENED));
    return steps;
  }

  private static BenchStep bolt(RigSpec rig, BenchStep.Key key, Side side, double turns) {
    Double most = rig.riser().maxTurnsOut();
    double by = Math.abs(turns);
    return new BenchStep(
        key,
        PERMIT_HOLDER,
        (int) Math.round(turns * 1000),
        turns > 0
            ? Remark.of(Saying.BOLT_IN, side, by)
            : most == null
                ? Remark.of(Saying.BOLT_OUT_BACK, side, by)
                : Remark.of(Saying.BOLT_OUT, side, by, most));
  }

  /** What a withdrawn part needs. */
  static Saying work(BowPart part, Build build) {
    return switch (part) {
      case STRING -> Saying.STRING_NEEDS;
      case LIMBS -> Saying.LIMBS_NEED;
      case BOLTS -> build == Build.SCREW_IN ? Saying.SCREW_IN_BOLTS_NEED : Saying.BOLTS_NEED;
      case RISER -> Saying.RISER_NEEDS;
      case REST -> Saying.REST_NEEDS;
    };
  }
}
