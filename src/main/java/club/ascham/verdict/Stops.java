package club.ascham.verdict;

import club.ascham.bow.Build;
import club.ascham.bow.InPrint;
import club.ascham.bow.Zone;
import club.ascham.verdict.Verdict.Withdraw;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What takes a bow out of use, whatever else is fine. */
final class Stops {
  private final Build build;
  private final Set<BowPart> parts = EnumSet.noneOf(BowPart.class);
  private final List<Remark> reasons = new ArrayList<>();
  private final List<Remark> work = new ArrayList<>();
  private final Evidence evidence;
  private final boolean unstrung;

  private Stops(Build build, Evidence evidence, boolean unstrung) {
    this.build = build;
    this.evidence = evidence;
    this.unstrung = unstrung;
  }

  static Optional<Withdraw> judge(OnRecord bow, Seen seen, Evidence evidence) {
    Stops stops = new Stops(bow.rig().build(), evidence, Unstrung.stays(bow, seen));
    seen.signs().stream().filter(sign -> sign.gravity() == Gravity.STOP).forEach(stops::stoppedBy);
    if (seen.reported().dryLooseOrFall()) {
      stops.dryLooseOrFall();
    }
    Reading reading = seen.reading();
    if (reading != null && !OpenQuestions.isOneFigure(bow, seen)) {
      boolean tillerMoved =
          !bow.rig().tillerAdjusts() && stops.fixedTiller(evidence.finding(Quantity.TILLER));
      if (!tillerMoved) {
        DistancesMoved.of(bow, reading).ifPresent(moved -> stops.seats(moved, seen.limbsSeated()));
      }
    }
    return stops.reasons.isEmpty() ? Optional.empty() : Optional.of(stops.withdraw());
  }

  private void stoppedBy(Sign sign) {
    reasons.add(Evidence.line(sign));
    parts.add(sign.part());
    evidence.rest(Saying.SIGN_STOP, sign.part(), sign.words(), sign.source());
  }

  private void dryLooseOrFall() {
    reasons.add(Remark.of(Saying.FALL));
    parts.addAll(EnumSet.of(BowPart.STRING, BowPart.LIMBS, BowPart.RISER));
    if (Signs.parts(build).contains(BowPart.BOLTS)) {
      parts.add(BowPart.BOLTS);
    }
    evidence.rest(Saying.FALL_HARMS, InPrint.CLUB_CARE);
  }

  /** Whether it has moved, or lies where no bow's tiller should. */
  private boolean fixedTiller(Finding tiller) {
    boolean beyond = tiller.zone() == Zone.BEYOND;
    if (!beyond && !tiller.moved()) {
      return false;
    }
    if (beyond) {
      reasons.add(Evidence.off(tiller));
    }
    if (tiller.moved()) {
      reasons.add(Remark.of(Saying.FIXED_TILLER_CHANGED));
    }
    parts.add(BowPart.LIMBS);
    work.add(
        Remark.of(
            build == Build.SCREW_IN ? Saying.LOOK_AT_SCREW_IN_TILLER : Saying.LOOK_AT_TILLER));
    evidence.rest(Saying.FIXED_TILLER_WITHDRAWS);
    return true;
  }

  /** A limb that is far from where it stood, or still is after someone looked at its seat. */
  private void seats(DistancesMoved moved, boolean seated) {
    if (!moved.withdraws(seated)) {
      return;
    }
    reasons.add(moved.said());
    parts.add(BowPart.LIMBS);
    work.add(Remark.of(Saying.LOOK_AT_BOTH_SEATS));
    evidence.rest(Saying.NO_BOLTS_DOING, DistancesMoved.OUT_OF_PLACE, DistancesMoved.LOOK_FIRST);
  }

  private Withdraw withdraw() {
    List<Remark> all = new ArrayList<>();
    if (unstrung
        || parts.contains(BowPart.LIMBS)
        || parts.contains(BowPart.RISER)
        || parts.contains(BowPart.STRING)) {
      all.add(Remark.of(Saying.UNSTRING));
    }
    all.addAll(work);
    parts.forEach(part -> all.add(Remark.of(BenchSteps.work(part, build))));
    return evidence.withdraw(reasons, all, parts);
  }
}
