package club.ascham.recall;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.AnswerId;
import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.web.CsvDownload;
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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A maker recalls something: what we have of it, where it is, who has or had it. */
@Path("/recall")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class RecallPages {
  private static final String NOTHING_TICKED = "Tick at least one that is to be withdrawn.";

  /**
   * One item with its past.
   *
   * @param names whether borrowers may be named to whoever looks
   * @param ticked whether it is to be withdrawn
   */
  public record Traced(
      Recalled item,
      List<Recalls.Holder> holders,
      List<Recalls.Touched> rigs,
      boolean names,
      boolean ticked) {
    public int borrowers() {
      return (int) holders.stream().filter(holder -> holder.borrower() != null).count();
    }
  }

  /** What a list on paper must say of itself. */
  public record Asked(String said, LocalDate on) {}

  /**
   * @param asked what was looked for, and on which day; null: nothing yet
   * @param holdersFile where the file of who has or had it is; null: nothing is asked for yet
   */
  @CheckedTemplate(basePath = "recall", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RecallPage(
      Typed typed,
      Asked asked,
      String holdersFile,
      List<Traced> items,
      int inUse,
      List<String> makers,
      List<String> models)
      implements TemplateInstance {}

  private final Recalls recalls;
  private final RecallItems recallItems;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  RecallPages(
      Recalls recalls, RecallItems recallItems, Actor actor, ClubTime time, Presses presses) {
    this.recalls = recalls;
    this.recallItems = recallItems;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
  }

  @GET
  public TemplateInstance recall(@Context UriInfo uri) {
    return page(Forms.typed(uri.getQueryParameters()), true);
  }

  /** Whom to call: for officers, since it says how to reach everyone. */
  @GET
  @Path("/holders.csv")
  @RolesAllowed(Role.OFFICERS)
  public Response holders(@Context UriInfo uri) {
    return RecallQuery.parse(Forms.typed(uri.getQueryParameters()))
        .map(
            query ->
                CsvDownload.of(
                    "recall-holders",
                    HolderRow.HEADER,
                    recalls.holderRows(query).stream().map(row -> row.cells(time::dayOf)).toList()))
        .orElseGet(() -> Go.to("/recall"));
  }

  @POST
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response withdraw(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, AnswerId::new, done -> RecallQuery.parse(typed).orElseThrow().address())
        .page(() -> withdrawn(typed), () -> page(typed, false));
  }

  private Outcome<AnswerId> withdrawn(Typed typed) {
    Optional<RecallQuery> query = RecallQuery.parse(typed);
    String why = RecallItems.why(typed);
    if (query.isPresent()
        && recalls.of(query.get()).stream().noneMatch(item -> isTicked(item, typed))) {
      typed.fault("items", NOTHING_TICKED);
    }
    return query.isPresent() && typed.sound()
        ? recallItems.withdraw(query.get(), item -> isTicked(item, typed), why)
        : Outcome.unread();
  }

  private static boolean isTicked(Recalled item, Typed typed) {
    return typed.ticked(item.field());
  }

  /**
   * @param first whether nobody has ticked anything yet: then all are that no recall reached
   */
  private TemplateInstance page(Typed typed, boolean first) {
    Optional<RecallQuery> query = RecallQuery.parse(typed);
    List<Recalled> found = query.map(recalls::of).orElse(List.of());
    List<ItemId> ids = found.stream().map(Recalled::id).toList();
    Map<ItemId, List<Recalls.Holder>> holders = recalls.holders(ids);
    Map<ItemId, List<Recalls.Touched>> rigs = recalls.rigs(ids);
    boolean names = actor.role() != Role.COMMITTEE;
    return new RecallPage(
        typed,
        query.map(known -> new Asked(known.said(), time.today())).orElse(null),
        query.map(RecallQuery::holdersAddress).orElse(null),
        found.stream()
            .map(
                item ->
                    new Traced(
                        item,
                        holders.getOrDefault(item.id(), List.of()),
                        rigs.getOrDefault(item.id(), List.of()),
                        names,
                        first ? !item.isRecalled() : isTicked(item, typed)))
            .toList(),
        (int) found.stream().filter(Recalled::isInUse).count(),
        recalls.makers(),
        recalls.models());
  }
}
