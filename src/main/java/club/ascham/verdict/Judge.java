package club.ascham.verdict;

import static club.ascham.bow.Who.PERMIT_HOLDER;
import static club.ascham.bow.Who.VOLUNTEER;
import static club.ascham.verdict.BenchStep.Key.COUNT_TWISTS;
import static club.ascham.verdict.BenchStep.Key.TWISTS;

import club.ascham.bow.Target;
import club.ascham.bow.Zone;
import club.ascham.units.Length;
import club.ascham.verdict.TwistAdvice.Reach;
import club.ascham.verdict.Verdict.AdjustFirst;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges a bow that was checked. Anything that stops it withdraws it; else a danger that stands
 * against it leaves it unstrung; else wrong parts are put right; else questions that are open are
 * asked; else what is off is adjusted, looking before turning; else what was told is answered; else
 * it is fit to issue. The verdict may only restrict: releasing a bow is a person's act.
 *
 * <p>The worse a reading, the more is looked at: whatever lies beyond its limits, changes, or has
 * moved unexplained is looked over, string and both limbs, before anything is strung, twisted or
 * turned. What is only looked at is no adjustment: the next readings go on from those before, or a
 * worn bow would look new after each look.
 */
public final class Judge {
  /**
   * How far apart two people may measure one bow, about 1/8 in: judged, until the club's own record
   * of its readers says better. A smaller change proves nothing.
   */
  public static final Length READERS_SCATTER = Length.ofMm(3);

  private final Advice advice;

  public Judge(Advice advice) {
    this.advice = advice;
  }

  /**
   * The verdict on what was seen, or the questions that come before one.
   *
   * @param permit whether the reader holds the permit for limb bolts; without it bolts are work for
   *     the workshop
   */
  public Judgement verdict(OnRecord bow, Seen seen, boolean permit) {
    Evidence evidence = Evidence.of(bow, seen);
    var withdrawal = Stops.judge(bow, seen, evidence);
    if (withdrawal.isPresent()) {
      return withdrawal.get();
    }
    if (Unstrung.stays(bow, seen)) {
      // Nobody strings it to measure it, whatever else there is to do. What is withdrawn is looked
      // over as it is; what was just told is kept, whoever has no time to look.
      List<AskAgain.Question> looks =
          Unstrung.isToldOfADanger(seen) ? List.of() : OpenQuestions.ofLooks(bow, seen);
      return looks.isEmpty() ? Unstrung.verdict(bow, seen, evidence, permit) : new AskAgain(looks);
    }
    if (!seen.missing().isEmpty()) {
      return missingParts(seen, evidence);
    }
    List<AskAgain.Question> open = OpenQuestions.of(bow, seen);
    if (!open.isEmpty()) {
      return new AskAgain(open);
    }
    Finding brace = evidence.finding(Quantity.BRACE);
    Finding tiller = evidence.finding(Quantity.TILLER);
    boolean braceOff = !brace.asItShouldBe();
    boolean tillerOff = bow.rig().tillerAdjusts() && !tiller.asItShouldBe();
    boolean work = braceOff || tillerOff;
    List<Remark> first =
        seen.limbsSeated() ? List.of() : LookFirst.why(bow, seen.reading(), evidence);
    if (!first.isEmpty() && seen.assured().afterALook()) {
      return new AskAgain(
          List.of(
              new AskAgain.Question(
                  AskAgain.About.SEATED,
                  "The readings are still off, and this is not ticked: then the verdict stays the"
                      + " same. Look, and tick it. If a limb or loop is not as it should be, say so"
                      + " under Signs.")));
    }
    if (work || !first.isEmpty()) {
      seen.unanswered().forEach(told -> evidence.note(told(told)));
    }
    if (!first.isEmpty()) {
      List<Remark> all = evidence.reasons(List.of());
      all.addAll(first);
      return look(bow, seen.reading(), all, evidence);
    }
    if (work) {
      return adjust(bow, seen.reading(), evidence, braceOff, tillerOff, permit);
    }
    return seen.unanswered().isEmpty() ? evidence.fit() : answerFirst(seen, evidence);
  }

  private static AdjustFirst answerFirst(Seen seen, Evidence evidence) {
    evidence.rest(Saying.TOLD_STANDS);
    return evidence.adjust(
        evidence.reasons(seen.unanswered().stream().map(Judge::told).toList()),
        BenchSteps.answerTold(),
        false);
  }

  static Remark told(Seen.Unanswered told) {
    return Remark.of(Saying.TOLD, told.said());
  }

  /**
   * The verdict on the second measurement, after an adjustment. It is judged like any other, but
   * what moved the wrong way by more than a reading step is not adjusted further: bolts are put
   * back and the bow goes to the workshop; for brace, the string is looked at first.
   *
   * @throws IllegalArgumentException when bolts were turned on a bow whose tiller none sets
   */
  public Judgement afterAdjustment(OnRecord bow, WorkDone done, Seen after, boolean permit) {
    if (!done.bolts().none() && !bow.rig().tillerAdjusts()) {
      throw new IllegalArgumentException("no bolt sets the tiller of this bow");
    }
    Judgement judged = verdict(bow, after, permit);
    if (judged instanceof AskAgain
        || judged instanceof Verdict.Withdraw
        || !after.missing().isEmpty()
        || Unstrung.stays(bow, after)) {
      return judged;
    }
    Evidence evidence = Evidence.of(bow, after);
    Reading before = done.before();
    Reading now = after.reading();
    if (wrongWay(now.tiller().minus(before.tiller()), done.bolts().tillerSign())) {
      return putBack(bow, now, done.bolts(), evidence, permit);
    }
    if (done.twists() != null
        && now.from() == before.from()
        && wrongWay(now.brace().minus(before.brace()), Integer.signum(done.twists()))) {
      return look(bow, now, List.of(Remark.of(Saying.BRACE_WRONG_WAY)), evidence);
    }
    return judged instanceof AdjustFirst more && noEffect(done, now) && more.given().has(TWISTS)
        ? evidence.adjust(
            evidence.reasons(List.of(Remark.of(Saying.TWISTS_NOT_SEEN))),
            afterALook(
                bow,
                now,
                evidence,
                BenchSteps.pass(List.of(BenchSteps.howManyTwists()), VOLUNTEER)),
            false)
        : judged;
  }

  /** Twists were advised and nobody said how many went in; nothing tells that any did. */
  private static boolean noEffect(WorkDone done, Reading now) {
    return done.twists() == null
        && done.bolts().none()
        && now.from() == done.before().from()
        && now.brace().minus(done.before().brace()).abs().compareTo(Target.READING_STEP) <= 0;
  }

  private static boolean wrongWay(Length change, int expectedSign) {
    return change.abs().compareTo(Target.READING_STEP) > 0
        && Long.signum(change.units()) == -expectedSign;
  }

  private static AdjustFirst missingParts(Seen seen, Evidence evidence) {
    // Readings of other parts say nothing about these: none are asked for, and no twist or turn is
    // advised on them.
    return evidence.adjust(
        seen.missing().stream().map(Remark::asSaid).toList(),
        BenchSteps.pass(List.of(BenchSteps.partsRight(seen.missing())), VOLUNTEER),
        false);
  }

  private static AdjustFirst look(
      OnRecord bow, Reading now, List<Remark> reasons, Evidence evidence) {
    List<BenchStep> work = new ArrayList<>();
    if (!evidence.finding(Quantity.BRACE).asItShouldBe() && tooHigh(evidence)) {
      work.add(BenchSteps.countTwists(bow.rig()));
    }
    work.add(BenchSteps.lookAtLimbs(bow.rig()));
    return evidence.adjust(
        evidence.reasons(reasons),
        afterALook(bow, now, evidence, BenchSteps.pass(work, VOLUNTEER)),
        false);
  }

  private static boolean tooHigh(Evidence evidence) {
    Finding brace = evidence.finding(Quantity.BRACE);
    return brace.reading().compareTo(brace.aim()) > 0;
  }

  /** String and both limbs are looked at before anything else is done to what may be harmed. */
  private static List<BenchStep> afterALook(
      OnRecord bow, Reading now, Evidence evidence, List<BenchStep> pass) {
    List<BenchStep> steps = new ArrayList<>();
    if (mayBeHarmed(bow, now, evidence)) {
      steps.add(BenchSteps.lookAlong());
    }
    if (DistancesMoved.of(bow, now).filter(m -> m.asksForALook() && m.alike()).isPresent()) {
      steps.add(BenchSteps.samePoint(bow.setUp().braceFrom()));
    }
    steps.addAll(pass);
    return steps;
  }

  private AdjustFirst adjust(
      OnRecord bow,
      Reading now,
      Evidence evidence,
      boolean braceOff,
      boolean tillerOff,
      boolean permit) {
    TwistAdvice twists = null;
    BoltAdvice bolts = null;
    BenchStep otherString = null;
    if (braceOff && bow.noTwists() != null) {
      otherString = BenchSteps.wornString(bow.rig(), bow.noTwists(), tooHigh(evidence));
      evidence.rest(Saying.NO_STRING_ADJUSTED, bow.noTwists());
    } else if (braceOff) {
      twists = twists(bow, evidence.finding(Quantity.BRACE));
      evidence.rest(Saying.AS_SAID, twists.basis());
      if (twists.otherLonger() != null) {
        otherString = BenchSteps.otherString(bow.rig(), twists);
      }
    }
    // Another string moves everything: tiller is judged again once it is on.
    if (tillerOff && otherString == null) {
      Finding tiller = evidence.finding(Quantity.TILLER);
      bolts = advice.bolts(bow.rig(), bow.setUp(), tiller.reading(), tiller.aim());
      evidence.rest(Saying.AS_SAID, bolts.basis());
    }
    boolean workshop =
        bolts != null && (!permit || bolts.first().none() || !mayTurn(bow, bolts.first()));
    List<BenchStep> work = new ArrayList<>();
    List<Remark> expected = new ArrayList<>();
    if (!workshop && braceOff && tooHigh(evidence)) {
      work.add(BenchSteps.countTwists(bow.rig()));
    }
    if (otherString != null) {
      work.add(otherString);
    } else if (workshop) {
      // Twists and bolts move each other: who does the one does the other.
      work.add(
          BenchSteps.toWorkshop(permit ? Saying.NO_BOLT_HAS_ROOM : Saying.FOR_A_PERMIT_HOLDER));
    } else {
      if (twists != null && twists.reach() == Reach.THIS_STRING) {
        work.add(BenchSteps.twists(bow.rig(), twists));
        expected.add(Expectation.of(twists));
      }
      if (bolts != null) {
        work.addAll(BenchSteps.bolts(bow.rig(), bolts.first()));
        expected.add(Expectation.of(bolts));
      }
    }
    if (work.stream().noneMatch(step -> step.key() != COUNT_TWISTS)) {
      work.add(BenchSteps.lookAtLimbs(bow.rig()));
    }
    return evidence.adjust(
        evidence.reasons(List.of()),
        afterALook(
            bow, now, evidence, BenchSteps.pass(work, bolts == null ? VOLUNTEER : PERMIT_HOLDER)),
        workshop,
        twists,
        bolts,
        expected);
  }

  /**
   * Readings that change, or lie beyond their limits, or have moved unexplained: what twists and
   * turns would only hide is looked for.
   */
  private static boolean mayBeHarmed(OnRecord bow, Reading now, Evidence evidence) {
    if (bow.changing()
        || evidence.findings().stream().anyMatch(one -> one.zone() == Zone.BEYOND)
        || DistancesMoved.of(bow, now)
            .filter(moved -> moved.asksForALook() && !moved.alike())
            .isPresent()) {
      return true;
    }
    Finding brace = evidence.finding(Quantity.BRACE);
    return !brace.asItShouldBe() && brace.moved() && brace.change().compareTo(Length.ZERO) < 0;
  }

  /** To the aim; where this string can't get so far, into the band at least. */
  private TwistAdvice twists(OnRecord bow, Finding brace) {
    TwistAdvice toAim = advice.twists(bow.rig(), brace.reading(), brace.aim());
    if (toAim.reach() == Reach.THIS_STRING || brace.target().inner() == null) {
      return toAim;
    }
    Length nearest = brace.target().aim(brace.reading()).orElseThrow();
    TwistAdvice intoBand = advice.twists(bow.rig(), brace.reading(), nearest);
    return intoBand.reach() == Reach.THIS_STRING ? intoBand : toAim;
  }

  /** Whatever the advice says: no bolt goes out where the maker's turns or its own are unknown. */
  private static boolean mayTurn(OnRecord bow, Turns turns) {
    Double most = bow.rig().riser().maxTurnsOut();
    return mayTurn(most, bow.setUp().turnsUpper(), turns.upper())
        && mayTurn(most, bow.setUp().turnsLower(), turns.lower());
  }

  private static boolean mayTurn(Double most, Double turnsOut, double turns) {
    return turns >= 0 || (most != null && turnsOut != null && turnsOut - turns <= most);
  }

  private static AdjustFirst putBack(
      OnRecord bow, Reading now, Turns done, Evidence evidence, boolean permit) {
    List<BenchStep> work = new ArrayList<>();
    if (permit) {
      work.addAll(BenchSteps.bolts(bow.rig(), done.undone()));
    }
    work.add(BenchSteps.toWorkshop(permit ? Saying.FIND_OUT_WHY : Saying.PUT_BOLTS_BACK));
    return evidence.adjust(
        evidence.reasons(List.of(Remark.of(Saying.TILLER_WRONG_WAY))),
        afterALook(bow, now, evidence, BenchSteps.pass(work, PERMIT_HOLDER)),
        true);
  }
}
