package club.ascham.verdict;

import static club.ascham.bow.Who.PERMIT_HOLDER;
import static club.ascham.bow.Who.VOLUNTEER;

import club.ascham.verdict.BenchStep.Key;
import club.ascham.verdict.Verdict.AdjustFirst;
import java.util.ArrayList;
import java.util.List;

/**
 * What is said of a bow that a danger stands against: the string comes off and stays off, and whose
 * turn it is. Whatever it measures, nothing is adjusted and nothing is found fit.
 *
 * <p>Without readings such a check is kept as a look, after which a full check is due. Whoever may
 * not decide sends the bow to the workshop, where its sheet stops before the string.
 */
public final class Unstrung {
  private static final String THEN = " Only then is it strung, and checked.";

  private Unstrung() {}

  static boolean stays(OnRecord bow, Seen seen) {
    return !bow.dangers().isEmpty() || isToldOfADanger(seen);
  }

  static boolean isToldOfADanger(Seen seen) {
    return seen.unanswered().stream().anyMatch(Seen.Unanswered::dangerous);
  }

  static AdjustFirst verdict(OnRecord bow, Seen seen, Evidence evidence, boolean permit) {
    List<String> said = new ArrayList<>();
    seen.unanswered().forEach(told -> said.add(Judge.told(told)));
    said.addAll(bow.dangers());
    said.addAll(seen.missing());
    List<String> reasons = evidence.reasons(said);
    reasons.add(
        seen.reading() == null
            ? "This was a look, without readings: it finds nothing fit."
            : "Readings release nothing: take no more of them.");
    evidence.rest(
        "While something that may break it stands against a bow, nobody strings it to measure it,"
            + " and no check finds it fit (judged).");
    return new AdjustFirst(
        reasons,
        steps(isToldOfADanger(seen), !bow.dangers().isEmpty(), !permit),
        !permit,
        null,
        null,
        List.of(),
        evidence.notes(),
        evidence.findings(),
        evidence.basis());
  }

  /**
   * @param told whether something dangerous was told and is not answered
   * @param standing whether something is withdrawn or did not pass
   * @param workshop whether others than this person answer and decide
   */
  public static List<BenchStep> steps(boolean told, boolean standing, boolean workshop) {
    List<BenchStep> steps = new ArrayList<>();
    steps.add(
        new BenchStep(
            Key.STRING_OFF,
            "If it is strung: take the string off with the stringer, and leave it off.",
            VOLUNTEER,
            null,
            "Don't draw it. Keep your face away from the tips; nobody stands in line with them."));
    if (workshop) {
      steps.add(
          new BenchStep(
              Key.TO_WORKSHOP,
              "Send it to the workshop.",
              VOLUNTEER,
              null,
              "Leave the string off and the limb bolts alone."));
    }
    if (told) {
      steps.add(
          new BenchStep(
              Key.ANSWER_TOLD,
              "Look at what was told, and answer it." + (standing ? "" : THEN),
              PERMIT_HOLDER,
              null,
              null));
    }
    if (standing) {
      steps.add(
          new BenchStep(
              Key.RELEASE,
              "Decide what stands against it, and release it." + THEN,
              PERMIT_HOLDER,
              null,
              null));
    }
    return steps;
  }
}
