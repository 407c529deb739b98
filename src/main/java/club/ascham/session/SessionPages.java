package club.ascham.session;

import club.ascham.askback.AskBack;
import club.ascham.askback.Asked;
import club.ascham.check.StrangerAsked;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.KitBeside;
import club.ascham.loan.LoanLine;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.receive.LineAsked;
import club.ascham.report.Report;
import club.ascham.report.Reports;
import club.ascham.report.SignList;
import club.ascham.session.ReturnSession.SetBack;
import club.ascham.time.ClubTime;
import club.ascham.undo.MayBeUndone;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Press;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** What goes out tonight together, and how it came back. */
@Path("/sessions")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class SessionPages {
  private static final int LISTED = 40;
  private static final Set<Matter> SAID_BY_BEING_BACK = Set.of(Matter.NOT_CHECKED);

  @CheckedTemplate(basePath = "session", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SessionsPage(List<Sessions.Row> sessions) implements TemplateInstance {}

  @CheckedTemplate(basePath = "session", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record LendPage(
      List<Sessions.Pick> ready,
      List<Sessions.Pick> spokenAgainst,
      List<KitBeside.Shelf> shelves,
      boolean asksWhy,
      String tickedAlready,
      Typed typed)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "session", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SessionPage(
      Sessions.Head session,
      Asked askBack,
      List<Back> rigs,
      List<LineAsked> beside,
      List<LoanLine> notWhole,
      boolean someOut,
      boolean someBack,
      List<Report> told,
      List<Sessions.Archer> archers,
      MayBeUndone.OfLoan undo,
      Typed typed)
      implements TemplateInstance {}

  /**
   * A rig of the session with what may be told of it.
   *
   * @param stranger a code that is on it and not on its list; null: it was taken apart
   * @param against what stands against it, beside what is asked back
   * @param became null: it is out
   */
  record Back(
      Sessions.Out of, SignList signs, StrangerAsked stranger, Against against, Became became) {}

  private final Sessions sessions;
  private final Reports reports;
  private final AskBack askBack;
  private final Concerns concerns;
  private final KitBeside kitBeside;
  private final MayBeUndone mayBeUndone;
  private final LendSession lendSession;
  private final ReturnSession returnSession;
  private final ReturnDesk returnDesk;
  private final AddArcher addArcher;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  SessionPages(
      Sessions sessions,
      Reports reports,
      AskBack askBack,
      Concerns concerns,
      KitBeside kitBeside,
      MayBeUndone mayBeUndone,
      LendSession lendSession,
      ReturnSession returnSession,
      ReturnDesk returnDesk,
      AddArcher addArcher,
      Actor actor,
      ClubTime time,
      Presses presses) {
    this.sessions = sessions;
    this.reports = reports;
    this.askBack = askBack;
    this.concerns = concerns;
    this.kitBeside = kitBeside;
    this.mayBeUndone = mayBeUndone;
    this.lendSession = lendSession;
    this.returnSession = returnSession;
    this.returnDesk = returnDesk;
    this.addArcher = addArcher;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
  }

  @GET
  public TemplateInstance list() {
    return new SessionsPage(sessions.page(1, LISTED));
  }

  @GET
  @Path("/new")
  public TemplateInstance choose(@RestQuery String anew) {
    return lendPage(
        Typed.nothing().with("leader", actor.name()), anew == null ? sessions.lastSet() : Set.of());
  }

  @POST
  @Path("/new")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response lend(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return press(typed).page(() -> lent(typed), () -> lendPage(typed, chosen(typed)));
  }

  /** A form that makes a session, or tells more of one. */
  private Press<LoanId> press(Typed typed) {
    return presses
        .form(typed, LoanId::new, session -> "/sessions/" + session.value())
        .whole("rigs");
  }

  private Outcome<LoanId> lent(Typed typed) {
    SessionDetails wish = SessionDetails.parse(typed);
    return typed.sound() ? lendSession.lend(wish) : Outcome.unread();
  }

  private static Set<RigId> chosen(Typed typed) {
    return new HashSet<>(SessionDetails.parse(Typed.of(typed.all())).rigs());
  }

  @GET
  @Path("/{id}")
  public TemplateInstance session(@RestPath LoanId id) {
    return page(id, Typed.nothing());
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response takeBack(@RestPath("id") LoanId loan, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form, "signs-");
    return press(typed).page(() -> takenBack(loan, typed), () -> page(loan, typed));
  }

  private Outcome<LoanId> takenBack(LoanId loan, Typed typed) {
    SetBack back = returnDesk.read(loan, typed);
    Outcome<LoanId> outcome = typed.sound() ? returnSession.takeBack(loan, back) : Outcome.unread();
    return outcome instanceof Outcome.Done<LoanId> done
        ? Outcome.done(loan, said(loan, back, done.said()))
        : outcome;
  }

  private String said(LoanId loan, SetBack back, String besides) {
    Set<RigId> taken =
        back.rigs().stream().map(ReturnSession.RigBack::rig).collect(Collectors.toSet());
    String became =
        Became.said(
            returnDesk.became(
                sessions.rigsOf(loan).stream().filter(rig -> taken.contains(rig.rig())).toList()));
    String said = (became + " " + besides.strip()).strip();
    return said.isEmpty() ? "What is here was taken back." : said;
  }

  @POST
  @Path("/{id}/archers")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response addArcher(@RestPath("id") LoanId loan, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return press(typed)
        .page(
            () ->
                SharedBow.parse(typed, actor.unit())
                    .map(wish -> addArcher.add(loan, wish, typed))
                    .orElseGet(Outcome::unread),
            () -> page(loan, typed));
  }

  private LendPage lendPage(Typed typed, Set<RigId> chosen) {
    Map<Boolean, List<Sessions.Pick>> bySpokenAgainst =
        sessions.ready(time.today(), chosen, typed.has("once-key")).stream()
            .collect(Collectors.partitioningBy(pick -> pick.against().speaks()));
    boolean byHand = typed.has("once-key");
    // What is ticked already stands first: nobody hands out what they did not see.
    List<Sessions.Pick> ready =
        bySpokenAgainst.get(false).stream()
            .sorted(Comparator.comparing((Sessions.Pick pick) -> byHand || !pick.chosen()))
            .toList();
    List<KitBeside.Shelf> shelves = kitBeside.shelves(typed);
    boolean asksWhy =
        !bySpokenAgainst.get(true).isEmpty()
            || typed.has("overrideWhy")
            || typed.messageAt("overrideWhy") != null
            || shelves.stream()
                .flatMap(shelf -> shelf.choices().stream())
                .anyMatch(one -> one.against().speaks());
    return new LendPage(
        ready,
        bySpokenAgainst.get(true),
        shelves,
        asksWhy,
        byHand
            ? ""
            : ready.stream()
                .filter(Sessions.Pick::chosen)
                .map(Sessions.Pick::code)
                .collect(Collectors.joining(", ")),
        typed);
  }

  private SessionPage page(LoanId id, Typed typed) {
    Sessions.Head head =
        sessions
            .head(id)
            .orElseThrow(() -> new NoSuchThing("There is no session " + id.value() + "."));
    List<Sessions.Out> rigs = sessions.rigsOf(id);
    Asked asked = askBack.of(id).orElse(null);
    Against said = asked == null ? Against.NOTHING : asked.against();
    List<RigId> ids = rigs.stream().map(Sessions.Out::rig).toList();
    Map<RigId, Against> against = concerns.ofRigs(ids);
    Map<RigId, StrangerAsked> strangers = returnDesk.strangers(ids, typed);
    Map<RigId, Became> became =
        returnDesk.became(rigs.stream().filter(rig -> !rig.isOut()).toList()).stream()
            .collect(Collectors.toMap(Became::rig, Function.identity()));
    List<LineAsked> beside = returnDesk.beside(id, typed);
    List<LoanLine> notWhole = returnDesk.notWhole(id);
    return new SessionPage(
        head,
        asked,
        rigs.stream()
            .map(
                rig ->
                    new Back(
                        rig,
                        SignList.ofBow(rig.rig(), typed),
                        strangers.get(rig.rig()),
                        against.get(rig.rig()).beyond(said).without(SAID_BY_BEING_BACK),
                        became.get(rig.rig())))
            .toList(),
        beside,
        notWhole,
        !beside.isEmpty() || rigs.stream().anyMatch(Sessions.Out::isOut),
        !became.isEmpty() || !notWhole.isEmpty(),
        reports.of(id),
        sessions.archersOf(id),
        mayBeUndone.of(id),
        typed);
  }
}
