package club.ascham.bow;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Whether parts may be used together, each misfit with its reason and what would make it possible.
 *
 * <p>An upper and a lower limb of two different pairs are never used together. That can't be asked
 * here: a pair of limbs is one {@link LimbsSpec}, so no mixed pair can be written down. Whether the
 * two limbs in the hand are that pair is seen from the codes on them.
 *
 * <p>What is not recorded counts as not fitting, with "look and enter it" as the remedy: a guess
 * here is a limb that leaves its pocket under load.
 */
public final class Compatibility {
  /** The bow lengths in inches that a club's recurve bows have. */
  public static final int SHORTEST_BOW_IN = 48;

  public static final int LONGEST_BOW_IN = 72;

  /** What is said of a fitting that one maker alone makes; the maker's name stands before it. */
  private static final String OWN_FITTING = "own fitting";

  private Compatibility() {}

  /**
   * What keeps these limbs off this riser. Fittings with the same hardware but another spacing do
   * not interchange; a maker's own fitting goes by the maker's name, screw-in limbs go by the
   * maker's model. Limbs are not handed.
   */
  public static List<Misfit> misfits(RiserSpec riser, LimbsSpec limbs) {
    if (riser.build() != limbs.build()) {
      return List.of(
          new Misfit(
              Misfit.Kind.BUILD,
              "The riser is for "
                  + limbsFor(riser.build())
                  + ", and these are "
                  + limbsFor(limbs.build())
                  + ".",
              "Choose "
                  + limbsFor(riser.build())
                  + ", or a riser for "
                  + limbsFor(limbs.build())
                  + "."));
    }
    List<Misfit> found = new ArrayList<>();
    if (riser.build() == Build.ADJUSTABLE) {
      fitting(riser, limbs).ifPresent(found::add);
    } else {
      model(riser, limbs).ifPresent(found::add);
    }
    bowLength(BowLength.of(riser, limbs)).ifPresent(found::add);
    return List.copyOf(found);
  }

  /** What keeps the parts of this rig from being used together; without a string, of its bow. */
  public static List<Misfit> misfits(RigSpec rig) {
    List<Misfit> found = new ArrayList<>();
    if (rig.onePiece() == null) {
      found.addAll(misfits(rig.riser(), rig.limbs()));
    } else {
      bowLength(rig.bowLengthIn()).ifPresent(found::add);
    }
    if (rig.string() != null) {
      designation(rig.string(), rig.bowLengthIn()).ifPresent(found::add);
      measuredLength(rig.string()).ifPresent(found::add);
      material(rig.string(), rig.hmpeTips()).ifPresent(found::add);
    }
    return List.copyOf(found);
  }

  /** What keeps this stringer from a bow of so many inches. */
  public static Optional<Misfit> misfit(StringerSpec stringer, int bowLengthIn) {
    if (stringer.bowFromIn() <= bowLengthIn && bowLengthIn <= stringer.bowToIn()) {
      return Optional.empty();
    }
    return Optional.of(
        new Misfit(
            Misfit.Kind.STRINGER_LENGTH,
            "The stringer is for bows of "
                + stringer.bowFromIn()
                + " to "
                + stringer.bowToIn()
                + " in; this bow is "
                + bowLengthIn
                + " in.",
            "Give out a stringer whose range holds " + bowLengthIn + " in."));
  }

  /**
   * What is wrong with a string's measured length against its own label. A string is made for a bow
   * longer than itself: dealers' strings measure 2 3/4 to 4 in less, the AMO master 3 in less (AMO
   * standards 1987). Published rules differ, so only what no rule could mean is refused: outside 2
   * 1/2 to 5 in less (judged).
   */
  public static Optional<Misfit> measuredLength(StringSpec string) {
    if (string.measured() == null) {
      return Optional.empty();
    }
    double shorterIn = string.forBowIn() - string.measured().inches();
    if (2.5 <= shorterIn && shorterIn <= 5) {
      return Optional.empty();
    }
    boolean labelAsLength = Math.abs(shorterIn) <= 0.5;
    String reason =
        labelAsLength
            ? String.format(
                Locale.ROOT,
                "The string is entered as %.1f in long for a bow of %d in: the label and the length"
                    + " seem to be confused. A string measures less than the bow length on its"
                    + " label.",
                string.measured().inches(),
                string.forBowIn())
            : String.format(
                Locale.ROOT,
                "The string measures %.1f in; one for a bow of %d in measures 2 1/2 to 5 in less"
                    + " than the bow.",
                string.measured().inches(),
                string.forBowIn());
    return Optional.of(
        new Misfit(
            Misfit.Kind.STRING_MEASURED,
            reason,
            "Measure it again from loop to loop, or leave the length open; check the bow length on"
                + " its label."));
  }

  private static Optional<Misfit> fitting(RiserSpec riser, LimbsSpec limbs) {
    if (same(riser.fitting(), OWN_FITTING) || same(limbs.fitting(), OWN_FITTING)) {
      return Optional.of(
          new Misfit(
              Misfit.Kind.FITTING,
              (same(riser.fitting(), OWN_FITTING) ? "The riser has" : "The limbs have")
                  + " some maker's own fitting, and whose is not recorded: those of two makers do"
                  + " not interchange.",
              "Enter the fitting with the maker's name before it."));
    }
    if (same(riser.fitting(), limbs.fitting())) {
      return Optional.empty();
    }
    if (blank(riser.fitting()) || blank(limbs.fitting())) {
      return Optional.of(
          new Misfit(
              Misfit.Kind.FITTING,
              "The limb fitting of "
                  + (blank(riser.fitting()) ? "the riser" : "the limbs")
                  + " is not recorded, so nobody can say that the limbs hold.",
              "Look which fitting standard it has and enter it."));
    }
    return Optional.of(
        new Misfit(
            Misfit.Kind.FITTING,
            "The riser takes "
                + riser.fitting().strip()
                + " limbs and these are "
                + limbs.fitting().strip()
                + "; the two do not interchange.",
            "Choose "
                + riser.fitting().strip()
                + " limbs, or a riser that takes "
                + limbs.fitting().strip()
                + "."));
  }

  private static Optional<Misfit> model(RiserSpec riser, LimbsSpec limbs) {
    if (same(riser.limbModel(), limbs.model())) {
      return Optional.empty();
    }
    if (blank(riser.limbModel()) || blank(limbs.model())) {
      return Optional.of(
          new Misfit(
              Misfit.Kind.MODEL,
              (blank(riser.limbModel())
                      ? "The model of limbs that the riser takes"
                      : "The model of the limbs")
                  + " is not recorded, and screw-in limbs fit only their maker's own model.",
              "Find the maker's model on the bow and enter it."));
    }
    return Optional.of(
        new Misfit(
            Misfit.Kind.MODEL,
            "The riser takes limbs of the model "
                + riser.limbModel().strip()
                + " and these are "
                + limbs.model().strip()
                + ".",
            "Choose limbs of the model "
                + riser.limbModel().strip()
                + ", or the riser that belongs to "
                + limbs.model().strip()
                + "."));
  }

  private static Optional<Misfit> bowLength(OptionalInt bowIn) {
    if (bowIn.isEmpty()) {
      return Optional.of(
          new Misfit(
              Misfit.Kind.BOW_LENGTH,
              "The limbs have neither a size nor a bow length recorded, so the bow's length is not"
                  + " known.",
              "Enter the size or the bow length marked on the limbs."));
    }
    int bow = bowIn.getAsInt();
    if (SHORTEST_BOW_IN <= bow && bow <= LONGEST_BOW_IN) {
      return Optional.empty();
    }
    return Optional.of(
        new Misfit(
            Misfit.Kind.BOW_LENGTH,
            "Together they make a bow of "
                + bow
                + " in; recurve bows are "
                + SHORTEST_BOW_IN
                + " to "
                + LONGEST_BOW_IN
                + " in.",
            "Check the riser length and the limb size, or choose another size."));
  }

  private static Optional<Misfit> designation(StringSpec string, OptionalInt bowIn) {
    if (bowIn.isEmpty() || string.forBowIn() == bowIn.getAsInt()) {
      return Optional.empty();
    }
    return Optional.of(
        new Misfit(
            Misfit.Kind.STRING_DESIGNATION,
            "The string is made for a bow of "
                + string.forBowIn()
                + " in and this one is "
                + bowIn.getAsInt()
                + " in.",
            "Choose a string labelled "
                + bowIn.getAsInt()
                + " in. The label is the bow length, not the length of the string."));
  }

  private static Optional<Misfit> material(StringSpec string, Known hmpeTips) {
    if (string.material() == StringMaterial.POLYESTER || hmpeTips == Known.YES) {
      return Optional.empty();
    }
    String what =
        switch (string.material()) {
          case HMPE -> "An HMPE string hardly stretches";
          case LCP -> "An LCP string hardly stretches";
          case OTHER, POLYESTER ->
              "The string's material is not known to stretch as polyester does";
        };
    String tips =
        hmpeTips == Known.NO
            ? "and these limb tips are not made for it: the tips can break."
            : "and nobody has recorded that these limb tips stand it: the tips can break.";
    return Optional.of(
        new Misfit(
            Misfit.Kind.STRING_MATERIAL,
            what + ", " + tips,
            hmpeTips == Known.NO
                ? "Fit a polyester string, or limbs whose maker allows such strings."
                : "Fit a polyester string (polyester when unknown), or enter that the maker allows"
                    + " such strings on these limbs."));
  }

  private static String limbsFor(Build build) {
    return switch (build) {
      case ADJUSTABLE -> "slot-in limbs";
      case SCREW_IN -> "screw-in limbs";
      case ONE_PIECE -> "no separate limbs";
    };
  }

  private static boolean same(String one, String other) {
    return !blank(one) && !blank(other) && one.strip().equalsIgnoreCase(other.strip());
  }

  private static boolean blank(String text) {
    return text == null || text.isBlank();
  }
}
