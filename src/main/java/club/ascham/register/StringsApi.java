package club.ascham.register;

import club.ascham.people.Role;
import club.ascham.register.ItemJson.StringJson;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** The club's strings as JSON. */
@Path("/api/strings")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Strings", description = "The bow length a string is made for, and its own length")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class StringsApi {
  private static final String LIST = "strings";
  private static final ItemDesk.Shape<StringJson> SHAPE = StringJson::of;

  private final ItemDesk desk;

  StringsApi(ItemDesk desk) {
    this.desk = desk;
  }

  /** A page of them. */
  record StringsPage(List<StringJson> items, int page, int size, long total) {}

  @GET
  @Operation(summary = "Strings in use, by code", description = ItemWords.LIST)
  @APIResponseSchema(StringsPage.class)
  public Response list(@Context UriInfo uri) {
    return desk.list(LIST, uri.getQueryParameters(), SHAPE);
  }

  @GET
  @Path("/{code}")
  @Operation(summary = "One string")
  public StringJson one(@Parameter(example = "S-0201-B") @RestPath String code) {
    return desk.one(LIST, code, SHAPE);
  }

  @POST
  @RolesAllowed(Role.OFFICERS)
  @Operation(summary = "Register a string; its code is given", description = ItemWords.ADD)
  @RequestBody(
      content =
          @Content(
              schema = @Schema(implementation = StringJson.class),
              examples =
                  @ExampleObject(
                      name = "a string",
                      value =
                          "{\"forBowIn\": 68, \"measuredLength\": \"1647 mm\", \"material\": \"hmpe\", \"strands\": 16, \"strandDiameter\": \"0.45 mm\", \"maker\": \"Marlwick\", \"model\": \"Longline\", \"batch\": \"M07-2026\"}")))
  @APIResponse(responseCode = "201", description = "Registered")
  public Response add(Map<String, Object> body) {
    return desk.add(LIST, body, SHAPE);
  }

  @POST
  @Path("/{code}/like-this")
  @RolesAllowed(Role.OFFICERS)
  @Operation(summary = "Register more like this one", description = ItemWords.LIKE_THIS)
  @RequestBody(
      content =
          @Content(examples = @ExampleObject(name = "twelve more", value = "{\"copies\": 12}")))
  @APIResponse(responseCode = "201", description = "Registered, each under its own code")
  public Response likeThis(@RestPath String code, Map<String, Object> body) {
    return desk.likeThis(LIST, code, body, SHAPE);
  }

  @PUT
  @Path("/{code}")
  @RolesAllowed(Role.OFFICERS)
  @Operation(
      summary = "Put new details in the place of the old ones",
      description = ItemWords.CHANGE)
  @RequestBody(
      content =
          @Content(
              schema = @Schema(implementation = StringJson.class),
              examples =
                  @ExampleObject(
                      name = "twists counted",
                      value =
                          "{\"version\": 0, \"forBowIn\": 68, \"material\": \"hmpe\", \"strands\": 16, \"twists\": 20}")))
  @APIResponseSchema(StringJson.class)
  public Response change(@RestPath String code, Map<String, Object> body) {
    return desk.change(LIST, code, body, SHAPE);
  }

  @POST
  @Path("/{code}/retire")
  @RolesAllowed(Role.OFFICERS)
  @Operation(summary = "Retire it: scrapped, sold or lost", description = ItemWords.RETIRE)
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "lost",
                      value = "{\"why\": \"lost\", \"note\": \"not in its place since May\"}")))
  @APIResponseSchema(StringJson.class)
  public Response retire(@RestPath String code, Map<String, Object> body) {
    return desk.retire(LIST, code, body, SHAPE);
  }

  @POST
  @Path("/{code}/found")
  @RolesAllowed(Role.OFFICERS)
  @Operation(
      summary = "Found again: no longer retired, and how it came back",
      description = ItemWords.FOUND)
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "in the shed",
                      value = "{\"why\": \"It lay behind the nets in the shed.\"}")))
  public Response found(@RestPath String code, Map<String, Object> body) {
    return desk.found(LIST, code, body, SHAPE);
  }
}
