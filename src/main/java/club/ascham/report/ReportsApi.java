package club.ascham.report;

import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.ReportId;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
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
import java.time.LocalDate;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Reports as JSON. */
@Path("/api/reports")
@Produces(MediaType.APPLICATION_JSON)
@Tag(
    name = "Reports",
    description = "What people tell of a bow: open until someone has looked and answers")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class ReportsApi {

  /** A sign with what it may mean. */
  record SignShape(String sign, String said, String mayMean, boolean dangerous) {}

  /** What came of looking. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record AnswerShape(
      String answer,
      String words,
      Instant at,
      String by,
      LocalDate watchUntil,
      Long check,
      Long inspection) {}

  /**
   * A report; what is not known is left out.
   *
   * @param parts the codes of what it stands against
   * @param doNow what whoever has it in hand does at once
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record ReportShape(
      long id,
      RigId rig,
      Long loan,
      Long receipt,
      String toldAt,
      Instant happenedAt,
      Instant recordedAt,
      String toldTo,
      boolean partKnown,
      List<String> parts,
      List<SignShape> signs,
      String words,
      boolean dangerous,
      boolean open,
      List<String> doNow,
      AnswerShape answer) {
    static ReportShape of(Report report) {
      return new ReportShape(
          report.id(),
          report.rig(),
          report.loan() == null ? null : report.loan().value(),
          report.receipt(),
          Words.of(report.toldAt()),
          report.happenedAt(),
          report.recordedAt(),
          report.toldTo(),
          report.partKnown(),
          report.parts().stream().map(PartChoice::code).toList(),
          report.signs().stream()
              .map(s -> new SignShape(s.word(), s.said(), s.mayMean(), s.isDangerous()))
              .toList(),
          report.words(),
          report.dangerous(),
          report.isOpen(),
          report.cautions(),
          report.isOpen()
              ? null
              : new AnswerShape(
                  report.answerWord(),
                  report.answerWords(),
                  report.answeredAt(),
                  report.answeredBy(),
                  report.watchUntil(),
                  report.check(),
                  report.record()));
    }
  }

  record Page(List<ReportShape> items, int page, int size, long total) {}

  /**
   * What somebody tells, of a rig, an item or a loan.
   *
   * @param rig its number, or the code of any part of it
   * @param item a code
   * @param part the code of the part it is about, or not-known
   * @param on the day it was noticed; left out: now
   * @param notSo true: no sign belongs to what the words sound like
   */
  record TellBody(
      String rig,
      String item,
      Long loan,
      List<String> signs,
      String words,
      String part,
      Boolean notSo,
      String on,
      String onceKey) {}

  /**
   * An answer.
   *
   * @param answer nothing-there, stop or watch
   * @param part of several, the one that is stopped
   * @param until the last day of being watched, at most a year ahead
   */
  record AnswerBody(String answer, String words, String part, String until, String onceKey) {}

  private final Reports reports;
  private final ReportDesk desk;
  private final TellReport tellReport;
  private final AnswerReport answerReport;
  private final ClubTime time;
  private final Presses presses;

  ReportsApi(
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
  @Operation(summary = "Reports, the open ones first; with open=true those alone")
  public Page list(
      @RestQuery Boolean open,
      @RestQuery @DefaultValue("1") int page,
      @RestQuery @DefaultValue("40") int size) {
    PageAsked asked = PageAsked.nearest(page, size);
    return new Page(
        reports.page(open, asked.skipped(), asked.size()).stream().map(ReportShape::of).toList(),
        asked.page(),
        asked.size(),
        reports.count(open));
  }

  @GET
  @Path("/{id:\\d+}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "One report with its answer")
  public ReportShape one(@RestPath long id) {
    return ReportShape.of(report(id));
  }

  private Report report(long id) {
    return reports.one(id).orElseThrow(() -> new NoSuchThing("There is no report " + id + "."));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Tell what was noticed of a bow; a dangerous sign keeps it in at once")
  @RequestBody(
      content =
          @Content(
              examples = {
                @ExampleObject(
                    name = "a noise, told by telephone",
                    value =
                        "{\"loan\": 31, \"signs\": [\"creak\"], \"words\": \"At full draw, since"
                            + " Sunday.\", \"part\": \"not-known\"}"),
                @ExampleObject(
                    name = "the serving, of a named string",
                    value =
                        "{\"rig\": \"R-0105-6\", \"signs\": [\"serving\"], \"part\": \"string\"}")
              }))
  @APIResponse(responseCode = "201", description = "Kept; it is open until someone answers it")
  @APIResponse(responseCode = "422", description = "Nothing is ticked, or can't be read")
  public Response tell(TellBody body) {
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, ReportId::new)
        .at(report -> "/api/reports/" + report.value())
        .json(
            201,
            () ->
                desk.subject(typed)
                    .flatMap(subject -> desk.read(typed, subject))
                    .map(read -> new ReportId(tellReport.tell(read.telling(), read.about())))
                    .map(Outcome::done)
                    .orElseGet(Outcome::unread),
            report -> one(report.value()));
  }

  @POST
  @Path("/{id:\\d+}/answer")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Answer it after looking; a dangerous one is for a permit holder")
  @RequestBody(
      content =
          @Content(
              examples = {
                @ExampleObject(
                    name = "nothing there",
                    value =
                        "{\"answer\": \"nothing-there\", \"words\": \"Both limbs looked over in"
                            + " daylight.\"}"),
                @ExampleObject(
                    name = "watched",
                    value =
                        "{\"answer\": \"watch\", \"words\": \"A hair line in the lacquer.\","
                            + " \"until\": \"2027-03-31\"}")
              }))
  @APIResponse(responseCode = "200", description = "Answered")
  @APIResponse(responseCode = "403", description = "It is dangerous, and for a permit holder")
  @APIResponse(responseCode = "409", description = "Someone has answered it already")
  @APIResponse(responseCode = "422", description = "Some answers are missing or can't be read")
  public Response answer(@RestPath long id, AnswerBody body) {
    Report report = report(id);
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, ReportId::new)
        .json(
            200,
            () ->
                Answering.required(typed, report.dangerous(), report.parts(), time.today())
                    .map(answering -> answerReport.answer(id, answering, null))
                    .orElseGet(Outcome::unread),
            answered -> one(id));
  }
}
