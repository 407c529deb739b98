package club.ascham.rig;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.web.Forms;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Rigs as JSON. */
@Path("/api/rigs")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Rigs", description = "Parts put together as one bow, and its set-up")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class RigApi {
  private final RigRecords records;
  private final RigAnswers rigs;
  private final Concerns concerns;

  RigApi(RigRecords records, RigAnswers rigs, Concerns concerns) {
    this.records = records;
    this.rigs = rigs;
    this.concerns = concerns;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Assembled rigs, by the code of their body, with what stands against each")
  @Parameter(name = "state", example = "ready")
  @Parameter(name = "hand", example = "left")
  @Parameter(name = "bowLength", description = "in inches", example = "66")
  @Parameter(name = "fromLb", description = "least marked weight in lbf", example = "18")
  @Parameter(name = "toLb", description = "most marked weight in lbf", example = "24")
  public Response list(
      @Context UriInfo uri,
      @RestQuery @DefaultValue("1") int page,
      @RestQuery @DefaultValue("40") int size) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    RigFilter filter = RigFilter.parse(typed);
    if (!typed.sound()) {
      return Problem.of(typed);
    }
    PageAsked asked = PageAsked.nearest(page, size);
    List<RigRow> meant = filter.of(records.all());
    List<RigRow> shown = meant.stream().skip(asked.skipped()).limit(asked.size()).toList();
    Map<RigId, Against> against =
        concerns.ofRigs(shown.stream().map(row -> row.card().id()).toList());
    return Response.ok(
            new RigJson.Page(
                shown.stream()
                    .map(row -> RigJson.Line.of(row, against.get(row.card().id())))
                    .toList(),
                asked.page(),
                asked.size(),
                meant.size()))
        .build();
  }

  @GET
  @Path("/{id}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "One rig: parts, state, set-up figures and what they should be")
  public RigJson.Whole one(@RestPath RigId id) {
    return rigs.whole(id);
  }
}
