package club.ascham.assembly;

import club.ascham.bow.AgainstAdvice;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.rig.AdviceOverridden;
import club.ascham.rig.RigAnswers;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
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

/** Rigs put together, changed and taken apart, by programs. */
@Path("/api/rigs")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Rigs")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class AssemblyApi {
  /**
   * The parts of a rig by their codes, and how it is shot.
   *
   * @param on the day it was done; left out: now
   */
  record AssemblyBody(
      String body,
      String limbs,
      String string,
      String style,
      String level,
      String on,
      String onceKey) {}

  /**
   * All the parts that a rig is to have afterwards; one left out comes off.
   *
   * @param on the day it was done; left out: now
   * @param overrideWhy why a bow that is out gets heavier than its archer's ceiling
   * @param overrideCoach who agreed to that
   */
  record PartsBody(
      String body,
      String limbs,
      String string,
      String on,
      String overrideWhy,
      String overrideCoach,
      Integer version,
      String onceKey) {}

  /**
   * What is on a rig, and not on its list.
   *
   * @param found the code of the part that is on it
   * @param exchanged whether the part it is there instead of is on the other rig
   */
  record FoundBody(
      String found,
      Boolean exchanged,
      String overrideWhy,
      String overrideCoach,
      Integer version,
      String onceKey) {}

  private final AssembleRig assembleRig;
  private final ChangeParts changeParts;
  private final CorrectParts correctParts;
  private final Dissolve dissolve;
  private final ClubTime time;
  private final RigAnswers rigs;

  AssemblyApi(
      AssembleRig assembleRig,
      ChangeParts changeParts,
      CorrectParts correctParts,
      Dissolve dissolve,
      ClubTime time,
      RigAnswers rigs) {
    this.assembleRig = assembleRig;
    this.changeParts = changeParts;
    this.correctParts = correctParts;
    this.dissolve = dissolve;
    this.time = time;
    this.rigs = rigs;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Assemble a rig of ready parts that fit",
      description = "Each part that does not fit or is not free is refused at its field.")
  @RequestBody(
      content =
          @Content(
              examples = {
                @ExampleObject(
                    name = "riser, limbs and string",
                    value =
                        "{\"body\": \"R-0106-4\", \"limbs\": \"L-0138-W\", \"string\":"
                            + " \"S-0273-G\", \"style\": \"split-finger\", \"level\":"
                            + " \"beginner\"}"),
                @ExampleObject(
                    name = "one-piece bow",
                    value = "{\"body\": \"B-0011-C\", \"string\": \"S-0241-W\"}")
              }))
  public Response assemble(AssemblyBody body) {
    Typed typed = RigAnswers.typed(body);
    return rigs.answer(
        body,
        typed,
        201,
        () -> {
          Assembly wish = Assembly.parse(typed, time.today());
          return typed.sound() ? assembleRig.assemble(wish) : Outcome.unread();
        });
  }

  @PUT
  @Path("/{id}/parts")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Change parts: name all that the rig is to have afterwards",
      description =
          "A rig on loan stays on it; a new set-up is due. It is asked what an issue asks: hand,"
              + " length and weight for whoever has it, their arrows, and what stands against the"
              + " part; overrideWhy and overrideCoach say why all the same and who agreed. A day in"
              + " on, for paper typed in late, must not lie before the last thing that is known of"
              + " the rig or of a new part.")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "another string",
                      value =
                          "{\"body\": \"R-0102-C\", \"limbs\": \"L-0102-J\", \"string\":"
                              + " \"S-0273-G\"}")))
  public Response change(@RestPath RigId id, PartsBody body) {
    Typed typed = RigAnswers.typed(body);
    RigId rig = rigs.known(id).card().id();
    return rigs.answer(
        body,
        typed,
        200,
        () -> {
          // A call is its own confirmation: nobody presses it by mistake.
          PartsWish wish = PartsWish.parse(typed.with(PartsWish.CONFIRMED, "yes"), time.today());
          return typed.sound() ? changeParts.change(rig, wish) : Outcome.unread();
        });
  }

  @POST
  @Path("/{id}/corrections")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Correct the record: this part is on this rig",
      description =
          "It comes off the rig that the record has it on; exchanged puts the part it was found"
              + " instead of there. Both rigs wait for their set-up. Where the rig is out it is"
              + " asked what an issue asks; overrideWhy and overrideCoach say why all the same and"
              + " who agreed.")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "two strings were exchanged",
                      value = "{\"found\": \"S-0205-3\", \"exchanged\": true}")))
  public Response correct(@RestPath RigId id, FoundBody body) {
    Typed typed = RigAnswers.typed(body);
    RigId rig = rigs.known(id).card().id();
    return rigs.answer(body, typed, 200, () -> corrected(rig, typed));
  }

  private Outcome<RigId> corrected(RigId rig, Typed typed) {
    ItemCode found = typed.code("found");
    if (!typed.has("found")) {
      typed.fault("found", "The code of the part that is on it, please.");
    }
    var version = typed.version();
    AgainstAdvice given = AdviceOverridden.parse(typed);
    return typed.sound()
        ? correctParts.correct(rig, found, typed.ticked("exchanged"), version, given)
        : Outcome.unread();
  }

  @POST
  @Path("/{id}/dissolve")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Take a rig apart: its parts are loose again, its story stays")
  @RequestBody(content = @Content(examples = @ExampleObject(name = "dissolve", value = "{}")))
  public Response dissolve(@RestPath RigId id, RigAnswers.PressBody body) {
    Typed typed = Typed.of(body);
    return rigs.answer(
        body,
        typed,
        204,
        () -> {
          var version = typed.version();
          return typed.sound() ? dissolve.dissolve(id, version) : Outcome.unread();
        });
  }
}
