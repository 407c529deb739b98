package club.ascham.check;

import club.ascham.assembly.CorrectParts;
import club.ascham.bow.AgainstAdvice;
import club.ascham.form.Outcome;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.report.About;
import club.ascham.report.Noticed;
import club.ascham.report.PartChoice;
import club.ascham.report.TellReport;
import club.ascham.report.Telling;
import club.ascham.rig.Part;
import club.ascham.store.Writes;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Does what was answered about a part that came back on a bow and is not on its list, once the bow
 * itself was taken back. A check judges; here nobody has measured yet, so that what is to be put
 * right is told of the bow and stands until its check.
 */
@ApplicationScoped
public class SettleStranger {
  private final WithdrawParts withdrawParts;
  private final TellReport tellReport;
  private final CorrectParts correctParts;
  private final LoanLines lines;
  private final ClubTime time;

  SettleStranger(
      WithdrawParts withdrawParts,
      TellReport tellReport,
      CorrectParts correctParts,
      LoanLines lines,
      ClubTime time) {
    this.withdrawParts = withdrawParts;
    this.tellReport = tellReport;
    this.correctParts = correctParts;
    this.lines = lines;
    this.time = time;
  }

  /**
   * Inside the use case that took the bow back; refused, whatever was written with it is to be
   * taken back.
   *
   * @param about the bow, the loan and the receipt it came back with
   */
  @Writes
  public Outcome<RigId> settle(StrangerBack back, About about) {
    String found = back.stranger().found(back.card());
    switch (back.answer()) {
      case PUT_RIGHT -> {
        tellReport.tell(telling(back, found), about);
        tellWhereItBelongs(back, about);
        return Outcome.done(
            about.rig(), found + ": the right part goes back on before it is measured.");
      }
      case WITHDRAW_BOTH -> {
        withdrawParts.both(back.card(), back.stranger(), about.noticed());
        return Outcome.done(about.rig(), found + ": both are withdrawn.");
      }
      case CORRECT_RECORD, EXCHANGED -> {
        return correct(back, about.loan());
      }
    }
    throw new IllegalStateException(back.answer().name());
  }

  private static Telling telling(StrangerBack back, String found) {
    PartChoice part =
        back.stranger()
            .insteadOf(back.card())
            .map(
                listed ->
                    new PartChoice(
                        listed.id(), listed.bareCode(), listed.kind().name(), back.card().id()))
            .orElse(null);
    return new Telling(
        Set.of(Noticed.SOMETHING_ELSE),
        found + ". The right part goes back on before the bow is measured.",
        part,
        back.card().id());
  }

  /** Its own bow hears of it too: a part of it is elsewhere, and what is on it now nobody knows. */
  private void tellWhereItBelongs(StrangerBack back, About about) {
    Stranger stranger = back.stranger();
    if (stranger.rig() == null) {
      return;
    }
    tellReport.tell(
        new Telling(
            Set.of(Noticed.SOMETHING_ELSE),
            stranger.code()
                + " was found on "
                + back.card().name()
                + ". Look what is on this bow before anyone strings it.",
            new PartChoice(stranger.id(), stranger.bareCode(), stranger.kind(), stranger.rig()),
            stranger.rig()),
        new About(stranger.rig(), null, about.receipt(), about.toldAt(), about.noticed()));
  }

  private Outcome<RigId> correct(StrangerBack back, LoanId loan) {
    Optional<Part> listed = back.stranger().insteadOf(back.card());
    List<LoanLine> out =
        lines.of(loan).stream().filter(line -> line.isOut() && back.isOn(line.rig())).toList();
    Optional<LoanLine> missing =
        out.stream()
            .filter(line -> listed.filter(p -> p.id().equals(line.item())).isPresent())
            .findFirst();
    if (out.size() > (missing.isPresent() ? 1 : 0)) {
      return Outcome.refused(
          "", "The bow itself is not back yet: its record is corrected when it is.");
    }
    Instant now = time.now();
    // What was listed did not come back with the bow: it is the borrower's to bring, by itself.
    missing.ifPresent(line -> lines.changed(line, now));
    Outcome<RigId> outcome =
        correctParts.correct(
            back.card().id(),
            new ItemCode(back.stranger().bareCode()),
            back.answer() == StrangerAnswer.EXCHANGED,
            OptionalInt.empty(),
            AgainstAdvice.NOTHING_SAID);
    if (outcome instanceof Outcome.Done && back.answer() == StrangerAnswer.CORRECT_RECORD) {
      missing.ifPresent(line -> lines.lend(loan, line.item(), null, now, null));
    }
    return outcome;
  }
}
