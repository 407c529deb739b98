package club.ascham.session;

import club.ascham.concern.Against;
import club.ascham.concern.ConcernJson;
import club.ascham.concern.Concerns;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.report.Reports;
import club.ascham.report.Telling;
import club.ascham.rig.AdviceOverridden;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthText;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
  private static final int LARGEST_PAGE = 200;

  /** A session in a list; its leader is named to those who lend, not in lists. */
  record SessionLine(
      long id,
      Instant issuedAt,
      LocalDate dueOn,
      int rigs,
      int rigsOut,
      List<ConcernJson> concerns) {}

  record Page(List<SessionLine> items, int page, int size, long total) {}

  record RigLine(long rigId, String code, boolean out) {}

  /**
   * An archer who shares a rig, without a name.
   *
   * @param ageBand null: noted before it was asked
   * @param arrows null: none noted
   */
  record ArcherLine(
      long rigId,
      String ageBand,
      String draw,
      String arrows,
      String overrideWhy,
      String overrideCoach) {}

  /** A session with its rigs and archers, and what stands today against what of it is out. */
  record SessionBody(
      long id,
      String leader,
      Instant issuedAt,
      LocalDate dueOn,
      List<RigLine> rigs,
      List<ArcherLine> archers,
      List<ConcernJson> concerns) {}

  /** {@code overrideWhy}: where something speaks against one of the rigs. */
  record LendBody(String leader, List<Long> rigIds, String overrideWhy, String onceKey) {}

  /**
   * A rig back: where nothing was seen or told it was looked over and is fine.
   *
   * @param seen in words
   * @param signs crack, fell, loosed-without-arrow and the like
   * @param part riser, limbs, string, a code, or not-known
   * @param notSo true: no sign belongs to what the words sound like
   * @param dryLooseOrFall one tick for two signs
   */
  record RigBackBody(
      Long rigId,
      String seen,
      List<String> signs,
      String part,
      Boolean notSo,
      Boolean dryLooseOrFall,
      Boolean cameBackStrung) {}

  record ReturnBody(List<RigBackBody> rigs, String onceKey) {}

  /**
   * An archer who shares a rig, without a name.
   *
   * @param estimated whether the draw was reckoned from the arm span
   * @param arrows the code of a set or pool; null: none yet
   * @param overrideWhy where the bow is heavier than the start of a course for this age, or
   *     something speaks against the arrows
   * @param overrideCoach who agreed to that weight
   */
  record ArcherBody(
      Long rig,
      String ageBand,
      String draw,
      Boolean estimated,
      String arrows,
      String overrideWhy,
      String overrideCoach,
      String onceKey) {}

  record Said(String said) {}

  private final Sessions sessions;
  private final Reports reports;
  private final LendSession lendSession;
  private final ReturnSession returnSession;
  private final AddArcher addArcher;
  private final Concerns concerns;
  private final Actor actor;
  private final ClubTime time;

  SessionsApi(
      Sessions sessions,
      Reports reports,
      LendSession lendSession,
      ReturnSession returnSession,
      AddArcher addArcher,
      Concerns concerns,
      Actor actor,
      ClubTime time) {
    this.sessions = sessions;
    this.reports = reports;
    this.lendSession = lendSession;
    this.returnSession = returnSession;
    this.addArcher = addArcher;
    this.concerns = concerns;
    this.actor = actor;
    this.time = time;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Sessions, newest first")
  public Page list(
      @RestQuery @DefaultValue("1") int page, @RestQuery @DefaultValue("40") int size) {
    int at = Math.max(1, page);
    int many = Math.max(1, Math.min(LARGEST_PAGE, size));
    List<Sessions.Row> found = sessions.page(at, many);
    Map<LoanId, Against> against =
        concerns.ofLoans(found.stream().map(Sessions.Row::id).toList(), time.today());
    return new Page(
        found.stream()
            .map(
                row ->
                    new SessionLine(
                        row.id().value(),
                        row.issuedAt(),
                        row.dueOn(),
                        row.rigs(),
                        row.rigsOut(),
                        ConcernJson.of(against.get(row.id()))))
            .toList(),
        at,
        many,
        sessions.count());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One session with its rigs")
  public SessionBody one(@RestPath long id) {
    Sessions.Head head = head(id);
    return new SessionBody(
        id,
        head.leader(),
        head.issuedAt(),
        head.dueOn(),
        sessions.rigsOf(head.id()).stream()
            .map(rig -> new RigLine(rig.rig().value(), rig.code(), rig.isOut()))
            .toList(),
        sessions.archersOf(head.id()).stream()
            .map(
                archer ->
                    new ArcherLine(
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
                      name = "three rigs",
                      value = "{\"leader\": \"Ottoline\", \"rigIds\": [3, 4, 7]}")))
  public Response lend(LendBody body) {
    Typed typed = Typed.nothing();
    if (body != null) {
      typed.with("leader", body.leader()).with("overrideWhy", body.overrideWhy());
      Optional.ofNullable(body.rigIds()).orElse(List.of()).stream()
          .filter(Objects::nonNull)
          .forEach(rig -> typed.with("rig-" + rig, "yes"));
    }
    String leader = SessionDetails.leader(typed);
    List<RigId> rigs = SessionDetails.rigs(typed);
    String why = AdviceOverridden.why(typed);
    if (!typed.sound()) {
      return Problem.of(typed);
    }
    LendSession.Outcome outcome = lendSession.lend(leader, rigs, why, body.onceKey());
    if (outcome instanceof LendSession.Outcome.NotReady not) {
      return Problem.response(
          409,
          "Not ready",
          "Not ready to be lent: "
              + not.why().entrySet().stream()
                  .map(one -> "rig " + one.getKey().value() + ": " + one.getValue())
                  .collect(Collectors.joining(" "))
              + " Nothing was changed.");
    }
    if (outcome instanceof LendSession.Outcome.AskedWhy asked) {
      typed.fault("overrideWhy", asked.spokenAgainst() + " Say why, or leave it in.");
      return Problem.of(typed);
    }
    String page = ((LendSession.Outcome.Lent) outcome).page();
    long id = Long.parseLong(page.substring(page.lastIndexOf('/') + 1));
    return Response.created(URI.create("/api/sessions/" + id)).entity(one(id)).build();
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
  public Response takeBack(@RestPath long id, ReturnBody body) {
    Sessions.Head head = head(id);
    Typed typed = Typed.nothing();
    List<Sessions.Out> rigs = sessions.rigsOf(head.id());
    for (Sessions.Out rig : rigs) {
      RigBackBody given =
          body == null || body.rigs() == null
              ? null
              : body.rigs().stream()
                  .filter(r -> r != null && r.rigId() != null && r.rigId() == rig.rig().value())
                  .findFirst()
                  .orElse(null);
      if (given == null) {
        typed.with(rig.stillOutField(), "yes");
      } else {
        Telling.Fields fields = Telling.Fields.of(rig.rig());
        typed
            .with(fields.words(), given.seen())
            .with(fields.signs(), Telling.joined(given.signs()))
            .with(fields.part(), given.part())
            .with(fields.notSo(), given.notSo())
            .with(fields.dry(), given.dryLooseOrFall())
            .with(fields.strung(), given.cameBackStrung());
      }
    }
    List<ReturnSession.RigBack> back = SessionDetails.back(typed, rigs, reports.outWith(head.id()));
    return typed.sound()
        ? Response.ok(
                new Said(
                    returnSession
                        .takeBack(head.id(), back, body == null ? null : body.onceKey())
                        .said()))
            .build()
        : Problem.of(typed);
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
  public Response addArcher(@RestPath long id, ArcherBody body) {
    Sessions.Head head = head(id);
    Typed typed = Typed.of(body);
    String said =
        SharedBow.parse(typed, actor.unit())
            .map(wish -> addArcher.add(head.id(), wish, typed, typed.value("onceKey")))
            .orElse(null);
    return said == null ? Problem.of(typed) : Response.status(201).entity(new Said(said)).build();
  }

  private Sessions.Head head(long id) {
    return sessions
        .head(new LoanId(id))
        .orElseThrow(() -> new NoSuchThing("There is no session " + id + "."));
  }
}
