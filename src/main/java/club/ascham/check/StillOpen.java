package club.ascham.check;

import club.ascham.report.Answer;
import club.ascham.report.Answering;
import club.ascham.report.Noticed;
import club.ascham.report.PartChoice;
import club.ascham.report.Report;
import club.ascham.report.Telling;
import club.ascham.verdict.BowPart;
import club.ascham.verdict.Gravity;
import club.ascham.verdict.Reported;
import club.ascham.verdict.Seen;
import club.ascham.verdict.Sign;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What a check leaves open of what was told, and what it tells itself.
 *
 * @param tells the signs that are told with this check and of which no report stands yet
 * @param stops the parts that its answers stop
 */
record StillOpen(
    Set<Noticed> tells, Reported reported, List<Seen.Unanswered> unanswered, List<Sign> stops) {

  /**
   * @param open the reports that nobody has answered yet
   * @param receipts what receipts say of which there is no report
   * @param toldBefore whether this corrects a check that has told already what it would tell
   */
  static StillOpen of(
      CheckEntry entry, List<Report> open, Checks.Told receipts, boolean toldBefore) {
    Set<Noticed> tells = tells(entry, open, toldBefore);
    List<Seen.Unanswered> unanswered = new ArrayList<>();
    List<Sign> stops = new ArrayList<>();
    boolean shock = receipts.dryLooseOrFall();
    for (Report report : open) {
      Answering answer = entry.answers().get(Long.toString(report.id()));
      if (answer == null) {
        unanswered.add(new Seen.Unanswered(report.said(), report.dangerous()));
        shock |= report.tellsOfShock();
      } else if (answer.answer() == Answer.STOP) {
        stops.add(stop(answer, report.said()));
      }
    }
    if (!tells.isEmpty()) {
      Answering answer = entry.answers().get(CheckEntry.TOLD_NOW);
      if (answer == null) {
        unanswered.add(
            new Seen.Unanswered(
                Telling.said(tells), tells.stream().anyMatch(Noticed::isDangerous)));
        shock |= tells.stream().anyMatch(Noticed::isShock);
      } else if (answer.answer() == Answer.STOP) {
        stops.add(stop(answer, Telling.said(tells)));
      }
    }
    boolean strung =
        entry.cameBackStrung()
            || receipts.cameBackStrung()
            || open.stream().anyMatch(Report::tellsOfStrung);
    return new StillOpen(tells, new Reported(shock, strung), unanswered, stops);
  }

  /** What stands already is not told again. */
  private static Set<Noticed> tells(CheckEntry entry, List<Report> open, boolean toldBefore) {
    Set<Noticed> tells = EnumSet.noneOf(Noticed.class);
    if (!toldBefore) {
      tells.addAll(entry.tells());
      if (open.stream().anyMatch(Report::tellsOfShock)) {
        tells.removeIf(Noticed::isShock);
      }
      if (open.stream().anyMatch(Report::tellsOfStrung)) {
        tells.remove(Noticed.CAME_BACK_STRUNG);
      }
    }
    return tells;
  }

  private static Sign stop(Answering answer, String told) {
    return new Sign(part(answer.part()), Gravity.STOP, told + ": " + answer.words());
  }

  private static BowPart part(PartChoice stopped) {
    return switch (stopped.kind()) {
      case "STRING" -> BowPart.STRING;
      case "RISER" -> BowPart.RISER;
      default -> BowPart.LIMBS;
    };
  }
}
