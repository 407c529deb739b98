package club.ascham.setup;

import club.ascham.bow.SetUpFigures;
import club.ascham.bow.SetUpStep;
import club.ascham.bow.SetUpStep.Figure;
import club.ascham.bow.SetUpStep.Key;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.measured.Measurement;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;
import club.ascham.verdict.Reading;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What was done and measured at the bench, to be written into a set-up. What is null is left as it
 * stands.
 *
 * @param steps the steps that were done
 * @param figures of which the locking screws, or the bolts of a screw-in bow, were seen in order
 * @param asTyped the texts of the lengths
 */
record SetUpEntry(Set<Key> steps, SetUpFigures figures, Map<Measurement, String> asTyped) {
  private static final Set<Key> UNSTRUNG = EnumSet.of(Key.LIMBS, Key.LOOPS);

  /** Whether the bow is strung for a step, or was for one before it. */
  static boolean needsString(Key step) {
    return !UNSTRUNG.contains(step);
  }

  /** Whether the string is on for any of it. */
  boolean needsString() {
    return figures.brace() != null
        || figures.tillerUpper() != null
        || figures.nocking() != null
        || steps.stream().anyMatch(SetUpEntry::needsString);
  }

  /**
   * Reads an entry; ask {@code typed.sound()} before using it.
   *
   * @param unit for lengths that name none
   * @param sheet the steps of this rig, which {@code stepsDone} may name or mean with {@code all}
   */
  static SetUpEntry parse(Typed typed, LengthUnit unit, List<SetUpStep> sheet) {
    Reading reading =
        Measurement.reading(
            typed, unit, "From where was it measured: the throat of the grip, or the button?");
    tellBoth(typed, reading);
    return new SetUpEntry(
        steps(typed, sheet),
        new SetUpFigures(
            reading.brace(),
            reading.from(),
            reading.tillerUpper(),
            reading.tillerLower(),
            Measurement.NOCKING.length(typed, unit),
            typed.ticked("screwsSeen"),
            Measurement.TURNS_UPPER.number(typed),
            Measurement.TURNS_LOWER.number(typed),
            Measurement.TWISTS.count(typed)),
        Measurement.asTyped(typed));
  }

  private static void tellBoth(Typed typed, Reading reading) {
    boolean upper = typed.has(Measurement.TILLER_UPPER.field());
    if (upper != typed.has(Measurement.TILLER_LOWER.field())) {
      typed.fault(
          (upper ? Measurement.TILLER_LOWER : Measurement.TILLER_UPPER).field(),
          "Both distances, please: tiller is the one less the other.");
    }
    if (reading.tiller() != null && !Plausible.TILLER.holds(reading.tiller())) {
      typed.fault(
          Measurement.TILLER_LOWER.field(),
          "The two distances lie further apart than on any bow. Measure both again, square to the"
              + " string.");
    }
  }

  /** Asks for the figure that is written down at a step, where it was not given. */
  void require(Figure figure, Typed typed) {
    switch (figure) {
      case BRACE ->
          require(Measurement.BRACE, figures.brace(), "What does the brace height measure?", typed);
      case TILLER_UPPER_AND_LOWER -> {
        require(
            Measurement.TILLER_UPPER,
            figures.tillerUpper(),
            "What does the upper distance measure?",
            typed);
        require(
            Measurement.TILLER_LOWER,
            figures.tillerLower(),
            "What does the lower distance measure?",
            typed);
      }
      case NOCKING ->
          require(
              Measurement.NOCKING, figures.nocking(), "How high above square does it sit?", typed);
      case LOCKING_SCREWS_SEEN -> {
        if (!figures.lockingScrewsSeen()) {
          typed.fault("screwsSeen", "Tick it once you have seen both with your own eyes.");
        }
      }
    }
  }

  private static void require(Measurement what, Length measured, String question, Typed typed) {
    if (measured == null) {
      typed.fault(what.field(), question);
    }
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
