package club.ascham.planning;

import club.ascham.Settings;
import club.ascham.form.Typed;
import club.ascham.people.Role;
import club.ascham.plan.Plan;
import club.ascham.time.ClubTime;
import club.ascham.web.Forms;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Duration;
import java.util.Currency;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** The plan as JSON. */
@Path("/api/plan")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({Role.OFFICERS, Role.COMMITTEES})
@Tag(name = "plan")
class PlanApi {
  private static final Duration PATIENCE = Duration.ofSeconds(2);

  private final PlanDesk desk;
  private final Insurance insurance;
  private final ClubTime time;
  private final Currency currency;

  PlanApi(PlanDesk desk, Insurance insurance, ClubTime time, Settings settings) {
    this.desk = desk;
    this.insurance = insurance;
    this.time = time;
    this.currency = Currency.getInstance(settings.currency());
  }

  /** How far a plan is. */
  record Reckoning(long run, int reckoned, int of) {}

  @GET
  @Operation(summary = "The plan of the next 24 months, as things stand or under a what-if")
  @Parameter(
      name = "courses",
      in = ParameterIn.QUERY,
      description =
          "More courses a term; likewise: dearer (a kind) with percent, work with days,"
              + " hours (a week), seed",
      schema = @Schema(type = SchemaType.INTEGER),
      example = "1")
  @APIResponse(
      responseCode = "200",
      description =
          "Money in minor units, work in minutes; half of all courses end between low50 and high50,"
              + " nine in ten between low90 and high90",
      content =
          @Content(
              schema = @Schema(implementation = PlanJson.class),
              examples = @ExampleObject(name = "the form", value = PlanJson.EXAMPLE)))
  @APIResponse(responseCode = "202", description = "Still being reckoned: ask again")
  @APIResponse(responseCode = "422", description = "Something asked can't be read")
  public Response plan(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    Optional<WhatIf> asked = WhatIf.parse(typed);
    if (asked.isEmpty()) {
      return Problem.of(typed);
    }
    PlanRun run = desk.ask(asked.get());
    Optional<Plan> plan = run.within(PATIENCE);
    return plan.isPresent()
        ? Response.ok(PlanJson.of(plan.get(), currency.getCurrencyCode())).build()
        : Response.accepted(new Reckoning(run.number(), run.done(), WhatIf.REPLICATIONS))
            .header("Retry-After", 1)
            .build();
  }

  @POST
  @Path("/stop/{run}")
  @Operation(summary = "Stop reckoning a plan; one that is done is only forgotten")
  @APIResponse(responseCode = "204", description = "Nobody reckons it any more")
  public Response stop(@RestPath String run) {
    if (run.matches("\\d{1,18}")) {
      desk.stop(Long.parseLong(run));
    }
    return Response.noContent().build();
  }

  @GET
  @Path("/insurance")
  @Operation(summary = "What the bows are worth: paid, written down, and new")
  @APIResponse(
      responseCode = "200",
      description = "By kind, with every item",
      content = @Content(schema = @Schema(implementation = InsuranceList.class)))
  public InsuranceList insurance() {
    return insurance.list(time.today(), new Amounts(currency));
  }
}
