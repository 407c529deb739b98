package club.ascham.home;

import club.ascham.ProgramVersion;
import club.ascham.people.Role;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;

/** What a club gets with each release, as its people see it. */
@Path("/what-changed")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class ReleasesPages {
  /**
   * @param version that runs here
   */
  @CheckedTemplate(basePath = "home", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ReleasesPage(String version) implements TemplateInstance {}

  private final ProgramVersion program;

  ReleasesPages(ProgramVersion program) {
    this.program = program;
  }

  @GET
  public TemplateInstance page() {
    return new ReleasesPage(program.version());
  }
}
