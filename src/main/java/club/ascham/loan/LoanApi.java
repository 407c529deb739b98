package club.ascham.loan;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.web.Forms;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** Loans as JSON; the committee gets them without names. */
@Path("/api/loans")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Loans", description = "Issue a kit, extend it, change what is out, report a loss")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class LoanApi {
  private final Loans loans;
  private final LoanAnswers answers;
  private final Lending lending;
  private final Concerns concerns;
  private final Actor actor;

  LoanApi(Loans loans, LoanAnswers answers, Lending lending, Concerns concerns, Actor actor) {
    this.loans = loans;
    this.answers = answers;
    this.lending = lending;
    this.concerns = concerns;
    this.actor = actor;
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
    return answers.whole(id);
  }
}
