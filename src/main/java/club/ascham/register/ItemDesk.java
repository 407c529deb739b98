package club.ascham.register;

import club.ascham.Settings;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.id.AnswerId;
import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.standing.State;
import club.ascham.store.KeptAnswers;
import club.ascham.time.ClubTime;
import club.ascham.units.CodeParse;
import club.ascham.units.ItemCode;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import club.ascham.web.Problem;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;

/** What the six lists of items do in the same way when asked in JSON. */
@ApplicationScoped
class ItemDesk {
  private static final Set<String> SEARCHED =
      Set.of("words", "state", "hand", "bowIn", "sort", "page");

  /** Fields that a change may carry because they were read, and that it does not change. */
  private static final Set<String> ONLY_READ =
      Set.of(
          "code",
          "kind",
          "state",
          "version",
          "registeredOn",
          "retiredOn",
          "retiredWhy",
          "retiredNote",
          "concerns",
          "soundUpToLb",
          "onceKey");

  private final Items items;
  private final Register register;
  private final AddItem addItem;
  private final ChangeItem changeItem;
  private final RetireItem retireItem;
  private final FindAgain findAgain;
  private final Concerns concerns;
  private final Actor actor;
  private final ClubTime time;
  private final Currency currency;
  private final Presses presses;
  private final KeptAnswers answers;

  ItemDesk(
      Items items,
      Register register,
      AddItem addItem,
      ChangeItem changeItem,
      RetireItem retireItem,
      FindAgain findAgain,
      Concerns concerns,
      Actor actor,
      ClubTime time,
      Settings settings,
      Presses presses,
      KeptAnswers answers) {
    this.items = items;
    this.register = register;
    this.addItem = addItem;
    this.changeItem = changeItem;
    this.retireItem = retireItem;
    this.findAgain = findAgain;
    this.concerns = concerns;
    this.actor = actor;
    this.time = time;
    this.currency = Currency.getInstance(settings.currency());
    this.presses = presses;
    this.answers = answers;
  }

  /** How items of one list are written. */
  interface Shape<J> extends BiFunction<ItemJson.Common, Registered, J> {}

  <J> Response list(String slug, MultivaluedMap<String, String> query, Shape<J> shape) {
    Typed typed = Typed.nothing();
    query.forEach(
        (name, values) -> {
          if (SEARCHED.contains(name) || name.equals("size")) {
            typed.with(name, values.get(values.size() - 1));
          } else {
            typed.fault(name, "There is no such filter.");
          }
        });
    Integer size = typed.whole("size", 1, PageAsked.LARGEST);
    RegisterSearch search = RegisterSearch.read(typed);
    if (!typed.sound()) {
      return Problem.of(typed);
    }
    int many = size == null ? Register.PAGE : size;
    List<ItemKind> kinds = kinds(slug);
    List<RegisterRow> rows = register.page(search, kinds, many, time.today());
    Map<ItemId, State> states = new LinkedHashMap<>();
    rows.forEach(row -> states.put(row.id(), row.state()));
    List<J> found = written(items.registered(states.keySet()), states, shape);
    long total = register.count(search, kinds, time.today());
    return Response.ok(new ItemJson.Listed<>(found, search.page(), many, total)).build();
  }

  <J> J one(String slug, String code, Shape<J> shape) {
    return written(registered(slug, code), shape);
  }

  <J> Response add(String slug, Map<String, Object> sent, Shape<J> shape) {
    Map<String, Object> body = orEmpty(sent);
    Typed typed = Typed.nothing();
    return presses
        .body(sent, typed, ItemId::new)
        .at(item -> "/api/" + slug + "/" + added(item, 1).get(0).code().display())
        .json(
            201,
            () -> {
              ItemKind kind = kind(slug, body, typed);
              return added(
                  kind == null ? Optional.empty() : read(kind, body, typed), 1, body, typed);
            },
            item -> written(added(item, 1).get(0), shape));
  }

  private Outcome<ItemId> added(
      Optional<ItemDetails> details, int copies, Map<String, Object> body, Typed typed) {
    refuseCode(body, typed);
    return details.isPresent() && typed.sound()
        ? addItem.add(details.get(), copies)
        : Outcome.unread();
  }

  private List<Registered> added(ItemId first, int copies) {
    return addItem.added(first, copies);
  }

  /** So many more like one: the body may say what differs. */
  <J> Response likeThis(String slug, String code, Map<String, Object> sent, Shape<J> shape) {
    Map<String, Object> body = orEmpty(sent);
    Registered item = registered(slug, code);
    Typed typed = Typed.nothing();
    typed.with("copies", body.get("copies"));
    int copies = Copies.read(Typed.of(typed.all()));
    return presses
        .body(sent, typed, ItemId::new)
        .json(
            201,
            () -> alike(item, body, typed),
            first -> {
              List<J> all =
                  added(first, copies).stream().map(each -> written(each, shape)).toList();
              return new ItemJson.Listed<>(all, 1, all.size(), all.size());
            });
  }

  private Outcome<ItemId> alike(Registered item, Map<String, Object> body, Typed typed) {
    Map<String, Object> alike = new LinkedHashMap<>(Alike.of(item, actor.unit(), currency));
    alike.putAll(body);
    alike.remove("copies");
    if (!typed.has("copies")) {
      typed.fault("copies", "Say how many, from 1 to " + AddItem.MOST_AT_ONCE + ".");
    }
    Optional<ItemDetails> details = read(item.kind(), alike, typed);
    return added(details, Copies.read(typed), body, typed);
  }

  <J> Response change(String slug, String code, Map<String, Object> sent, Shape<J> shape) {
    Map<String, Object> body = orEmpty(sent);
    Registered item = registered(slug, code);
    Typed typed = Typed.nothing();
    return presses
        .body(sent, typed, ItemId::new)
        .json(200, () -> changed(item, body, typed), changed -> one(slug, code, shape));
  }

  private Outcome<ItemId> changed(Registered item, Map<String, Object> body, Typed typed) {
    Optional<ItemDetails> details = read(item.kind(), body, typed);
    typed.with("version", body.get("version"));
    if (!typed.has("version")) {
      typed.fault("version", "Send the version that you read, so that nobody's change is lost.");
    }
    int version = typed.version().orElse(-1);
    return details.isPresent() && typed.sound()
        ? changeItem.change(item.id(), version, details.get())
        : Outcome.unread();
  }

  <J> Response retire(String slug, String code, Map<String, Object> sent, Shape<J> shape) {
    Map<String, Object> body = orEmpty(sent);
    Registered item = registered(slug, code);
    Typed typed = Typed.nothing();
    return presses
        .body(sent, typed, ItemId::new)
        .json(
            200,
            () -> {
              copy(body, typed, List.of("why", "on", "note"));
              return RetireItem.read(typed, time.today())
                  .map(retirement -> retireItem.retire(item.id(), retirement))
                  .orElseGet(Outcome::unread);
            },
            retired -> one(slug, code, shape));
  }

  <J> Response found(String slug, String code, Map<String, Object> sent, Shape<J> shape) {
    Registered item = registered(slug, code);
    Typed typed = Typed.nothing();
    return presses
        .body(sent, typed, AnswerId::new)
        .json(
            200,
            () -> {
              copy(orEmpty(sent), typed, List.of("why"));
              return FindAgain.read(typed)
                  .filter(why -> typed.sound())
                  .map(why -> findAgain.found(item.id(), why))
                  .orElseGet(Outcome::unread);
            },
            again ->
                new ItemJson.FoundJson<>(
                    one(slug, code, shape), answers.of(again, FoundAgain.class).stands()));
  }

  // ---- reading a body

  private static void refuseCode(Map<String, Object> body, Typed typed) {
    if (body.get("code") != null) {
      typed.fault("code", "The register gives each thing its code: leave it out.");
    }
  }

  private static Map<String, Object> orEmpty(Map<String, Object> sent) {
    return sent == null ? Map.of() : sent;
  }

  private ItemKind kind(String slug, Map<String, Object> body, Typed typed) {
    List<ItemKind> kinds = kinds(slug);
    if (kinds.size() == 1) {
      return kinds.get(0);
    }
    typed.with("kind", body.get("kind"));
    ItemKind kind = typed.requiredWord("kind", ItemKind.class, "Say which kind it is, say tab.");
    if (kind != null && !kinds.contains(kind)) {
      typed.fault("kind", kind.capital() + " has a list of its own: /api/" + kind.slug() + ".");
      return null;
    }
    return kind;
  }

  private Optional<ItemDetails> read(ItemKind kind, Map<String, Object> body, Typed typed) {
    List<String> known =
        new ArrayList<>(ItemFields.of(kind).stream().map(ItemField::name).toList());
    if (kind.isKitItem()) {
      known.add("kind");
    }
    copy(body, typed, known);
    return ItemReader.read(
        kind, typed, new ItemReader.Setting(actor.unit(), currency, time.today()));
  }

  /** The known fields as if they had been typed; any other is a slip that would else go unseen. */
  private static void copy(Map<String, Object> body, Typed typed, List<String> known) {
    body.forEach(
        (field, value) -> {
          boolean wanted = known.contains(field) || field.equals("onceKey");
          if (!wanted && ONLY_READ.contains(field)) {
            return;
          }
          if (value instanceof Map || value instanceof List) {
            typed.fault(field, "A text, a number, or true or false, please.");
          } else if (wanted) {
            typed.with(field, value);
          } else {
            typed.fault(field, "There is no such field.");
          }
        });
  }

  // ---- finding and writing

  private Registered registered(String slug, String code) {
    CodeParse parse = ItemCode.parse(code);
    if (!(parse instanceof CodeParse.Whole whole)) {
      throw new NoSuchThing(
          parse instanceof CodeParse.WrongCheck wrong
              ? wrong.message()
              : "There is no item " + code + ".");
    }
    Registered item =
        items
            .registered(whole.code())
            .orElseThrow(() -> new NoSuchThing("There is no item " + code + "."));
    if (!item.kind().slug().equals(slug)) {
      throw new NoSuchThing(
          "%s is a %s: see /api/%s/%s."
              .formatted(
                  item.code().display(),
                  item.kind().said(),
                  item.kind().slug(),
                  item.code().display()));
    }
    return item;
  }

  private <J> J written(Registered item, Shape<J> shape) {
    State state = register.row(item.id(), time.today()).orElseThrow().state();
    return written(List.of(item), Map.of(item.id(), state), shape).get(0);
  }

  private <J> List<J> written(
      Collection<Registered> all, Map<ItemId, State> states, Shape<J> shape) {
    boolean prices = actor.role() != Role.VOLUNTEER;
    Map<ItemId, Against> against = concerns.ofItems(states.keySet());
    return all.stream()
        .map(
            item ->
                shape.apply(
                    ItemJson.Common.of(
                        item, states.get(item.id()), against.get(item.id()), prices, currency),
                    item))
        .toList();
  }

  private static List<ItemKind> kinds(String slug) {
    return Arrays.stream(ItemKind.values()).filter(kind -> kind.slug().equals(slug)).toList();
  }
}
