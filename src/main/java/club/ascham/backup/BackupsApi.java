package club.ascham.backup;

import club.ascham.form.Typed;
import club.ascham.id.BackupId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** Backups as JSON, for a program that takes them elsewhere. */
@Path("/api/backups")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Role.OFFICERS)
@Tag(name = "Backups", description = "Copies of the club's SQLite file that are known to be sound")
class BackupsApi {

  /**
   * @param worry what is wrong with the backups; null: nothing
   * @param copies what is in the second folder; null: none is set
   */
  public record All(List<BackupList.Line> items, String worry, SecondFolder.State copies) {}

  record MakeBody(String onceKey) {}

  private final Backups backups;
  private final BackupList list;
  private final TellBackup tellBackup;
  private final SecondFolder copies;
  private final Actor actor;
  private final Presses presses;

  BackupsApi(
      Backups backups,
      BackupList list,
      TellBackup tellBackup,
      SecondFolder copies,
      Actor actor,
      Presses presses) {
    this.backups = backups;
    this.list = list;
    this.tellBackup = tellBackup;
    this.copies = copies;
    this.actor = actor;
    this.presses = presses;
  }

  @GET
  @Operation(summary = "The backups there are, newest first")
  public All all() {
    return new All(
        list.lines(), backups.worry().or(copies::worry).orElse(null), copies.state().orElse(null));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Make one now, while people go on working")
  @RequestBody(content = @Content(examples = @ExampleObject(name = "make", value = "{}")))
  public Response make(MakeBody body) {
    AtomicReference<Backups.Backup> made = new AtomicReference<>();
    return presses
        .body(body, Typed.of(body), BackupId::new)
        .at(backup -> "/api/backups/" + line(backup).file())
        .ahead(() -> made.set(backups.make()))
        .json(201, () -> tellBackup.asked(made.get(), actor.id()), this::line);
  }

  private BackupList.Line line(BackupId backup) {
    return list.lines().stream()
        .filter(line -> BackupId.of(line.seal()).equals(backup))
        .findFirst()
        .orElseThrow(() -> new NoSuchThing("That backup was thinned out since."));
  }

  @GET
  @Path("/{file}")
  @Produces("application/vnd.sqlite3")
  @Operation(summary = "One of them: a whole SQLite file")
  public Response file(@RestPath String file) {
    return BackupPages.download(backups, file);
  }
}
