package club.ascham.assembly;

import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.rig.Obstacle;
import club.ascham.rig.RigPages;
import club.ascham.rig.RigRecords;
import club.ascham.rig.RigRow;
import club.ascham.web.Forms;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** Taking a rig apart: asked first, since its figures are gone with it. */
@Path("/rigs/{id:\\d+}/dissolve")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class DissolvePages {

  @CheckedTemplate(basePath = "assembly", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record DissolvePage(RigRow row, String path, List<RigRecords.Kept> kept, Typed typed)
      implements TemplateInstance {}

  private final RigRecords records;
  private final Dissolve dissolve;
  private final Presses presses;

  DissolvePages(RigRecords records, Dissolve dissolve, Presses presses) {
    this.records = records;
    this.dissolve = dissolve;
    this.presses = presses;
  }

  @GET
  public TemplateInstance ask(@PathParam("id") long id) {
    return page(new RigId(id), Typed.nothing());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response dissolve(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    RigId rig = new RigId(id);
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, RigId::new, RigPages::page)
        .whole(Obstacle.WHOLE)
        .page(() -> dissolve.dissolve(rig, typed.version()), () -> page(rig, typed));
  }

  private TemplateInstance page(RigId rig, Typed typed) {
    RigRow row = records.known(rig);
    return new DissolvePage(row, RigPages.page(rig), records.kept(rig), typed);
  }
}
