package club.ascham.recall;

import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A maker recalls something: what we have of it, where it is, who has or had it. */
@Path("/recall")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class RecallPages {
  private static final int LONGEST_WHY = 500;

  /**
   * One item with its past.
   *
   * @param names whether borrowers may be named to whoever looks
   */
  public record Traced(
      Recalled item, List<Recalls.Holder> holders, List<Recalls.Touched> rigs, boolean names) {
    public int borrowers() {
      return (int) holders.stream().filter(holder -> holder.borrower() != null).count();
    }
  }

  @CheckedTemplate(basePath = "recall", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RecallPage(
      Typed typed,
      boolean asked,
      List<Traced> items,
      int inUse,
      List<String> makers,
      List<String> models)
      implements TemplateInstance {}

  private final Recalls recalls;
  private final RecallItems recallItems;
  private final Actor actor;

  RecallPages(Recalls recalls, RecallItems recallItems, Actor actor) {
    this.recalls = recalls;
    this.recallItems = recallItems;
    this.actor = actor;
  }

  @GET
  public TemplateInstance recall(@Context UriInfo uri) {
    return page(Forms.typed(uri.getQueryParameters()));
  }

  @POST
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response withdraw(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    Optional<RecallQuery> query = RecallQuery.parse(typed);
    String why =
        typed.required("why", LONGEST_WHY, "Why? It stands on every one of them until released.");
    if (query.isEmpty() || !typed.sound()) {
      return Go.again(page(typed));
    }
    RecallItems.Outcome outcome = recallItems.withdraw(query.get(), why, typed.value("once-key"));
    return Go.to(query.get().address(), outcome.said());
  }

  private TemplateInstance page(Typed typed) {
    Optional<RecallQuery> query = RecallQuery.parse(typed);
    List<Recalled> found = query.map(recalls::of).orElse(List.of());
    List<ItemId> ids = found.stream().map(Recalled::id).toList();
    Map<ItemId, List<Recalls.Holder>> holders = recalls.holders(ids);
    Map<ItemId, List<Recalls.Touched>> rigs = recalls.rigs(ids);
    boolean names = actor.role() != Role.COMMITTEE;
    return new RecallPage(
        typed,
        query.isPresent(),
        found.stream()
            .map(
                item ->
                    new Traced(
                        item,
                        holders.getOrDefault(item.id(), List.of()),
                        rigs.getOrDefault(item.id(), List.of()),
                        names))
            .toList(),
        (int) found.stream().filter(Recalled::isInUse).count(),
        recalls.makers(),
        recalls.models());
  }
}
