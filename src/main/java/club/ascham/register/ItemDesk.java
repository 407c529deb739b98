package club.ascham.register;

import club.ascham.Settings;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.standing.State;
import club.ascham.time.ClubTime;
import club.ascham.units.CodeParse;
import club.ascham.units.ItemCode;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Problem;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
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
  private static final int LARGEST_PAGE = 200;
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
      Settings settings) {
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
    Integer size = typed.whole("size", 1, LARGEST_PAGE);
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
    ItemKind kind = kind(slug, body, typed);
    Optional<ItemDetails> details = kind == null ? Optional.empty() : read(kind, body, typed);
    refuseCode(body, typed);
    if (details.isEmpty() || !typed.sound()) {
      return Problem.of(typed);
    }
    return added(addItem.add(details.get(), 1, typed.value("onceKey")), slug, shape);
  }

  /** So many more like one: the body may say what differs. */
  <J> Response likeThis(String slug, String code, Map<String, Object> sent, Shape<J> shape) {
    Map<String, Object> body = orEmpty(sent);
    Registered item = registered(slug, code);
    Map<String, Object> alike = new LinkedHashMap<>(Alike.of(item, actor.unit(), currency));
    Typed typed = Typed.nothing();
    typed.with("copies", body.get("copies"));
    alike.putAll(body);
    alike.remove("copies");
    refuseCode(body, typed);
    if (!typed.has("copies")) {
      typed.fault("copies", "Say how many, from 1 to " + AddItem.MOST_AT_ONCE + ".");
    }
    Optional<ItemDetails> details = read(item.kind(), alike, typed);
    int copies = Copies.read(typed);
    if (details.isEmpty() || !typed.sound()) {
      return Problem.of(typed);
    }
    AddItem.Outcome outcome = addItem.add(details.get(), copies, typed.value("onceKey"));
    if (outcome instanceof AddItem.Outcome.Added added) {
      List<J> all =
          items.registered(added.ids()).stream().map(each -> written(each, shape)).toList();
      return Response.status(201)
          .entity(new ItemJson.Listed<>(all, 1, all.size(), all.size()))
          .build();
    }
    return added(outcome, slug, shape);
  }

  <J> Response change(String slug, String code, Map<String, Object> sent, Shape<J> shape) {
    Map<String, Object> body = orEmpty(sent);
    Registered item = registered(slug, code);
    Typed typed = Typed.nothing();
    Optional<ItemDetails> details = read(item.kind(), body, typed);
    typed.with("version", body.get("version"));
    if (!typed.has("version")) {
      typed.fault("version", "Send the version that you read, so that nobody's change is lost.");
    }
    int version = typed.version().orElse(-1);
    if (details.isEmpty() || !typed.sound()) {
      return Problem.of(typed);
    }
    ChangeItem.Outcome outcome =
        changeItem.change(item.id(), version, details.get(), typed.value("onceKey"));
    if (outcome instanceof ChangeItem.Outcome.SavedFirst first) {
      return Problem.response(
          409,
          "Someone saved first",
          "You read version %d and it is version %d now. Read it again. Nothing was changed."
              .formatted(version, first.now().version()));
    }
    if (outcome instanceof ChangeItem.Outcome.Refused refused) {
      typed.fault(refused.field(), refused.message());
      return Problem.of(typed);
    }
    return Response.ok(one(slug, code, shape)).build();
  }

  <J> Response retire(String slug, String code, Map<String, Object> sent, Shape<J> shape) {
    Map<String, Object> body = orEmpty(sent);
    Registered item = registered(slug, code);
    Typed typed = Typed.nothing();
    copy(body, typed, List.of("why", "on", "note"));
    Optional<Retirement> retirement = RetireItem.read(typed, time.today());
    if (retirement.isEmpty()) {
      return Problem.of(typed);
    }
    RetireItem.Outcome outcome =
        retireItem.retire(item.id(), retirement.get(), typed.value("onceKey"));
    if (outcome instanceof RetireItem.Outcome.StillFitted fitted) {
      return Problem.response(
          409,
          "Still fitted",
          "It is fitted to rig %d: take it off first.".formatted(fitted.rig().value()));
    }
    if (outcome instanceof RetireItem.Outcome.OnLoan loan) {
      return Problem.response(
          409,
          "On loan",
          "It is out with loan %d: receive it first, or report it lost there."
              .formatted(loan.loan().value()));
    }
    if (outcome instanceof RetireItem.Outcome.KeptIn keptIn) {
      typed.fault("why", keptIn.message());
      return Problem.of(typed);
    }
    if (outcome instanceof RetireItem.Outcome.SeenSince seen) {
      typed.fault("on", seen.message());
      return Problem.of(typed);
    }
    if (outcome instanceof RetireItem.Outcome.RetiredBefore) {
      return Problem.response(409, "Retired before", "It was retired already.");
    }
    return Response.ok(one(slug, code, shape)).build();
  }

  <J> Response found(String slug, String code, Map<String, Object> sent, Shape<J> shape) {
    Registered item = registered(slug, code);
    Typed typed = Typed.nothing();
    copy(orEmpty(sent), typed, List.of("why"));
    Optional<String> why = FindAgain.read(typed);
    if (why.isEmpty() || !typed.sound()) {
      return Problem.of(typed);
    }
    FindAgain.Outcome outcome = findAgain.found(item.id(), why.get(), typed.value("onceKey"));
    if (outcome instanceof FindAgain.Outcome.NotRetired) {
      return Problem.response(409, "Not retired", "It is not retired, so it can't be found again.");
    }
    List<FoundAgain.Stands> stands =
        outcome instanceof FindAgain.Outcome.Found found ? found.again().stands() : List.of();
    return Response.ok(new ItemJson.FoundJson<>(one(slug, code, shape), stands)).build();
  }

  private <J> Response added(AddItem.Outcome outcome, String slug, Shape<J> shape) {
    if (outcome instanceof AddItem.Outcome.NoCodesLeft none) {
      return Problem.response(409, "No codes left", none.message());
    }
    if (outcome instanceof AddItem.Outcome.AddedBefore before) {
      return Problem.response(
          409, "Sent before", "This onceKey was used before: see " + before.page() + ".");
    }
    String code = ((AddItem.Outcome.Added) outcome).codes().get(0).display();
    return Response.created(URI.create("/api/" + slug + "/" + code))
        .entity(one(slug, code, shape))
        .build();
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
    copy(body, typed, ItemReader.fields(kind));
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
