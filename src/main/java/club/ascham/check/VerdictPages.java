package club.ascham.check;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.AdjustmentId;
import club.ascham.id.MoveId;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.setup.SetUpWork;
import club.ascham.undo.MoveKind;
import club.ascham.web.Forms;
import club.ascham.web.Go;
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
  private final Presses presses;

  VerdictPages(
      VerdictDesk desk,
      Queue queue,
      PutBack putBack,
      RecordAdjustment recordAdjustment,
      SetUpWork setUpWork,
      Presses presses) {
    this.desk = desk;
    this.queue = queue;
    this.putBack = putBack;
    this.recordAdjustment = recordAdjustment;
    this.setUpWork = setUpWork;
    this.presses = presses;
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
    return presses
        .form(typed, MoveId::new, move -> nextAfter(rig))
        .page(
            () -> putBack.putBack(check),
            done ->
                Go.to(
                    nextAfter(rig),
                    done.said(),
                    new Go.Undo(done.made().value(), MoveKind.PUT_BACK.button())),
            () -> page(rig, check, typed));
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
    RigId bow = new RigId(rig);
    return presses
        .formOf(
            typed,
            RecordAdjustment::made,
            made ->
                made instanceof AdjustmentId adjustment
                    ? CheckPages.secondMeasurement(bow, adjustment.value())
                    : CheckPages.afterALook(bow, made.value()))
        .page(
            () -> {
              AdjustmentDone done = AdjustmentDone.parse(typed);
              return typed.sound() ? recordAdjustment.record(check, done) : Outcome.unread();
            },
            () -> page(rig, check, typed));
  }

  @POST
  @Path("/workshop")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response workshop(
      @PathParam("rig") long rig,
      @PathParam("check") long check,
      MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, RigId::new, bow -> nextAfter(rig))
        .whole("check")
        .page(() -> setUpWork.toWorkshop(new RigId(rig)), () -> page(rig, check, typed));
  }

  private String nextAfter(long rig) {
    return queue.next(new RigId(rig)).map(Queue.Waiting::page).orElse(CheckPages.HOME);
  }
}
