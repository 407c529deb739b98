package club.ascham.concern;

import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.store.Rows;
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
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What stands against a rig, an item or a loan on any day, as JSON. */
@Path("/api/concerns")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Concerns", description = "What is known that bears on whether a thing may go out")
class ConcernsApi {
  private static final List<String> ASKED_OF = List.of("rig", "item", "loan");

  private static final String EXAMPLE =
      """
      {"on": "2026-05-05", "blocked": true, "concerns": [
        {"weight": "blocks", "matter": "withdrawn", "since": "2026-05-03", "item": "L-0105-D",
         "said": "L-0105-D is withdrawn: crack in the lower limb.",
         "ends": "Until the limb inspection is passed and the permit holder releases it."}]}
      """;

  /**
   * What stood, stands or will stand against a thing, as far as is known now.
   *
   * @param blocked whether something keeps it in
   */
  record Standing(LocalDate on, boolean blocked, List<ConcernJson> concerns) {}

  private final Concerns concerns;
  private final Rows rows;
  private final ClubTime time;

  ConcernsApi(Concerns concerns, Rows rows, ClubTime time) {
    this.concerns = concerns;
    this.rows = rows;
    this.time = time;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(
      summary = "What stands against a rig, an item or a loan on a day",
      description =
          "Exactly one of rig, item and loan. Of a day that is past: as things had happened by its"
              + " end, known now; of a day to come: as far as is known now. Of a loan: against all"
              + " that was out with it on that day.")
  @Parameter(
      name = "rig",
      description = "a rig's id",
      schema = @Schema(type = SchemaType.INTEGER),
      example = "12")
  @Parameter(
      name = "item",
      description = "an item's code",
      schema = @Schema(type = SchemaType.STRING))
  @Parameter(
      name = "loan",
      description = "a loan's id",
      schema = @Schema(type = SchemaType.INTEGER))
  @Parameter(
      name = "on",
      description = "a day; left out: today",
      schema = @Schema(type = SchemaType.STRING, format = "date"))
  @APIResponse(
      responseCode = "200",
      content =
          @Content(
              schema = @Schema(implementation = Standing.class),
              examples = @ExampleObject(name = "a withdrawn pair of limbs", value = EXAMPLE)))
  public Response on(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    List<String> asked = ASKED_OF.stream().filter(typed::has).toList();
    if (asked.size() != 1) {
      (asked.isEmpty() ? Stream.of("rig") : asked.stream())
          .forEach(field -> typed.fault(field, "Exactly one of rig, item and loan, please."));
    }
    LocalDate named = typed.day("on");
    LocalDate on = named == null ? time.today() : named;
    Against against = typed.sound() ? against(asked.get(0), typed, on) : Against.NOTHING;
    return typed.sound()
        ? Response.ok(new Standing(on, against.blocks(), ConcernJson.of(against))).build()
        : Problem.of(typed);
  }

  private Against against(String field, Typed typed, LocalDate on) {
    if (field.equals("item")) {
      ItemCode code = typed.code(field);
      long id = code == null ? 0 : rows.number("SELECT id FROM item WHERE code = ?1", code);
      if (typed.sound() && id == 0) {
        typed.fault(field, "The club has nothing with the code " + code.display() + ".");
      }
      return typed.sound() ? concerns.of(new ItemId(id), on) : Against.NOTHING;
    }
    Integer id = typed.whole(field, 1, Integer.MAX_VALUE);
    if (typed.sound()
        && rows.number("SELECT count(*) FROM %s WHERE id = ?1".formatted(field), id) == 0) {
      typed.fault(field, "There is no %s %d.".formatted(field, id));
    }
    if (!typed.sound()) {
      return Against.NOTHING;
    }
    return field.equals("rig") ? concerns.of(new RigId(id), on) : concerns.of(new LoanId(id), on);
  }
}
