package club.ascham.register;

import club.ascham.people.Role;
import club.ascham.register.ItemJson.RiserJson;
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

/** The club's risers as JSON. */
@Path("/api/risers")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Risers", description = "The handle parts that limbs are fitted to")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class RisersApi {
  private static final String LIST = "risers";
  private static final ItemDesk.Shape<RiserJson> SHAPE = RiserJson::of;

  private final ItemDesk desk;

  RisersApi(ItemDesk desk) {
    this.desk = desk;
  }

  /** A page of them. */
  record RiserPage(List<RiserJson> items, int page, int size, long total) {}

  @GET
  @Operation(summary = "Risers in use, by code", description = ItemWords.LIST)
  @APIResponseSchema(RiserPage.class)
  public Response list(@Context UriInfo uri) {
    return desk.list(LIST, uri.getQueryParameters(), SHAPE);
  }

  @GET
  @Path("/{code}")
  @Operation(summary = "One riser")
  public RiserJson one(@Parameter(example = "R-0101-E") @RestPath String code) {
    return desk.one(LIST, code, SHAPE);
  }

  @POST
  @RolesAllowed(Role.OFFICERS)
  @Operation(summary = "Register a riser; its code is given", description = ItemWords.ADD)
  @RequestBody(
      content =
          @Content(
              schema = @Schema(implementation = RiserJson.class),
              examples =
                  @ExampleObject(
                      name = "a riser",
                      value =
                          "{\"build\": \"adjustable\", \"hand\": \"right\", \"lengthIn\": 25, \"limbFitting\": \"ILF\", \"maxTurnsOut\": 4, \"maker\": \"Alderfen\", \"model\": \"Fenlight 25\", \"boughtOn\": \"2026-03-15\", \"price\": \"139.00\"}")))
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
              schema = @Schema(implementation = RiserJson.class),
              examples =
                  @ExampleObject(
                      name = "another maker, read as version 0",
                      value =
                          "{\"version\": 0, \"build\": \"adjustable\", \"hand\": \"right\", \"lengthIn\": 25, \"limbFitting\": \"ILF\", \"maker\": \"Kestrow\"}")))
  @APIResponseSchema(RiserJson.class)
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
  @APIResponseSchema(RiserJson.class)
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
