package club.ascham.report;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.ReportId;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
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
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;

/** What was noticed, is it dangerous, and what came of looking. */
@Path("/reports")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class ReportPages {
  private static final int ROWS_A_PAGE = 40;

  @CheckedTemplate(basePath = "report", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ReportsPage(
      List<Report> reports, long total, long open, int from, String earlier, String later)
      implements TemplateInstance {}

  /**
   * @param rig null: the form was begun from something else (likewise item and loan)
   */
  @CheckedTemplate(basePath = "report", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record NewReportPage(
      String name, String rig, String item, String loan, SignList signs, Typed typed)
      implements TemplateInstance {}

  /**
   * @param works where each part is inspected that a dangerous sign asks it of
   */
  @CheckedTemplate(basePath = "report", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ReportPage(Report report, ToAnswer answer, List<Inspection> works, Typed typed)
      implements TemplateInstance {}

  /** Where a part is inspected. */
  record Inspection(String label, String page) {}

  private final Reports reports;
  private final ReportDesk desk;
  private final TellReport tellReport;
  private final AnswerReport answerReport;
  private final ClubTime time;
  private final Presses presses;

  ReportPages(
      Reports reports,
      ReportDesk desk,
      TellReport tellReport,
      AnswerReport answerReport,
      ClubTime time,
      Presses presses) {
    this.reports = reports;
    this.desk = desk;
    this.tellReport = tellReport;
    this.answerReport = answerReport;
    this.time = time;
    this.presses = presses;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public TemplateInstance list(@Context UriInfo uri) {
    Integer asked = Forms.typed(uri.getQueryParameters()).whole("page", 1, 10_000);
    int page = asked == null ? 1 : asked;
    long total = reports.count(null);
    int from = (page - 1) * ROWS_A_PAGE;
    return new ReportsPage(
        reports.page(null, from, ROWS_A_PAGE),
        total,
        reports.count(true),
        from,
        page > 1 ? Reports.HOME + "?page=" + (page - 1) : null,
        from + ROWS_A_PAGE < total ? Reports.HOME + "?page=" + (page + 1) : null);
  }

  @GET
  @Path("/new")
  public TemplateInstance begin(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    ReportDesk.Subject subject = subject(typed);
    if (subject.item() != null) {
      typed.with("part", subject.item().code());
    }
    return page(subject, typed);
  }

  @POST
  @Path("/new")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response tell(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form, "signs");
    return press(typed)
        .page(
            () ->
                desk.read(typed, subject(typed))
                    .map(read -> tellReport.tell(read.telling(), read.about()))
                    .map(ReportPages::kept)
                    .orElseGet(Outcome::unread),
            () -> page(subject(typed), typed));
  }

  private Press<ReportId> press(Typed typed) {
    return presses.form(typed, ReportId::new, report -> Reports.page(report.value()));
  }

  private static Outcome<ReportId> kept(long report) {
    return Outcome.done(
        new ReportId(report), "Kept: it stays open until someone has looked and answers it.");
  }

  @GET
  @Path("/{id:\\d+}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public TemplateInstance one(@PathParam("id") long id) {
    return page(report(id), Typed.nothing());
  }

  @POST
  @Path("/{id:\\d+}/answer")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response answer(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    Report report = report(id);
    Typed typed = Forms.typed(form);
    return press(typed)
        .page(
            () ->
                Answering.required(typed, report.dangerous(), report.parts(), time.today())
                    .map(answering -> answerReport.answer(id, answering, null))
                    .orElseGet(Outcome::unread),
            () -> page(report(id), typed));
  }

  private ReportDesk.Subject subject(Typed typed) {
    Typed asked =
        Typed.nothing()
            .with("rig", typed.value("rig"))
            .with("item", typed.value("item"))
            .with("loan", typed.value("loan"));
    return desk.subject(asked)
        .orElseThrow(
            () ->
                new NoSuchThing(
                    asked.faults().values().iterator().next().message()
                        + " Begin from the bow's own page."));
  }

  private static NewReportPage page(ReportDesk.Subject subject, Typed typed) {
    return new NewReportPage(
        subject.name(),
        typed.value("rig"),
        typed.value("item"),
        typed.value("loan"),
        SignList.of(Telling.Fields.PLAIN, subject.among(), typed),
        typed);
  }

  private Report report(long id) {
    return reports.one(id).orElseThrow(() -> new NoSuchThing("There is no report " + id + "."));
  }

  private ReportPage page(Report report, Typed typed) {
    List<Inspection> works =
        !report.isOpen() || !report.dangerous()
            ? List.of()
            : report.parts().stream()
                .flatMap(
                    part ->
                        Remedy.of(part.kind(), report.signs()).stream()
                            .map(
                                work ->
                                    new Inspection(
                                        part.code() + ": " + work.said(),
                                        "/upkeep/" + part.code() + "/" + work.word())))
                .toList();
    return new ReportPage(
        report,
        new ToAnswer(
            report,
            Answering.Fields.PLAIN,
            report.parts(),
            answerReport.mayAnswer(report.dangerous()),
            typed),
        works,
        typed);
  }
}
