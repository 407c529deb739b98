package club.ascham.rig;

import club.ascham.bow.BracePoint;
import club.ascham.bow.SetUpStep;
import club.ascham.bow.SetUpStep.Figure;
import club.ascham.bow.SetUpStep.Key;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What was done and measured at the bench, to be written into a set-up. What is null is left as it
 * stands.
 *
 * @param steps the steps that were done
 * @param screwsSeen locking screws, or the bolts of a screw-in bow, seen and in order
 */
record SetUpEntry(
    Set<Key> steps,
    Measured brace,
    BracePoint braceFrom,
    Measured upper,
    Measured lower,
    Measured nocking,
    boolean screwsSeen,
    Double turnsUpper,
    Double turnsLower,
    Integer twists) {
  private static final double MOST_TURNS = 12;
  private static final int MOST_TWISTS = 150;

  private static final Set<Key> UNSTRUNG = EnumSet.of(Key.LIMBS, Key.LOOPS);

  /** Whether the bow is strung for a step, or was for one before it. */
  static boolean needsString(Key step) {
    return !UNSTRUNG.contains(step);
  }

  /** Whether the string is on for any of it. */
  boolean needsString() {
    return brace != null
        || upper != null
        || nocking != null
        || steps.stream().anyMatch(SetUpEntry::needsString);
  }

  /** A length beside the text it was read from. */
  record Measured(Length length, String typed) {}

  /**
   * Reads an entry; ask {@code typed.sound()} before using it.
   *
   * @param unit for lengths that name none
   * @param sheet the steps of this rig, which {@code stepsDone} may name or mean with {@code all}
   */
  static SetUpEntry parse(Typed typed, LengthUnit unit, List<SetUpStep> sheet) {
    Measured brace = measured(typed, "brace", unit, Plausible.BRACE);
    BracePoint from = typed.word("braceFrom", BracePoint.class);
    if (typed.has("brace") && !typed.has("braceFrom")) {
      typed.fault(
          "braceFrom", "From where was it measured: the throat of the grip, or the button?");
    }
    Measured upper = measured(typed, "tillerUpper", unit, Plausible.TILLER_DISTANCE);
    Measured lower = measured(typed, "tillerLower", unit, Plausible.TILLER_DISTANCE);
    if (typed.has("tillerUpper") != typed.has("tillerLower")) {
      typed.fault(
          typed.has("tillerUpper") ? "tillerLower" : "tillerUpper",
          "Both distances, please: tiller is the one less the other.");
    }
    if (upper != null
        && lower != null
        && !Plausible.TILLER.holds(upper.length().minus(lower.length()))) {
      typed.fault(
          "tillerLower",
          "The two distances lie further apart than on any bow. Measure both again, square to the"
              + " string.");
    }
    return new SetUpEntry(
        steps(typed, sheet),
        brace,
        brace == null ? null : from,
        upper,
        lower,
        measured(typed, "nocking", unit, Plausible.NOCKING),
        typed.ticked("screwsSeen"),
        typed.decimal("turnsUpper", 0, MOST_TURNS),
        typed.decimal("turnsLower", 0, MOST_TURNS),
        typed.whole("twists", 0, MOST_TWISTS));
  }

  /** Asks for the figure that is written down at a step, where it was not given. */
  void require(Figure figure, Typed typed) {
    switch (figure) {
      case BRACE -> {
        if (brace == null) {
          typed.fault("brace", "What does the brace height measure?");
        }
      }
      case TILLER_UPPER_AND_LOWER -> {
        if (upper == null) {
          typed.fault("tillerUpper", "What does the upper distance measure?");
        }
        if (lower == null) {
          typed.fault("tillerLower", "What does the lower distance measure?");
        }
      }
      case NOCKING -> {
        if (nocking == null) {
          typed.fault("nocking", "How high above square does it sit?");
        }
      }
      case LOCKING_SCREWS_SEEN -> {
        if (!screwsSeen) {
          typed.fault("screwsSeen", "Tick it once you have seen both with your own eyes.");
        }
      }
    }
  }

  private static Measured measured(
      Typed typed, String field, LengthUnit unit, Plausible plausible) {
    Length length = typed.length(field, unit, plausible);
    return length == null ? null : new Measured(length, typed.value(field));
  }

  private static Set<Key> steps(Typed typed, List<SetUpStep> sheet) {
    Set<Key> known = EnumSet.noneOf(Key.class);
    sheet.forEach(step -> known.add(step.key()));
    String text = typed.value("stepsDone");
    if (text.equals("all")) {
      return known;
    }
    Set<Key> done = EnumSet.noneOf(Key.class);
    for (String word : text.split("[,\\s]+")) {
      known.stream().filter(key -> Words.of(key).equals(word)).forEach(done::add);
      if (!word.isBlank() && known.stream().noneMatch(key -> Words.of(key).equals(word))) {
        typed.fault(
            "stepsDone",
            "\"%s\" is no step of this rig's sheet. Write all, or some of: %s."
                .formatted(word, String.join(", ", known.stream().map(Words::of).toList())));
      }
    }
    return done;
  }
}
