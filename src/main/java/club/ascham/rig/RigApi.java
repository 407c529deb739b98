package club.ascham.rig;

import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.SetUpSheet;
import club.ascham.bow.SetUpStep;
import club.ascham.concern.Against;
import club.ascham.concern.ConcernJson;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Press;
import club.ascham.web.Presses;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
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
import java.util.function.Supplier;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Rigs as JSON. */
@Path("/api/rigs")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Rigs", description = "Parts put together as one bow, and its set-up")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class RigApi {
  private static final String NO_BODY = "A JSON body, please.";

  private final RigRecords records;
  private final AssembleRig assembleRig;
  private final ChangeParts changeParts;
  private final Dissolve dissolve;
  private final SetUpWork work;
  private final CorrectParts correctParts;
  private final Concerns concerns;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  RigApi(
      RigRecords records,
      AssembleRig assembleRig,
      ChangeParts changeParts,
      Dissolve dissolve,
      SetUpWork work,
      CorrectParts correctParts,
      Concerns concerns,
      Actor actor,
      ClubTime time,
      Presses presses) {
    this.records = records;
    this.assembleRig = assembleRig;
    this.changeParts = changeParts;
    this.dissolve = dissolve;
    this.work = work;
    this.correctParts = correctParts;
    this.concerns = concerns;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
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
    RigRow row = row(id);
    RigCard card = row.card();
    List<SetUpStep> sheet = sheet(card);
    return new RigJson.Whole(
        id.value(),
        card.name(),
        card.version(),
        row.state().word(),
        Words.of(card.style()),
        Words.of(card.level()),
        row.bowLengthIn().isPresent() ? row.bowLengthIn().getAsInt() : null,
        card.parts().stream().map(RigJson.FittedPart::of).toList(),
        records.kept(card.id()).stream().map(RigRecords.Kept::code).toList(),
        row.loanId(),
        card.setUp() == null ? null : RigJson.Figures.of(card.setUp()),
        records.openSetUp(card.id()).map(open -> RigJson.Open.of(open, sheet)).orElse(null),
        RigJson.Bands.of(card.targets()),
        ConcernJson.of(concerns.of(card.id())));
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
  public Response assemble(RigJson.AssemblyBody body) {
    Typed typed = typed(body);
    return answer(
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
  public Response change(@RestPath RigId id, RigJson.PartsBody body) {
    Typed typed = typed(body);
    RigId rig = row(id).card().id();
    return answer(
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
  public Response correct(@RestPath RigId id, RigJson.FoundBody body) {
    Typed typed = typed(body);
    RigId rig = row(id).card().id();
    return answer(body, typed, 200, () -> corrected(rig, typed));
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
  @Path("/{id}/set-ups")
  @Operation(summary = "Begin a set-up, or go on with the one that is open")
  public Response begin(@RestPath RigId id) {
    RigRow row = row(id);
    return answer(null, Typed.nothing(), 200, () -> work.begin(row.card().id()));
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
  public Response write(@RestPath RigId id, RigJson.EntryBody body) {
    Typed typed = typed(body);
    RigRow row = row(id);
    return answer(
        body,
        typed,
        200,
        () -> {
          SetUpEntry entry = SetUpEntry.parse(typed, actor.unit(), sheet(row.card()));
          var version = typed.version();
          return typed.sound() ? work.write(row.card().id(), entry, version) : Outcome.unread();
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
  public Response finish(@RestPath RigId id, RigJson.PressBody body) {
    Typed typed = Typed.of(body);
    RigRow row = row(id);
    return answer(
        body,
        typed,
        200,
        () -> {
          var version = typed.version();
          return typed.sound() ? work.finish(row.card().id(), version) : Outcome.unread();
        });
  }

  @POST
  @Path("/{id}/dissolve")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Take a rig apart: its parts are loose again, its story stays")
  @RequestBody(content = @Content(examples = @ExampleObject(name = "dissolve", value = "{}")))
  public Response dissolve(@RestPath RigId id, RigJson.PressBody body) {
    Typed typed = Typed.of(body);
    return answer(
        body,
        typed,
        204,
        () -> {
          var version = typed.version();
          return typed.sound() ? dissolve.dissolve(id, version) : Outcome.unread();
        });
  }

  private static Typed typed(Record body) {
    if (body == null) {
      throw new BadRequestException(NO_BODY);
    }
    return Typed.of(body);
  }

  private Response answer(Record body, Typed typed, int status, Supplier<Outcome<RigId>> work) {
    Press<RigId> press = presses.body(body, typed, RigId::new);
    if (status == 201) {
      press.at(rig -> "/api/rigs/" + rig.value());
    }
    // Nothing is shown of a rig that was taken apart.
    return press.json(status, work, rig -> status == 204 ? null : one(rig));
  }

  private RigRow row(RigId id) {
    return records
        .one(id)
        .orElseThrow(() -> new NoSuchThing("There is no assembled rig " + id.value() + "."));
  }

  private static List<SetUpStep> sheet(RigCard card) {
    return card.spec()
        .map(spec -> SetUpSheet.steps(spec, card.benchTargets(), card.level()))
        .orElse(List.of());
  }
}
