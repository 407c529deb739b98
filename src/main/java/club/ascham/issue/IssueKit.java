package club.ascham.issue;

import club.ascham.borrower.Borrower;
import club.ascham.borrower.BorrowerDetails;
import club.ascham.borrower.BorrowerRecords;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.AccountId;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.loan.ItemAsked;
import club.ascham.loan.ItemRules;
import club.ascham.loan.KitStock;
import club.ascham.loan.Lendable;
import club.ascham.loan.Loan;
import club.ascham.loan.LoanLines;
import club.ascham.loan.LoanRecords;
import club.ascham.loan.Offered;
import club.ascham.rig.Part;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Hands a rig and what goes out beside it to a borrower. */
@ApplicationScoped
class IssueKit {
  private final LoanRecords loans;
  private final BorrowerRecords borrowers;
  private final LoanLines lines;
  private final RigsOnOffer rigs;
  private final KitStock stock;
  private final Story story;
  private final ClubTime time;

  IssueKit(
      LoanRecords loans,
      BorrowerRecords borrowers,
      LoanLines lines,
      RigsOnOffer rigs,
      KitStock stock,
      Story story,
      ClubTime time) {
    this.loans = loans;
    this.borrowers = borrowers;
    this.lines = lines;
    this.rigs = rigs;
    this.stock = stock;
    this.story = story;
    this.time = time;
  }

  @Writes
  Outcome<LoanId> issue(IssueCommand command, AccountId by) {
    LocalDate today = time.today();
    Instant issuedAt = momentOf(command.issuedOn(), today);
    RigOffer rig = rigs.of(command.rig(), today).orElse(null);
    Map<String, Offered> found = stock.coded(command.items(), today);
    List<Refusal> refusals =
        new ArrayList<>(
            IssueRules.refusals(
                command.archer(), rig, command.items(), found, issuedAt, command.against()));
    Optional<Borrower> borrower = borrower(command, refusals);
    if (!refusals.isEmpty() || borrower.isEmpty()) {
      return Outcome.refused(refusals);
    }
    if (borrower.get().isNew()) {
      borrowers.persist(borrower.get());
    }
    Loan loan =
        Loan.ofKit(
            borrower.get().id(), command.archer(), issuedAt, command.dueOn(), by, time.now());
    loan.takeDeposit(command.deposit(), command.depositHow());
    loan.override(command.against());
    loan.briefed(by);
    loans.persist(loan);
    lend(loan.id(), rig, command, found, issuedAt, by);
    return Outcome.done(
        loan.id(),
        "Issued "
            + rig.card().name()
            + " to "
            + borrower.get().details().name()
            + "."
            + ItemRules.unchecked(
                found.values(), ItemRules.Receiver.of(command.archer(), rig.card(), issuedAt)));
  }

  private void lend(
      LoanId loan,
      RigOffer rig,
      IssueCommand command,
      Map<String, Offered> found,
      Instant issuedAt,
      AccountId by) {
    List<ItemId> out = new ArrayList<>();
    for (Part part : rig.card().parts()) {
      lines.lend(loan, part.id(), rig.card().id(), issuedAt, null);
      out.add(part.id());
    }
    for (ItemAsked asked : command.items()) {
      Lendable item = found.get(asked.code().bare()).item();
      lines.lend(loan, item.id(), null, issuedAt, item.pool() ? asked.count() : null);
      out.add(item.id());
    }
    story.tell(
        new Story.Told(
            issuedAt,
            by,
            "Issued with " + rig.card().name() + ", due " + ClubTime.said(command.dueOn()) + ".",
            command.against().said(),
            loan,
            out,
            List.of(rig.card().id())));
  }

  /** Whoever borrows; someone known is kept up with the age now said, and never kept twice. */
  private Optional<Borrower> borrower(IssueCommand command, List<Refusal> refusals) {
    if (command.known() == null) {
      if (!refusals.isEmpty()) {
        return Optional.empty();
      }
      Borrower known =
          borrowers
              .samePerson(command.newcomer())
              .map(same -> same.correct(command.newcomer().orAsIn(same.details())))
              .orElseGet(() -> new Borrower(command.newcomer()));
      return Optional.of(known);
    }
    Optional<Borrower> known = borrowers.with(command.known());
    if (known.isEmpty()) {
      refusals.add(new Refusal("borrower", "There is no such borrower. Enter a name instead."));
      return known;
    }
    BorrowerDetails now = known.get().details().aged(command.archer().age(), command.guardian());
    if (now.lacksGuardian()) {
      refusals.add(new Refusal("guardian", BorrowerDetails.WHO_ANSWERS));
    } else if (refusals.isEmpty()) {
      known.get().correct(now);
    }
    return known;
  }

  /** Of an earlier day its last minute: whatever else was entered for that day came before. */
  private Instant momentOf(LocalDate issuedOn, LocalDate today) {
    return issuedOn.equals(today)
        ? time.now()
        : time.momentOf(issuedOn.atTime(LocalTime.of(23, 59)));
  }
}
