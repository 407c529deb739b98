package club.ascham.recall;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.AnswerId;
import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.store.KeptAnswers;
import club.ascham.units.ItemCode;
import club.ascham.web.Forms;
import club.ascham.web.Presses;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Recalls as JSON. */
@Path("/api/recalls")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Recalls", description = "What a maker calls back: where it is, and withdrawing it")
class RecallsApi {

  /**
   * Someone who has or had an item.
   *
   * @param borrowerId null: sessions, counted together
   * @param until null: has it now
   */
  public record HolderJson(Long borrowerId, Instant from, Instant until, int times) {}

  /**
   * An item that a recall names.
   *
   * @param holders left out for the committee
   */
  public record RecalledJson(
      String code,
      String kind,
      String maker,
      String model,
      String batch,
      String serials,
      String state,
      String withdrawnWhy,
      String toldWhy,
      String rig,
      Long loanId,
      LocalDate backBy,
      List<HolderJson> holders,
      List<String> rigs) {}

  /** Everything that a recall names. */
  public record RecalledList(List<RecalledJson> items) {}

  /**
   * A recall; all that is given must match.
   *
   * @param items codes of those to be withdrawn; left out: all that it names
   */
  public record RecallBody(
      String maker,
      String model,
      String batch,
      String serial,
      List<String> items,
      String why,
      String onceKey) {}

  /**
   * What a recall did.
   *
   * @param besides how many were out of use before: the recall stands against them as something
   *     told
   * @param out how many of all these are on loan
   */
  public record RecallResult(int withdrawn, int besides, int out, String said) {}

  private final Recalls recalls;
  private final RecallItems recallItems;
  private final Actor actor;
  private final Presses presses;
  private final KeptAnswers answers;

  RecallsApi(
      Recalls recalls, RecallItems recallItems, Actor actor, Presses presses, KeptAnswers answers) {
    this.recalls = recalls;
    this.recallItems = recallItems;
    this.actor = actor;
    this.presses = presses;
    this.answers = answers;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Every item of a maker, model, batch or serial, with where it is and was")
  @Parameter(name = "maker", description = "the whole name", example = "Marlwick")
  @Parameter(name = "model", description = "the whole name")
  @Parameter(name = "batch", description = "what it begins with")
  @Parameter(name = "serial", description = "what it begins with; of either limb too")
  @APIResponse(
      responseCode = "200",
      content = @Content(schema = @Schema(implementation = RecalledList.class)))
  public Response trace(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    Optional<RecallQuery> query = query(typed);
    if (query.isEmpty()) {
      return Problem.of(typed);
    }
    List<Recalled> found = recalls.of(query.get());
    List<ItemId> ids = found.stream().map(Recalled::id).toList();
    Map<ItemId, List<Recalls.Holder>> holders = recalls.holders(ids);
    Map<ItemId, List<Recalls.Touched>> rigs = recalls.rigs(ids);
    boolean named = actor.role() != Role.COMMITTEE;
    return Response.ok(
            new RecalledList(
                found.stream()
                    .map(
                        item ->
                            json(
                                item,
                                named ? holders.getOrDefault(item.id(), List.of()) : null,
                                rigs.getOrDefault(item.id(), List.of())))
                    .toList()))
        .build();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed(Role.OFFICERS)
  @Operation(summary = "Withdraw what a recall names, all of it or those listed, for one reason")
  @RequestBody(
      content =
          @Content(
              schema = @Schema(implementation = RecallBody.class),
              examples =
                  @ExampleObject(
                      name = "a batch of strings",
                      value =
                          "{\"maker\": \"Marlwick\", \"batch\": \"M02-2025\", \"why\": \"Maker's"
                              + " notice of 3 May: end serving may slip.\"}")))
  public Response withdraw(RecallBody body) {
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, AnswerId::new)
        .json(200, () -> withdrawn(body, typed), this::result);
  }

  private Outcome<AnswerId> withdrawn(RecallBody body, Typed typed) {
    Optional<RecallQuery> query = query(typed);
    String why = RecallItems.why(typed);
    Set<ItemId> chosen = query.map(asked -> chosen(typed, body.items(), asked)).orElse(Set.of());
    return query.isPresent() && typed.sound()
        ? recallItems.withdraw(query.get(), item -> chosen.contains(item.id()), why)
        : Outcome.unread();
  }

  private RecallResult result(AnswerId answer) {
    RecallItems.Recalling done = answers.of(answer, RecallItems.Recalling.class);
    return new RecallResult(done.withdrawn(), done.besides(), done.out(), done.said());
  }

  /** Those with these codes; a code that the recall does not name is a fault at its place. */
  private Set<ItemId> chosen(Typed typed, List<String> codes, RecallQuery query) {
    List<Recalled> named = recalls.of(query);
    if (codes == null) {
      return named.stream().map(Recalled::id).collect(Collectors.toSet());
    }
    Set<ItemId> chosen = new HashSet<>();
    for (int i = 0; i < codes.size(); i++) {
      String field = "items." + i;
      ItemCode code = typed.with(field, codes.get(i)).code(field);
      Optional<Recalled> found =
          named.stream()
              .filter(one -> code != null && one.bareCode().equals(code.bare()))
              .findFirst();
      found.ifPresentOrElse(
          one -> chosen.add(one.id()),
          () -> typed.fault(field, "The recall names nothing with that code."));
    }
    if (codes.isEmpty()) {
      typed.fault("items", "Name at least one, or leave the list out to withdraw all.");
    }
    return chosen;
  }

  private static Optional<RecallQuery> query(Typed typed) {
    Optional<RecallQuery> query = RecallQuery.parse(typed);
    if (query.isEmpty()) {
      typed.fault("maker", "At least one of maker, model, batch and serial, please.");
    }
    return query;
  }

  private static RecalledJson json(
      Recalled item, List<Recalls.Holder> holders, List<Recalls.Touched> rigs) {
    return new RecalledJson(
        item.code(),
        item.kind().toLowerCase(Locale.ROOT),
        item.maker(),
        item.model(),
        item.batch(),
        item.serials(),
        Words.of(item.state()),
        item.withdrawnWhy(),
        item.toldWhy(),
        item.rigCode(),
        item.loan() == null ? null : item.loan().value(),
        item.backBy(),
        holders == null
            ? null
            : holders.stream()
                .map(h -> new HolderJson(h.borrower(), h.from(), h.until(), h.times()))
                .toList(),
        rigs.stream().map(Recalls.Touched::code).toList());
  }
}
