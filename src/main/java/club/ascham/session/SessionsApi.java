package club.ascham.session;

import club.ascham.check.StrangerBack;
import club.ascham.concern.Against;
import club.ascham.concern.ConcernJson;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.LoanId;
import club.ascham.loan.LoanLines;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.receive.LineAsked;
import club.ascham.receive.LineBody;
import club.ascham.report.Telling;
import club.ascham.session.ReturnSession.SetBack;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthText;
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
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Sessions as JSON. */
@Path("/api/sessions")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Sessions", description = "A set of rigs lent to a leader until tonight")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class SessionsApi {

  private final Sessions sessions;
  private final LoanLines lines;
  private final LendSession lendSession;
  private final ReturnSession returnSession;
  private final ReturnDesk returnDesk;
  private final AddArcher addArcher;
  private final Concerns concerns;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  SessionsApi(
      Sessions sessions,
      LoanLines lines,
      LendSession lendSession,
      ReturnSession returnSession,
      ReturnDesk returnDesk,
      AddArcher addArcher,
      Concerns concerns,
      Actor actor,
      ClubTime time,
      Presses presses) {
    this.sessions = sessions;
    this.lines = lines;
    this.lendSession = lendSession;
    this.returnSession = returnSession;
    this.returnDesk = returnDesk;
    this.addArcher = addArcher;
    this.concerns = concerns;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Sessions, newest first")
  public SessionJson.Page list(
      @RestQuery @DefaultValue("1") int page, @RestQuery @DefaultValue("40") int size) {
    PageAsked asked = PageAsked.nearest(page, size);
    List<Sessions.Row> found = sessions.page(asked.page(), asked.size());
    Map<LoanId, Against> against =
        concerns.ofLoans(found.stream().map(Sessions.Row::id).toList(), time.today());
    return new SessionJson.Page(
        found.stream()
            .map(
                row ->
                    new SessionJson.SessionLine(
                        row.id().value(),
                        row.issuedAt(),
                        row.dueOn(),
                        row.rigs(),
                        row.rigsOut(),
                        row.besideOut(),
                        ConcernJson.of(against.get(row.id()))))
            .toList(),
        asked.page(),
        asked.size(),
        sessions.count());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One session with its rigs")
  public SessionJson.SessionBody one(@RestPath LoanId id) {
    Sessions.Head head = head(id);
    return new SessionJson.SessionBody(
        id.value(),
        head.leader(),
        head.issuedAt(),
        head.dueOn(),
        sessions.rigsOf(head.id()).stream()
            .map(rig -> new SessionJson.RigLine(rig.rig().value(), rig.code(), rig.isOut()))
            .toList(),
        lines.of(head.id()).stream()
            .filter(line -> line.rig() == null)
            .map(
                line ->
                    new SessionJson.BesideLine(
                        line.code(),
                        line.kind().word(),
                        line.arrows(),
                        line.isOut(),
                        line.missing()))
            .toList(),
        sessions.archersOf(head.id()).stream()
            .map(
                archer ->
                    new SessionJson.ArcherLine(
                        archer.rig().value(),
                        archer.age() == null ? null : Words.of(archer.age()),
                        LengthText.exact(archer.draw()),
                        archer.arrows(),
                        archer.why(),
                        archer.coach()))
            .toList(),
        ConcernJson.of(concerns.of(head.id())));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Lend a set of ready rigs to a leader until tonight")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "three rigs and a set of arrows",
                      value =
                          "{\"leader\": \"Ottoline\", \"rigIds\": [3, 4, 7], \"items\":"
                              + " [{\"code\": \"A-0101-3\"}]}")))
  public Response lend(SessionJson.LendBody body) {
    Typed typed = body == null ? Typed.nothing() : body.typed();
    return presses
        .body(body, typed, LoanId::new)
        .at(session -> "/api/sessions/" + session.value())
        .json(
            201,
            () -> {
              SessionDetails wish = SessionDetails.parse(typed);
              return typed.sound() ? lendSession.lend(wish) : Outcome.unread();
            },
            this::one);
  }

  @POST
  @Path("/{id}/return")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Take rigs back: looked over and fine, or something seen")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "one fine, something seen on the other",
                      value =
                          "{\"rigs\": [{\"rigId\": 3}, {\"rigId\": 4, \"signs\":"
                              + " [\"serving\"], \"seen\": \"at the top\", \"part\":"
                              + " \"string\"}]}")))
  public Response takeBack(@RestPath LoanId id, SessionJson.ReturnBody body) {
    Sessions.Head head = head(id);
    Typed typed = Typed.nothing();
    return presses
        .body(body, typed, LoanId::new)
        .json(
            () -> takenBack(head, body, typed),
            done -> Response.ok(returned(head.id(), body, done.said())));
  }

  private Outcome<LoanId> takenBack(Sessions.Head head, SessionJson.ReturnBody body, Typed typed) {
    List<Sessions.Out> rigs = sessions.rigsOf(head.id());
    boolean rigsOut = false;
    for (Sessions.Out rig : rigs) {
      SessionJson.RigBackBody given =
          body == null || body.rigs() == null
              ? null
              : body.rigs().stream()
                  .filter(r -> r != null && r.rigId() != null && r.rigId() == rig.rig().value())
                  .findFirst()
                  .orElse(null);
      if (given == null) {
        rigsOut |= rig.isOut();
        typed.with(rig.stillOutField(), "yes");
      } else {
        Telling.Fields fields = Telling.Fields.of(rig.rig());
        typed
            .with(fields.words(), given.seen())
            .with(fields.signs(), Telling.joined(given.signs()))
            .with(fields.part(), given.part())
            .with(fields.notSo(), given.notSo())
            .with(fields.dry(), given.dryLooseOrFall())
            .with(fields.strung(), given.cameBackStrung())
            .with(StrangerBack.Fields.of(rig.rig()).code(), given.stranger())
            .with(StrangerBack.Fields.of(rig.rig()).answer(), given.strangerAnswer());
      }
    }
    nameLines(typed, head.id(), body, rigsOut);
    SetBack back = returnDesk.read(head.id(), typed);
    return typed.sound() ? returnSession.takeBack(head.id(), back) : Outcome.unread();
  }

  /** What became of the rigs that the call names, as it stands now. */
  private SessionJson.ReturnedBody returned(
      LoanId loan, SessionJson.ReturnBody body, String besides) {
    Set<Long> named =
        body == null || body.rigs() == null
            ? Set.of()
            : body.rigs().stream()
                .filter(rig -> rig != null && rig.rigId() != null)
                .map(SessionJson.RigBackBody::rigId)
                .collect(Collectors.toSet());
    List<Became> became =
        returnDesk.became(
            sessions.rigsOf(loan).stream()
                .filter(rig -> named.contains(rig.rig().value()))
                .toList());
    return new SessionJson.ReturnedBody(
        (Became.said(became) + " " + besides.strip()).strip(),
        became.stream()
            .map(
                one ->
                    new SessionJson.BecameLine(
                        one.rig().value(), one.code(), one.word(), one.why()))
            .toList());
  }

  /** Turns what went beside the bows, named by code, into the fields of the form. */
  private void nameLines(Typed typed, LoanId loan, SessionJson.ReturnBody body, boolean rigsOut) {
    List<LineAsked> out = returnDesk.beside(loan, typed);
    List<LineBody> given = body == null || body.lines() == null ? List.of() : body.lines();
    Set<Long> named =
        LineBody.into(typed, given, out, "That is not out beside the bows of this session.");
    boolean withTheRest = (body == null || body.lines() == null) && !rigsOut;
    out.stream()
        .filter(asked -> !withTheRest && !named.contains(asked.line().id()))
        .forEach(asked -> typed.with(asked.stillOutField(), "yes"));
  }

  @POST
  @Path("/{id}/archers")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Note an archer who shares a rig of the session",
      description =
          "Without a name: age, draw and arrows. Each counts as a beginner; what is heavier than a"
              + " course for that age starts with needs overrideWhy and overrideCoach.")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "a child",
                      value =
                          "{\"rig\": 3, \"ageBand\": \"up-to-12\", \"draw\": \"22 in\","
                              + " \"arrows\": \"A-0101-3\"}")))
  public Response addArcher(@RestPath LoanId id, SessionJson.ArcherBody body) {
    Sessions.Head head = head(id);
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, LoanId::new)
        .json(
            () ->
                SharedBow.parse(typed, actor.unit())
                    .map(wish -> addArcher.add(head.id(), wish, typed))
                    .orElseGet(Outcome::unread),
            done ->
                Response.status(201)
                    .entity(
                        new SessionJson.Said(
                            done.said().isEmpty() ? AddArcher.NOTED : done.said())));
  }

  private Sessions.Head head(LoanId id) {
    return sessions
        .head(id)
        .orElseThrow(() -> new NoSuchThing("There is no session " + id.value() + "."));
  }
}
