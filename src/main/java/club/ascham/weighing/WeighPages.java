package club.ascham.weighing;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.rig.Obstacle;
import club.ascham.rig.RigPages;
import club.ascham.rig.RigRecords;
import club.ascham.rig.RigRow;
import club.ascham.rig.WeighedAs;
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

/** Putting a bow on the bow scale: two numbers. */
@Path("/rigs/{id:\\d+}/weigh")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class WeighPages {

  @CheckedTemplate(basePath = "weighing", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record WeighPage(RigRow row, String path, Against against, Typed typed)
      implements TemplateInstance {}

  private final RigRecords records;
  private final Concerns concerns;
  private final WeighRig weighRig;
  private final Presses presses;

  WeighPages(RigRecords records, Concerns concerns, WeighRig weighRig, Presses presses) {
    this.records = records;
    this.concerns = concerns;
    this.weighRig = weighRig;
    this.presses = presses;
  }

  @GET
  public TemplateInstance ask(@PathParam("id") long id) {
    return page(new RigId(id), Typed.nothing());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response weigh(@PathParam("id") long rigId, MultivaluedMap<String, String> form) {
    RigId rig = new RigId(rigId);
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, RigId::new, id -> RigPages.page(id) + "#weight")
        .whole(Obstacle.WHOLE)
        .page(
            () -> {
              WeighedAs weighing = WeighedAs.parse(typed);
              return typed.sound() ? weighRig.weigh(rig, weighing) : Outcome.unread();
            },
            () -> page(rig, typed));
  }

  private TemplateInstance page(RigId rig, Typed typed) {
    RigRow row = records.known(rig);
    return new WeighPage(row, RigPages.page(rig), concerns.of(rig), typed);
  }
}
