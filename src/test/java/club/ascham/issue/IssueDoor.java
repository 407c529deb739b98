package club.ascham.issue;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.loan.Lending;
import club.ascham.people.Actor;
import jakarta.inject.Singleton;
import java.util.Map;

/** Issues kits by what the form asks. */
@Singleton
public class IssueDoor {
  private final IssueKit issueKit;
  private final Lending lending;
  private final Actor actor;

  IssueDoor(IssueKit issueKit, Lending lending, Actor actor) {
    this.issueKit = issueKit;
    this.lending = lending;
    this.actor = actor;
  }

  public Outcome<LoanId> issue(Map<String, String> form) {
    Typed typed = Typed.of(form);
    return IssueCommand.parse(typed, lending.terms())
        .map(command -> issueKit.issue(command, actor.id()))
        .orElseThrow(() -> new IllegalArgumentException(typed.faults().toString()));
  }
}
