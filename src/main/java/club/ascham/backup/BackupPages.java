package club.ascham.backup;

import club.ascham.ProgramVersion;
import club.ascham.id.BackupId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.store.Scrubbing;
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
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.jboss.resteasy.reactive.RestPath;

/** Could we bring everything back? */
@Path("/backups")
@RolesAllowed(Role.OFFICERS)
class BackupPages {
  /**
   * @param worry what is wrong with the backups; null: nothing
   * @param copies what is in the second folder; null: none is set
   * @param version of the program that runs here
   */
  @CheckedTemplate(basePath = "backup", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record BackupsPage(
      List<BackupList.Line> backups, String worry, SecondFolder.State copies, String version)
      implements TemplateInstance {}

  private final Backups backups;
  private final BackupList list;
  private final TellBackup tellBackup;
  private final SecondFolder copies;
  private final Scrubbing scrubbing;
  private final ProgramVersion program;
  private final Actor actor;
  private final Presses presses;

  BackupPages(
      Backups backups,
      BackupList list,
      TellBackup tellBackup,
      SecondFolder copies,
      Scrubbing scrubbing,
      ProgramVersion program,
      Actor actor,
      Presses presses) {
    this.backups = backups;
    this.list = list;
    this.tellBackup = tellBackup;
    this.copies = copies;
    this.scrubbing = scrubbing;
    this.program = program;
    this.actor = actor;
    this.presses = presses;
  }

  @GET
  public TemplateInstance page() {
    return new BackupsPage(
        list.lines(),
        backups.worry().or(copies::worry).or(scrubbing::worry).orElse(null),
        copies.state().orElse(null),
        program.version());
  }

  @POST
  @Path("/make")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response make(MultivaluedMap<String, String> form) {
    AtomicReference<Backups.Backup> made = new AtomicReference<>();
    return presses
        .form(Forms.typed(form), BackupId::new, backup -> "/backups")
        .ahead(() -> made.set(backups.make()))
        .page(() -> tellBackup.asked(made.get(), actor.id()), this::page);
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
