package club.ascham.record;

import club.ascham.form.Typed;
import club.ascham.people.Role;
import club.ascham.story.Story;
import club.ascham.story.VerifyRecord;
import club.ascham.web.Forms;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The record as JSON. */
@Path("/api/record")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Role.OFFICERS)
@Tag(name = "Record", description = "Every change: who, when, what from and to, and why")
class RecordApi {
  private static final int A_PAGE = 40;
  private static final int MOST = 200;
  private static final int MOST_ROWS = 1_000;

  /**
   * One entry.
   *
   * @param by the account's name, or the program's own
   * @param items codes of the first few things that it is about
   * @param seal SHA-256 over the entry and the seal before it
   * @param takenIn how it came from a file; null: it was told here
   */
  public record EntryJson(
      long number,
      Instant happened,
      Instant recorded,
      String by,
      String sentence,
      String why,
      Long loan,
      List<String> items,
      Long rig,
      String seal,
      Story.TakenIn takenIn,
      List<Entries.RowChange> changes) {}

  /**
   * Entries, newest first.
   *
   * @param older the {@code before} that the next page is asked with; null: there is none
   */
  public record RecordPage(List<EntryJson> items, Long older) {}

  private final Entries entries;
  private final RecordFile file;
  private final VerifyRecord verifyRecord;

  RecordApi(Entries entries, RecordFile file, VerifyRecord verifyRecord) {
    this.entries = entries;
    this.file = file;
    this.verifyRecord = verifyRecord;
  }

  @GET
  @Operation(summary = "Entries with what they changed, newest first")
  @Parameter(
      name = "before",
      description = "entries with smaller numbers only",
      schema = @Schema(type = SchemaType.INTEGER))
  @Parameter(
      name = "size",
      description = "at most 200",
      schema = @Schema(type = SchemaType.INTEGER))
  public Response list(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    Integer before = typed.whole("before", 1, Integer.MAX_VALUE);
    Integer size = typed.whole("size", 1, MOST);
    if (!typed.sound()) {
      return Problem.of(typed);
    }
    int atMost = size == null ? A_PAGE : size;
    List<Entries.Entry> found =
        entries.before(before == null ? Long.MAX_VALUE : before, atMost + 1);
    boolean goesOn = found.size() > atMost;
    List<EntryJson> items =
        found.stream()
            .limit(atMost)
            .map(
                e ->
                    new EntryJson(
                        e.id(),
                        e.happened(),
                        e.recorded(),
                        e.by(),
                        e.sentence(),
                        e.why(),
                        e.loanId(),
                        e.things(),
                        e.rig(),
                        e.seal(),
                        e.takenIn(),
                        entries.changes(e.id(), MOST_ROWS)))
            .toList();
    return Response.ok(new RecordPage(items, goesOn ? items.get(atMost - 1).number() : null))
        .build();
  }

  @GET
  @Path("/verification")
  @Operation(summary = "Reckons the whole record again: every seal and every row")
  public VerifyRecord.Verified verification() {
    return verifyRecord.verify();
  }

  @GET
  @Path("/export")
  @Produces("application/jsonl")
  @Operation(summary = "The whole record, one JSON line an entry, oldest first")
  public Response export() {
    return file.download();
  }
}
