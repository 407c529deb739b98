package club.ascham.changes;

import club.ascham.borrower.BorrowerRecords;
import club.ascham.bow.DrawLength;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.AccountId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.Archer;
import club.ascham.loan.Loan;
import club.ascham.loan.LoanKind;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.loan.LoanRecords;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Lets a borrower keep a kit longer, if it still suits the draw they have now. */
@ApplicationScoped
class ExtendLoan {
  private final LoanRecords loans;
  private final BorrowerRecords borrowers;
  private final LoanLines lines;
  private final RigSpecs specs;
  private final Concerns concerns;
  private final Story story;
  private final ClubTime time;

  ExtendLoan(
      LoanRecords loans,
      BorrowerRecords borrowers,
      LoanLines lines,
      RigSpecs specs,
      Concerns concerns,
      Story story,
      ClubTime time) {
    this.loans = loans;
    this.borrowers = borrowers;
    this.lines = lines;
    this.specs = specs;
    this.concerns = concerns;
    this.story = story;
    this.time = time;
  }

  @Writes
  Outcome<LoanId> extend(ExtendCommand command, AccountId by) {
    Loan loan = loans.with(command.loan()).orElseThrow();
    List<LoanLine> out = lines.of(command.loan()).stream().filter(LoanLine::isOut).toList();
    List<Refusal> refusals = refusals(loan, out, command);
    if (!refusals.isEmpty()) {
      return Outcome.refused(refusals);
    }
    LocalDate before = loan.dueOn();
    loan.extend(command.dueOn());
    if (command.draw() != null) {
      loan.drew(command.draw());
    }
    if (command.against().why() != null) {
      loan.override(command.against());
    }
    story.tell(
        new Story.Told(
            time.now(),
            by,
            "Loan extended from "
                + ClubTime.said(before)
                + " to "
                + ClubTime.said(command.dueOn())
                + ".",
            command.against().said(),
            command.loan(),
            out.stream().map(LoanLine::item).toList(),
            rigs(out)));
    return Outcome.done(command.loan(), "Extended.");
  }

  private List<Refusal> refusals(Loan loan, List<LoanLine> out, ExtendCommand command) {
    if (out.isEmpty()) {
      return List.of(new Refusal("dueOn", "Everything is back: this loan is closed."));
    }
    if (command.version() != null && command.version() != loan.version()) {
      return List.of(
          new Refusal(
              "version", "Someone changed this loan meanwhile. Look at it again, then extend it."));
    }
    List<Refusal> refusals = new ArrayList<>();
    Against against = concerns.of(command.loan());
    if (against.blocks()) {
      refusals.add(
          new Refusal("dueOn", against.keptIn() + " Ask it back now, and do not let it go on."));
    }
    if (loan.kind() == LoanKind.SESSION) {
      refusals.add(new Refusal("dueOn", "A session ends tonight. Issue a kit instead."));
      return refusals;
    }
    if (!command.dueOn().isAfter(loan.dueOn())) {
      refusals.add(
          new Refusal(
              "dueOn",
              "It is due on " + ClubTime.said(loan.dueOn()) + " already: choose a later day."));
    }
    ExtendRules.askWhy(
            against,
            concerns.whenLent(command.loan()),
            lines.reportsToldSince(command.loan()),
            loan.against().why(),
            command.against().why())
        .ifPresent(refusals::add);
    RigCard bow = rigs(out).stream().findFirst().flatMap(specs::of).orElse(null);
    DrawLength draw = command.draw() == null ? loan.draw() : command.draw();
    if (draw == null) {
      return refusals;
    }
    Archer archer =
        new Archer(
            loan.hand(),
            null,
            draw,
            borrowers.with(loan.borrower()).orElseThrow().details().ageBand(),
            loan.experience());
    if (command.draw() != null) {
      refusals.addAll(ExtendRules.refusals(archer, out, bow, command.against()));
    } else if (bow != null) {
      refusals.addAll(
          ExtendRules.tooHeavy(
              archer.ceiling(), archer.weightOf(bow), command.against().orElse(loan.against())));
    }
    return refusals;
  }

  private static List<RigId> rigs(List<LoanLine> out) {
    return out.stream().map(LoanLine::rig).filter(Objects::nonNull).distinct().toList();
  }
}
