package club.ascham.check;

import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.rig.Outcome;
import club.ascham.rig.SetUpWork;
import club.ascham.standing.State;
import club.ascham.undo.MoveKind;
import club.ascham.web.Forms;
import club.ascham.web.Go;
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

/** What a check came to, and what is done next: put back, adjusted, or sent to the workshop. */
@Path("/check/{rig:\\d+}/{check:\\d+}")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class VerdictPages {
  @CheckedTemplate(basePath = "check", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record VerdictPage(VerdictView view, Typed typed) implements TemplateInstance {}

  private final VerdictDesk desk;
  private final Queue queue;
  private final PutBack putBack;
  private final RecordAdjustment recordAdjustment;
  private final SetUpWork setUpWork;

  VerdictPages(
      VerdictDesk desk,
      Queue queue,
      PutBack putBack,
      RecordAdjustment recordAdjustment,
      SetUpWork setUpWork) {
    this.desk = desk;
    this.queue = queue;
    this.putBack = putBack;
    this.recordAdjustment = recordAdjustment;
    this.setUpWork = setUpWork;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public TemplateInstance verdict(@PathParam("rig") long rig, @PathParam("check") long check) {
    return page(rig, check, Typed.nothing());
  }

  private VerdictPage page(long rig, long check, Typed typed) {
    return new VerdictPage(desk.view(new RigId(rig), check), typed);
  }

  @POST
  @Path("/put-back")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response putBack(
      @PathParam("rig") long rig,
      @PathParam("check") long check,
      MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    desk.view(new RigId(rig), check);
    PutBack.Outcome outcome = putBack.putBack(check, typed.value("once-key"));
    if (outcome instanceof PutBack.Outcome.PressedBefore before) {
      return Go.to(before.page());
    }
    if (outcome instanceof PutBack.Outcome.Refused refused) {
      typed.fault("check", refused.message());
      return Go.again(page(rig, check, typed));
    }
    PutBack.Outcome.Back back = (PutBack.Outcome.Back) outcome;
    return Go.to(
        queue.next(new RigId(rig)).map(Queue.Waiting::page).orElse(CheckPages.HOME),
        back.state() == State.READY
            ? back.rig() + " is put back: ready."
            : back.rig() + " is put back, and stays in all the same. " + back.against().keptIn(),
        new Go.Undo(back.move(), MoveKind.PUT_BACK.button()));
  }

  @POST
  @Path("/adjusted")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response adjusted(
      @PathParam("rig") long rig,
      @PathParam("check") long check,
      MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    desk.view(new RigId(rig), check);
    AdjustmentDone done = AdjustmentDone.parse(typed);
    if (!typed.sound()) {
      return Go.again(page(rig, check, typed));
    }
    RecordAdjustment.Outcome outcome =
        recordAdjustment.record(check, done, typed.value("once-key"));
    if (outcome instanceof RecordAdjustment.Outcome.PressedBefore before) {
      return Go.to(before.page());
    }
    if (outcome instanceof RecordAdjustment.Outcome.Refused refused) {
      typed.fault(refused.field().isEmpty() ? "check" : refused.field(), refused.message());
      return Go.again(page(rig, check, typed));
    }
    if (outcome instanceof RecordAdjustment.Outcome.Looked looked) {
      return Go.to(CheckPages.afterALook(looked.rig(), check));
    }
    RecordAdjustment.Outcome.Kept kept = (RecordAdjustment.Outcome.Kept) outcome;
    return Go.to(CheckPages.secondMeasurement(kept.rig(), kept.adjustment()));
  }

  @POST
  @Path("/workshop")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response workshop(@PathParam("rig") long rig, @PathParam("check") long check) {
    RigId id = new RigId(rig);
    Outcome outcome = setUpWork.toWorkshop(id);
    if (outcome instanceof Outcome.Refused refused) {
      Typed typed = Typed.nothing();
      typed.fault("check", refused.refusals().get(0).message());
      return Go.again(page(rig, check, typed));
    }
    return Go.to(
        queue.next(id).map(Queue.Waiting::page).orElse(CheckPages.HOME),
        ((Outcome.Done) outcome).said());
  }
}
