package club.ascham.accident;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.AccidentId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.story.Seal;
import club.ascham.story.SealedEntries;
import club.ascham.time.ClubTime;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Press;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;

/** After an accident: keep what was in hand as it is, and print what is known of it. */
@Path("/accidents")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class AccidentPages {
  private static final int LONGEST_WHY = 2000;
  private static final String FROM_WHERE =
      "Open the loan or the bow that it happened with, and begin there.";

  /** A thing with its past. */
  @TemplateData
  record Traced(Accidents.Thing thing, Histories.Past history) {}

  @CheckedTemplate(basePath = "accident", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record AccidentsPage(List<Accidents.Head> accidents) implements TemplateInstance {}

  /**
   * @param bows of a session, to choose the one that it happened with; else empty
   * @param held what is in hand at the moment that is typed, or now
   */
  @CheckedTemplate(basePath = "accident", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record TellPage(InHand.Subject subject, List<InHand.Subject> bows, List<Held> held, Typed typed)
      implements TemplateInstance {}

  /**
   * @param names whether the reader sees who had it and what people told
   * @param seal the record's newest, shortened
   * @param printed the moment this was made
   */
  @CheckedTemplate(basePath = "accident", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record AccidentPage(
      Accidents.Head accident,
      List<Traced> things,
      boolean names,
      String seal,
      Instant printed,
      Typed typed)
      implements TemplateInstance {}

  private final Accidents accidents;
  private final Histories histories;
  private final InHand inHand;
  private final TellAccident tellAccident;
  private final EndKeeping endKeeping;
  private final SealedEntries sealed;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  AccidentPages(
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
  public TemplateInstance list() {
    return new AccidentsPage(
        accidents.all().stream()
            .map(head -> actor.isOfficer() ? head : head.withoutNames())
            .toList());
  }

  @GET
  @Path("/new")
  @RolesAllowed(Role.OFFICERS)
  public TemplateInstance begin(@Context UriInfo uri) {
    return tellPage(Forms.typed(uri.getQueryParameters()), time.now());
  }

  @POST
  @Path("/new")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response tell(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return press(typed).page(() -> told(typed), () -> tellPage(typed, happened(typed)));
  }

  private Press<AccidentId> press(Typed typed) {
    return presses.form(typed, AccidentId::new, accident -> "/accidents/" + accident.value());
  }

  private Outcome<AccidentId> told(Typed typed) {
    Optional<AccidentDetails> details = AccidentDetails.parse(typed, time);
    InHand.Subject subject =
        subject(typed, details.map(AccidentDetails::happened).orElse(time.now()));
    if (subject.session() && subject.rig() == null) {
      typed.fault("rig", TellAccident.WHICH_BOW);
    }
    return typed.sound() ? tellAccident.tell(subject, details.orElseThrow()) : Outcome.unread();
  }

  /** The moment that was typed; now, where none can be read. */
  private Instant happened(Typed typed) {
    return AccidentDetails.parse(Typed.of(typed.all()), time)
        .map(AccidentDetails::happened)
        .orElse(time.now());
  }

  private TellPage tellPage(Typed typed, Instant at) {
    InHand.Subject subject = subject(typed, at);
    boolean open = subject.session() && subject.rig() == null;
    return new TellPage(
        subject,
        open ? inHand.bowsOf(subject.loan()) : List.of(),
        open ? List.of() : inHand.of(subject, at),
        typed);
  }

  /** The bow where one is named, with the loan that it was out with then; else the loan. */
  private InHand.Subject subject(Typed typed, Instant at) {
    Integer rig = typed.whole("rig", 1, Integer.MAX_VALUE);
    Integer loan = typed.whole("loan", 1, Integer.MAX_VALUE);
    return rig != null
        ? inHand.ofRig(new RigId(rig), at).orElseThrow(() -> new NoSuchThing(FROM_WHERE))
        : inHand
            .ofLoan(new LoanId(loan == null ? 0 : loan))
            .orElseThrow(() -> new NoSuchThing(FROM_WHERE));
  }

  @GET
  @Path("/{id:\\d+}")
  public TemplateInstance accident(@RestPath long id) {
    return page(id, Typed.nothing());
  }

  @POST
  @Path("/{id:\\d+}/end")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response end(@RestPath long id, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    head(id);
    return press(typed)
        .page(
            () -> {
              String why = typed.reason("why", LONGEST_WHY, EndKeeping.WHY);
              return typed.sound() ? endKeeping.end(id, why) : Outcome.unread();
            },
            () -> page(id, typed));
  }

  private Accidents.Head head(long id) {
    return accidents.one(id).orElseThrow(() -> new NoSuchThing("There is no accident " + id + "."));
  }

  private AccidentPage page(long id, Typed typed) {
    Accidents.Head head = head(id);
    boolean names = actor.isOfficer();
    return new AccidentPage(
        names ? head : head.withoutNames(),
        histories.traced(accidents.things(id), names).entrySet().stream()
            .map(one -> new Traced(one.getKey(), one.getValue()))
            .toList(),
        names,
        Seal.shortened(sealed.newest().orElse(null)),
        time.now(),
        typed);
  }
}
