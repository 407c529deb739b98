package club.ascham.verdict;

import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Zone;
import club.ascham.verdict.Verdict.AdjustFirst;
import club.ascham.verdict.Verdict.FitToIssue;
import club.ascham.verdict.Verdict.Kind;
import club.ascham.verdict.Verdict.Withdraw;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What a verdict stands on: the comparisons, the notes, and the lines that say what they rest on.
 */
final class Evidence {
  private final List<Finding> findings = new ArrayList<>();
  private final List<Remark> notes = new ArrayList<>();
  private final List<Remark> basis = new ArrayList<>();

  private Evidence() {}

  static Evidence of(OnRecord bow, Seen seen) {
    Evidence evidence = new Evidence();
    evidence.compare(bow, seen.reading());
    seen.signs().stream().filter(sign -> sign.gravity() != Gravity.STOP).forEach(evidence::weigh);
    if (seen.reported().cameBackStrung()) {
      evidence.note(Remark.of(Saying.CAME_BACK_STRUNG));
    }
    return evidence;
  }

  private void compare(OnRecord bow, Reading reading) {
    if (reading == null) {
      return;
    }
    SetUpFigures setUp = bow.setUp();
    if (reading.from() == setUp.braceFrom()) {
      add(
          new Finding(
              Quantity.BRACE,
              reading.brace(),
              bow.targets().brace(),
              setUp.brace(),
              bow.scatter()));
    }
    Finding tiller =
        new Finding(
            Quantity.TILLER,
            reading.tiller(),
            bow.targets().tiller(),
            setUp.tiller(),
            bow.scatter());
    add(tiller);
    if (!bow.rig().tillerAdjusts() && tiller.zone() == Zone.IN_OUTER && !tiller.asItShouldBe()) {
      // Nothing can be done about it, and nothing is wrong: whoever issues the bow should know.
      note(off(tiller));
    }
    rest(
        Saying.SET_UP_FIGURES,
        setUp.brace(),
        setUp.braceFrom(),
        setUp.tiller(),
        setUp.tillerUpper(),
        setUp.tillerLower());
    rest(
        bow.scatter().equals(Judge.READERS_SCATTER) ? Saying.SCATTER_JUDGED : Saying.SCATTER,
        bow.scatter());
  }

  private void add(Finding finding) {
    findings.add(finding);
    rest(Saying.TARGET, finding.quantity(), finding.target().basis());
  }

  private void weigh(Sign sign) {
    if (sign.gravity() == Gravity.NOTE) {
      note(line(sign));
      rest(Saying.SIGN_NOTE, sign.part(), sign.words(), sign.source());
    } else {
      rest(Saying.SIGN_FINE, sign.part(), sign.words());
    }
  }

  void note(Remark remark) {
    notes.add(remark);
  }

  void rest(Saying saying, Object... of) {
    basis.add(Remark.of(saying, of));
  }

  /** The finding of this quantity, which must have been compared. */
  Finding finding(Quantity quantity) {
    return findings.stream()
        .filter(finding -> finding.quantity() == quantity)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(quantity + " was not compared"));
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  FitToIssue fit() {
    return new FitToIssue(
        given(Kind.FIT, List.of(Remark.of(Saying.FINE)), List.of(), List.of(), List.of()),
        findings());
  }

  AdjustFirst adjust(List<Remark> reasons, List<BenchStep> steps, boolean forWorkshop) {
    return adjust(reasons, steps, forWorkshop, null, null, List.of());
  }

  /**
   * @param twists null: none are advised (likewise {@code bolts})
   */
  AdjustFirst adjust(
      List<Remark> reasons,
      List<BenchStep> steps,
      boolean forWorkshop,
      TwistAdvice twists,
      BoltAdvice bolts,
      List<Remark> expected) {
    return new AdjustFirst(
        given(Kind.ADJUST, reasons, steps, expected, List.of()),
        forWorkshop,
        twists,
        bolts,
        findings());
  }

  Withdraw withdraw(List<Remark> reasons, List<Remark> work, Set<BowPart> parts) {
    return new Withdraw(
        given(Kind.WITHDRAW, reasons(reasons), List.of(), List.of(), work),
        Set.copyOf(parts),
        findings());
  }

  private Given given(
      Kind kind,
      List<Remark> reasons,
      List<BenchStep> steps,
      List<Remark> expected,
      List<Remark> work) {
    return new Given(kind, reasons, steps, expected, work, notes, basis);
  }

  /**
   * Reasons, and what else is outside its band: what the gauge calls outside is always said.
   *
   * @param said comes first
   */
  List<Remark> reasons(List<Remark> said) {
    List<Remark> all = new ArrayList<>(said);
    for (Finding finding : findings) {
      boolean gaugeSaysSo =
          finding.zone() == Zone.BEYOND
              || (finding.zone() == Zone.IN_OUTER && finding.target().inner() != null);
      if (gaugeSaysSo && !all.contains(off(finding))) {
        all.add(off(finding));
      }
    }
    return all;
  }

  static Remark line(Sign sign) {
    return Remark.of(Saying.SIGN, sign.part(), sign.words());
  }

  /** Where a reading lies that is not where it should be. */
  static Remark off(Finding finding) {
    boolean beyond = finding.zone() == Zone.BEYOND;
    return Remark.of(
        beyond ? Saying.BEYOND : Saying.OUTSIDE,
        finding.quantity(),
        finding.reading(),
        beyond ? finding.target().outer() : finding.target().inner());
  }
}
