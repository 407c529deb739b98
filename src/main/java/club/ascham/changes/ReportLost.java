package club.ascham.changes;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.AccountId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.LineOutcome;
import club.ascham.loan.Loan;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.loan.LoanRecords;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** Ends the lines of what is lost, and retires it; the loan stays open for the rest. */
@ApplicationScoped
class ReportLost {
  private final LoanRecords loans;
  private final LoanLines lines;
  private final LostItems lostItems;
  private final Story story;
  private final ClubTime time;

  ReportLost(LoanRecords loans, LoanLines lines, LostItems lostItems, Story story, ClubTime time) {
    this.loans = loans;
    this.lines = lines;
    this.lostItems = lostItems;
    this.story = story;
    this.time = time;
  }

  @Writes
  Outcome<LoanId> report(LostCommand command, AccountId by) {
    Loan loan = loans.with(command.loan()).orElseThrow();
    List<LoanLine> out = lines.of(command.loan()).stream().filter(LoanLine::isOut).toList();
    List<LoanLine> lost = out.stream().filter(line -> command.lines().contains(line.id())).toList();
    boolean closes = lost.size() == out.size();
    List<Refusal> refusals = refusals(command, loan, lost, closes);
    if (!refusals.isEmpty()) {
      return Outcome.refused(refusals);
    }
    Instant now = time.now();
    for (LoanLine line : lost) {
      lines.end(line, now, LineOutcome.LOST, line.arrowCount() == null ? null : 0);
    }
    lostItems.takeOut(lost, now, time.today(), command.words());
    List<RigId> rigs =
        lost.stream().map(LoanLine::rig).filter(Objects::nonNull).distinct().toList();
    if (closes) {
      loan.settleDeposit(command.depositBack(), "reported lost");
    }
    tell(command, by, lost, rigs, now);
    String codes = lost.stream().map(LoanLine::code).collect(Collectors.joining(", "));
    return Outcome.done(
        command.loan(), "Reported lost: " + codes + (closes ? ". Nothing is out any more." : "."));
  }

  private static List<Refusal> refusals(
      LostCommand command, Loan loan, List<LoanLine> lost, boolean closes) {
    List<Refusal> refusals = new ArrayList<>();
    if (lost.size() != command.lines().size()) {
      refusals.add(
          new Refusal("lines", "Some of these came back meanwhile. Look again at what is out."));
    }
    if (command.depositBack() != null) {
      if (!closes) {
        refusals.add(
            new Refusal("depositBack", "The deposit is settled when the rest comes back."));
      } else if (command.depositBack().compareTo(loan.deposit()) > 0) {
        refusals.add(new Refusal("depositBack", "No more than was taken, please."));
      }
    }
    return refusals;
  }

  private void tell(
      LostCommand command, AccountId by, List<LoanLine> lost, List<RigId> rigs, Instant now) {
    for (LoanLine line : lost) {
      String sentence =
          line.arrowCount() == null
              ? "Reported lost while on loan; retired."
              : line.arrowCount() + " arrows reported lost while on loan.";
      story.tell(
          new Story.Told(
              now, by, sentence, command.words(), command.loan(), List.of(line.item()), List.of()));
    }
    if (!rigs.isEmpty()) {
      String parts =
          lost.stream()
              .filter(line -> line.rig() != null)
              .map(LoanLine::code)
              .collect(Collectors.joining(", "));
      story.tell(
          new Story.Told(
              now,
              by,
              "Reported lost while on loan: " + parts + ".",
              command.words(),
              command.loan(),
              List.of(),
              rigs));
    }
  }
}
