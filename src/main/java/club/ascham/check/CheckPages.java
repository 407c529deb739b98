package club.ascham.check;

import club.ascham.assembly.CorrectParts;
import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.Gauge;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.CheckId;
import club.ascham.id.Made;
import club.ascham.id.RigId;
import club.ascham.measured.Measurement;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.rig.AdviceOverridden;
import club.ascham.rig.RigCard;
import club.ascham.rig.Trends;
import club.ascham.units.ItemCode;
import club.ascham.verdict.Reading;
import club.ascham.web.Forms;
import club.ascham.web.Go;
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
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;

/** The queue of bows to be checked, and the one page on which a check is made. */
@Path("/check")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class CheckPages {
  static final String HOME = "/check";

  @CheckedTemplate(basePath = "check", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record QueuePage(List<Queue.Waiting> waiting, List<Queue.Waiting> kept, Typed typed)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "check", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record CheckPage(CheckView view, Typed typed) implements TemplateInstance {}

  @CheckedTemplate(basePath = "check", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record GaugeFragment(List<Gauge> gauges, Trends.Shown trend) implements TemplateInstance {}

  private final CheckDesk desk;
  private final Queue queue;
  private final RecordCheck recordCheck;
  private final AfterCheck afterCheck;
  private final Strangers strangers;
  private final CorrectParts correctParts;
  private final Trends trends;
  private final Judging judging;
  private final Actor actor;
  private final Presses presses;

  CheckPages(
      CheckDesk desk,
      Queue queue,
      RecordCheck recordCheck,
      AfterCheck afterCheck,
      Strangers strangers,
      CorrectParts correctParts,
      Trends trends,
      Judging judging,
      Actor actor,
      Presses presses) {
    this.desk = desk;
    this.queue = queue;
    this.recordCheck = recordCheck;
    this.afterCheck = afterCheck;
    this.strangers = strangers;
    this.correctParts = correctParts;
    this.trends = trends;
    this.judging = judging;
    this.actor = actor;
    this.presses = presses;
  }

  static String page(RigId rig) {
    return HOME + "/" + rig.value();
  }

  static String verdictPage(RigId rig, long check) {
    return page(rig) + "/" + check;
  }

  static String secondMeasurement(RigId rig, long adjustment) {
    return page(rig) + "?adjustment=" + adjustment;
  }

  static String afterALook(RigId rig, long check) {
    return page(rig) + "?looked=" + check;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public TemplateInstance queue() {
    return queuePage(Typed.nothing());
  }

  private QueuePage queuePage(Typed typed) {
    List<Queue.Waiting> all = queue.today();
    return new QueuePage(
        all.stream().filter(Queue.Waiting::isForChecking).toList(),
        all.stream().filter(waiting -> !waiting.isForChecking()).toList(),
        typed);
  }

  @GET
  @Path("/find")
  public Response find(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    ItemCode code = typed.code("code");
    if (code != null) {
      Optional<RigId> rig = strangers.rigOf(code);
      if (rig.isPresent()) {
        return Go.to(page(rig.get()));
      }
      typed.fault(
          "code",
          strangers
              .with(code)
              .map(item -> item.code() + " is not fitted to a bow.")
              .orElse("The club has nothing with the code " + code.display() + "."));
    } else if (typed.sound()) {
      typed.fault("code", "The code of any part of the bow, please.");
    }
    return Go.again(queuePage(typed));
  }

  @GET
  @Path("/{rig:\\d+}")
  public Response check(
      @PathParam("rig") long rig,
      @RestQuery Long adjustment,
      @RestQuery Long corrects,
      @RestQuery Long looked,
      @RestQuery String anew) {
    RigId id = new RigId(rig);
    if (adjustment == null && corrects == null && looked == null && anew == null) {
      Optional<String> acted = queue.toBeActedOn(id).map(Queue.Waiting::page);
      if (acted.isPresent()) {
        return Go.to(acted.get());
      }
    }
    CheckView view = desk.fresh(id, adjustment, corrects, looked);
    return Response.ok(new CheckPage(view, view.typed())).build();
  }

  @POST
  @Path("/{rig:\\d+}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response save(@PathParam("rig") long rig, MultivaluedMap<String, String> form) {
    RigCard card = desk.card(new RigId(rig));
    Typed typed = Forms.typed(form, "parts", "signs");
    String answer = typed.value("strangerAnswer");
    boolean exchanged = answer.equals(Words.of(StrangerAnswer.EXCHANGED));
    boolean corrects = exchanged || answer.equals(Words.of(StrangerAnswer.CORRECT_RECORD));
    return presses
        .<Made>formOf(
            typed,
            (kind, id) -> kind.equals("check") ? new CheckId(id) : new RigId(id),
            made ->
                made instanceof CheckId
                    ? verdictPage(card.id(), made.value())
                    : "/rigs/" + made.value())
        .whole(corrects ? "strangerAnswer" : null)
        .page(
            () ->
                corrects
                    ? Outcome.of(correct(card, typed, exchanged))
                    : Outcome.of(recordCheck.check(card, typed)),
            done -> {
              if (done.made() instanceof CheckId check) {
                afterCheck.look(check);
                return Go.to(verdictPage(card.id(), check.value()));
              }
              return Go.to("/rigs/" + done.made().value(), done.said());
            },
            () -> new CheckPage(desk.view(card, typed), typed));
  }

  /** What was found is true: there is no check until the bow is set up as it now is. */
  private Outcome<RigId> correct(RigCard card, Typed typed, boolean exchanged) {
    ItemCode code = typed.code("stranger");
    if (code == null) {
      typed.fault("stranger", "The code that is on it, please.");
      return Outcome.unread();
    }
    AgainstAdvice given = AdviceOverridden.parse(typed);
    if (!typed.sound()) {
      return Outcome.unread();
    }
    Outcome<RigId> outcome =
        correctParts.correct(card.id(), code, exchanged, typed.version(), given);
    // Why a bow that is out stays so has answers of its own; all else is about this one.
    return outcome instanceof Outcome.Refused<RigId> refused
        ? Outcome.refused(
            refused.why().stream()
                .map(
                    one ->
                        new Refusal(
                            AgainstAdvice.isAnswer(one.field()) ? one.field() : "strangerAnswer",
                            one.words()))
                .toList())
        : outcome;
  }

  /** What the script shows under a reading once it is typed. */
  @GET
  @Path("/{rig:\\d+}/gauge")
  public Response gauge(@PathParam("rig") long rig, @Context UriInfo uri) {
    RigCard card = desk.card(new RigId(rig));
    if (!Judging.isPossible(card)) {
      throw new NoSuchThing(RecordCheck.NOT_SET_UP);
    }
    Typed typed = Forms.typed(uri.getQueryParameters());
    Measurement last =
        Measurement.READING.stream()
            .filter(one -> one.field().equals(typed.value("quantity")))
            .findFirst()
            .orElseThrow(() -> new NoSuchThing("There is no gauge for that."));
    typed
        .with(last.field(), typed.value("value"))
        .with(last.field() + "-unit", typed.value("unit"));
    Reading now = Measurement.reading(typed, actor.unit(), "");
    List<Gauge> gauges = BowGauges.typed(card, judging.scatter(), last, now);
    return gauges.isEmpty()
        ? Response.noContent().build()
        : Response.ok(new GaugeFragment(gauges, trend(card, last, now)))
            .type(MediaType.TEXT_HTML)
            .build();
  }

  /** How this reading goes on from those before; null where it does not say. */
  private Trends.Shown trend(RigCard card, Measurement last, Reading now) {
    return switch (last) {
      case BRACE -> trends.with(card, now.brace(), null);
      case TILLER_LOWER -> now.tiller() == null ? null : trends.with(card, null, now.tiller());
      default -> null;
    };
  }
}
