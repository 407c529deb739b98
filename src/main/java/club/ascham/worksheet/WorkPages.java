package club.ascham.worksheet;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.id.WorkId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.report.AnswerReport;
import club.ascham.report.Answering;
import club.ascham.report.Report;
import club.ascham.report.Reports;
import club.ascham.report.ToAnswer;
import club.ascham.setup.PermitAhead;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Due;
import club.ascham.upkeep.DueWork;
import club.ascham.upkeep.Request;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Doing one piece of work on one item, or asking for it. */
@Path("/upkeep/{code}")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class WorkPages {
  /** A kind of work to choose. */
  public record WorkOption(String value, String label) {}

  @CheckedTemplate(basePath = "worksheet", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record InspectionPage(
      Subject subject,
      InspectionList list,
      Due due,
      boolean maySign,
      List<ToAnswer> told,
      Typed typed,
      String refusal)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "worksheet", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ReplacementPage(
      Subject subject,
      Due due,
      boolean asked,
      Spares.Choice choice,
      String permitAhead,
      Typed typed,
      String refusal)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "worksheet", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record AskPage(Subject subject, List<WorkOption> works, Typed typed)
      implements TemplateInstance {}

  private final Subjects subjects;
  private final DueWork dueWork;
  private final Spares spares;
  private final InspectItem inspectItem;
  private final ReplaceString replaceString;
  private final KeepString keepString;
  private final Reports reports;
  private final AnswerReport answerReport;
  private final AskForWork askForWork;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  WorkPages(
      Subjects subjects,
      DueWork dueWork,
      Spares spares,
      InspectItem inspectItem,
      ReplaceString replaceString,
      KeepString keepString,
      Reports reports,
      AnswerReport answerReport,
      AskForWork askForWork,
      Actor actor,
      ClubTime time,
      Presses presses) {
    this.subjects = subjects;
    this.dueWork = dueWork;
    this.spares = spares;
    this.inspectItem = inspectItem;
    this.replaceString = replaceString;
    this.keepString = keepString;
    this.reports = reports;
    this.answerReport = answerReport;
    this.askForWork = askForWork;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
  }

  @GET
  @Path("/ask")
  public TemplateInstance ask(@RestPath ItemCode code, @RestQuery String work) {
    Subject subject = subject(code);
    List<WorkOption> works = works(subject);
    Typed typed = Typed.nothing().with("blocks", "on").with("work", work);
    if (works.size() == 1) {
      typed.with("work", works.get(0).value());
    }
    return new AskPage(subject, works, typed);
  }

  @POST
  @Path("/ask")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response sendAsk(@RestPath ItemCode code, MultivaluedMap<String, String> form) {
    Subject subject = subject(code);
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, ItemId::new, item -> "/upkeep")
        .page(
            () ->
                Request.parse(typed, subject.kind())
                    .filter(request -> !subject.isRetired())
                    .map(request -> asked(subject, request))
                    .orElseGet(Outcome::unread),
            () -> new AskPage(subject, works(subject), typed));
  }

  private Outcome<ItemId> asked(Subject subject, Request request) {
    askForWork.ask(subject.id(), request, time.now());
    return Outcome.done(
        subject.id(),
        request.work().capital()
            + " of "
            + subject.code()
            + " is asked for"
            + (request.blocks() ? ": it stays in until it is done." : "."));
  }

  @GET
  @Path("/{work}")
  public TemplateInstance work(@RestPath ItemCode code, @RestPath String work) {
    Subject subject = subject(code);
    return page(subject, work(subject, work), Typed.nothing(), null);
  }

  @POST
  @Path("/{work}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response done(
      @RestPath ItemCode code, @RestPath String work, MultivaluedMap<String, String> form) {
    Subject subject = subject(code);
    Work todo = work(subject, work);
    Typed typed = Forms.typed(form);
    Response answer =
        presses
            .form(typed, WorkId::new, record -> "/upkeep/records/" + record.value())
            .page(
                () ->
                    todo.isInspection()
                        ? inspected(subject, todo, typed)
                        : replaced(subject, typed),
                // What is said of the item as a whole stands above the form.
                () -> page(subject(code), todo, typed, typed.messageAt("item")));
    return InspectItem.NOT_YOURS.equals(typed.messageAt("item"))
        ? Response.fromResponse(answer).status(Response.Status.FORBIDDEN).build()
        : answer;
  }

  private Outcome<WorkId> inspected(Subject subject, Work work, Typed typed) {
    InspectionList list = subject.list(work);
    return Inspection.parse(typed, subject, list, reports.openOf(subject.id()), time)
        .map(inspection -> inspectItem.inspect(subject, list, inspection))
        .orElseGet(Outcome::unread);
  }

  private Outcome<WorkId> replaced(Subject subject, Typed typed) {
    if (typed.ticked("stays")) {
      String found = typed.reason("found", KeepString.LONGEST, KeepString.WHAT);
      return typed.sound() && !subject.isRetired()
          ? keepString.keep(subject, found)
          : Outcome.unread();
    }
    return Replacement.parse(typed, time.today())
        .map(made -> replaceString.replace(new ItemCode(subject.bareCode()), made))
        .orElseGet(Outcome::unread);
  }

  private TemplateInstance page(Subject subject, Work work, Typed typed, String refusal) {
    List<Due> waiting = dueWork.of(subject.id()).stream().filter(d -> d.work() == work).toList();
    Due due = waiting.isEmpty() ? null : waiting.get(0);
    if (work.isInspection()) {
      return new InspectionPage(
          subject,
          subject.list(work),
          due,
          actor.role() != Role.COMMITTEE && inspectItem.maySign(work),
          reports.openOf(subject.id()).stream()
              .map(report -> toAnswer(report, subject, typed))
              .toList(),
          typed,
          refusal);
    }
    String refused = refusal != null ? refusal : ReplaceString.refusal(subject).orElse(null);
    Spares.Choice choice =
        subject.rig() == null
            ? new Spares.Choice(List.of(), 0, null, null)
            : spares.forRig(subject.rig());
    // A rule may ask for it as well, and from a day before.
    boolean asked = waiting.stream().anyMatch(Due::asked);
    String permitAhead =
        choice.rig() == null ? null : PermitAhead.of(choice.rig(), actor.holdsPermit(time.today()));
    return new ReplacementPage(subject, due, asked, choice, permitAhead, typed, refused);
  }

  private ToAnswer toAnswer(Report report, Subject subject, Typed typed) {
    return new ToAnswer(
        report,
        Answering.Fields.of(Long.toString(report.id())),
        report.parts().stream().filter(part -> part.item().equals(subject.id())).toList(),
        answerReport.mayAnswer(report.dangerous()),
        typed);
  }

  private Subject subject(ItemCode code) {
    return subjects
        .coded(code)
        .orElseThrow(() -> new NoSuchThing("The club has no item " + code.display() + "."));
  }

  private static Work work(Subject subject, String word) {
    return Arrays.stream(Work.values())
        .filter(work -> Words.of(work).equals(word) && work.isFor(subject.kind()))
        .findFirst()
        .orElseThrow(
            () -> new NoSuchThing("There is no such work to be done on " + subject.code() + "."));
  }

  private static List<WorkOption> works(Subject subject) {
    return Arrays.stream(Work.values())
        .filter(work -> !subject.isRetired() && work.isFor(subject.kind()))
        .map(work -> new WorkOption(work.word(), work.said()))
        .toList();
  }
}
