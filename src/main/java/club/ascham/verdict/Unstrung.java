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
  private Unstrung() {}

  static boolean stays(OnRecord bow, Seen seen) {
    return !bow.dangers().isEmpty() || isToldOfADanger(seen);
  }

  static boolean isToldOfADanger(Seen seen) {
    return seen.unanswered().stream().anyMatch(Seen.Unanswered::dangerous);
  }

  static AdjustFirst verdict(OnRecord bow, Seen seen, Evidence evidence, boolean permit) {
    List<Remark> said = new ArrayList<>();
    seen.unanswered().forEach(told -> said.add(Judge.told(told)));
    bow.dangers().forEach(danger -> said.add(Remark.asSaid(danger)));
    seen.missing().forEach(part -> said.add(Remark.asSaid(part)));
    List<Remark> reasons = evidence.reasons(said);
    reasons.add(
        Remark.of(seen.reading() == null ? Saying.ONLY_A_LOOK : Saying.READINGS_RELEASE_NOTHING));
    evidence.rest(Saying.DANGER_STANDS);
    return evidence.adjust(
        reasons, steps(isToldOfADanger(seen), !bow.dangers().isEmpty(), !permit), !permit);
  }

  /**
   * @param told whether something dangerous was told and is not answered
   * @param standing whether something is withdrawn or did not pass
   * @param workshop whether others than this person answer and decide
   */
  public static List<BenchStep> steps(boolean told, boolean standing, boolean workshop) {
    List<BenchStep> steps = new ArrayList<>();
    steps.add(BenchSteps.step(Key.STRING_OFF, VOLUNTEER, Saying.LEAVE_STRING_OFF));
    if (workshop) {
      steps.add(BenchSteps.step(Key.TO_WORKSHOP, VOLUNTEER, Saying.TO_WORKSHOP));
    }
    if (told) {
      steps.add(
          BenchSteps.step(
              Key.ANSWER_TOLD,
              PERMIT_HOLDER,
              standing ? Saying.ANSWER_TOLD : Saying.ANSWER_TOLD_THEN));
    }
    if (standing) {
      steps.add(BenchSteps.step(Key.RELEASE, PERMIT_HOLDER, Saying.RELEASE));
    }
    return steps;
  }
}
