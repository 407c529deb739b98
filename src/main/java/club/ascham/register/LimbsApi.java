package club.ascham.register;

import club.ascham.people.Role;
import club.ascham.register.ItemJson.LimbsJson;
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

/** The club's pairs of limbs as JSON. */
@Path("/api/limbs")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Limbs", description = "Matched pairs, upper and lower")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class LimbsApi {
  private static final String LIST = "limbs";
  private static final ItemDesk.Shape<LimbsJson> SHAPE = LimbsJson::of;

  private final ItemDesk desk;

  LimbsApi(ItemDesk desk) {
    this.desk = desk;
  }

  /** A page of them. */
  record LimbsPage(List<LimbsJson> items, int page, int size, long total) {}

  @GET
  @Operation(summary = "Pairs of limbs in use, by code", description = ItemWords.LIST)
  @APIResponseSchema(LimbsPage.class)
  public Response list(@Context UriInfo uri) {
    return desk.list(LIST, uri.getQueryParameters(), SHAPE);
  }

  @GET
  @Path("/{code}")
  @Operation(summary = "One pair of limbs")
  public LimbsJson one(@Parameter(example = "L-0101-L") @RestPath String code) {
    return desk.one(LIST, code, SHAPE);
  }

  @POST
  @RolesAllowed(Role.OFFICERS)
  @Operation(summary = "Register a pair of limbs; its code is given", description = ItemWords.ADD)
  @RequestBody(
      content =
          @Content(
              schema = @Schema(implementation = LimbsJson.class),
              examples =
                  @ExampleObject(
                      name = "a pair of limbs",
                      value =
                          "{\"build\": \"adjustable\", \"size\": \"medium\", \"markedLb\": 22, \"markedRiserIn\": 25, \"limbFitting\": \"ILF\", \"hmpeTips\": \"yes\", \"maker\": \"Alderfen\", \"model\": \"Sedge\", \"serialUpper\": \"A22303U\", \"serialLower\": \"A22303L\"}")))
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
              schema = @Schema(implementation = LimbsJson.class),
              examples =
                  @ExampleObject(
                      name = "marked weight corrected",
                      value =
                          "{\"version\": 0, \"build\": \"adjustable\", \"size\": \"medium\", \"markedLb\": 24, \"limbFitting\": \"ILF\"}")))
  @APIResponseSchema(LimbsJson.class)
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
  @APIResponseSchema(LimbsJson.class)
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
