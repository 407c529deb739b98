package club.ascham.exchange;

import club.ascham.exchange.Import.CsvFile;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.AnswerId;
import club.ascham.id.Made;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.store.KeptAnswers;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Lists as CSV, out and in. */
@Path("/api")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Exchange", description = "Every list as CSV (RFC 4180, UTF-8), out and in")
@RolesAllowed(Role.OFFICERS)
class ExchangeApi {
  record ListLine(String name, String title, String href, List<String> columns) {}

  record Page(List<ListLine> items) {}

  record FileLine(String list, int added, int changed, int unchanged) {}

  /**
   * @param dryRun whether nothing was changed
   */
  record ReportBody(boolean dryRun, List<FileLine> lists) {}

  private static final MediaType CSV = new MediaType("text", "csv");

  private final Export export;
  private final Everything everything;
  private final Import door;
  private final Actor actor;
  private final Presses presses;
  private final KeptAnswers answers;

  ExchangeApi(
      Export export,
      Everything everything,
      Import door,
      Actor actor,
      Presses presses,
      KeptAnswers answers) {
    this.export = export;
    this.everything = everything;
    this.door = door;
    this.actor = actor;
    this.presses = presses;
    this.answers = answers;
  }

  @GET
  @Path("/export")
  @Operation(summary = "The lists there are, in the order in which an empty club is filled")
  public Page lists() {
    return new Page(
        Lists.all().stream()
            .map(
                list ->
                    new ListLine(
                        list.name(),
                        list.title(),
                        "/api/export/" + list.name() + ".csv",
                        list.header()))
            .toList());
  }

  @GET
  @Path("/export/everything.zip")
  @Produces({Everything.MEDIA_TYPE, MediaType.APPLICATION_JSON})
  @Operation(summary = "Every list, the record and the SQLite file of one moment, in one zip")
  public Response everything() {
    return everything.download();
  }

  @GET
  @Path("/export/{file}")
  @Produces({"text/csv", MediaType.APPLICATION_JSON})
  @Operation(summary = "One list, risers.csv for example; it imports again unchanged")
  public Response list(@RestPath String file) {
    return CsvAnswer.of(export, file)
        .orElseThrow(() -> new NoSuchThing("There is no list that is called " + file + "."));
  }

  @POST
  @Path("/import")
  @Consumes(MediaType.WILDCARD) // of another kind is told only to those who may import at all
  @Operation(
      summary =
          "Import one file, all of it or nothing; which list it is, its first line says. dryRun=true"
              + " changes nothing.",
      description =
          "At most "
              + CsvText.MOST_BYTES
              + " bytes and "
              + CsvText.MOST_LINES
              + " lines; a longer list is sent in parts, each with the line that names the columns."
              + " All that one verdict says goes together.")
  @RequestBody(
      content =
          @Content(
              mediaType = "text/csv",
              schema = @Schema(type = SchemaType.STRING),
              examples =
                  @ExampleObject(
                      name = "the club's own brace bands",
                      value =
                          "bowLengthIn,low,high,source\n54,6 1/2 in,7 1/2 in,Measured on our own\n")))
  public Response take(
      byte[] file,
      @RestQuery String dryRun,
      @RestQuery String onceKey,
      UriInfo uri,
      @Parameter(hidden = true) @HeaderParam(HttpHeaders.CONTENT_TYPE) MediaType type) {
    if (type == null || !CSV.isCompatible(type)) {
      return Problem.response(415, "Not that kind", "A list is sent as text/csv.");
    }
    // A slip in a word that is to change nothing would else change everything.
    List<String> said = uri.getQueryParameters().getOrDefault("dryRun", List.of("false"));
    if (!said.equals(List.of("true")) && !said.equals(List.of("false"))) {
      Typed typed = Typed.nothing();
      typed.fault("dryRun", "It is true or false.");
      return Problem.of(typed);
    }
    Sheets files = door.read(List.of(new CsvFile("file", file == null ? new byte[0] : file)));
    if ("true".equals(dryRun)) {
      ImportReport report = door.tryOut(files);
      Typed faults = Typed.nothing();
      report.bad().forEach(bad -> faults.fault(bad.where(), bad.message()));
      return report.sound() ? Response.ok(written(true, report)).build() : Problem.of(faults);
    }
    Typed typed = Typed.nothing();
    return presses
        .body(new FileSent(file, onceKey), typed, AnswerId::new)
        .json(
            200,
            () -> {
              ImportReport report = door.take(files, actor.id());
              return report.sound()
                  ? Outcome.done(answers.keep(written(false, report)))
                  : unsound(report, typed);
            },
            answer -> answers.of(answer, ReportBody.class));
  }

  /** What is sent: the key stands in the address, since the body is the file. */
  private record FileSent(byte[] file, String onceKey) {}

  private static <T extends Made> Outcome<T> unsound(ImportReport report, Typed typed) {
    report.bad().forEach(bad -> typed.fault(bad.where(), bad.message()));
    return Outcome.unread();
  }

  private static ReportBody written(boolean dryRun, ImportReport report) {
    return new ReportBody(
        dryRun,
        report.lists().stream()
            .map(l -> new FileLine(l.list(), l.added(), l.changed(), l.unchanged()))
            .toList());
  }
}
