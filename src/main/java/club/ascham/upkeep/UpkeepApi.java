package club.ascham.upkeep;

import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Forms;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Due work as JSON. */
@Path("/api/upkeep")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Upkeep", description = "What has to be done to which item, and by when")
class UpkeepApi {
  /**
   * One piece of work that an item is planned for.
   *
   * @param status {@code overdue}, {@code due-soon} or {@code later}, today
   * @param blocks whether the item stays in once it is overdue
   * @param asked whether a person asked for it out of turn
   * @param rig the code of the body of the rig it is fitted to; null: none
   */
  public record DueJson(
      String code,
      String kind,
      String work,
      LocalDate dueOn,
      String status,
      boolean blocks,
      boolean asked,
      String because,
      String state,
      String rig) {}

  /** One page of due work, the soonest first. */
  public record DuePage(List<DueJson> items, int page, int size, long total) {}

  /**
   * Limbs due on the bow scale.
   *
   * @param lastOn null: never weighed
   * @param dueOn the last day in time
   * @param rig that they sit on; null: none
   */
  record ToWeigh(String code, LocalDate lastOn, LocalDate dueOn, Long rig) {}

  private final DueWork dueWork;
  private final LimbsToWeigh limbsToWeigh;
  private final ClubTime time;

  UpkeepApi(DueWork dueWork, LimbsToWeigh limbsToWeigh, ClubTime time) {
    this.dueWork = dueWork;
    this.limbsToWeigh = limbsToWeigh;
    this.time = time;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Due work, the soonest first")
  @Parameter(
      name = "status",
      description = "overdue, due-soon or later; left out: all",
      example = "overdue")
  @Parameter(name = "kind", description = "riser, limbs, bow, string, stringer or arrows")
  @Parameter(name = "work", description = "bolt-inspection and so on")
  @Parameter(name = "page", description = "from 1", schema = @Schema(type = SchemaType.INTEGER))
  @Parameter(
      name = "size",
      description = "at most 200",
      schema = @Schema(type = SchemaType.INTEGER))
  @APIResponse(
      responseCode = "200",
      content =
          @Content(
              schema = @Schema(implementation = DuePage.class),
              examples =
                  @ExampleObject(
                      name = "overdue",
                      value =
                          "{\"items\": [{\"code\": \"R-0105-6\", \"kind\": \"riser\", \"work\":"
                              + " \"bolt-inspection\", \"dueOn\": \"2026-05-29\", \"status\":"
                              + " \"overdue\", \"blocks\": true, \"asked\": false, \"because\":"
                              + " \"180 days since 30 Nov 2025\", \"state\": \"to-be-checked\","
                              + " \"rig\": \"R-0105-6\"}], \"page\": 1, \"size\": 40, \"total\": 1}")))
  public Response list(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    DueFilter filter = DueFilter.parse(typed);
    if (!typed.sound()) {
      return Problem.of(typed);
    }
    LocalDate today = time.today();
    return Response.ok(
            new DuePage(
                dueWork.page(filter).stream().map(row -> json(row, today)).toList(),
                filter.page(),
                filter.size(),
                dueWork.count(filter)))
        .build();
  }

  @GET
  @Path("/to-weigh")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(
      summary = "Limbs and one-piece bows that are due on the bow scale, the longest overdue first",
      description = "By the club's rule. A reading of /api/rigs/{id}/weight answers it.")
  public List<ToWeigh> toWeigh() {
    return limbsToWeigh.on(time.today()).stream()
        .map(
            due ->
                new ToWeigh(
                    due.code(),
                    due.lastOn(),
                    due.dueOn(),
                    due.rig() == null ? null : due.rig().value()))
        .toList();
  }

  private static DueJson json(DueRow row, LocalDate today) {
    return new DueJson(
        row.code(),
        row.kind().toLowerCase(Locale.ROOT),
        Words.of(row.work()),
        row.dueOn(),
        row.due().on(today).word(),
        row.blocks(),
        row.asked(),
        row.because(),
        row.state().word(),
        row.rigBareCode() == null ? null : new ItemCode(row.rigBareCode()).display());
  }
}
