package club.ascham.verdict;

import static club.ascham.bow.InPrint.CENTRE_SHEET;
import static club.ascham.bow.InPrint.CLUB_CARE;
import static club.ascham.bow.InPrint.CLUB_LIST;
import static club.ascham.bow.InPrint.COACH_ON_SCREWS;
import static club.ascham.bow.InPrint.COMMON;
import static club.ascham.bow.InPrint.INSPECTION_GUIDE;
import static club.ascham.bow.InPrint.MAKER_ON_TURNS;
import static club.ascham.bow.InPrint.MAKER_WARNINGS;
import static club.ascham.bow.InPrint.SCHOOLS;
import static club.ascham.bow.InPrint.SEASON_START;
import static club.ascham.bow.InPrint.STRING_CHANGE;
import static club.ascham.verdict.BowPart.BOLTS;
import static club.ascham.verdict.BowPart.LIMBS;
import static club.ascham.verdict.BowPart.REST;
import static club.ascham.verdict.BowPart.RISER;
import static club.ascham.verdict.BowPart.STRING;
import static club.ascham.verdict.Gravity.FINE;
import static club.ascham.verdict.Gravity.NOTE;
import static club.ascham.verdict.Gravity.STOP;

import club.ascham.bow.Build;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The signs that the trade knows, by part. Where published sources disagree the stricter one
 * stands: one says that a string with one or two broken strands may still be shot, another that
 * lengthwise cracks in the glass are often mere ageing, and neither is followed.
 */
public final class Signs {
  /** A private person's, so it is not named. */
  private static final String ARCHERS_PAGE = "an archer's page, 2010";

  private static final Set<Build> ALL = EnumSet.allOf(Build.class);
  private static final Set<Build> TAKE_DOWN = EnumSet.of(Build.ADJUSTABLE, Build.SCREW_IN);

  private static final List<KnownSign> KNOWN =
      List.of(
          all("string-sound", STRING, FINE, "Strands whole, servings tight, loops sound", COMMON),
          all(
              "string-fuzzy",
              STRING,
              NOTE,
              "Dry or a little fuzzy, no strand cut: wax it, not on the servings",
              SCHOOLS + "; " + CLUB_CARE),
          all(
              "string-strand-broken",
              STRING,
              STOP,
              "A strand is cut or broken, be it only one",
              SCHOOLS),
          all(
              "string-frayed",
              STRING,
              STOP,
              "Strands furred or frayed",
              CLUB_LIST + "; " + CENTRE_SHEET),
          all(
              "string-serving-loose",
              STRING,
              STOP,
              "Serving loose or frayed, at the middle or at a loop",
              CLUB_LIST + "; " + CENTRE_SHEET),
          all(
              "string-serving-open",
              STRING,
              STOP,
              "Serving has opened into spirals with gaps",
              STRING_CHANGE),
          all(
              "string-serving-coiled",
              STRING,
              STOP,
              "Serving stands up like a coil spring: a strand beneath has failed",
              STRING_CHANGE),
          all(
              "string-nocking-point",
              STRING,
              STOP,
              "Nocking point loose, missing or moved",
              CLUB_LIST),
          all(
              "string-wrong",
              STRING,
              STOP,
              "Not the right length of string for this bow",
              CLUB_LIST),
          all(
              "limbs-sound",
              LIMBS,
              FINE,
              "Both limbs whole and straight, tips sound, string in both grooves",
              COMMON),
          all(
              "limbs-nick",
              LIMBS,
              NOTE,
              "A small nick or splinter at the edge: to be smoothed and watched",
              ARCHERS_PAGE),
          all(
              "limbs-hot",
              LIMBS,
              NOTE,
              "Lay in a hot car or loft: let it cool, then look along both limbs again",
              "a bowyer's page on care; " + MAKER_WARNINGS),
          all("limbs-crack-across", LIMBS, STOP, "A crack across a limb", INSPECTION_GUIDE),
          all(
              "limbs-delaminated",
              LIMBS,
              STOP,
              "Layers parting, or a crack between them",
              SCHOOLS + "; " + INSPECTION_GUIDE),
          all(
              "limbs-crazed",
              LIMBS,
              STOP,
              "Fine cracks in the glass, along the limb or crazed: someone competent looks first",
              CENTRE_SHEET + "; " + SCHOOLS),
          all(
              "limbs-unsure",
              LIMBS,
              STOP,
              "A line that may be a crack, or a place where a cotton ball snags",
              INSPECTION_GUIDE + "; the cotton ball: common practice"),
          all(
              "limbs-laminate-loose",
              LIMBS,
              STOP,
              "A loose piece of laminate, or a deep cut",
              ARCHERS_PAGE),
          all("limbs-twisted", LIMBS, STOP, "A limb is twisted", CLUB_LIST),
          all(
              "limbs-string-walks",
              LIMBS,
              STOP,
              "The string lies off a groove, or moves sideways when the bow is drawn",
              INSPECTION_GUIDE),
          all(
              "limbs-tip-worn",
              LIMBS,
              STOP,
              "A tip or its string groove is worn or damaged",
              CLUB_LIST + "; " + CENTRE_SHEET),
          take("bolts-sound", FINE, "Both bolts seated, nothing loose, nothing missing", COMMON),
          adjustable(
              "bolts-witness",
              NOTE,
              "The paint mark across a bolt no longer lines up",
              COACH_ON_SCREWS),
          adjustable(
              "bolts-small-screw",
              NOTE,
              "A small screw at the limb fitting has worked loose and was tightened",
              SEASON_START),
          adjustable(
              "bolts-lock-missing", STOP, "A locking screw is loose or missing", COACH_ON_SCREWS),
          adjustable(
              "bolts-too-far-out",
              STOP,
              "A bolt stands further out than its maker allows",
              MAKER_ON_TURNS),
          take("bolts-thread", STOP, "Thread, seat or washer worn or damaged", COMMON),
          new KnownSign(
              "bolts-screw-in-loose",
              BOLTS,
              STOP,
              "A limb bolt won't tighten by hand, or its washer is missing",
              COMMON,
              EnumSet.of(Build.SCREW_IN)),
          all("riser-sound", RISER, FINE, "No crack, grip firm, nothing loose", COMMON),
          all("riser-grip", RISER, NOTE, "The grip is loose or has a sharp edge", CLUB_CARE),
          all("riser-bush", RISER, NOTE, "A bush for sight, rod or button is loose", COMMON),
          all(
              "riser-cracked",
              RISER,
              STOP,
              "A crack or split in the riser, above all at limb seat, bush or sight window",
              COMMON),
          new KnownSign(
              "riser-play",
              RISER,
              STOP,
              "A limb has play where it sits on the riser",
              CENTRE_SHEET,
              TAKE_DOWN),
          all("rest-sound", REST, FINE, "Rest whole and firm", COMMON),
          all("rest-worn", REST, NOTE, "Rest worn, still holds an arrow", COMMON),
          all("rest-gone", REST, STOP, "Rest broken, missing or coming off", COMMON));

  private Signs() {}

  /** Every known sign; within a part the sound one first, then by gravity. */
  public static List<KnownSign> all() {
    return KNOWN;
  }

  /** The signs that a part of this build of bow can show. */
  public static List<KnownSign> of(BowPart part, Build build) {
    return KNOWN.stream()
        .filter(known -> known.part() == part && known.builds().contains(build))
        .toList();
  }

  public static Optional<KnownSign> byKey(String key) {
    return KNOWN.stream().filter(known -> known.key().equals(key)).findFirst();
  }

  /** The parts that a bow of this build has, in the order in which they are looked at. */
  public static List<BowPart> parts(Build build) {
    return Arrays.stream(BowPart.values()).filter(part -> !of(part, build).isEmpty()).toList();
  }

  /** The parts that need a deliberate answer, fine or not, before a bow can be called fit. */
  public static List<BowPart> mustAnswer(Build build) {
    return parts(build).stream()
        .filter(part -> part == STRING || part == LIMBS || part == BOLTS)
        .toList();
  }

  private static KnownSign all(
      String key, BowPart part, Gravity gravity, String words, String source) {
    return new KnownSign(key, part, gravity, words, source, ALL);
  }

  private static KnownSign take(String key, Gravity gravity, String words, String source) {
    return new KnownSign(key, BOLTS, gravity, words, source, TAKE_DOWN);
  }

  private static KnownSign adjustable(String key, Gravity gravity, String words, String source) {
    return new KnownSign(key, BOLTS, gravity, words, source, EnumSet.of(Build.ADJUSTABLE));
  }
}
