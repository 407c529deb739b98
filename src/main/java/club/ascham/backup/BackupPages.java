package club.ascham.backup;

import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.store.Scrubbing;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;

/** Could we bring everything back? */
@Path("/backups")
@RolesAllowed(Role.OFFICERS)
class BackupPages {
  /**
   * @param worry what is wrong with the backups; null: nothing
   * @param copies what is in the second folder; null: none is set
   */
  @CheckedTemplate(basePath = "backup", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record BackupsPage(List<BackupList.Line> backups, String worry, SecondFolder.State copies)
      implements TemplateInstance {}

  private final Backups backups;
  private final BackupList list;
  private final MakeBackup makeBackup;
  private final SecondFolder copies;
  private final Scrubbing scrubbing;
  private final Actor actor;

  BackupPages(
      Backups backups,
      BackupList list,
      MakeBackup makeBackup,
      SecondFolder copies,
      Scrubbing scrubbing,
      Actor actor) {
    this.backups = backups;
    this.list = list;
    this.makeBackup = makeBackup;
    this.copies = copies;
    this.scrubbing = scrubbing;
    this.actor = actor;
  }

  @GET
  public TemplateInstance page() {
    return new BackupsPage(
        list.lines(),
        backups.worry().or(copies::worry).or(scrubbing::worry).orElse(null),
        copies.state().orElse(null));
  }

  @POST
  @Path("/make")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response make(MultivaluedMap<String, String> form) {
    Backups.Outcome outcome = makeBackup.asked(actor.id());
    if (outcome instanceof Backups.Made made) {
      return Go.to(
          "/backups",
          "A backup is made and was looked through: it is sound. " + made.backup().size());
    }
    return Response.status(((Backups.Failed) outcome).status())
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .entity(page())
        .build();
  }

  @GET
  @Path("/{file}")
  @Produces(MediaType.APPLICATION_OCTET_STREAM)
  public Response file(@RestPath String file) {
    return download(backups, file);
  }

  static Response download(Backups backups, String file) {
    java.nio.file.Path found =
        backups
            .file(file)
            .orElseThrow(() -> new NoSuchThing("There is no backup of that name any more."));
    return Response.ok(found.toFile(), "application/vnd.sqlite3")
        .header("Content-Disposition", "attachment; filename=\"" + found.getFileName() + "\"")
        .build();
  }
}
