package club.ascham.accident;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.AccidentId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.story.SealedEntries;
import club.ascham.time.ClubTime;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** Accidents as JSON; who had what, and what people told, for officers alone. */
@Path("/api/accidents")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
@Tag(name = "Accidents", description = "What was in hand is kept as it is, with its whole past")
class AccidentApi {
  private static final int LONGEST_WHY = 2000;

  /**
   * What is told: a loan, or a bow; of a session, the bow.
   *
   * @param happenedOn left out: today
   * @param happenedTime such as 18:30; left out: now
   */
  record AccidentBody(
      Long loan, Long rig, String happenedOn, String happenedTime, String words, String onceKey) {}

  record EndBody(String why, String onceKey) {}

  private final Accidents accidents;
  private final Histories histories;
  private final InHand inHand;
  private final TellAccident tellAccident;
  private final EndKeeping endKeeping;
  private final SealedEntries sealed;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  AccidentApi(
      Accidents accidents,
      Histories histories,
      InHand inHand,
      TellAccident tellAccident,
      EndKeeping endKeeping,
      SealedEntries sealed,
      Actor actor,
      ClubTime time,
      Presses presses) {
    this.accidents = accidents;
    this.histories = histories;
    this.inHand = inHand;
    this.tellAccident = tellAccident;
    this.endKeeping = endKeeping;
    this.sealed = sealed;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
  }

  @GET
  @Operation(summary = "Accidents: those whose things are kept still first, then the newest")
  public AccidentJson.Listed list() {
    return new AccidentJson.Listed(
        accidents.all().stream().map(this::named).map(AccidentJson.Line::of).toList());
  }

  private Accidents.Head named(Accidents.Head head) {
    return actor.isOfficer() ? head : head.withoutNames();
  }

  @GET
  @Path("/{id:\\d+}")
  @Operation(
      summary = "One accident with each thing that was in hand and all that is on record of it")
  public AccidentJson.Accident one(@RestPath long id) {
    return AccidentJson.Accident.of(
        named(head(id)),
        histories.traced(accidents.things(id), actor.isOfficer()),
        sealed.newest().orElse(null),
        time.now());
  }

  private Accidents.Head head(long id) {
    return accidents.one(id).orElseThrow(() -> new NoSuchThing("There is no accident " + id + "."));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed(Role.OFFICERS)
  @Operation(
      summary = "Withdraw what was in hand, and keep it as it is",
      description =
          "All that was out with the loan at that moment; of a session the one bow; of a bow that"
              + " nobody had its parts. What was withdrawn before stays so. Arrows out of a pool are"
              + " noted and not withdrawn.")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "a limb broke",
                      value =
                          "{\"loan\": 41, \"happenedOn\": \"2026-06-02\", \"happenedTime\": \"18:30\","
                              + " \"words\": \"The lower limb broke at full draw; a cut on the"
                              + " forearm.\"}")))
  public Response tell(AccidentBody body) {
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, AccidentId::new)
        .at(accident -> "/api/accidents/" + accident.value())
        .json(201, () -> told(typed), accident -> one(accident.value()));
  }

  private Outcome<AccidentId> told(Typed typed) {
    Optional<AccidentDetails> details = AccidentDetails.parse(typed, time);
    Optional<InHand.Subject> subject =
        subject(typed, details.map(AccidentDetails::happened).orElse(time.now()));
    return details.isPresent() && subject.isPresent() && typed.sound()
        ? tellAccident.tell(subject.get(), details.get())
        : Outcome.unread();
  }

  private Optional<InHand.Subject> subject(Typed typed, Instant at) {
    Integer rig = typed.whole("rig", 1, Integer.MAX_VALUE);
    Integer loan = typed.whole("loan", 1, Integer.MAX_VALUE);
    Optional<InHand.Subject> subject =
        rig != null
            ? inHand.ofRig(new RigId(rig), at)
            : loan == null ? Optional.empty() : inHand.ofLoan(new LoanId(loan));
    if (rig == null && loan == null) {
      typed.fault("loan", "Which loan, or which bow (rig)?");
    } else if (subject.isEmpty()) {
      typed.fault(
          rig != null ? "rig" : "loan", "There is no such " + (rig != null ? "rig." : "loan."));
    } else if (subject.get().session() && rig == null) {
      typed.fault("rig", TellAccident.WHICH_BOW);
    }
    return subject;
  }

  @POST
  @Path("/{id:\\d+}/end")
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed(Role.OFFICERS)
  @Operation(summary = "End the keeping; the things stay withdrawn until each is released")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "looked at",
                      value =
                          "{\"why\": \"The insurer’s expert has seen and photographed all of it.\"}")))
  public Response end(@RestPath long id, EndBody body) {
    Typed typed = Typed.of(body);
    head(id);
    return presses
        .body(body, typed, AccidentId::new)
        .json(
            200,
            () -> {
              String why = typed.reason("why", LONGEST_WHY, EndKeeping.WHY);
              return typed.sound() ? endKeeping.end(id, why) : Outcome.unread();
            },
            accident -> one(id));
  }
}
