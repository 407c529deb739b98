package club.ascham.verdict;

import club.ascham.bow.Build;
import club.ascham.bow.InPrint;
import club.ascham.bow.Zone;
import club.ascham.units.LengthText;
import club.ascham.verdict.Verdict.Withdraw;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What takes a bow out of use, whatever else is fine. */
final class Stops {
  private final Build build;
  private final Set<Part> parts = EnumSet.noneOf(Part.class);
  private final List<String> reasons = new ArrayList<>();
  private final List<String> work = new ArrayList<>();
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
    evidence.rest(Evidence.line(sign) + " (a stop: " + sign.source() + ")");
  }

  private void dryLooseOrFall() {
    reasons.add("A loose without an arrow, or a fall, was reported: harm may not show.");
    parts.addAll(EnumSet.of(Part.STRING, Part.LIMBS, Part.RISER));
    if (Signs.parts(build).contains(Part.BOLTS)) {
      parts.add(Part.BOLTS);
    }
    evidence.rest(
        "Loosed without an arrow, the bow keeps the energy: limbs, string or riser may break,"
            + " screws come loose ("
            + InPrint.CLUB_CARE
            + "). To withdraw it until it is inspected is common practice.");
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
      reasons.add("Tiller has changed since the set-up, and nothing on this bow sets it.");
    }
    parts.add(Part.LIMBS);
    work.add(
        build == Build.SCREW_IN
            ? "Tiller: look whether the limbs are the right way up, flat on their seats and"
                + " hand-tight, and measure again; if it stands, a limb has changed."
            : "Tiller: measure again, upper distance first; if it stands, a limb has changed.");
    evidence.rest(
        "Where tiller is fixed, a change means that a limb has changed: the bow is withdrawn, never"
            + " adjusted (our judgement).");
    return true;
  }

  /** A limb that is far from where it stood, or still is after someone looked at its seat. */
  private void seats(DistancesMoved moved, boolean seated) {
    if (!moved.withdraws(seated)) {
      return;
    }
    reasons.add(moved.said());
    parts.add(Part.LIMBS);
    work.add(
        "Before it is strung again the permit holder looks at both limbs and their seats: which way"
            + " up they are, whether they lie in their pockets, and whether one has a crack, a"
            + " delamination or a twist.");
    evidence.rest(
        "A tiller distance that moved by more than "
            + LengthText.both(DistancesMoved.OUT_OF_PLACE)
            + " beyond the change of brace, or by more than "
            + LengthText.both(DistancesMoved.LOOK_FIRST)
            + " after someone looked, is no bolt's doing (our judgement).");
  }

  private Withdraw withdraw() {
    List<String> all = new ArrayList<>();
    if (unstrung
        || parts.contains(Part.LIMBS)
        || parts.contains(Part.RISER)
        || parts.contains(Part.STRING)) {
      all.add("If it is strung: string off with the stringer, and leave it off. Don't draw it.");
    }
    all.addAll(work);
    parts.forEach(part -> all.add(BenchSteps.work(part, build)));
    return new Withdraw(
        evidence.reasons(reasons),
        all,
        parts,
        evidence.notes(),
        evidence.findings(),
        evidence.basis());
  }
}
