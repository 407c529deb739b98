package club.ascham.verdict;

import club.ascham.bow.Build;
import club.ascham.bow.InPrint;
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

  private Stops(Build build, Evidence evidence) {
    this.build = build;
    this.evidence = evidence;
  }

  static Optional<Withdraw> judge(OnRecord bow, Seen seen, Evidence evidence) {
    Stops stops = new Stops(bow.rig().build(), evidence);
    seen.signs().stream().filter(sign -> sign.gravity() == Gravity.STOP).forEach(stops::stoppedBy);
    if (seen.reported().dryLooseOrFall()) {
      stops.dryLooseOrFall();
    }
    if (seen.reading() != null && !bow.rig().tillerAdjusts()) {
      stops.fixedTiller(evidence.finding(Quantity.TILLER));
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

  private void fixedTiller(Finding tiller) {
    boolean beyond = tiller.place() == Place.BEYOND;
    if (!beyond && !tiller.moved()) {
      return;
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
  }

  private Withdraw withdraw() {
    List<String> all = new ArrayList<>();
    if (parts.contains(Part.LIMBS) || parts.contains(Part.RISER) || parts.contains(Part.STRING)) {
      all.add("If it is strung: string off with the stringer, and leave it off. Don't draw it.");
    }
    all.addAll(work);
    parts.forEach(part -> all.add(BenchSteps.work(part, build)));
    return new Withdraw(
        reasons, all, parts, evidence.notes(), evidence.findings(), evidence.basis());
  }
}
