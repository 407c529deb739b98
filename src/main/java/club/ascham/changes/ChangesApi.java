package club.ascham.changes;

import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.loan.Lending;
import club.ascham.loan.LoanAnswers;
import club.ascham.loan.LoanSheet;
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
import org.jboss.resteasy.reactive.RestPath;

/** What is done to a loan while it is out, by programs. */
@Path("/api/loans")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Loans")
@RolesAllowed(Role.OFFICERS)
class ChangesApi {
  /**
   * A loan to go on.
   *
   * @param dueWeeks from the day it is due, of what is late from today; a {@code dueOn} counts
   *     instead
   * @param version to notice that someone changed it first
   */
  record ExtendBody(
      String dueOn,
      Integer dueWeeks,
      String drawLength,
      Boolean drawEstimated,
      String armSpan,
      String overrideWhy,
      String overrideCoach,
      Integer version,
      String onceKey) {}

  /** The line handed back, the item given out, or both. */
  record ChangeBody(
      Long line,
      Integer countBack,
      String item,
      Integer count,
      String overrideWhy,
      String onceKey) {}

  /** Lines that are lost, by their numbers. */
  record LostBody(List<Long> lines, String words, String depositBack, String onceKey) {
    Typed typed() {
      Typed typed = Typed.of(this);
      if (lines != null) {
        lines.forEach(line -> typed.with("line-" + line, "on"));
      }
      return typed;
    }
  }

  private final ExtendLoan extendLoan;
  private final ChangeKit changeKit;
  private final ReportLost reportLost;
  private final Lending lending;
  private final Actor actor;
  private final LoanAnswers loans;

  ChangesApi(
      ExtendLoan extendLoan,
      ChangeKit changeKit,
      ReportLost reportLost,
      Lending lending,
      Actor actor,
      LoanAnswers loans) {
    this.extendLoan = extendLoan;
    this.changeKit = changeKit;
    this.reportLost = reportLost;
    this.lending = lending;
    this.actor = actor;
    this.loans = loans;
  }

  @POST
  @Path("/{id}/extend")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Let a loan go on; a junior's draw length is asked again",
      description =
          "What keeps something of it in refuses. What speaks against it, and did not when the loan"
              + " was given with a reason, needs overrideWhy.")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "a junior",
                      value = "{\"dueOn\": \"2026-08-04\", \"drawLength\": \"24 1/2 in\"}")))
  public Response extend(@RestPath LoanId id, ExtendBody body) {
    LoanSheet sheet = loans.known(id);
    Typed typed = Typed.of(body);
    return loans.answer(
        body,
        typed,
        200,
        () ->
            ExtendCommand.parse(sheet.id(), sheet.dueOn(), sheet.isJunior(), typed, lending.terms())
                .map(command -> extendLoan.extend(command, actor.id())));
  }

  @POST
  @Path("/{id}/items")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Give out one more thing, take one back, or exchange one for the other")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "longer arrows for shorter ones",
                      value = "{\"line\": 4711, \"item\": \"A-0054-M\"}")))
  public Response change(@RestPath LoanId id, ChangeBody body) {
    LoanSheet sheet = loans.known(id);
    Typed typed = Typed.of(body);
    return loans.answer(
        body,
        typed,
        200,
        () ->
            ChangeKitCommand.parse(sheet.id(), typed)
                .map(command -> changeKit.change(command, actor.id())));
  }

  @POST
  @Path("/{id}/lost")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Report lines lost; what is lost is retired, the loan stays open for the rest")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "a tab",
                      value = "{\"lines\": [4711], \"words\": \"left on the train\"}")))
  public Response lost(@RestPath LoanId id, LostBody body) {
    LoanSheet sheet = loans.known(id);
    Typed typed = body == null ? Typed.nothing() : body.typed();
    return loans.answer(
        body,
        typed,
        200,
        () ->
            LostCommand.parse(sheet.id(), typed, lending.terms())
                .map(command -> reportLost.report(command, actor.id())));
  }
}
