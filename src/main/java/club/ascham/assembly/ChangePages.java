package club.ascham.assembly;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.rig.PartWords;
import club.ascham.rig.Place;
import club.ascham.rig.RigPages;
import club.ascham.rig.RigRecords;
import club.ascham.rig.RigRow;
import club.ascham.setup.PermitAhead;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Forms;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Changing one part of a rig for another, taking one off, and what is kept beside it. */
@Path("/rigs/{id:\\d+}/change")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class ChangePages {

  /**
   * A place on the rig: what is there now, and where changing it leads.
   *
   * @param part null: nothing is fitted
   */
  record Spot(String word, Part part, String facts, String address) {}

  /**
   * @param place the word of the place that is being changed; null: none chosen yet
   * @param off what is there now; null: nothing
   * @param others the codes that stay, by the name of their answer
   */
  @CheckedTemplate(basePath = "assembly", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ChangePage(
      RigRow row,
      String path,
      Against against,
      List<Spot> spots,
      String place,
      Part off,
      boolean mayComeOff,
      Map<String, String> others,
      List<Offer> fitting,
      List<Offer> unfit,
      List<RigRecords.Kept> kept,
      String permitAhead,
      Typed typed)
      implements TemplateInstance {}

  private final RigRecords records;
  private final Concerns concerns;
  private final PartsOnHand parts;
  private final ChangeParts changeParts;
  private final KeepWith keepWith;
  private final ShootAs shootAs;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  ChangePages(
      RigRecords records,
      Concerns concerns,
      PartsOnHand parts,
      ChangeParts changeParts,
      KeepWith keepWith,
      ShootAs shootAs,
      Actor actor,
      ClubTime time,
      Presses presses) {
    this.records = records;
    this.concerns = concerns;
    this.parts = parts;
    this.changeParts = changeParts;
    this.keepWith = keepWith;
    this.shootAs = shootAs;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
  }

  @GET
  public TemplateInstance choose(@PathParam("id") long id, @Context UriInfo uri) {
    return page(new RigId(id), Forms.typed(uri.getQueryParameters()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    RigId rig = new RigId(id);
    Typed typed = Forms.typed(form);
    return led(
        rig,
        typed,
        () -> {
          PartsWish wish = PartsWish.parse(typed, time.today());
          return typed.sound() ? changeParts.change(rig, wish) : Outcome.unread();
        });
  }

  @POST
  @Path("/style")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response shootAs(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    RigId rig = new RigId(id);
    Typed typed = Forms.typed(form);
    return led(
        rig,
        typed,
        () -> {
          ShootAs.Wish wish = ShootAs.parse(typed);
          return typed.sound() ? shootAs.change(rig, wish, typed.version()) : Outcome.unread();
        });
  }

  @POST
  @Path("/keep")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response keep(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    return kept(id, form, true);
  }

  @POST
  @Path("/let-go")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response letGo(@PathParam("id") long id, MultivaluedMap<String, String> form) {
    return kept(id, form, false);
  }

  private Response kept(long id, MultivaluedMap<String, String> form, boolean keep) {
    RigId rig = new RigId(id);
    Typed typed = Forms.typed(form);
    return led(
        rig,
        typed,
        () -> {
          ItemCode code = typed.code(KeepWith.ITEM);
          if (!typed.has(KeepWith.ITEM)) {
            typed.fault(KeepWith.ITEM, "The code of the string or stringer, please.");
          }
          if (!typed.sound()) {
            return Outcome.unread();
          }
          return keep ? keepWith.keep(rig, code) : keepWith.letGo(rig, code);
        });
  }

  private Response led(RigId rig, Typed typed, Supplier<Outcome<RigId>> work) {
    return presses
        .form(typed, RigId::new, RigPages::page)
        .whole(Obstacle.WHOLE)
        .page(work, () -> page(rig, typed));
  }

  private TemplateInstance page(RigId rig, Typed typed) {
    RigRow row = records.known(rig);
    Map<Place, Part> now = new EnumMap<>(Place.class);
    row.card().parts().forEach(part -> now.put(part.place(), part));
    Place place = typed.word("place", Place.class);
    Map<Place, Part> rest = new EnumMap<>(Place.class);
    rest.putAll(now);
    List<Offer> offers = List.of();
    if (place != null) {
      rest.remove(place);
      Part off = now.get(place);
      offers =
          Offer.of(parts.inUse(place), rest, rig, part -> "").stream()
              .filter(offer -> off == null || !offer.hand().part().id().equals(off.id()))
              .toList();
    }
    Map<String, String> others = new LinkedHashMap<>();
    rest.forEach((at, part) -> others.put(Assembly.field(at), part.code()));
    String path = RigPages.page(rig);
    if (!typed.has("style")) {
      typed.with("style", Words.of(row.card().style()));
    }
    if (!typed.has("level")) {
      typed.with("level", Words.of(row.card().level()));
    }
    return new ChangePage(
        row,
        path,
        concerns.of(rig).without(List.of(Matter.NOT_SET_UP)),
        spots(path, now),
        place == null ? null : Assembly.field(place),
        place == null ? null : now.get(place),
        place != null && place != Place.BODY && now.containsKey(place),
        others,
        offers.stream().filter(Offer::isPossible).toList(),
        offers.stream().filter(offer -> !offer.isPossible()).toList(),
        records.kept(rig),
        PermitAhead.of(row.card(), actor.holdsPermit(time.today())),
        typed);
  }

  private static List<Spot> spots(String path, Map<Place, Part> now) {
    boolean onePiece = now.containsKey(Place.BODY) && now.get(Place.BODY).onePiece() != null;
    return Arrays.stream(Place.values())
        .filter(place -> place != Place.LIMBS || !onePiece)
        .map(
            place ->
                new Spot(
                    place == Place.BODY
                        ? (onePiece ? "one-piece bow" : "riser")
                        : Assembly.field(place),
                    now.get(place),
                    now.containsKey(place) ? PartWords.facts(now.get(place)) : "",
                    path + "/change?place=" + Assembly.field(place)))
        .toList();
  }
}
