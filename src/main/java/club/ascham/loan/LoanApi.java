package club.ascham.loan;

import club.ascham.askback.AskBack;
import club.ascham.askback.Asked;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** Loans as JSON; the committee gets them without names. */
@Path("/api/loans")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Loans", description = "Issue a kit, extend it, change what is out, report a loss")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class LoanApi {
  private static final String ISSUE =
      """
      {"name": "Nell Harker", "contact": "07700 900417", "hand": "right", "dominantEye": "right",
       "drawLength": "27 in", "ageBand": "adult", "experience": "beginner", "rig": 12,
       "items": [{"code": "K-0021-7"}, {"code": "A-0099-C", "count": 6}],
       "dueWeeks": 6, "deposit": "20.00", "depositHow": "cash", "termsAccepted": true,
       "briefingGiven": true, "onceKey": "a5b1"}\
      """;

  private final Loans loans;
  private final LoanLines lines;
  private final AskBack askBack;
  private final IssueKit issueKit;
  private final ExtendLoan extendLoan;
  private final ChangeKit changeKit;
  private final ReportLost reportLost;
  private final Lending lending;
  private final Concerns concerns;
  private final LentAdvice lentAdvice;
  private final Actor actor;
  private final Presses presses;

  LoanApi(
      Loans loans,
      LoanLines lines,
      AskBack askBack,
      IssueKit issueKit,
      ExtendLoan extendLoan,
      ChangeKit changeKit,
      ReportLost reportLost,
      Lending lending,
      Concerns concerns,
      LentAdvice lentAdvice,
      Actor actor,
      Presses presses) {
    this.loans = loans;
    this.lines = lines;
    this.askBack = askBack;
    this.issueKit = issueKit;
    this.extendLoan = extendLoan;
    this.changeKit = changeKit;
    this.reportLost = reportLost;
    this.lending = lending;
    this.concerns = concerns;
    this.lentAdvice = lentAdvice;
    this.actor = actor;
    this.presses = presses;
  }

  @GET
  @Operation(summary = "Loans, as they fall due; closed ones newest first")
  @Parameter(
      name = "show",
      in = ParameterIn.QUERY,
      description = "open (default), overdue, closed or all",
      schema = @Schema(type = SchemaType.STRING))
  @Parameter(name = "kind", in = ParameterIn.QUERY, description = "kit or session")
  @Parameter(name = "q", in = ParameterIn.QUERY, description = "part of a name, or of a code")
  @Parameter(name = "borrower", in = ParameterIn.QUERY, description = "a borrower's id")
  @Parameter(name = "page", in = ParameterIn.QUERY, description = "from 1")
  @Parameter(name = "size", in = ParameterIn.QUERY, description = "up to 200; 40 unless said")
  public Response list(UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    LoanFilter asked = LoanFilter.parse(typed);
    if (!typed.sound()) {
      return Problem.of(typed);
    }
    LoanFilter filter = actor.seesNames() ? asked : asked.withoutText();
    LocalDate today = lending.terms().today();
    List<LoanRow> found = loans.list(filter, today);
    Map<LoanId, Against> against =
        concerns.ofLoans(found.stream().map(LoanRow::id).toList(), today);
    List<LoanJson.Line> items =
        found.stream()
            .map(row -> LoanJson.Line.of(row, against.get(row.id()), actor.seesNames(), today))
            .toList();
    return Response.ok(
            new LoanJson.Page(items, filter.page(), filter.size(), loans.count(filter, today)))
        .build();
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One loan with its lines")
  public LoanJson.Loan one(@RestPath LoanId id) {
    LoanSheet sheet = sheet(id);
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

  @POST
  @RolesAllowed(Role.OFFICERS)
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
  public Response issue(LoanJson.IssueBody body) {
    Typed typed = body == null ? Typed.nothing() : body.typed();
    return answer(
        body,
        typed,
        201,
        () ->
            IssueCommand.parse(typed, lending.terms())
                .map(command -> issueKit.issue(command, actor.id())));
  }

  @POST
  @Path("/{id}/extend")
  @RolesAllowed(Role.OFFICERS)
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
  public Response extend(@RestPath LoanId id, LoanJson.ExtendBody body) {
    LoanSheet sheet = sheet(id);
    Typed typed = Typed.of(body);
    return answer(
        body,
        typed,
        200,
        () ->
            ExtendCommand.parse(sheet.id(), sheet.dueOn(), sheet.isJunior(), typed, lending.terms())
                .map(command -> extendLoan.extend(command, actor.id())));
  }

  @POST
  @Path("/{id}/items")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Give out one more thing, take one back, or exchange one for the other")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "longer arrows for shorter ones",
                      value = "{\"line\": 4711, \"item\": \"A-0054-M\"}")))
  public Response change(@RestPath LoanId id, LoanJson.ChangeBody body) {
    LoanSheet sheet = sheet(id);
    Typed typed = Typed.of(body);
    return answer(
        body,
        typed,
        200,
        () ->
            ChangeKitCommand.parse(sheet.id(), typed)
                .map(command -> changeKit.change(command, actor.id())));
  }

  @POST
  @Path("/{id}/lost")
  @RolesAllowed(Role.OFFICERS)
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
  public Response lost(@RestPath LoanId id, LoanJson.LostBody body) {
    LoanSheet sheet = sheet(id);
    Typed typed = body == null ? Typed.nothing() : body.typed();
    return answer(
        body,
        typed,
        200,
        () ->
            LostCommand.parse(sheet.id(), typed, lending.terms())
                .map(command -> reportLost.report(command, actor.id())));
  }

  /**
   * @param work empty: what was typed can't be read
   */
  private Response answer(
      Record body, Typed typed, int status, Supplier<Optional<Outcome<LoanId>>> work) {
    return presses
        .body(body, typed, LoanId::new)
        .at(loan -> "/api/loans/" + loan.value())
        .json(status, () -> work.get().orElseGet(Outcome::unread), this::one);
  }

  private LoanSheet sheet(LoanId id) {
    return loans
        .sheet(id)
        .orElseThrow(() -> new NoSuchThing("There is no loan " + id.value() + "."));
  }
}
