package club.ascham.worksheet;

import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.id.WorkId;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Press;
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
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** Replaced strings as JSON. */
@Path("/api/replacements")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Replacements", description = "A string taken off its rig and another fitted")
class ReplacementsApi {
  /** One page of replacements, newest first. */
  public record ReplacementPageJson(List<WorkJson> items, int page, int size, long total) {}

  /**
   * A replacement.
   *
   * @param item the code of the string that is taken off
   * @param newString the code of the one fitted in its place
   * @param oldString {@code scrapped} or {@code kept}
   * @param on the day it was done; left out: now
   */
  public record ReplacementBody(
      String item, String newString, String oldString, String words, String on, String onceKey) {}

  private final Subjects subjects;
  private final WorkRecords records;
  private final ReplaceString replaceString;
  private final KeepString keepString;
  private final ClubTime time;
  private final Presses presses;

  ReplacementsApi(
      Subjects subjects,
      WorkRecords records,
      ReplaceString replaceString,
      KeepString keepString,
      ClubTime time,
      Presses presses) {
    this.subjects = subjects;
    this.records = records;
    this.replaceString = replaceString;
    this.keepString = keepString;
    this.time = time;
    this.presses = presses;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Replacements, newest first")
  public Response list(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    PageAsked asked = PageAsked.parse(typed);
    if (!typed.sound()) {
      return Problem.of(typed);
    }
    return Response.ok(
            new ReplacementPageJson(
                records.page(true, asked.page(), asked.size()).stream().map(WorkJson::of).toList(),
                asked.page(),
                asked.size(),
                records.count(true)))
        .build();
  }

  @GET
  @Path("/{id}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "One replacement")
  public WorkJson one(@RestPath long id) {
    return records
        .record(id)
        .filter(done -> !done.work().isInspection())
        .map(WorkJson::of)
        .orElseThrow(() -> new NoSuchThing("There is no replacement " + id + "."));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
  @Operation(summary = "Replace a rig's string; the rig then waits for its set-up")
  @RequestBody(
      content =
          @Content(
              schema = @Schema(implementation = ReplacementBody.class),
              examples =
                  @ExampleObject(
                      name = "scrapped",
                      value =
                          "{\"item\": \"S-0205-3\", \"newString\": \"S-0273-G\", \"oldString\":"
                              + " \"scrapped\", \"words\": \"Due by its age; servings worn.\"}")))
  @APIResponse(responseCode = "201", description = "Replaced")
  @APIResponse(responseCode = "409", description = "It can't be replaced now: the detail says why")
  @APIResponse(
      responseCode = "422",
      description = "An answer is missing or the string does not fit")
  public Response replace(ReplacementBody body) {
    Typed typed = Typed.of(body);
    return press(body, typed).json(201, () -> replaced(typed), record -> one(record.value()));
  }

  private Press<WorkId> press(Record body, Typed typed) {
    return presses
        .body(body, typed, WorkId::new)
        .at(record -> "/api/replacements/" + record.value());
  }

  private Outcome<WorkId> replaced(Typed typed) {
    ItemCode code = typed.code("item");
    Optional<Subject> old = code == null ? Optional.empty() : subjects.coded(code);
    if (old.isEmpty() || !old.get().kind().equals("STRING")) {
      typed.fault("item", "The code of the string that is taken off, please.");
    }
    return Replacement.parse(typed, time.today())
        .map(replacement -> replaceString.replace(code, replacement))
        .orElseGet(Outcome::unread);
  }

  /**
   * What was seen of a string that a replacement was asked for.
   *
   * @param onceKey null: none
   */
  public record KeptBody(String item, String found, String onceKey) {}

  @POST
  @Path("/kept")
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
  @Operation(summary = "Look at a string that a replacement was asked for, and keep it on")
  @RequestBody(
      content =
          @Content(
              schema = @Schema(implementation = KeptBody.class),
              examples =
                  @ExampleObject(
                      name = "twisted up",
                      value =
                          "{\"item\": \"S-0221-3\", \"found\": \"All whole; five twists in.\"}")))
  @APIResponse(responseCode = "201", description = "It stays on")
  @APIResponse(responseCode = "422", description = "An answer is missing")
  public Response keep(KeptBody body) {
    Typed typed = Typed.of(body);
    return press(body, typed).json(201, () -> kept(typed), record -> one(record.value()));
  }

  private Outcome<WorkId> kept(Typed typed) {
    ItemCode code = typed.code("item");
    Optional<Subject> string = code == null ? Optional.empty() : subjects.coded(code);
    if (string.filter(of -> of.kind().equals("STRING") && !of.isRetired()).isEmpty()) {
      typed.fault("item", "The code of a string that the club has, please.");
    }
    String found = typed.reason("found", KeepString.LONGEST, KeepString.WHAT);
    return typed.sound() ? keepString.keep(string.orElseThrow(), found) : Outcome.unread();
  }
}
