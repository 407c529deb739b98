package club.ascham.issue;

import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.ArrowMass;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.loan.Archer;
import club.ascham.loan.DueChoice;
import club.ascham.loan.ItemRules;
import club.ascham.loan.Lending;
import club.ascham.loan.Loans;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.units.LengthUnit;
import club.ascham.units.Money;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Optional;

/** Which bow suits this person, and what goes with it? */
@Path("/issue")
@RolesAllowed(Role.OFFICERS)
class IssuePages {
  @CheckedTemplate(basePath = "issue", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record IssuePage(
      IssueView view,
      Typed typed,
      String unit,
      List<DueChoice> dues,
      String dueWeeks,
      String deposit,
      String depositHow,
      String arrowMass,
      List<String> terms,
      int faults)
      implements TemplateInstance {}

  private final IssueDesk desk;
  private final IssueKit issueKit;
  private final Lending lending;
  private final Actor actor;
  private final Presses presses;

  IssuePages(IssueDesk desk, IssueKit issueKit, Lending lending, Actor actor, Presses presses) {
    this.desk = desk;
    this.issueKit = issueKit;
    this.lending = lending;
    this.actor = actor;
    this.presses = presses;
  }

  @GET
  public Response fit(UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    // The form always sends this field, filled or not; a link that only knows the borrower does
    // not.
    boolean asked = uri.getQueryParameters().containsKey("drawLength") || typed.has("armSpan");
    Optional<Archer> archer =
        asked ? Archer.parse(typed, lending.terms().unit()) : Optional.empty();
    if (!asked) {
      desk.answerAsLastTime(typed);
    }
    IssuePage page = page(typed, archer.orElse(null));
    return typed.sound() ? Response.ok(page).build() : Go.again(page);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response issue(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, LoanId::new, Loans::page)
        .whole("rig")
        .page(
            () ->
                IssueCommand.parse(typed, lending.terms())
                    .map(command -> issueKit.issue(command, actor.id()))
                    .orElseGet(Outcome::unread),
            () ->
                page(
                    typed,
                    Archer.parse(Typed.of(typed.all()), lending.terms().unit()).orElse(null)));
  }

  private IssuePage page(Typed typed, Archer archer) {
    boolean posted = typed.has("once-key");
    Money deposit = lending.usualDeposit();
    IssueView view = desk.view(typed, archer, lending.terms().today());
    if (posted && view.needsReason() && !typed.has("overrideWhy")) {
      typed.fault("overrideWhy", ItemRules.SAY_WHY.strip());
    }
    if (posted && view.needsCoach() && !typed.has(AgainstAdvice.COACH)) {
      typed.fault(AgainstAdvice.COACH, AgainstAdvice.WHICH_COACH);
    }
    return new IssuePage(
        view,
        typed,
        lending.terms().unit() == LengthUnit.INCH ? "in" : "mm",
        lending.terms().dues(),
        posted ? typed.value("dueWeeks") : lending.terms().usualWeeks(),
        posted ? typed.value("deposit") : deposit.plain(lending.currency()),
        posted ? typed.value("depositHow") : deposit.minor() > 0 ? "cash" : "",
        ArrowMass.BASIS,
        lending.termLines(),
        typed.faults().size());
  }
}
