package club.ascham.verdict;

import club.ascham.bow.Band;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Zone;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import java.util.ArrayList;
import java.util.List;

/**
 * What a verdict stands on: the comparisons, the notes, and the lines that say what they rest on.
 */
final class Evidence {
  private final List<Finding> findings = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final List<String> basis = new ArrayList<>();

  private Evidence() {}

  static Evidence of(OnRecord bow, Seen seen) {
    Evidence evidence = new Evidence();
    evidence.compare(bow, seen.reading());
    seen.signs().stream().filter(sign -> sign.gravity() != Gravity.STOP).forEach(evidence::weigh);
    if (seen.reported().cameBackStrung()) {
      evidence.notes.add(
          "It came back strung: look along both limbs, and tell the borrower to unstring after"
              + " use.");
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
      notes.add(off(tiller));
    }
    rest(
        "Set-up figures: brace "
            + LengthText.both(setUp.brace())
            + " from "
            + Judge.words(setUp.braceFrom())
            + ", tiller "
            + LengthText.both(setUp.tiller())
            + " (upper "
            + LengthText.both(setUp.tillerUpper())
            + ", lower "
            + LengthText.both(setUp.tillerLower())
            + ").");
    rest(
        "A change of up to "
            + LengthText.both(bow.scatter())
            + " may be nothing but two people measuring"
            + (bow.scatter().equals(Judge.READERS_SCATTER) ? ": judged, not measured." : "."));
  }

  private void add(Finding finding) {
    findings.add(finding);
    rest(capital(finding.quantity().words()) + ": " + finding.target().basis());
  }

  private void weigh(Sign sign) {
    if (sign.gravity() == Gravity.NOTE) {
      notes.add(line(sign));
      rest(line(sign) + " (a note: " + sign.source() + ")");
    } else {
      rest(line(sign) + " (fine)");
    }
  }

  void note(String line) {
    notes.add(line);
  }

  void rest(String line) {
    basis.add(line);
  }

  /** The finding of this quantity, which must have been compared. */
  Finding finding(Quantity quantity) {
    return findings.stream()
        .filter(finding -> finding.quantity() == quantity)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(quantity + " was not compared"));
  }

  List<Finding> findings() {
    return findings;
  }

  List<String> notes() {
    return notes;
  }

  List<String> basis() {
    return basis;
  }

  /**
   * Reasons, and what else is outside its band: what the gauge calls outside is always said.
   *
   * @param said comes first
   */
  List<String> reasons(List<String> said) {
    List<String> all = new ArrayList<>(said);
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

  /** {@code about 3/8 in · 9.5 mm}. */
  static String about(Length length) {
    return "about " + LengthText.both(length);
  }

  static String line(Sign sign) {
    return capital(sign.part().words()) + ": " + sign.words();
  }

  /** In words, where a reading lies that is not where it should be. */
  static String off(Finding finding) {
    boolean beyond = finding.zone() == Zone.BEYOND;
    Band band = beyond ? finding.target().outer() : finding.target().inner();
    return "%s is %s, %s %s to %s."
        .formatted(
            capital(finding.quantity().words()),
            LengthText.both(finding.reading()),
            beyond ? "beyond the limits" : "outside",
            LengthText.both(band.low()),
            LengthText.both(band.high()));
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
