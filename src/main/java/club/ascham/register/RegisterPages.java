package club.ascham.register;

import club.ascham.Settings;
import club.ascham.askback.DoNotShoot;
import club.ascham.concern.Against;
import club.ascham.concern.Beside;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.standing.State;
import club.ascham.time.ClubTime;
import club.ascham.units.CodeParse;
import club.ascham.units.ItemCode;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;

/** Find it, or add it. */
@Path("/register")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class RegisterPages {
  @CheckedTemplate(basePath = "register", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RegisterPage(
      RegisterSearch search,
      Typed typed,
      List<KindLink> kinds,
      List<Column> columns,
      List<RegisterRow> rows,
      Map<ItemId, Shown> shown,
      long from,
      long upTo,
      long total,
      boolean nothingYet,
      State[] states)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "register", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ChooseKindPage(ItemKind[] kitKinds) implements TemplateInstance {}

  @CheckedTemplate(basePath = "register", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record NewItemPage(
      ItemKind kind,
      Typed typed,
      List<String> makers,
      List<String> models,
      List<RegisterRow> latest,
      Currency currency)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "register", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record LabelsPage(List<Label> codes, ItemKind kind) implements TemplateInstance {}

  /** A code to be written on its thing, and the page of that thing. */
  @TemplateData
  record Label(String display, String page) {}

  /** A kind to narrow the list to, with how many there are; without a kind, all of them. */
  @TemplateData
  record KindLink(String word, long count, String address, boolean current) {}

  /** The head of a column. */
  @TemplateData
  record Column(String word, String address, String ariaSort) {}

  private final Register register;
  private final AddItem addItem;
  private final Items items;
  private final Concerns concerns;
  private final Actor actor;
  private final ClubTime time;
  private final Currency currency;
  private final Presses presses;

  RegisterPages(
      Register register,
      AddItem addItem,
      Items items,
      Concerns concerns,
      Actor actor,
      ClubTime time,
      Settings settings,
      Presses presses) {
    this.register = register;
    this.addItem = addItem;
    this.items = items;
    this.concerns = concerns;
    this.actor = actor;
    this.time = time;
    this.currency = Currency.getInstance(settings.currency());
    this.presses = presses;
  }

  @GET
  public TemplateInstance list(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    RegisterSearch search = RegisterSearch.read(typed);
    LocalDate today = time.today();
    List<Register.KindCount> counts = register.counts(search, today);
    long everything = counts.stream().mapToLong(Register.KindCount::count).sum();
    long total =
        search.kind() == null
            ? everything
            : counts.stream()
                .filter(count -> count.kind() == search.kind())
                .mapToLong(Register.KindCount::count)
                .sum();
    List<RegisterRow> rows = register.page(search, today);
    long before = (search.page() - 1L) * Register.PAGE;
    return new RegisterPage(
        search,
        typed,
        kinds(search, counts, everything),
        columns(search),
        rows,
        shown(rows),
        before + 1,
        before + rows.size(),
        total,
        everything == 0 && search.said().isEmpty(),
        State.values());
  }

  /**
   * What a row says beside its state.
   *
   * @param beside what stands against it; null: nothing
   * @param ofRig what keeps in the rig that it is fitted to, where nothing stands against itself
   * @param askedBack whether it is out and to be asked for at once
   */
  @TemplateData
  record Shown(Beside beside, Beside ofRig, boolean askedBack) {}

  private Map<ItemId, Shown> shown(List<RegisterRow> rows) {
    Map<ItemId, Against> against = concerns.ofItems(rows.stream().map(RegisterRow::id).toList());
    Map<RigId, Against> rigs =
        concerns.ofRigs(
            rows.stream()
                .filter(row -> row.rig() != null && !row.keptWith())
                .map(RegisterRow::rig)
                .distinct()
                .toList());
    Map<ItemId, Shown> shown = new HashMap<>();
    for (RegisterRow row : rows) {
      Against own = against.get(row.id());
      Against ofRig = rigs.getOrDefault(row.rig(), Against.NOTHING).beyond(own);
      Beside beside = own.beside(row.state());
      shown.put(
          row.id(),
          new Shown(
              beside,
              beside != null || row.keptWith() ? null : ofRig.blocking().beside(row.state()),
              row.loan() != null && DoNotShoot.says(own)));
    }
    return shown;
  }

  private static List<KindLink> kinds(
      RegisterSearch search, List<Register.KindCount> counts, long everything) {
    List<KindLink> links = new ArrayList<>();
    links.add(
        new KindLink("everything", everything, search.of(null).address(), search.kind() == null));
    counts.stream()
        .sorted(Comparator.comparing(Register.KindCount::kind))
        .forEach(
            count ->
                links.add(
                    new KindLink(
                        count.kind().plural(),
                        count.count(),
                        search.of(count.kind()).address(),
                        count.kind() == search.kind())));
    return links;
  }

  private static List<Column> columns(RegisterSearch search) {
    return Arrays.stream(RegisterSearch.Sort.values())
        .map(
            sort ->
                new Column(
                    switch (sort) {
                      case CODE -> "Code";
                      case MAKER -> "What it is";
                      case STATE -> "State";
                      case BOUGHT -> "Bought";
                    },
                    search.by(sort).address(),
                    search.ariaSort(sort)))
        .toList();
  }

  @GET
  @Path("/new")
  @RolesAllowed(Role.OFFICERS)
  public TemplateInstance add(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    ItemKind kind = typed.word("kind", ItemKind.class);
    return kind == null ? new ChooseKindPage(kitKinds()) : page(kind, typed);
  }

  @POST
  @Path("/new")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response added(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    ItemKind kind = typed.word("kind", ItemKind.class);
    if (kind == null) {
      return Go.again(new ChooseKindPage(kitKinds()));
    }
    int copies = Copies.read(Typed.of(typed.all()));
    return presses
        .form(typed, ItemId::new, first -> addItem.page(first, copies))
        .page(() -> added(kind, typed), () -> page(kind, typed));
  }

  private Outcome<ItemId> added(ItemKind kind, Typed typed) {
    int copies = Copies.read(typed);
    return ItemReader.read(
            kind, typed, new ItemReader.Setting(actor.unit(), currency, time.today()))
        .map(details -> addItem.add(details, copies))
        .orElseGet(Outcome::unread);
  }

  /** The codes just given, to be written on labels. */
  @GET
  @Path("/labels")
  public TemplateInstance labels(@RestQuery String codes) {
    List<ItemCode> read = new ArrayList<>();
    for (String code : codes == null ? new String[0] : codes.split(",")) {
      if (ItemCode.parse(code) instanceof CodeParse.OfItem found
          && read.size() < AddItem.MOST_AT_ONCE) {
        read.add(found.item());
      }
    }
    Optional<Items.Named> first = read.isEmpty() ? Optional.empty() : items.coded(read.get(0));
    return new LabelsPage(
        read.stream().map(code -> new Label(code.display(), "/items/" + code.display())).toList(),
        first.orElseThrow(() -> new NoSuchThing("These are no codes of the club's items.")).kind());
  }

  private NewItemPage page(ItemKind kind, Typed typed) {
    return new NewItemPage(
        kind,
        typed,
        register.known("maker", kind),
        register.known("model", kind),
        register.latest(kind, time.today(), 4),
        currency);
  }

  private static ItemKind[] kitKinds() {
    return Arrays.stream(ItemKind.values()).filter(ItemKind::isKitItem).toArray(ItemKind[]::new);
  }
}
