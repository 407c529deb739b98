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
import club.ascham.units.ItemCode;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Arrays;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.jboss.resteasy.reactive.RestPath;

/**
 * The things the club owns as JSON, in six lists: each address, its shape and its words are told
 * apart by {@link ItemsInOpenApi}, {@code {one}} and {@code {many}} standing for what is in it.
 */
@Path("/api/{list:risers|limbs|bows|strings|stringers|kit-items}")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class ItemsApi {
  private static final Set<String> SEARCHED =
      Set.of("words", "state", "hand", "bowIn", "sort", "page");

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

  ItemsApi(
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

  @GET
  @Operation(
      summary = "{many} in use, by code",
      description =
          "Query: words (each must occur in code, maker, model, batch, serial or notes), state"
              + " (ready, on-loan, to-be-checked, withdrawn, in-the-workshop, retired; any: retired"
              + " ones too), hand, bowIn (usable on a bow of so many inches), sort (code, maker,"
              + " state, bought; with - backwards), page (from 1), size (up to 200).")
  public Response list(@RestPath String list, @Context UriInfo uri) {
    Typed typed = Typed.nothing();
    uri.getQueryParameters()
        .forEach(
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
    List<ItemKind> kinds = kinds(list);
    List<RegisterRow> rows = register.page(search, kinds, many, time.today());
    Map<ItemId, State> states = new LinkedHashMap<>();
    rows.forEach(row -> states.put(row.id(), row.state()));
    List<Map<String, Object>> found = written(items.registered(states.keySet()), states);
    long total = register.count(search, kinds, time.today());
    return Response.ok(new ItemJson.Listed(found, search.page(), many, total)).build();
  }

  @GET
  @Path("/{code}")
  @Operation(summary = "One {one}")
  public Map<String, Object> one(@RestPath String list, @RestPath ItemCode code) {
    return written(registered(list, code));
  }

  @POST
  @RolesAllowed(Role.OFFICERS)
  @Operation(
      summary = "Register a {one}; its code is given",
      description =
          "Lengths carry their unit (26 in, 660.4 mm); one without is read in the account's own"
              + " unit. 422 names each wrong field.")
  @APIResponse(responseCode = "201", description = "Registered")
  public Response add(@RestPath String list, Map<String, Object> sent) {
    Map<String, Object> body = SentItem.orEmpty(sent);
    Typed typed = Typed.nothing();
    return presses
        .body(sent, typed, ItemId::new)
        .at(item -> "/api/" + list + "/" + added(item, 1).get(0).code().display())
        .json(
            201,
            () -> {
              ItemKind kind = SentItem.kind(kinds(list), body, typed);
              return added(
                  kind == null ? Optional.empty() : read(kind, body, typed), 1, body, typed);
            },
            item -> written(added(item, 1).get(0)));
  }

  private Outcome<ItemId> added(
      Optional<ItemDetails> details, int copies, Map<String, Object> body, Typed typed) {
    SentItem.refuseCode(body, typed);
    return details.isPresent() && typed.sound()
        ? addItem.add(details.get(), copies)
        : Outcome.unread();
  }

  private List<Registered> added(ItemId first, int copies) {
    return addItem.added(first, copies);
  }

  /** So many more like one: the body may say what differs. */
  @POST
  @Path("/{code}/like-this")
  @RolesAllowed(Role.OFFICERS)
  @Operation(
      summary = "Register more like this one",
      description =
          "copies from 1 to 50; any other field says what differs. Serials, notes, day bought and"
              + " what is measured on the thing itself are not taken over.")
  @RequestBody(
      content =
          @Content(examples = @ExampleObject(name = "twelve more", value = "{\"copies\": 12}")))
  @APIResponse(responseCode = "201", description = "Registered, each under its own code")
  public Response likeThis(
      @RestPath String list, @RestPath ItemCode code, Map<String, Object> sent) {
    Map<String, Object> body = SentItem.orEmpty(sent);
    Registered item = registered(list, code);
    Typed typed = Typed.nothing();
    typed.with("copies", body.get("copies"));
    int copies = Copies.read(Typed.of(typed.all()));
    return presses
        .body(sent, typed, ItemId::new)
        .json(
            201,
            () -> alike(item, body, typed),
            first -> {
              List<Map<String, Object>> all = written(added(first, copies));
              return new ItemJson.Listed(all, 1, all.size(), all.size());
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

  @PUT
  @Path("/{code}")
  @RolesAllowed(Role.OFFICERS)
  @Operation(
      summary = "Put new details in the place of the old ones",
      description =
          "The whole of it: what is left out is unknown from then on. version is the one that was"
              + " read; 409 when someone saved first.")
  public Response change(@RestPath String list, @RestPath ItemCode code, Map<String, Object> sent) {
    Map<String, Object> body = SentItem.orEmpty(sent);
    Registered item = registered(list, code);
    Typed typed = Typed.nothing();
    return presses
        .body(sent, typed, ItemId::new)
        .json(200, () -> changed(item, body, typed), changed -> one(list, code));
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

  @POST
  @Path("/{code}/retire")
  @RolesAllowed(Role.OFFICERS)
  @Operation(
      summary = "Retire it: scrapped, sold or lost",
      description =
          "Refused with 409 while it is fitted or on loan. on: the day, today where left out.")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "lost",
                      value = "{\"why\": \"lost\", \"note\": \"not in its place since May\"}")))
  public Response retire(@RestPath String list, @RestPath ItemCode code, Map<String, Object> sent) {
    Map<String, Object> body = SentItem.orEmpty(sent);
    Registered item = registered(list, code);
    Typed typed = Typed.nothing();
    return presses
        .body(sent, typed, ItemId::new)
        .json(
            200,
            () -> {
              SentItem.copy(body, typed, List.of("why", "on", "note"));
              return RetireItem.read(typed, time.today())
                  .map(retirement -> retireItem.retire(item.id(), retirement))
                  .orElseGet(Outcome::unread);
            },
            retired -> one(list, code));
  }

  @POST
  @Path("/{code}/found")
  @RolesAllowed(Role.OFFICERS)
  @Operation(
      summary = "Found again: no longer retired, and how it came back",
      description =
          "The item, and in standsAgainst what it waits for from now on and what ends that: the"
              + " inspections of its kind; a withdrawal too where it was scrapped, failed its newest"
              + " inspection or was withdrawn before. 409 where it is not retired.")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "in the shed",
                      value = "{\"why\": \"It lay behind the nets in the shed.\"}")))
  public Response found(@RestPath String list, @RestPath ItemCode code, Map<String, Object> sent) {
    Registered item = registered(list, code);
    Typed typed = Typed.nothing();
    return presses
        .body(sent, typed, AnswerId::new)
        .json(
            200,
            () -> {
              SentItem.copy(SentItem.orEmpty(sent), typed, List.of("why"));
              return FindAgain.read(typed)
                  .filter(why -> typed.sound())
                  .map(why -> findAgain.found(item.id(), why))
                  .orElseGet(Outcome::unread);
            },
            again -> {
              Map<String, Object> json = one(list, code);
              json.put("standsAgainst", answers.of(again, FoundAgain.class).stands());
              return json;
            });
  }

  private Optional<ItemDetails> read(ItemKind kind, Map<String, Object> body, Typed typed) {
    SentItem.copy(body, kind, typed);
    return ItemReader.read(
        kind, typed, new ItemReader.Setting(actor.unit(), currency, time.today()));
  }

  // ---- finding and writing

  private Registered registered(String list, ItemCode code) {
    Registered item =
        items
            .registered(code)
            .orElseThrow(() -> new NoSuchThing("There is no item " + code.display() + "."));
    if (!item.kind().slug().equals(list)) {
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

  private Map<String, Object> written(Registered item) {
    return written(List.of(item)).get(0);
  }

  private List<Map<String, Object>> written(List<Registered> all) {
    Map<ItemId, State> states = new LinkedHashMap<>();
    for (Registered item : all) {
      states.put(item.id(), register.row(item.id(), time.today()).orElseThrow().state());
    }
    return written(all, states);
  }

  private List<Map<String, Object>> written(List<Registered> all, Map<ItemId, State> states) {
    boolean prices = actor.role() != Role.VOLUNTEER;
    Map<ItemId, Against> against = concerns.ofItems(states.keySet());
    return all.stream()
        .map(
            item ->
                ItemJson.of(item, states.get(item.id()), against.get(item.id()), prices, currency))
        .toList();
  }

  private static List<ItemKind> kinds(String list) {
    return Arrays.stream(ItemKind.values()).filter(kind -> kind.slug().equals(list)).toList();
  }
}
