package club.ascham.rig;

import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.store.DatabaseRefusal;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
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

  @CheckedTemplate(basePath = "rig", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record DissolvePage(RigRow row, String path, List<RigRecords.Kept> kept, Typed typed)
      implements TemplateInstance {}

  private final RigRecords records;
  private final Dissolve dissolve;

  DissolvePages(RigRecords records, Dissolve dissolve) {
    this.records = records;
    this.dissolve = dissolve;
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
    try {
      Outcome outcome = dissolve.dissolve(rig, typed.version(), typed.value("once-key"));
      if (outcome instanceof Outcome.Done done) {
        return Go.to(RigPages.page(rig), done.said());
      }
      if (outcome instanceof Outcome.PressedBefore before) {
        return Go.to(before.page());
      }
      if (outcome instanceof Outcome.Refused refused) {
        refused.tell(typed);
      } else {
        typed.fault(Outcome.WHOLE, Outcome.ChangedMeanwhile.SAID);
      }
    } catch (DatabaseRefusal refusal) {
      typed.fault(Outcome.WHOLE, refusal.getMessage());
    }
    return Go.again(page(rig, typed));
  }

  private TemplateInstance page(RigId rig, Typed typed) {
    RigRow row =
        records
            .one(rig)
            .orElseThrow(() -> new NoSuchThing("There is no assembled rig " + rig.value() + "."));
    return new DissolvePage(row, RigPages.page(rig), records.kept(rig), typed);
  }
}
