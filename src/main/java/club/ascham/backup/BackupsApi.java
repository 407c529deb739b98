package club.ascham.backup;

import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
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

  private final Backups backups;
  private final BackupList list;
  private final MakeBackup makeBackup;
  private final SecondFolder copies;
  private final Actor actor;

  BackupsApi(
      Backups backups, BackupList list, MakeBackup makeBackup, SecondFolder copies, Actor actor) {
    this.backups = backups;
    this.list = list;
    this.makeBackup = makeBackup;
    this.copies = copies;
    this.actor = actor;
  }

  @GET
  @Operation(summary = "The backups there are, newest first")
  public All all() {
    return new All(
        list.lines(), backups.worry().or(copies::worry).orElse(null), copies.state().orElse(null));
  }

  @POST
  @Operation(summary = "Make one now, while people go on working")
  public Response make() {
    Backups.Outcome outcome = makeBackup.asked(actor.id());
    if (outcome instanceof Backups.Made made) {
      String file = made.backup().name().fileName();
      return Response.created(URI.create("/api/backups/" + file))
          .entity(
              list.lines().stream()
                  .filter(line -> line.file().equals(file))
                  .findFirst()
                  .orElseThrow())
          .build();
    }
    Backups.Failed failed = (Backups.Failed) outcome;
    return Problem.response(failed.status(), "No backup was made", failed.why());
  }

  @GET
  @Path("/{file}")
  @Produces("application/vnd.sqlite3")
  @Operation(summary = "One of them: a whole SQLite file")
  public Response file(@RestPath String file) {
    return BackupPages.download(backups, file);
  }
}
