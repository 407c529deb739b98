package club.ascham.askback;

import club.ascham.people.Role;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What must come back at once, as JSON. Who has it stands at the loan, for those who lend. */
@Path("/api/ask-back")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
@Tag(name = "Ask back", description = "What is unsafe and in somebody’s hands")
class AskBackApi {
  static final String EXAMPLE =
      """
      {"things": 1, "loans": [
        {"loan": 41, "kind": "kit", "dueOn": "2026-06-30", "since": "2026-06-02", "things": [
          {"line": 107, "item": "L-0105-D", "kind": "limbs", "rig": 12, "because": [
            {"weight": "blocks", "matter": "withdrawn", "since": "2026-06-02", "item": "L-0105-D",
             "said": "L-0105-D is withdrawn: recalled by its maker.",
             "ends": "Until the permit holder decides what it needs, and releases it."}]}]}]}
      """;

  /** A loan of which something must come back at once. */
  record AskedJson(
      long loan, String kind, LocalDate dueOn, LocalDate since, List<ThingJson> things) {
    static AskedJson of(Asked asked) {
      return new AskedJson(
          asked.loan().value(),
          asked.session() ? "session" : "kit",
          asked.dueOn(),
          asked.since(),
          asked.things().stream().map(ThingJson::of).toList());
    }
  }

  /** All that must come back at once. */
  record AskBackJson(int things, List<AskedJson> loans) {}

  private final AskBack askBack;

  AskBackApi(AskBack askBack) {
    this.askBack = askBack;
  }

  @GET
  @Operation(
      summary = "What is unsafe and in somebody’s hands, what became known last first",
      description =
          "Withdrawn or recalled, an inspection that failed, a dangerous report that nobody has"
              + " answered, or readings that change so that the bow is kept in. Not an inspection"
              + " whose day is past. Who has it, and how to reach them: GET /api/loans/{id}.")
  @APIResponse(
      responseCode = "200",
      content =
          @Content(
              schema = @Schema(implementation = AskBackJson.class),
              examples = @ExampleObject(name = "recalled limbs", value = EXAMPLE)))
  public AskBackJson now() {
    List<Asked> asked = askBack.now();
    return new AskBackJson(Asked.things(asked), asked.stream().map(AskedJson::of).toList());
  }
}
