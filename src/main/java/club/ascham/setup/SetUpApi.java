package club.ascham.setup;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.rig.RigAnswers;
import club.ascham.rig.RigCard;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** Set-ups of rigs, by programs. */
@Path("/api/rigs")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Rigs")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class SetUpApi {
  /** What was done and measured; what is left out stays as it is. */
  record EntryBody(
      String stepsDone,
      String brace,
      String braceFrom,
      String tillerUpper,
      String tillerLower,
      String nocking,
      Boolean screwsSeen,
      Double turnsUpper,
      Double turnsLower,
      Integer twists,
      Integer version,
      String onceKey) {}

  private final SetUpWork work;
  private final Actor actor;
  private final RigAnswers rigs;

  SetUpApi(SetUpWork work, Actor actor, RigAnswers rigs) {
    this.work = work;
    this.actor = actor;
    this.rigs = rigs;
  }

  @POST
  @Path("/{id}/set-ups")
  @Operation(summary = "Begin a set-up, or go on with the one that is open")
  public Response begin(@RestPath RigId id) {
    RigCard card = rigs.known(id).card();
    return rigs.answer(null, Typed.nothing(), 200, () -> work.begin(card.id()));
  }

  @PUT
  @Path("/{id}/set-ups/current")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Write down what was done and measured",
      description =
          "What is left out stays as it is. stepsDone names steps of the sheet, or all; each needs"
              + " those before it. Lengths may name their unit; else the account's holds.")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "everything at once",
                      value =
                          "{\"stepsDone\": \"all\", \"brace\": \"8 1/2 in\", \"braceFrom\":"
                              + " \"grip-throat\", \"tillerUpper\": \"190 mm\", \"tillerLower\":"
                              + " \"186 mm\", \"nocking\": \"4 mm\", \"screwsSeen\": true,"
                              + " \"twists\": 24}")))
  public Response write(@RestPath RigId id, EntryBody body) {
    Typed typed = RigAnswers.typed(body);
    RigCard card = rigs.known(id).card();
    return rigs.answer(
        body,
        typed,
        200,
        () -> {
          SetUpEntry entry = SetUpEntry.parse(typed, actor.unit(), card.sheet());
          var version = typed.version();
          return typed.sound() ? work.write(card.id(), entry, version) : Outcome.unread();
        });
  }

  @POST
  @Path("/{id}/set-ups/current/finish")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Finish the set-up: its figures hold",
      description =
          "Refused while a figure or a step is missing, or a figure lies beyond its outer band.")
  @RequestBody(content = @Content(examples = @ExampleObject(name = "finish", value = "{}")))
  public Response finish(@RestPath RigId id, RigAnswers.PressBody body) {
    Typed typed = Typed.of(body);
    RigCard card = rigs.known(id).card();
    return rigs.answer(
        body,
        typed,
        200,
        () -> {
          var version = typed.version();
          return typed.sound() ? work.finish(card.id(), version) : Outcome.unread();
        });
  }
}
