package club.ascham.worksheet;

import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.WorkId;
import club.ascham.people.Role;
import club.ascham.report.ReportAnswer;
import club.ascham.report.Reports;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** Inspections as JSON. */
@Path("/api/inspections")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Inspections", description = "Looking an item over by its list, and signing it")
class InspectionsApi {
  /** One page of inspections, newest first. */
  public record InspectionPageJson(List<WorkJson> items, int page, int size, long total) {}

  /** The list of looks for one item. */
  public record ListJson(
      String code, String work, String signedBy, List<String> cautions, List<Look> looks) {}

  /**
   * An inspection.
   *
   * @param seen {@code fine}, {@code note} or {@code stop} for the key of each look
   * @param on the day it was done; left out: now
   * @param reports by the number of an open report of the item, what is answered to it
   */
  public record InspectionBody(
      String item,
      String work,
      Map<String, String> seen,
      String upperTurnsOut,
      String lowerTurnsOut,
      String words,
      String partsUsed,
      String on,
      Map<String, ReportAnswer> reports,
      String onceKey) {}

  private final Subjects subjects;
  private final Reports reports;
  private final WorkRecords records;
  private final InspectItem inspectItem;
  private final ClubTime time;
  private final Presses presses;

  InspectionsApi(
      Subjects subjects,
      Reports reports,
      WorkRecords records,
      InspectItem inspectItem,
      ClubTime time,
      Presses presses) {
    this.subjects = subjects;
    this.reports = reports;
    this.records = records;
    this.inspectItem = inspectItem;
    this.time = time;
    this.presses = presses;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Inspections, newest first")
  public Response list(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    PageAsked asked = PageAsked.parse(typed);
    if (!typed.sound()) {
      return Problem.of(typed);
    }
    return Response.ok(
            new InspectionPageJson(
                records.page(false, asked.page(), asked.size()).stream().map(WorkJson::of).toList(),
                asked.page(),
                asked.size(),
                records.count(false)))
        .build();
  }

  @GET
  @Path("/{id}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "One inspection")
  public WorkJson one(@RestPath long id) {
    return records
        .record(id)
        .filter(done -> done.work().isInspection())
        .map(WorkJson::of)
        .orElseThrow(() -> new NoSuchThing("There is no inspection " + id + "."));
  }

  @GET
  @Path("/lists/{code}/{work}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(
      summary = "What to look at in an inspection of one item: the keys that seen must answer")
  public Response looks(@RestPath String code, @RestPath String work) {
    Typed typed = Typed.nothing().with("item", code).with("work", work);
    Subject subject = subject(typed);
    Work todo = work(typed, subject);
    if (!typed.sound()) {
      return Problem.of(typed);
    }
    InspectionList list = subject.list(todo);
    return Response.ok(
            new ListJson(
                subject.code(),
                todo.word(),
                Words.of(todo.signedBy()),
                list.cautions(),
                list.looks()))
        .build();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
  @Operation(summary = "Sign an inspection; one stop withdraws the item")
  @RequestBody(
      content =
          @Content(
              schema = @Schema(implementation = InspectionBody.class),
              examples = {
                @ExampleObject(
                    name = "limb bolts, passed",
                    value =
                        "{\"item\": \"R-0101-E\", \"work\": \"bolt-inspection\", \"seen\":"
                            + " {\"turns\": \"fine\", \"alike\": \"fine\", \"thread\": \"fine\","
                            + " \"lockingScrew\": \"note\", \"washer\": \"fine\", \"seat\":"
                            + " \"fine\"}, \"upperTurnsOut\": \"2\", \"lowerTurnsOut\": \"2 1/4\","
                            + " \"words\": \"Upper locking screw was loose: tightened.\"}"),
                @ExampleObject(
                    name = "stringer, failed",
                    value =
                        "{\"item\": \"T-0031-K\", \"work\": \"stringer-inspection\", \"seen\":"
                            + " {\"cord\": \"stop\", \"stitching\": \"fine\", \"saddle\": \"fine\","
                            + " \"fit\": \"fine\"}, \"words\": \"Cord frayed to a third.\"}")
              }))
  @APIResponse(responseCode = "201", description = "Signed; result is passed or failed")
  @APIResponse(responseCode = "403", description = "Limb bolts are signed by a permit holder")
  @APIResponse(responseCode = "422", description = "Some answers are missing or can't be read")
  public Response inspect(InspectionBody body) {
    Typed typed = typed(body);
    return presses
        .body(body, typed, WorkId::new)
        .at(record -> "/api/inspections/" + record.value())
        .json(201, () -> signed(typed), record -> one(record.value()));
  }

  private Outcome<WorkId> signed(Typed typed) {
    Subject subject = subject(typed);
    Work work = work(typed, subject);
    if (!typed.sound()) {
      return Outcome.unread();
    }
    InspectionList list = subject.list(work);
    return Inspection.parse(typed, subject, list, reports.openOf(subject.id()), time)
        .map(inspection -> inspectItem.inspect(subject, list, inspection))
        .orElseGet(Outcome::unread);
  }

  private static Typed typed(InspectionBody body) {
    Typed typed = Typed.of(body);
    if (body != null) {
      ReportAnswer.into(typed, body.reports());
      if (body.seen() != null) {
        body.seen().forEach(typed::with);
      }
    }
    return typed;
  }

  /** Null, with the fault at its field, where there is none. */
  private Subject subject(Typed typed) {
    ItemCode code = typed.code("item");
    if (code == null) {
      typed.fault("item", "The code of the item, please.");
      return null;
    }
    Subject subject = subjects.coded(code).orElse(null);
    if (subject == null) {
      typed.fault("item", "The club has no item " + code.display() + ".");
    } else if (subject.isRetired()) {
      typed.fault("item", "That item is retired.");
    }
    return subject;
  }

  private static Work work(Typed typed, Subject subject) {
    Work work = typed.requiredWord("work", Work.class, "Which inspection?");
    if (work != null && subject != null && (!work.isInspection() || !work.isFor(subject.kind()))) {
      typed.fault("work", "There is no such inspection of " + subject.code() + ".");
    }
    return work;
  }
}
