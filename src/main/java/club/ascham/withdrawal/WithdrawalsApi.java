package club.ascham.withdrawal;

import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.id.WithdrawalId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import club.ascham.web.Problem;
import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Withdrawals as JSON. */
@Path("/api/withdrawals")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Withdrawals", description = "Parts taken out of use, and their release")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class WithdrawalsApi {

  /** A withdrawal; what is not known yet is left out. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record WithdrawalShape(
      long id,
      String item,
      String kind,
      RigId rig,
      boolean onLoan,
      Instant happenedAt,
      String by,
      String why,
      String work,
      Long check,
      Instant releasedAt,
      String releasedBy,
      String releaseWhy,
      String lookedAt,
      String lookedBy,
      Instant decidedAt,
      String decidedBy,
      String noWorkWhy) {
    static WithdrawalShape of(Withdrawals.Row row) {
      return new WithdrawalShape(
          row.id(),
          row.code(),
          row.kind().toLowerCase(Locale.ROOT),
          row.rig(),
          row.onLoan(),
          row.happenedAt(),
          row.by(),
          row.why(),
          row.work() == null ? null : Words.of(row.work()),
          row.checkId(),
          row.releasedAt(),
          row.releasedBy(),
          row.releaseWhy(),
          row.lookedAt(),
          row.lookedBy(),
          row.decidedAt(),
          row.decidedBy(),
          row.noWorkWhy());
    }
  }

  record Page(List<WithdrawalShape> items, int page, int size, long total) {}

  /** {@code work}: such as limb-inspection; left out, it is to be decided. */
  record WithdrawBody(String item, String why, String work, String onceKey) {}

  /** {@code lookedBy}: a person of the club or another name; left out, whoever calls. */
  record ReleaseBody(String lookedAt, String lookedBy, String why, String onceKey) {}

  /** {@code work}: such as limb-inspection; {@code none} where none fits, with {@code why}. */
  record DecideBody(String work, String why, String onceKey) {}

  private final Withdrawals withdrawals;
  private final WithdrawItem withdrawItem;
  private final ReleaseItem releaseItem;
  private final DecideWithdrawal decideWithdrawal;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  WithdrawalsApi(
      Withdrawals withdrawals,
      WithdrawItem withdrawItem,
      ReleaseItem releaseItem,
      DecideWithdrawal decideWithdrawal,
      Actor actor,
      ClubTime time,
      Presses presses) {
    this.withdrawals = withdrawals;
    this.withdrawItem = withdrawItem;
    this.releaseItem = releaseItem;
    this.decideWithdrawal = decideWithdrawal;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Withdrawals: the open ones, or with open=false those released")
  public Response list(
      @RestQuery @DefaultValue("true") boolean open,
      @RestQuery String item,
      @RestQuery @DefaultValue("1") int page,
      @RestQuery @DefaultValue("40") int size) {
    Typed typed = Typed.nothing().with("item", item);
    ItemId of = item == null ? null : subject(typed).map(Withdrawals.Subject::id).orElse(null);
    if (!typed.sound()) {
      return Problem.of(typed);
    }
    PageAsked asked = PageAsked.nearest(page, size);
    return Response.ok(
            new Page(
                withdrawals.list(open, of, asked.skipped(), asked.size()).stream()
                    .map(WithdrawalShape::of)
                    .toList(),
                asked.page(),
                asked.size(),
                withdrawals.count(open, of)))
        .build();
  }

  @GET
  @Path("/{id:\\d+}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "One withdrawal")
  public WithdrawalShape one(@RestPath long id) {
    return WithdrawalShape.of(row(id));
  }

  private Withdrawals.Row row(long id) {
    return withdrawals
        .one(id)
        .orElseThrow(() -> new NoSuchThing("There is no withdrawal " + id + "."));
  }

  private Optional<Withdrawals.Subject> subject(Typed typed) {
    ItemCode code = typed.code("item");
    Optional<Withdrawals.Subject> found =
        code == null ? Optional.empty() : withdrawals.subject(code);
    if (found.isEmpty()) {
      typed.fault("item", "The club has nothing with that code.");
    }
    return found;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Take an item out of use")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "a crack",
                      value =
                          "{\"item\": \"L-0105-D\", \"why\": \"A line across the lower limb.\","
                              + " \"work\": \"limb-inspection\"}")))
  public Response withdraw(WithdrawBody body) {
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, WithdrawalId::new)
        .at(withdrawal -> "/api/withdrawals/" + withdrawal.value())
        .json(
            201,
            () ->
                subject(typed)
                    .flatMap(
                        item ->
                            Reason.parse(typed, item.kind())
                                .map(why -> withdrawItem.withdraw(item.id(), why, time.now())))
                    .orElseGet(Outcome::unread),
            withdrawal -> one(withdrawal.value()));
  }

  @POST
  @Path("/{id:\\d+}/decide")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Decide what it needs: for someone who holds the permit",
      description =
          "work: one that is done to such an item, asked for at once; or none, with why no"
              + " inspection fits. Nothing is released before.")
  @RequestBody(
      content =
          @Content(
              examples = {
                @ExampleObject(name = "an inspection", value = "{\"work\": \"limb-inspection\"}"),
                @ExampleObject(
                    name = "none fits",
                    value =
                        "{\"work\": \"none\", \"why\": \"The maker's letter names another batch.\"}")
              }))
  public Response decide(@RestPath long id, DecideBody body) {
    Withdrawals.Row row = row(id);
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, WithdrawalId::new)
        .json(
            200,
            () ->
                Decision.parse(typed, row.kind())
                    .map(decision -> decideWithdrawal.decide(id, decision))
                    .orElseGet(Outcome::unread),
            withdrawal -> one(id));
  }

  @POST
  @Path("/{id:\\d+}/release")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Release it: for someone who holds the permit, who says what was looked at and why",
      description =
          "409 while it is not decided what it needs, or that is not passed yet: the detail says"
              + " what would make it possible, and where.")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "inspected",
                      value =
                          "{\"lookedAt\": \"Both limbs, end to end.\","
                              + " \"why\": \"Inspected, a scratch in the lacquer only.\"}")))
  public Response release(@RestPath long id, ReleaseBody body) {
    row(id);
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, WithdrawalId::new)
        .json(
            200,
            () ->
                Release.parse(typed, withdrawals.people(), actor.id())
                    .map(release -> releaseItem.release(id, release))
                    .orElseGet(Outcome::unread),
            withdrawal -> one(id));
  }
}
