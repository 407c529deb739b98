package club.ascham.assembly;

import club.ascham.bow.Level;
import club.ascham.bow.RigSpec;
import club.ascham.bow.Style;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.rig.PartWords;
import club.ascham.rig.Place;
import club.ascham.rig.RigPages;
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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Making a rig: the body first, then limbs that fit it, then a string; what is chosen stays in the
 * address.
 */
@Path("/rigs/new")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class AssemblePages {

  /** A part that was chosen, and where choosing another in its place leads. */
  record Chosen(String field, String kind, String code, String name, String facts, String again) {}

  /**
   * @param place the part to be chosen now, in words; null: all are chosen
   * @param field its name in the form
   */
  @CheckedTemplate(basePath = "assembly", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record AssemblePage(
      List<Chosen> chosen,
      String place,
      String field,
      List<Offer> fitting,
      List<Offer> others,
      String bow,
      Typed typed)
      implements TemplateInstance {}

  private final PartsOnHand parts;
  private final AssembleRig assembleRig;
  private final ClubTime time;
  private final Presses presses;

  AssemblePages(PartsOnHand parts, AssembleRig assembleRig, ClubTime time, Presses presses) {
    this.parts = parts;
    this.assembleRig = assembleRig;
    this.time = time;
    this.presses = presses;
  }

  @GET
  public TemplateInstance choose(@Context UriInfo uri) {
    return page(Forms.typed(uri.getQueryParameters()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response assemble(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, RigId::new, RigPages::page)
        .whole(Obstacle.WHOLE)
        .page(() -> assembled(typed), () -> page(typed));
  }

  private Outcome<RigId> assembled(Typed typed) {
    Assembly wish = Assembly.parse(typed, time.today());
    return typed.sound() ? assembleRig.assemble(wish) : Outcome.unread();
  }

  /** The page for what has been chosen so far; a choice that can't be is to be made again. */
  private TemplateInstance page(Typed typed) {
    if (!typed.has("style")) {
      typed.with("style", Words.of(Style.SPLIT_FINGER));
    }
    if (!typed.has("level")) {
      typed.with("level", Words.of(Level.BEGINNER));
    }
    Map<Place, ItemCode> codes = Assembly.parts(typed);
    Map<ItemCode, PartOnHand> onHand = parts.coded(codes.values());
    Map<Place, Part> chosen = new EnumMap<>(Place.class);
    for (Place place : Place.values()) {
      ItemCode code = codes.get(place);
      if (code != null && free(place, code, chosen, onHand, typed)) {
        chosen.put(place, onHand.get(code).part());
      }
    }
    Place next = next(chosen);
    List<Offer> offers =
        next == null
            ? List.of()
            : Offer.of(parts.inUse(next), chosen, null, part -> address(chosen, part));
    return new AssemblePage(
        chosen.values().stream().map(part -> chosen(part, chosen)).toList(),
        next == null ? null : asked(next),
        next == null ? null : Assembly.field(next),
        offers.stream().filter(Offer::isPossible).toList(),
        offers.stream().filter(offer -> !offer.isPossible()).toList(),
        next == null
            ? Part.together(
                    chosen.get(Place.BODY),
                    chosen.get(Place.LIMBS),
                    chosen.get(Place.STRING),
                    Style.SPLIT_FINGER)
                .map(AssemblePages::bow)
                .orElse("")
            : "",
        typed);
  }

  private static String bow(RigSpec spec) {
    return PartWords.rig(spec);
  }

  private static boolean free(
      Place place,
      ItemCode code,
      Map<Place, Part> chosen,
      Map<ItemCode, PartOnHand> onHand,
      Typed typed) {
    Map<Place, ItemCode> soFar = new EnumMap<>(Place.class);
    chosen.forEach((at, part) -> soFar.put(at, new ItemCode(part.bareCode())));
    soFar.put(place, code);
    List<Obstacle> refusals = new ArrayList<>(Fit.refusals(soFar, onHand, null));
    refusals.forEach(refusal -> typed.fault(Assembly.field(place), refusal.message()));
    return refusals.isEmpty();
  }

  private static Place next(Map<Place, Part> chosen) {
    Part body = chosen.get(Place.BODY);
    if (body == null) {
      return Place.BODY;
    }
    if (body.onePiece() == null && !chosen.containsKey(Place.LIMBS)) {
      return Place.LIMBS;
    }
    return chosen.containsKey(Place.STRING) ? null : Place.STRING;
  }

  private static String asked(Place place) {
    return switch (place) {
      case BODY -> "Riser, or one-piece bow";
      case LIMBS -> "Limbs";
      case STRING -> "String";
    };
  }

  private static Chosen chosen(Part part, Map<Place, Part> all) {
    Map<Place, Part> without = new EnumMap<>(Place.class);
    // A choice that is made again takes those that followed from it along.
    all.forEach(
        (place, other) -> {
          if (place.ordinal() < part.place().ordinal()) {
            without.put(place, other);
          }
        });
    return new Chosen(
        Assembly.field(part.place()),
        part.kind().mark(),
        part.code(),
        part.name(),
        PartWords.facts(part),
        address(without, null));
  }

  private static String address(Map<Place, Part> chosen, Part more) {
    StringBuilder address = new StringBuilder("/rigs/new");
    char joint = '?';
    for (Place place : Place.values()) {
      Part part = more != null && more.place() == place ? more : chosen.get(place);
      if (part != null) {
        address.append(joint).append(Assembly.field(place)).append('=').append(part.code());
        joint = '&';
      }
    }
    return address.toString();
  }
}
