package club.ascham.loan;

import club.ascham.askback.AskBack;
import club.ascham.askback.Asked;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.people.Actor;
import club.ascham.web.Presses;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What a call about a loan is answered with: the loan in full, as it stands afterwards. */
@ApplicationScoped
public class LoanAnswers {
  private final Loans loans;
  private final LoanLines lines;
  private final AskBack askBack;
  private final Concerns concerns;
  private final LentAdvice lentAdvice;
  private final Lending lending;
  private final Actor actor;
  private final Presses presses;

  LoanAnswers(
      Loans loans,
      LoanLines lines,
      AskBack askBack,
      Concerns concerns,
      LentAdvice lentAdvice,
      Lending lending,
      Actor actor,
      Presses presses) {
    this.loans = loans;
    this.lines = lines;
    this.askBack = askBack;
    this.concerns = concerns;
    this.lentAdvice = lentAdvice;
    this.lending = lending;
    this.actor = actor;
    this.presses = presses;
  }

  LoanJson.Loan whole(LoanId id) {
    LoanSheet sheet = loans.known(id);
    List<LoanLine> all = lines.of(sheet.id());
    return LoanJson.Loan.of(
        sheet,
        askBack.of(sheet.id()).map(Asked::things).orElse(List.of()),
        all,
        concerns.of(sheet.id()),
        lentAdvice.of(sheet, all),
        concerns.whenLent(sheet.id()),
        actor.seesNames(),
        lending.currency());
  }

  public LoanSheet known(LoanId id) {
    return loans.known(id);
  }

  /**
   * @param work empty: what was typed can't be read
   */
  public Response answer(
      Record body, Typed typed, int status, Supplier<Optional<Outcome<LoanId>>> work) {
    return presses
        .body(body, typed, LoanId::new)
        .at(loan -> "/api/loans/" + loan.value())
        .json(status, () -> work.get().orElseGet(Outcome::unread), this::whole);
  }
}
