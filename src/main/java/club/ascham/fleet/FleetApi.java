package club.ascham.fleet;

import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The committee's page as JSON, each figure with the address of its rows. */
@Path("/api/fleet")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
@Tag(name = "fleet")
class FleetApi {
  private final FleetReading reading;
  private final ClubTime time;
  private final Actor actor;

  FleetApi(FleetReading reading, ClubTime time, Actor actor) {
    this.reading = reading;
    this.time = time;
    this.actor = actor;
  }

  @GET
  @Operation(summary = "The fleet's figures: rigs, safety, and what a course next week could use")
  @APIResponse(
      responseCode = "200",
      description = "Each figure with the address of exactly the rows it counts",
      content =
          @Content(
              schema = @Schema(implementation = FleetJson.class),
              examples = @ExampleObject(name = "a club of four rigs", value = FleetJson.EXAMPLE)))
  public FleetJson fleet() {
    return FleetJson.of(reading.fleet(time.today()));
  }

  @GET
  @Path("/rows")
  @Operation(summary = "The rows that one figure counts")
  @Parameter(
      name = "list",
      in = ParameterIn.QUERY,
      required = true,
      description =
          "rigs, loans-overdue, inspections-overdue, strings-due, withdrawals, ask-back or trouble",
      schema = @Schema(type = SchemaType.STRING),
      example = "rigs")
  @Parameter(
      name = "state",
      in = ParameterIn.QUERY,
      description =
          "Narrows the rigs, as do hand, length, weight, course and because: take them from a"
              + " figure's rows",
      schema = @Schema(type = SchemaType.STRING),
      example = "ready")
  @APIResponse(
      responseCode = "200",
      description = "All rows of the list; who has a loan is not told to the committee",
      content =
          @Content(
              schema = @Schema(implementation = RowsJson.class),
              examples = @ExampleObject(name = "one ready rig", value = RowsJson.EXAMPLE)))
  public RowsJson rows(@Context UriInfo address) {
    return RowsJson.of(FleetPages.rowsAt(address, reading, time.today(), actor.role()));
  }
}
