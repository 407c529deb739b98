package club.ascham.worksheet;

import static club.ascham.bow.InPrint.ARROW_CHECKS;
import static club.ascham.bow.InPrint.CENTRE_SHEET;
import static club.ascham.bow.InPrint.CLUB_CARE;
import static club.ascham.bow.InPrint.CLUB_LIST;
import static club.ascham.bow.InPrint.COACH_ON_SCREWS;
import static club.ascham.bow.InPrint.COMMON;
import static club.ascham.bow.InPrint.FRENCH_CHECKS;
import static club.ascham.bow.InPrint.INSPECTION_GUIDE;
import static club.ascham.bow.InPrint.MAKER_ON_TURNS;
import static club.ascham.bow.InPrint.SEASON_START;

import club.ascham.bow.Build;
import club.ascham.upkeep.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What to look at when an item is inspected, in the order in which the hands go.
 *
 * @param work never {@link Work#STRING_REPLACEMENT}
 * @param cautions what to mind before the first look
 * @param maxTurnsOut the maker's limit for turns out of a limb bolt; null: not recorded, or none
 */
public record InspectionList(
    Work work, List<String> cautions, List<Look> looks, Double maxTurnsOut) {
  private static final String STRING_OFF = "String off with the stringer before a bolt is touched.";

  /**
   * The list for this work.
   *
   * @param build of the riser or limbs; null for what has none
   * @param maxTurnsOut the maker's limit for turns out; null: not recorded
   */
  static InspectionList of(Work work, Build build, Double maxTurnsOut) {
    return switch (work) {
      case BOLT_INSPECTION ->
          build == Build.SCREW_IN
              ? new InspectionList(work, List.of(STRING_OFF), screwInBolts(), null)
              : new InspectionList(work, List.of(STRING_OFF), bolts(maxTurnsOut), maxTurnsOut);
      case RISER_INSPECTION ->
          new InspectionList(work, List.of(), riser(build == Build.SCREW_IN), null);
      case LIMB_INSPECTION ->
          new InspectionList(
              work,
              List.of(
                  "A limb with a crack, a lifting layer or a twist is not shot again.",
                  "Draw and let down with an arrow on and the face clear; never let go without"
                      + " one."),
              limbs(build),
              null);
      case STRINGER_INSPECTION -> new InspectionList(work, List.of(), stringer(), null);
      case ARROW_INSPECTION ->
          new InspectionList(
              work,
              List.of("Bend away from yourself and others; an arrow that creaks is broken up."),
              arrows(),
              null);
      case STRING_REPLACEMENT ->
          throw new IllegalArgumentException("a string is replaced, not inspected");
    };
  }

  /** Whether the turns of the two bolts can be entered. */
  public boolean asksTurns() {
    return work == Work.BOLT_INSPECTION && looks.stream().anyMatch(l -> l.key().equals("turns"));
  }

  private static List<Look> bolts(Double maxTurnsOut) {
    String limit =
        maxTurnsOut == null
            ? "The maker's limit is not recorded: find it in the maker's leaflet. Until then no"
                + " bolt is turned further out, and enough thread holds that it can't slip out"
            : String.format(
                Locale.ROOT,
                "No more than the maker's %s turns out from all the way in",
                plain(maxTurnsOut));
    return List.of(
        new Look("turns", "Turns out", limit, MAKER_ON_TURNS),
        new Look(
            "alike",
            "Both bolts alike",
            "The same length shows on both, but for the difference that sets the tiller",
            MAKER_ON_TURNS),
        new Look("thread", "Threads", "Clean and whole; no metal dust, nothing crossed", COMMON),
        new Look(
            "lockingScrew",
            "Locking screws",
            "Both there and tight: they can shake out unnoticed",
            COACH_ON_SCREWS),
        new Look("washer", "Washers", "There on both bolts, flat and whole", COMMON),
        new Look(
            "seat",
            "Seats and pockets",
            "No crack or dent where bolt and limb bear; the limb sits without play",
            CENTRE_SHEET));
  }

  private static List<Look> screwInBolts() {
    return List.of(
        new Look(
            "thread",
            "Threads and bushes",
            "The bolt runs in cleanly to the end; the bush does not turn in the riser",
            COMMON),
        new Look(
            "seat",
            "Seats",
            "The limb lies flat; pins whole; no split around the hole in limb or riser",
            CENTRE_SHEET),
        new Look("washer", "Washers", "There on both bolts, flat and whole", COMMON),
        new Look(
            "tight",
            "Tightness",
            "Both bolts all the way home; the limbs do not move against the riser",
            CENTRE_SHEET));
  }

  private static List<Look> riser(boolean wooden) {
    List<Look> looks = new ArrayList<>();
    looks.add(
        new Look(
            "pockets",
            "Limb pockets and bushes",
            "No crack at the pockets or around the bolt bushes; the limbs fit without play",
            CENTRE_SHEET + "; cracks at the bush: common practice"));
    looks.add(
        new Look("window", "Sight window and shelf", "No crack at the narrow places", COMMON));
    if (wooden) {
      looks.add(
          new Look(
              "grain",
              "Along the grain",
              "No split, however fine, on the back or beside the grip",
              COMMON));
    }
    looks.add(new Look("grip", "Grip", "Firm, nothing worn away", CLUB_CARE));
    looks.add(
        new Look(
            "screws",
            "Small screws and inserts",
            "Rest, button, sight and stabiliser threads whole, every screw tight",
            SEASON_START));
    return List.copyOf(looks);
  }

  private static List<Look> limbs(Build build) {
    List<Look> looks = new ArrayList<>();
    looks.add(
        new Look(
            "surface",
            "Front, back and edges",
            "No crack across, no lifting layer; cotton wool drawn along catches nowhere",
            INSPECTION_GUIDE + "; cotton wool: common practice"));
    looks.add(
        new Look(
            "lines",
            "Fine lines lengthwise",
            "None, or marked at both ends at the last inspection and not grown since",
            INSPECTION_GUIDE));
    looks.add(
        new Look(
            "tips", "Tips and string grooves", "Not worn, no notch, no sharp edge", CLUB_LIST));
    looks.add(
        new Look(
            "twist",
            "Twist",
            "An arrow laid between string and limb at each tip stands square, both in one plane",
            FRENCH_CHECKS));
    looks.add(
        new Look(
            "track",
            "String in the grooves",
            "After drawing and letting down it lies in the middle of both",
            INSPECTION_GUIDE));
    if (build == Build.ADJUSTABLE || build == Build.SCREW_IN) {
      looks.add(
          new Look("butts", "Butts", "Bushings, dovetails and bolt holes whole, no split", COMMON));
      looks.add(
          new Look(
              "pair", "One pair", "The codes on upper and lower limb are of one pair", COMMON));
    }
    return List.copyOf(looks);
  }

  private static List<Look> stringer() {
    return List.of(
        new Look("cord", "Cord", "Not frayed, not cut, knots firm", COMMON),
        new Look(
            "stitching", "Pockets", "Stitching whole; the larger one for the lower tip", COMMON),
        new Look("saddle", "Saddle or cups", "Rubber not worn and not slippery", COMMON),
        new Look(
            "fit",
            "On a bow",
            "The pocket fits the tip and the length suits the bows it is given out with",
            COMMON));
  }

  private static List<Look> arrows() {
    return List.of(
        new Look("shafts", "Shafts", "None bent, split or holed", CLUB_LIST),
        new Look(
            "flex",
            "Flexed gently all round",
            "No creak, no crack; no more than 5 cm (2 in)",
            "“Arrow safety”, a dealer's page, undated"),
        new Look("nocks", "Nocks", "Whole, seated firmly, holding the string", ARROW_CHECKS),
        new Look("points", "Points", "On every arrow, none loose", ARROW_CHECKS),
        new Look("vanes", "Fletchings", "None missing or lifting", CLUB_LIST),
        new Look(
            "length",
            "Length",
            "All as long as recorded: one too short can drop behind the rest",
            COMMON));
  }

  static String plain(double turns) {
    return turns == Math.rint(turns) ? Long.toString((long) turns) : Double.toString(turns);
  }
}
