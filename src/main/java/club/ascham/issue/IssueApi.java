package club.ascham.issue;

import club.ascham.form.Typed;
import club.ascham.loan.ItemBody;
import club.ascham.loan.Lending;
import club.ascham.loan.LoanAnswers;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Issuing a kit, by programs. */
@Path("/api/loans")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Loans")
@RolesAllowed(Role.OFFICERS)
class IssueApi {
  /**
   * A kit to be issued: either {@code borrower}, or name and contact.
   *
   * @param dueWeeks from the day it is handed over; a {@code dueOn} counts instead
   * @param briefingGiven stringer, never loosing without an arrow and arrow length were shown
   */
  record IssueBody(
      Long borrower,
      String name,
      String contact,
      String memberNo,
      String guardian,
      String hand,
      String dominantEye,
      String drawLength,
      Boolean drawEstimated,
      String armSpan,
      String ageBand,
      String experience,
      Long rig,
      List<ItemBody> items,
      String issuedOn,
      String dueOn,
      Integer dueWeeks,
      String deposit,
      String depositHow,
      Boolean termsAccepted,
      Boolean briefingGiven,
      String overrideWhy,
      String overrideCoach,
      String onceKey) {
    Typed typed() {
      Typed typed = Typed.of(this);
      ItemBody.into(typed, items);
      return typed;
    }
  }

  private static final String ISSUE =
      """
      {"name": "Nell Harker", "contact": "07700 900417", "hand": "right", "dominantEye": "right",
       "drawLength": "27 in", "ageBand": "adult", "experience": "beginner", "rig": 12,
       "items": [{"code": "K-0021-7"}, {"code": "A-0099-C", "count": 6}],
       "dueWeeks": 6, "deposit": "20.00", "depositHow": "cash", "termsAccepted": true,
       "briefingGiven": true, "onceKey": "a5b1"}\
      """;

  private final IssueKit issueKit;
  private final Lending lending;
  private final Actor actor;
  private final LoanAnswers loans;

  IssueApi(IssueKit issueKit, Lending lending, Actor actor, LoanAnswers loans) {
    this.issueKit = issueKit;
    this.lending = lending;
    this.actor = actor;
    this.loans = loans;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Issue a kit",
      description =
          "To a new borrower (name, contact) or a known one (borrower). Arrows shorter than the"
              + " shortest safe one or lighter than 5 grains to the pound at the high end of the"
              + " rig's weight, a rig that is not ready and a wrong hand are refused; a weight"
              + " above the archer's ceiling needs overrideWhy and overrideCoach, the coach who"
              + " agreed; more than 4 lb above the end of the course is refused to a junior"
              + " beginner. Nothing goes out before the borrower accepted the terms and was"
              + " shown how to handle it.")
  @RequestBody(content = @Content(examples = @ExampleObject(name = "a beginner", value = ISSUE)))
  public Response issue(IssueBody body) {
    Typed typed = body == null ? Typed.nothing() : body.typed();
    return loans.answer(
        body,
        typed,
        201,
        () ->
            IssueCommand.parse(typed, lending.terms())
                .map(command -> issueKit.issue(command, actor.id())));
  }
}
