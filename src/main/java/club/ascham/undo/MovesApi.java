package club.ascham.undo;

import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.id.MoveId;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Presses that moved things, as JSON, and undoing them. */
@Path("/api/moves")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Undo", description = "Presses that moved things, and what was pressed too early")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class MovesApi {
  private static final int OF_A_BOW = 10;

  /**
   * @param codes what it moved
   * @param refused why this caller may not undo it now; null: they may, or it was not asked of a
   *     whole page of presses
   */
  record MoveLine(
      long id,
      String kind,
      Long loanId,
      Long checkId,
      Instant madeAt,
      String madeBy,
      List<String> codes,
      Instant undoneAt,
      String undoneBy,
      String refused) {}

  /** An empty body will do. */
  record UndoBody(String onceKey) {}

  private final MoveFacts facts;
  private final UndoMove undoMove;
  private final Presses presses;

  MovesApi(MoveFacts facts, UndoMove undoMove, Presses presses) {
    this.facts = facts;
    this.undoMove = undoMove;
    this.presses = presses;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Receipts, returns, exchanges and put-backs, newest first; undone ones too")
  public List<MoveLine> list(
      @RestQuery Long loan,
      @RestQuery Long rig,
      @RestQuery @DefaultValue("1") int page,
      @RestQuery @DefaultValue("40") int size) {
    if (loan == null && rig == null) {
      return page(PageAsked.nearest(page, size)).stream().map(move -> line(move, null)).toList();
    }
    List<Move> moves =
        loan != null ? facts.of(new LoanId(loan)) : facts.of(new RigId(rig), OF_A_BOW);
    return moves.stream().map(this::judged).toList();
  }

  private List<Move> page(PageAsked asked) {
    return facts.page(asked.skipped(), asked.size());
  }

  @POST
  @Path("/{id}/undo")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Undo it, as long as nothing rests on it; both stay told")
  @RequestBody(content = @Content(examples = @ExampleObject(name = "undo", value = "{}")))
  public Response undo(@RestPath long id, UndoBody body) {
    return presses
        .body(body, Typed.of(body), MoveId::new)
        .json(200, () -> undoMove.undo(id), move -> undone(id));
  }

  private MoveLine undone(long id) {
    return facts
        .one(id)
        .map(this::judged)
        .orElseThrow(() -> new NoSuchThing("There is no press " + id + " to undo."));
  }

  private MoveLine judged(Move move) {
    return line(move, undoMove.refusal(move).orElse(null));
  }

  private static MoveLine line(Move move, String refused) {
    return new MoveLine(
        move.id(),
        move.kind().word(),
        move.loan() == null ? null : move.loan().value(),
        move.check(),
        move.madeAt(),
        move.by(),
        move.codes(),
        move.undoneAt(),
        move.undoneBy(),
        refused);
  }
}
