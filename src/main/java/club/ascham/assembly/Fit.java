package club.ascham.assembly;

import club.ascham.bow.Compatibility;
import club.ascham.bow.Misfit;
import club.ascham.bow.Style;
import club.ascham.id.RigId;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.rig.Place;
import club.ascham.units.ItemCode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Whether chosen parts make a rig: each is what it should be, free today, and fits the others. */
final class Fit {
  private Fit() {}

  /**
   * Everything that keeps these parts from being one rig.
   *
   * @param wanted the code for each place
   * @param onHand what is known of those codes
   * @param rig where the parts are to go; null: a new one
   */
  static List<Obstacle> refusals(
      Map<Place, ItemCode> wanted, Map<ItemCode, PartOnHand> onHand, RigId rig) {
    List<Obstacle> found = new ArrayList<>();
    Map<Place, Part> parts = new EnumMap<>(Place.class);
    wanted.forEach(
        (place, code) -> {
          PartOnHand part = onHand.get(code);
          if (part == null) {
            found.add(
                new Obstacle(
                    Assembly.field(place),
                    "The club has no riser, bow, limbs or string with the code "
                        + code.display()
                        + ".",
                    "Read the label again."));
          } else if (part.part().place() != place) {
            found.add(
                new Obstacle(
                    Assembly.field(place),
                    code.display() + " is a " + part.part().kind().said() + ".",
                    "Choose " + said(place) + "."));
          } else {
            parts.put(place, part.part());
            part.refusal(Assembly.field(place), rig).ifPresent(found::add);
          }
        });
    if (found.isEmpty()) {
      found.addAll(misfits(parts));
    }
    return List.copyOf(found);
  }

  /** What keeps parts that are all free from being used together. */
  static List<Obstacle> misfits(Map<Place, Part> parts) {
    Part body = parts.get(Place.BODY);
    Part limbs = parts.get(Place.LIMBS);
    if (body != null && body.onePiece() != null && limbs != null) {
      return List.of(
          new Obstacle(
              Assembly.LIMBS,
              body.code() + " is a one-piece bow: it has its limbs.",
              "Leave the limbs out, or choose a riser."));
    }
    return Part.together(body, limbs, parts.get(Place.STRING), Style.SPLIT_FINGER)
        .map(Compatibility::misfits)
        .orElse(List.of())
        .stream()
        .map(misfit -> new Obstacle(field(misfit), misfit.reason(), misfit.remedy()))
        .toList();
  }

  private static String field(Misfit misfit) {
    return switch (misfit.kind()) {
      case BUILD, FITTING, MODEL, BOW_LENGTH -> Assembly.LIMBS;
      case STRING_DESIGNATION, STRING_MEASURED, STRING_MATERIAL, STRINGER_LENGTH -> Assembly.STRING;
    };
  }

  private static String said(Place place) {
    return switch (place) {
      case BODY -> "a riser or a one-piece bow";
      case LIMBS -> "a pair of limbs";
      case STRING -> "a string";
    };
  }
}
