package club.ascham.withdrawal;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.WithdrawalId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.Work;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;

/** What is out of use and why, and its release. */
@Path("/withdrawals")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class WithdrawalPages {
  static final String HOME = "/withdrawals";
  private static final int ROWS_A_PAGE = 40;

  @CheckedTemplate(basePath = "withdrawal", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record WithdrawalsPage(
      List<Withdrawals.Row> rows,
      boolean released,
      long total,
      int from,
      String earlier,
      String later,
      boolean permit)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "withdrawal", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ReleasePage(
      Withdrawals.Row row,
      Hindrance hindrance,
      Withdrawals.Done done,
      List<String> stillAsked,
      List<String> people,
      boolean permit,
      Typed typed)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "withdrawal", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record DecidePage(Withdrawals.Row row, List<Work> works, boolean permit, Typed typed)
      implements TemplateInstance {}

  private final Withdrawals withdrawals;
  private final ReleaseItem releaseItem;
  private final DecideWithdrawal decideWithdrawal;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  WithdrawalPages(
      Withdrawals withdrawals,
      ReleaseItem releaseItem,
      DecideWithdrawal decideWithdrawal,
      Actor actor,
      ClubTime time,
      Presses presses) {
    this.withdrawals = withdrawals;
    this.releaseItem = releaseItem;
    this.decideWithdrawal = decideWithdrawal;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public TemplateInstance list(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    boolean released = typed.value("show").equals("released");
    Integer asked = typed.whole("page", 1, 10_000);
    int page = asked == null ? 1 : asked;
    long total = withdrawals.count(!released, null);
    int from = (page - 1) * ROWS_A_PAGE;
    String base = HOME + (released ? "?show=released&page=" : "?page=");
    return new WithdrawalsPage(
        withdrawals.list(!released, null, from, ROWS_A_PAGE),
        released,
        total,
        from,
        page > 1 ? base + (page - 1) : null,
        from + ROWS_A_PAGE < total ? base + (page + 1) : null,
        actor.holdsPermit(time.today()));
  }

  @GET
  @Path("/{id:\\d+}/release")
  public TemplateInstance release(@PathParam("id") long id) {
    return releasePage(id, Typed.nothing().with("lookedBy", actor.name()));
  }

  private ReleasePage releasePage(long id, Typed typed) {
    Withdrawals.Row row = row(id);
    return new ReleasePage(
        row,
        withdrawals.hindrance(id).orElse(null),
        withdrawals.newestWork(id).orElse(null),
        withdrawals.stillAsked(row.item()),
        withdrawals.people().stream().map(Release.Person::name).toList(),
        actor.holdsPermit(time.today()),
        typed);
  }

  private Withdrawals.Row row(long id) {
    return withdrawals
        .one(id)
        .orElseThrow(() -> new NoSuchThing("There is no withdrawal " + id + "."));
  }

  @POST
  @Path("/{id:\\d+}/release")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response released(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    Withdrawals.Row row = row(id);
    return presses
        .form(typed, WithdrawalId::new, withdrawal -> HOME)
        .page(
            () ->
                Release.parse(typed, withdrawals.people(), actor.id())
                    .map(release -> released(row, release))
                    .orElseGet(Outcome::unread),
            () -> releasePage(id, typed));
  }

  private Outcome<WithdrawalId> released(Withdrawals.Row row, Release release) {
    Outcome<WithdrawalId> outcome = releaseItem.release(row.id(), release);
    if (outcome instanceof Outcome.Done<WithdrawalId> done) {
      return Outcome.done(
          done.made(),
          row.code()
              + (withdrawals.stillAsked(row.item()).isEmpty()
                  ? " is released."
                  : " is released; it stays in until the work asked for is done."));
    }
    // What is to be done first stands on the page in any case.
    boolean toBeDoneFirst =
        actor.holdsPermit(time.today()) && withdrawals.hindrance(row.id()).isPresent();
    return toBeDoneFirst ? Outcome.unread() : outcome;
  }

  @GET
  @Path("/{id:\\d+}/decide")
  public TemplateInstance decide(@PathParam("id") long id) {
    return decidePage(id, Typed.nothing());
  }

  private DecidePage decidePage(long id, Typed typed) {
    Withdrawals.Row row = row(id);
    return new DecidePage(row, Work.allFor(row.kind()), actor.holdsPermit(time.today()), typed);
  }

  @POST
  @Path("/{id:\\d+}/decide")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response decided(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    Withdrawals.Row row = row(id);
    return presses
        .form(typed, WithdrawalId::new, withdrawal -> HOME + "/" + id + "/release")
        .page(
            () ->
                Decision.parse(typed, row.kind())
                    .map(decision -> decided(row, decision))
                    .orElseGet(Outcome::unread),
            () -> decidePage(id, typed));
  }

  private Outcome<WithdrawalId> decided(Withdrawals.Row row, Decision decision) {
    Outcome<WithdrawalId> outcome = decideWithdrawal.decide(row.id(), decision);
    return outcome instanceof Outcome.Done<WithdrawalId> done
        ? Outcome.done(
            done.made(),
            decision.work() == null
                ? "Decided: no inspection fits " + row.code() + "."
                : row.code() + " needs a " + decision.work().said() + ".")
        : outcome;
  }
}
