package club.ascham.setup;

import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.SetUpStep;
import club.ascham.bow.Who;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.drawing.FigureWords;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.rig.Obstacle;
import club.ascham.rig.PartWords;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigPages;
import club.ascham.rig.RigRecords;
import club.ascham.rig.RigRow;
import club.ascham.rig.SetUpProgress;
import club.ascham.rig.StepsDone;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthUnit;
import club.ascham.web.Forms;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The set-up sheet that leads the bench: one step at a time, in the safe order. */
@Path("/rigs/{id:\\d+}/set-up")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class SheetPages {

  /** A step that was done, with what was written down at it. */
  record Done(SetUpStep step, String saved, String again) {}

  /**
   * The step to be done now.
   *
   * @param again whether it was done before and is done once more
   * @param allowed whether this person may do it
   */
  record Now(
      SetUpStep step,
      int number,
      String word,
      String large,
      String small,
      String who,
      boolean again,
      boolean allowed) {

    public boolean strung() {
      return SetUpEntry.needsString(step.key());
    }

    /** A bow that waited for the permit holder waited with its string off. */
    public boolean afterWaiting() {
      return !again && step.who() == Who.PERMIT_HOLDER;
    }

    /** Which fields the step has; empty: none, only the press. */
    public String figure() {
      return step.figure()
          .map(
              figure ->
                  switch (figure) {
                    case BRACE -> "brace";
                    case TILLER_UPPER_AND_LOWER -> "tiller";
                    case NOCKING -> "nocking";
                    case LOCKING_SCREWS_SEEN -> "screws";
                  })
          .orElse("");
    }
  }

  /**
   * @param open null: no set-up is begun
   * @param now null: every step is done
   * @param laterFrom the number of the first step that comes later
   * @param permitAhead at which step this person stops for want of the permit; null: at none
   * @param lacking what keeps the set-up from being finished once every step is done
   */
  @CheckedTemplate(basePath = "setup", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SetUpPage(
      RigRow row,
      String path,
      String facts,
      boolean whole,
      Against against,
      RigRecords.OpenSetUp open,
      List<Done> done,
      Now now,
      List<SetUpStep> later,
      int laterFrom,
      int steps,
      String permitAhead,
      List<Obstacle> lacking,
      Fields fields,
      Typed typed)
      implements TemplateInstance {}

  /**
   * What the fields of this rig need.
   *
   * @param unit that lengths are read in where none is typed
   * @param bolts what is seen at the bolts; empty: it has none
   */
  record Fields(
      String unit,
      boolean adjusts,
      String bolts,
      String braceGauge,
      String tillerGauge,
      String nockingGauge) {}

  private final RigRecords records;
  private final Concerns concerns;
  private final SetUpWork work;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  SheetPages(
      RigRecords records,
      Concerns concerns,
      SetUpWork work,
      Actor actor,
      ClubTime time,
      Presses presses) {
    this.records = records;
    this.concerns = concerns;
    this.work = work;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
  }

  /**
   * @param step the word of a done step that is to be done once more
   */
  @GET
  public TemplateInstance sheet(@PathParam("id") long id, @QueryParam("step") String step) {
    return page(new RigId(id), Typed.nothing().with("step", step));
  }

  @POST
  @Path("/begin")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response begin(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    RigId rig = new RigId(id);
    return led(rig, Forms.typed(form), path(rig) + "/set-up", () -> work.begin(rig));
  }

  @POST
  @Path("/step")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response step(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    RigId rig = new RigId(id);
    Typed typed = Forms.typed(form);
    return led(rig, typed, path(rig) + "/set-up", () -> stepDone(rig, typed));
  }

  private Outcome<RigId> stepDone(RigId rig, Typed typed) {
    List<SetUpStep> sheet = records.known(rig).card().sheet();
    SetUpEntry entry =
        SetUpEntry.parse(typed.with("stepsDone", typed.value("step")), actor.unit(), sheet);
    Optional<SetUpStep> step =
        sheet.stream().filter(s -> entry.steps().contains(s.key())).findFirst();
    step.flatMap(SetUpStep::figure).ifPresent(figure -> entry.require(figure, typed));
    if (step.isEmpty()) {
      typed.fault(Obstacle.WHOLE, "Which step was done? Go on from the one below.");
    }
    return typed.sound()
        ? written(
            rig,
            typed,
            entry,
            step.get().title() + ": " + SavedFigure.said(step.get(), entry.figures()) + ".")
        : Outcome.unread();
  }

  @POST
  @Path("/paper")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response paper(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    RigId rig = new RigId(id);
    Typed typed = Forms.typed(form);
    return led(rig, typed, path(rig) + "/set-up", () -> fromPaper(rig, typed));
  }

  private Outcome<RigId> fromPaper(RigId rig, Typed typed) {
    if (!typed.ticked("everyStep")) {
      typed.fault("everyStep", "Tick it if every step was done; else do the steps here.");
    }
    List<SetUpStep> sheet = records.known(rig).card().sheet();
    SetUpEntry entry = SetUpEntry.parse(typed.with("stepsDone", "all"), actor.unit(), sheet);
    sheet.forEach(step -> step.figure().ifPresent(figure -> entry.require(figure, typed)));
    return typed.sound() ? written(rig, typed, entry, "Entered from paper.") : Outcome.unread();
  }

  @POST
  @Path("/finish")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response finish(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    RigId rig = new RigId(id);
    Typed typed = Forms.typed(form);
    return led(rig, typed, path(rig), () -> work.finish(rig, typed.version()));
  }

  @POST
  @Path("/give-up")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response giveUp(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    RigId rig = new RigId(id);
    return led(rig, Forms.typed(form), path(rig), () -> work.giveUp(rig));
  }

  private Outcome<RigId> written(RigId rig, Typed typed, SetUpEntry entry, String said) {
    Outcome<RigId> outcome = work.write(rig, entry, typed.version());
    return outcome instanceof Outcome.Done ? Outcome.done(rig, said) : outcome;
  }

  private Response led(RigId rig, Typed typed, String onwards, Supplier<Outcome<RigId>> press) {
    return presses
        .form(typed, RigId::new, made -> onwards)
        .whole(Obstacle.WHOLE)
        .page(() -> ofTheWhole(press.get()), () -> page(rig, typed));
  }

  /** At the foot of the sheet nothing is typed: each reason is said of the whole. */
  private static Outcome<RigId> ofTheWhole(Outcome<RigId> outcome) {
    return outcome instanceof Outcome.Refused<RigId> refused
        ? Outcome.refused(
            refused.why().stream().map(one -> new Refusal(Obstacle.WHOLE, one.words())).toList())
        : outcome;
  }

  private static String path(RigId rig) {
    return RigPages.page(rig);
  }

  private TemplateInstance page(RigId rig, Typed typed) {
    RigRow row = records.known(rig);
    RigCard card = row.card();
    RigRecords.OpenSetUp open = records.openSetUp(rig).orElse(null);
    SetUpProgress progress =
        new SetUpProgress(card.sheet(), open == null ? StepsDone.of("") : open.done());
    SetUpStep now = open == null ? null : now(progress, typed).orElse(null);
    if (!typed.has("braceFrom")) {
      records.lastBracePoint(rig).ifPresent(point -> typed.with("braceFrom", Words.of(point)));
    }
    Against against = concerns.of(rig).without(List.of(Matter.NOT_SET_UP));
    List<SetUpStep> later = progress.undone().stream().filter(step -> step != now).toList();
    return new SetUpPage(
        row,
        path(rig),
        card.spec().map(PartWords::rig).orElse(""),
        card.isWhole(),
        against,
        open,
        progress.sheet().stream()
            .filter(step -> progress.done().has(step.key()))
            .map(step -> done(step, open, rig))
            .toList(),
        now == null ? null : now(now, progress, card, open),
        later,
        later.isEmpty() ? 0 : progress.number(later.get(0)),
        progress.sheet().size(),
        PermitAhead.of(progress, actor.holdsPermit(time.today())),
        now != null || open == null || card.spec().isEmpty()
            ? List.of()
            : Obstacle.unstrung(against)
                .map(List::of)
                .orElseGet(
                    () ->
                        SetUpFinish.refusals(
                            card.spec().get(), card.benchTargets(), open.figures(), progress)),
        fields(card),
        typed);
  }

  private Fields fields(RigCard card) {
    String gauge = path(card.id()) + "/gauge?quantity=";
    return new Fields(
        actor.unit() == LengthUnit.INCH ? "in" : "mm",
        card.spec().map(RigSpec::tillerAdjusts).orElse(false),
        card.spec()
            .map(
                spec ->
                    switch (spec.build()) {
                      case ADJUSTABLE -> "Both locking screws are there and tight";
                      case SCREW_IN -> "Both limb bolts are home and hand-tight, washers in place";
                      case ONE_PIECE -> "";
                    })
            .orElse(""),
        gauge + "brace",
        gauge + "tiller&with=tillerUpper",
        gauge + "nocking");
  }

  /** The step asked for where it was done before, else the first that is not. */
  private static Optional<SetUpStep> now(SetUpProgress progress, Typed typed) {
    return progress.sheet().stream()
        .filter(step -> Words.of(step.key()).equals(typed.value("step")))
        .filter(step -> progress.done().has(step.key()))
        .findFirst()
        .or(progress::next);
  }

  private Now now(SetUpStep step, SetUpProgress progress, RigCard card, RigRecords.OpenSetUp open) {
    StepTarget target = StepTarget.of(step, card.benchTargets(), open.figures(), actor.unit());
    return new Now(
        step,
        progress.number(step),
        Words.of(step.key()),
        target.large(),
        target.small(),
        switch (step.who()) {
          case VOLUNTEER -> "Any volunteer may do this.";
          case PERMIT_HOLDER -> "Only for someone who holds the permit for limb bolts.";
          case COACH -> "With the coach and the archer.";
        },
        progress.done().has(step.key()),
        step.who() != Who.PERMIT_HOLDER || actor.holdsPermit(time.today()));
  }

  private static Done done(SetUpStep step, RigRecords.OpenSetUp open, RigId rig) {
    return new Done(
        step,
        SavedFigure.said(step, open.figures()),
        path(rig) + "/set-up?step=" + Words.of(step.key()));
  }

  /** What is written down at a step, said back. */
  private static final class SavedFigure {
    private SavedFigure() {}

    static String said(SetUpStep step, SetUpFigures figures) {
      return step.figure()
          .map(
              figure ->
                  switch (figure) {
                    case BRACE -> figures.brace() == null ? "done" : FigureWords.brace(figures);
                    case TILLER_UPPER_AND_LOWER ->
                        figures.tillerUpper() == null ? "done" : FigureWords.tiller(figures);
                    case NOCKING ->
                        figures.nocking() == null ? "done" : FigureWords.nocking(figures);
                    case LOCKING_SCREWS_SEEN -> "seen";
                  })
          .orElse("done");
    }
  }
}
