package club.ascham.issue;

import club.ascham.borrower.BorrowerDetails;
import club.ascham.borrower.BorrowerId;
import club.ascham.bow.AgainstAdvice;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.loan.Archer;
import club.ascham.loan.DepositHow;
import club.ascham.loan.ItemAsked;
import club.ascham.loan.LendingTerms;
import club.ascham.rig.AdviceOverridden;
import club.ascham.units.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A kit to be issued.
 *
 * @param known who borrowed before; null: someone new
 * @param newcomer someone new; null: one who borrowed before
 * @param guardian as typed, for a junior who borrowed before; null: as kept
 * @param depositHow null where no deposit is taken
 * @param against why what advice speaks against is given all the same
 */
record IssueCommand(
    BorrowerId known,
    BorrowerDetails newcomer,
    String guardian,
    Archer archer,
    RigId rig,
    List<ItemAsked> items,
    LocalDate issuedOn,
    LocalDate dueOn,
    Money deposit,
    DepositHow depositHow,
    AgainstAdvice against) {

  /** As typed; empty when something is missing or wrong, which then stands at its field. */
  static Optional<IssueCommand> parse(Typed typed, LendingTerms terms) {
    Optional<Archer> archer = Archer.parse(typed, terms.unit());
    Integer rig = typed.whole("rig", 1, Integer.MAX_VALUE);
    if (!typed.has("rig")) {
      typed.fault("rig", "Which rig goes out?");
    }
    List<ItemAsked> items = ItemAsked.parse(typed);
    Integer known = typed.whole("borrower", 1, Integer.MAX_VALUE);
    Optional<BorrowerDetails> newcomer =
        typed.has("borrower")
            ? Optional.empty()
            : BorrowerDetails.parse(typed, archer.map(Archer::age).orElse(null));
    LocalDate issuedOn = issuedOn(typed, terms);
    LocalDate dueOn = dueOn(typed, terms, issuedOn);
    Money deposit = typed.money("deposit", terms.currency());
    DepositHow how = typed.word("depositHow", DepositHow.class);
    if (deposit != null && deposit.minor() > 0 && how == null) {
      typed.fault("depositHow", "How was the deposit taken?");
    }
    if (!typed.ticked("termsAccepted")) {
      typed.fault("termsAccepted", "Nothing goes out before the borrower accepts the terms.");
    }
    if (!typed.ticked("briefingGiven")) {
      typed.fault(
          "briefingGiven",
          "Nothing goes out before it was shown: the stringer, never loosing without an arrow, and"
              + " how long the arrows must be.");
    }
    AgainstAdvice against = AdviceOverridden.parse(typed);
    String guardian = typed.optional("guardian", BorrowerDetails.LONGEST_CONTACT);
    if (!typed.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        new IssueCommand(
            known == null ? null : new BorrowerId(known),
            newcomer.orElse(null),
            guardian,
            archer.orElseThrow(),
            new RigId(rig),
            items,
            issuedOn,
            dueOn,
            deposit == null ? Money.ZERO : deposit,
            deposit == null || deposit.minor() == 0 ? null : how,
            against));
  }

  private static LocalDate issuedOn(Typed typed, LendingTerms terms) {
    LocalDate issuedOn = typed.has("issuedOn") ? typed.day("issuedOn") : terms.today();
    if (issuedOn != null && issuedOn.isAfter(terms.today())) {
      typed.fault("issuedOn", "That day is still to come.");
    }
    return issuedOn;
  }

  /** Where neither a day nor a number of weeks is said, it is out for as long as is usual. */
  private static LocalDate dueOn(Typed typed, LendingTerms terms, LocalDate issuedOn) {
    LocalDate due = LendingTerms.due(typed, issuedOn);
    if (due == null && issuedOn != null && !typed.has("dueOn") && !typed.has("dueWeeks")) {
      due = terms.usualDue(issuedOn);
    }
    if (due != null && issuedOn != null) {
      if (due.isBefore(issuedOn)) {
        typed.fault("dueOn", "It can't be due before it is issued.");
      } else if (due.isAfter(issuedOn.plusDays(LendingTerms.LONGEST_DAYS))) {
        typed.fault(
            "dueOn", "At most " + LendingTerms.LONGEST_DAYS + " days, please; extend it later.");
      }
    }
    return due;
  }
}
