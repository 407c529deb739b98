package club.ascham.undo;

import club.ascham.form.Typed;
import club.ascham.id.MoveId;
import club.ascham.people.Role;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;

/** Was that pressed too early? */
@Path("/undo/{move:\\d+}")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class UndoPages {
  /**
   * @param refused why it may not be undone; null: it may
   */
  @CheckedTemplate(basePath = "undo", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record UndoPage(Move move, List<String> surprises, String refused) implements TemplateInstance {}

  private final MoveFacts facts;
  private final ToldFirst toldFirst;
  private final UndoMove undoMove;
  private final Presses presses;

  UndoPages(MoveFacts facts, ToldFirst toldFirst, UndoMove undoMove, Presses presses) {
    this.facts = facts;
    this.toldFirst = toldFirst;
    this.undoMove = undoMove;
    this.presses = presses;
  }

  @GET
  public TemplateInstance ask(@RestPath long move) {
    Move found = move(move);
    return page(found, undoMove.refusal(found).orElse(null));
  }

  /** Where nothing could surprise, one press does it; else the page asks first. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response undo(@RestPath long move, MultivaluedMap<String, String> form) {
    Move found = move(move);
    Typed typed = Forms.typed(form);
    if (!typed.ticked("sure") && !found.isUndone() && !toldFirst.of(found).isEmpty()) {
      return Go.to(found.page());
    }
    return presses
        .form(typed, MoveId::new, done -> found.after())
        .whole("move")
        .page(() -> undoMove.undo(move), () -> page(found, typed.messageAt("move")));
  }

  private UndoPage page(Move move, String refused) {
    return new UndoPage(move, refused == null ? toldFirst.of(move) : List.of(), refused);
  }

  private Move move(long id) {
    return facts
        .one(id)
        .orElseThrow(() -> new NoSuchThing("There is no press " + id + " to undo."));
  }
}
