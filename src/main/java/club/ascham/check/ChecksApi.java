package club.ascham.check;

import club.ascham.check.CheckShapes.AdjustmentBody;
import club.ascham.check.CheckShapes.AdjustmentShape;
import club.ascham.check.CheckShapes.CheckBody;
import club.ascham.check.CheckShapes.CheckLine;
import club.ascham.check.CheckShapes.CheckShape;
import club.ascham.check.CheckShapes.Page;
import club.ascham.check.CheckShapes.PutBackShape;
import club.ascham.check.CheckShapes.ReleaseBody;
import club.ascham.concern.ConcernJson;
import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.id.AdjustmentId;
import club.ascham.id.CheckId;
import club.ascham.id.Made;
import club.ascham.id.MoveId;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.units.ItemCode;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Checks as JSON. */
@Path("/api/checks")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Checks", description = "Readings and signs of a bow that came back, and the verdict")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class ChecksApi {

  private final Checks checks;
  private final Verdicts verdicts;
  private final RecordCheck recordCheck;
  private final AfterCheck afterCheck;
  private final RecordAdjustment recordAdjustment;
  private final PutBack putBack;
  private final Strangers strangers;
  private final RigSpecs specs;
  private final Presses presses;

  ChecksApi(
      Checks checks,
      Verdicts verdicts,
      RecordCheck recordCheck,
      AfterCheck afterCheck,
      RecordAdjustment recordAdjustment,
      PutBack putBack,
      Strangers strangers,
      RigSpecs specs,
      Presses presses) {
    this.checks = checks;
    this.verdicts = verdicts;
    this.recordCheck = recordCheck;
    this.afterCheck = afterCheck;
    this.recordAdjustment = recordAdjustment;
    this.putBack = putBack;
    this.strangers = strangers;
    this.specs = specs;
    this.presses = presses;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Checks and looks, the last that happened first")
  public Page list(
      @RestQuery Long rig,
      @RestQuery @DefaultValue("1") int page,
      @RestQuery @DefaultValue("40") int size) {
    PageAsked asked = PageAsked.nearest(page, size);
    return new Page(
        checks.page(rig, asked.skipped(), asked.size()).stream().map(CheckLine::of).toList(),
        asked.page(),
        asked.size(),
        checks.count(rig));
  }

  @GET
  @Path("/{id:\\d+}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "One check with its verdict as it was given")
  public CheckShape one(@RestPath long id) {
    return checks
        .one(id)
        .map(check -> CheckShape.of(check, verdicts.of(id), checks.signs(id)))
        .orElseThrow(() -> new NoSuchThing("There is no check " + id + "."));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Check a bow: the verdict comes back at once")
  @RequestBody(
      content =
          @Content(
              examples = {
                @ExampleObject(
                    name = "all as listed, all fine",
                    value =
                        """
                        {"rig": "R-0105-6", "allAsListed": true, "brace": "8 1/2 in",
                         "braceFrom": "grip-throat", "tillerUpper": "7 1/2 in",
                         "tillerLower": "7 3/8 in",
                         "answers": {"string": "fine", "limbs": "fine", "bolts": "fine"}}\
                        """),
                @ExampleObject(
                    name = "a stop needs no readings",
                    value =
                        """
                        {"rig": "12", "allAsListed": true, "signs": ["limbs-crack-across"],
                         "answers": {"string": "fine", "limbs": "stop", "bolts": "fine"}}\
                        """),
                @ExampleObject(
                    name = "all fine, and what was told is answered",
                    value =
                        """
                        {"rig": "12", "allAsListed": true, "brace": "216", "braceFrom": "grip-throat",
                         "tillerUpper": "190", "tillerLower": "186",
                         "answers": {"string": "fine", "limbs": "fine", "bolts": "fine"},
                         "reports": {"7": {"answer": "nothing-there", "words": "Whole, in daylight."}}}\
                        """)
              }))
  public Response check(CheckBody body) {
    Typed typed = body == null ? Typed.nothing() : body.typed();
    return presses
        .body(body, typed, CheckId::new)
        .at(check -> "/api/checks/" + check.value())
        .json(
            () -> rig(typed).map(card -> recordCheck.check(card, typed)).orElseGet(Outcome::unread),
            done -> {
              afterCheck.look(done.made());
              return Response.status(201).entity(one(done.made().value()));
            });
  }

  /** The rig named by its number or by the code of any part; empty: the fault is at the field. */
  private Optional<RigCard> rig(Typed typed) {
    if (!typed.has("rig")) {
      typed.fault("rig", "Which rig? Its number, or the code of any part of it.");
      return Optional.empty();
    }
    Optional<RigId> id;
    if (typed.value("rig").matches("\\d{1,9}")) {
      id = Optional.of(new RigId(Long.parseLong(typed.value("rig"))));
    } else {
      ItemCode code = typed.code("rig");
      id = code == null ? Optional.empty() : strangers.rigOf(code);
    }
    Optional<RigCard> card = id.flatMap(specs::of);
    if (card.isEmpty()) {
      typed.fault("rig", "There is no such rig.");
    }
    return card;
  }

  @POST
  @Path("/{id:\\d+}/release")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Put the bow back into use after a check that found it fit")
  @RequestBody(content = @Content(examples = @ExampleObject(name = "put back", value = "{}")))
  public Response release(@RestPath long id, ReleaseBody body) {
    return presses
        .body(body, Typed.of(body), MoveId::new)
        .json(200, () -> putBack.putBack(id), move -> putBack(id));
  }

  private PutBackShape putBack(long check) {
    PutBack.Stands now = putBack.now(checks.one(check).orElseThrow().rig());
    return new PutBackShape(now.rig(), now.state().word(), ConcernJson.of(now.against()));
  }

  @POST
  @Path("/{id:\\d+}/adjustment")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Say what was done after an adjust-first verdict; then check again, naming it")
  @RequestBody(
      content =
          @Content(examples = @ExampleObject(name = "twists", value = "{\"twistsAdded\": 8}")))
  public Response adjusted(@RestPath long id, AdjustmentBody body) {
    Typed typed = Typed.of(body);
    return presses
        .bodyOf(body, typed, RecordAdjustment::made)
        .json(
            () -> {
              AdjustmentDone done = AdjustmentDone.parse(typed);
              return typed.sound() ? recordAdjustment.record(id, done) : Outcome.unread();
            },
            done -> adjusted(id, done.made()));
  }

  /** After a mere look there is no adjustment to name: the next check goes on from this one. */
  private Response.ResponseBuilder adjusted(long check, Made made) {
    boolean worked = made instanceof AdjustmentId;
    return Response.status(worked ? 201 : 200)
        .entity(
            new AdjustmentShape(
                worked ? made.value() : null, checks.one(check).orElseThrow().rig()));
  }
}
