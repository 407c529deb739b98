package club.ascham.undo;

import club.ascham.form.Typed;
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

  UndoPages(MoveFacts facts, ToldFirst toldFirst, UndoMove undoMove) {
    this.facts = facts;
    this.toldFirst = toldFirst;
    this.undoMove = undoMove;
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
    try {
      UndoMove.Outcome outcome = undoMove.undo(move, typed.value("once-key"));
      if (outcome instanceof UndoMove.Outcome.Undone undone) {
        return Go.to(undone.page(), undone.said());
      }
      if (outcome instanceof UndoMove.Outcome.PressedBefore before) {
        return Go.to(before.page());
      }
      return Go.again(page(found, ((UndoMove.Outcome.Refused) outcome).message()));
    } catch (DatabaseRefusal refusal) {
      return Go.again(page(found, refusal.getMessage()));
    }
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
