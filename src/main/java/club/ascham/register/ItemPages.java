package club.ascham.register;

import club.ascham.Settings;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.AnswerId;
import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Press;
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
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** What is this, and may it be used? */
@Path("/items")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class ItemPages {
  private static final int STORY_AT_FIRST = 12;
  private static final int STORY_AT_MOST = 1000;

  @CheckedTemplate(basePath = "register", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ItemPage(
      Registered item,
      RegisterRow row,
      List<ItemStory.Out> out,
      List<ItemStory.Due> due,
      Against against,
      Against ofRig,
      List<ItemStory.Fitting> fittings,
      List<ItemFacts.Fact> facts,
      List<Story.Line> story,
      boolean storyGoesOn,
      LocalDate today)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "register", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ChangeItemPage(
      Registered item,
      RegisterRow row,
      Typed typed,
      int version,
      List<Changes.Change> savedFirst,
      List<String> makers,
      List<String> models,
      Currency currency)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "register", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record LikeThisPage(
      Registered item,
      RegisterRow row,
      Typed typed,
      List<String> makers,
      List<String> models,
      Currency currency)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "register", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RetireItemPage(
      Registered item,
      RegisterRow row,
      Against against,
      Typed typed,
      String refusal,
      String refusedBecauseOf)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "register", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record FoundPage(Registered item, RegisterRow row, List<FoundAgain.Stands> standing, Typed typed)
      implements TemplateInstance {}

  private final Items items;
  private final Register register;
  private final ItemStory itemStory;
  private final Story story;
  private final ChangeItem changeItem;
  private final RetireItem retireItem;
  private final FindAgain findAgain;
  private final Concerns concerns;
  private final Actor actor;
  private final ClubTime time;
  private final Currency currency;
  private final Presses presses;

  ItemPages(
      Items items,
      Register register,
      ItemStory itemStory,
      Story story,
      ChangeItem changeItem,
      RetireItem retireItem,
      FindAgain findAgain,
      Concerns concerns,
      Actor actor,
      ClubTime time,
      Settings settings,
      Presses presses) {
    this.items = items;
    this.register = register;
    this.itemStory = itemStory;
    this.story = story;
    this.changeItem = changeItem;
    this.retireItem = retireItem;
    this.findAgain = findAgain;
    this.concerns = concerns;
    this.actor = actor;
    this.time = time;
    this.currency = Currency.getInstance(settings.currency());
    this.presses = presses;
  }

  @GET
  @Path("/{code}")
  public TemplateInstance item(@RestPath ItemCode code, @RestQuery("story") String howMuch) {
    Registered item = registered(code);
    List<Story.Line> lines =
        story.ofItem(item.id(), "all".equals(howMuch) ? STORY_AT_MOST : STORY_AT_FIRST + 1);
    boolean goesOn = !"all".equals(howMuch) && lines.size() > STORY_AT_FIRST;
    RegisterRow row = row(item);
    Against against = concerns.of(item.id());
    return new ItemPage(
        item,
        row,
        itemStory.out(item.id()),
        itemStory.due(item.id()),
        against,
        row.rig() == null || row.keptWith()
            ? Against.NOTHING
            : concerns.of(row.rig()).beyond(against),
        itemStory.fittings(item.id()),
        ItemFacts.of(item.details(), actor.role() != Role.VOLUNTEER, currency),
        goesOn ? lines.subList(0, STORY_AT_FIRST) : lines,
        goesOn,
        time.today());
  }

  // ---- change

  @GET
  @Path("/{code}/edit")
  @RolesAllowed(Role.OFFICERS)
  public TemplateInstance edit(@RestPath ItemCode code) {
    Registered item = registered(code);
    return changePage(item, Typed.of(written(item)), item.version(), List.of());
  }

  @POST
  @Path("/{code}/edit")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath ItemCode code, MultivaluedMap<String, String> form) {
    Registered item = registered(code);
    Typed typed = Forms.typed(form);
    return press(item, typed)
        .page(
            () -> {
              Optional<ItemDetails> details = ItemReader.read(item.kind(), typed, setting());
              int version = typed.version().orElse(-1);
              if (details.isEmpty() || item.version() != version) {
                return Outcome.unread();
              }
              return changeItem.change(item.id(), version, details.get());
            },
            () -> changePage(registered(code), typed));
  }

  private Press<ItemId> press(Registered item, Typed typed) {
    return presses.form(typed, ItemId::new, id -> page(item.code()));
  }

  /** With what someone else saved since the form was made, if anything. */
  private ChangeItemPage changePage(Registered now, Typed typed) {
    Typed again = Typed.of(typed.all());
    int version = again.version().orElse(-1);
    Optional<ItemDetails> details = ItemReader.read(now.kind(), again, setting());
    return details.isPresent() && now.version() != version
        ? changePage(
            now,
            typed,
            now.version(),
            Changes.between(now.kind(), written(details.get()), written(now.details())))
        : changePage(now, typed, version, List.of());
  }

  private ChangeItemPage changePage(
      Registered item, Typed typed, int version, List<Changes.Change> savedFirst) {
    return new ChangeItemPage(
        item,
        row(item),
        typed,
        version,
        savedFirst,
        register.known("maker", item.kind()),
        register.known("model", item.kind()),
        currency);
  }

  // ---- add more of them

  @GET
  @Path("/{code}/like-this")
  @RolesAllowed(Role.OFFICERS)
  public TemplateInstance likeThis(@RestPath ItemCode code) {
    Registered item = registered(code);
    return new LikeThisPage(
        item,
        row(item),
        Typed.of(Alike.of(item, actor.unit(), currency)),
        register.known("maker", item.kind()),
        register.known("model", item.kind()),
        currency);
  }

  // ---- retire, find again

  @GET
  @Path("/{code}/retire")
  @RolesAllowed(Role.OFFICERS)
  public TemplateInstance askWhy(@RestPath ItemCode code) {
    Registered item = registered(code);
    return retirePage(item, Typed.nothing(), null, null);
  }

  @POST
  @Path("/{code}/retire")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response retire(@RestPath ItemCode code, MultivaluedMap<String, String> form) {
    Registered item = registered(code);
    Typed typed = Forms.typed(form);
    return press(item, typed)
        .page(
            () ->
                RetireItem.read(typed, time.today())
                    .map(retirement -> retired(item, retirement))
                    .orElseGet(Outcome::unread),
            () -> retirePage(item, typed));
  }

  /** Whoever retires it after someone else is told so: it is off the register either way. */
  private Outcome<ItemId> retired(Registered item, Retirement retirement) {
    return item.retirement() != null
        ? Outcome.done(
            item.id(), "It was retired before: " + Words.said(item.retirement().why()) + ".")
        : retireItem.retire(item.id(), retirement);
  }

  private RetireItemPage retirePage(Registered item, Typed typed) {
    RegisterRow row = row(item);
    String where =
        row.rig() != null && !row.keptWith()
            ? "/rigs/" + row.rig().value()
            : row.loan() != null ? "/loans/" + row.loan().value() : null;
    return retirePage(item, typed, typed.messageAt("item"), where);
  }

  private RetireItemPage retirePage(
      Registered item, Typed typed, String refusal, String refusedBecauseOf) {
    return new RetireItemPage(
        item, row(item), concerns.of(item.id()), typed, refusal, refusedBecauseOf);
  }

  @GET
  @Path("/{code}/found")
  @RolesAllowed(Role.OFFICERS)
  public TemplateInstance askHowFound(@RestPath ItemCode code) {
    return foundPage(registered(code), Typed.nothing());
  }

  @POST
  @Path("/{code}/found")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response found(@RestPath ItemCode code, MultivaluedMap<String, String> form) {
    Registered item = registered(code);
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, AnswerId::new, again -> page(item.code()))
        .whole("why")
        .page(
            () ->
                FindAgain.read(typed)
                    .map(why -> findAgain.found(item.id(), why))
                    .orElseGet(Outcome::unread),
            () -> foundPage(item, typed));
  }

  private FoundPage foundPage(Registered item, Typed typed) {
    return new FoundPage(
        item,
        row(item),
        item.retirement() == null
            ? List.of()
            : findAgain.wouldStand(item.id(), item.kind(), item.retirement().why()).stands(),
        typed);
  }

  // ---- what they share

  private Registered registered(ItemCode code) {
    return items
        .registered(code)
        .orElseThrow(
            () -> new NoSuchThing("The club has nothing with the code " + code.display() + "."));
  }

  private RegisterRow row(Registered item) {
    return register.row(item.id(), time.today()).orElseThrow();
  }

  private Map<String, String> written(Registered item) {
    return written(item.details());
  }

  private Map<String, String> written(ItemDetails details) {
    return ItemWriter.write(details, actor.unit(), currency);
  }

  private ItemReader.Setting setting() {
    return new ItemReader.Setting(actor.unit(), currency, time.today());
  }

  private static String page(ItemCode code) {
    return "/items/" + code.display();
  }
}
