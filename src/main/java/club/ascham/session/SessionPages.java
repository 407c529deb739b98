package club.ascham.session;

import club.ascham.askback.AskBack;
import club.ascham.askback.Asked;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.report.Report;
import club.ascham.report.Reports;
import club.ascham.report.SignList;
import club.ascham.rig.AdviceOverridden;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Pressed;
import club.ascham.time.ClubTime;
import club.ascham.undo.MayBeUndone;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
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
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;

/** What goes out tonight together, and how it came back. */
@Path("/sessions")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class SessionPages {
  private static final int LISTED = 40;
  private static final String SAY_WHY =
      " Leave it in, or say in whole words why it goes out all the same; that is kept.";

  @CheckedTemplate(basePath = "session", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SessionsPage(List<Sessions.Row> sessions) implements TemplateInstance {}

  @CheckedTemplate(basePath = "session", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record LendPage(
      List<Sessions.Pick> ready,
      List<Sessions.Pick> spokenAgainst,
      boolean likeLastTime,
      Typed typed)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "session", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SessionPage(
      Sessions.Head session,
      Asked askBack,
      List<Back> rigs,
      boolean someOut,
      List<Report> told,
      List<Sessions.Archer> archers,
      MayBeUndone.OfLoan undo,
      Typed typed)
      implements TemplateInstance {}

  /**
   * A rig of the session with what may be told of it.
   *
   * @param against what stands against it, beside what is asked back
   */
  record Back(Sessions.Out of, SignList signs, Against against) {}

  private final Sessions sessions;
  private final Reports reports;
  private final AskBack askBack;
  private final Concerns concerns;
  private final MayBeUndone mayBeUndone;
  private final LendSession lendSession;
  private final ReturnSession returnSession;
  private final AddArcher addArcher;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  SessionPages(
      Sessions sessions,
      Reports reports,
      AskBack askBack,
      Concerns concerns,
      MayBeUndone mayBeUndone,
      LendSession lendSession,
      ReturnSession returnSession,
      AddArcher addArcher,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.sessions = sessions;
    this.reports = reports;
    this.askBack = askBack;
    this.concerns = concerns;
    this.mayBeUndone = mayBeUndone;
    this.lendSession = lendSession;
    this.returnSession = returnSession;
    this.addArcher = addArcher;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  @GET
  public TemplateInstance list() {
    return new SessionsPage(sessions.page(1, LISTED));
  }

  @GET
  @Path("/new")
  public TemplateInstance choose() {
    return lendPage(Typed.nothing().with("leader", actor.name()), sessions.lastSet());
  }

  @POST
  @Path("/new")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response lend(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    Optional<String> pressedBefore = pressed.ledTo(typed.value("once-key"));
    if (pressedBefore.isPresent()) {
      return Go.to(pressedBefore.get());
    }
    List<RigId> rigs = SessionDetails.rigs(typed);
    String leader = SessionDetails.leader(typed);
    String why = AdviceOverridden.why(typed);
    if (!typed.sound()) {
      return Go.again(lendPage(typed, new HashSet<>(rigs)));
    }
    try {
      LendSession.Outcome outcome = lendSession.lend(leader, rigs, why, typed.value("once-key"));
      if (outcome instanceof LendSession.Outcome.Lent lent) {
        return Go.to(
            lent.page(),
            rigs.size() + (rigs.size() == 1 ? " rig" : " rigs") + " lent until tonight.");
      }
      tell(outcome, typed);
    } catch (DatabaseRefusal refusal) {
      typed.fault("rigs", refusal.getMessage());
    }
    return Go.again(lendPage(typed, new HashSet<>(rigs)));
  }

  private static void tell(LendSession.Outcome outcome, Typed typed) {
    if (outcome instanceof LendSession.Outcome.AskedWhy asked) {
      typed.fault("overrideWhy", asked.spokenAgainst() + SAY_WHY);
    } else if (outcome instanceof LendSession.Outcome.NotReady not) {
      int gone = not.why().size();
      typed.fault(
          "rigs",
          (gone == 1 ? "One of these is" : gone + " of these are")
              + " not ready any more, and left out below. "
              + String.join(" ", not.why().values())
              + " Look, and press again.");
    }
  }

  @GET
  @Path("/{id}")
  public TemplateInstance session(@RestPath long id) {
    return page(new LoanId(id), Typed.nothing());
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response takeBack(@RestPath long id, MultivaluedMap<String, String> form) {
    LoanId loan = new LoanId(id);
    Typed typed = Forms.typed(form, "signs-");
    Optional<String> pressedBefore = pressed.ledTo(typed.value("once-key"));
    if (pressedBefore.isPresent()) {
      return Go.to(pressedBefore.get());
    }
    List<ReturnSession.RigBack> back =
        SessionDetails.back(typed, sessions.rigsOf(loan), reports.outWith(loan));
    if (!typed.sound()) {
      return Go.again(page(loan, typed));
    }
    return Go.to(
        "/sessions/" + id, returnSession.takeBack(loan, back, typed.value("once-key")).said());
  }

  @POST
  @Path("/{id}/archers")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response addArcher(@RestPath long id, MultivaluedMap<String, String> form) {
    LoanId loan = new LoanId(id);
    Typed typed = Forms.typed(form);
    Optional<SharedBow> wish = SharedBow.parse(typed, actor.unit());
    if (wish.isPresent()) {
      String said = addArcher.add(loan, wish.get(), typed, typed.value("once-key"));
      if (said != null) {
        return Go.to("/sessions/" + id, said);
      }
    }
    return Go.again(page(loan, typed));
  }

  private LendPage lendPage(Typed typed, Set<RigId> chosen) {
    Map<Boolean, List<Sessions.Pick>> bySpokenAgainst =
        sessions.ready(time.today(), chosen, typed.has("once-key")).stream()
            .collect(Collectors.partitioningBy(pick -> pick.against().speaks()));
    List<Sessions.Pick> ready = bySpokenAgainst.get(false);
    return new LendPage(
        ready, bySpokenAgainst.get(true), ready.stream().anyMatch(Sessions.Pick::chosen), typed);
  }

  private SessionPage page(LoanId id, Typed typed) {
    Sessions.Head head =
        sessions
            .head(id)
            .orElseThrow(() -> new NoSuchThing("There is no session " + id.value() + "."));
    List<Sessions.Out> rigs = sessions.rigsOf(id);
    Asked asked = askBack.of(id).orElse(null);
    Against said = asked == null ? Against.NOTHING : asked.against();
    Map<RigId, Against> against = concerns.ofRigs(rigs.stream().map(Sessions.Out::rig).toList());
    return new SessionPage(
        head,
        asked,
        rigs.stream()
            .map(
                rig ->
                    new Back(
                        rig, SignList.ofBow(rig.rig(), typed), against.get(rig.rig()).beyond(said)))
            .toList(),
        rigs.stream().anyMatch(Sessions.Out::isOut),
        reports.of(id),
        sessions.archersOf(id),
        mayBeUndone.of(id),
        typed);
  }
}
