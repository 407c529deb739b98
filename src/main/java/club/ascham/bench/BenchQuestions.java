package club.ascham.bench;

import club.ascham.bow.Band;
import club.ascham.bow.FingerWeight;
import club.ascham.bow.Style;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.bow.WeightOnFingers;
import club.ascham.form.Typed;
import club.ascham.mechanics.BoltReckoning;
import club.ascham.mechanics.OutOfDomain;
import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.TwistLimits;
import club.ascham.mechanics.TwistReckoning;
import club.ascham.mechanics.TwistResponse;
import club.ascham.mechanics.TwistedString;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads a question put to the bench, from a page or from JSON, and has it reckoned; each fault
 * stands at its field.
 */
final class BenchQuestions {
  /** A common brace height, where the question does not say: 8 5/8 in. */
  private static final double COMMON_BRACE_IN = 8.625;

  /** What the club has put in force. */
  interface Bands {
    /** Its brace band for bows of this length; empty: nothing speaks. */
    Optional<Band> brace(int bowIn);

    TwistLimits twistLimits();
  }

  /** Says that a figure which was asked back is right. */
  static final String SURE = "sure";

  private static final double MM_PER_IN = 25.4;

  /** A string is shorter than its bow by at least so much: judged. */
  private static final double LEAST_SHORTER_IN = 1;

  /** Of the bow's length, what brace lies between: judged. */
  private static final double LOWEST_BRACE = 0.09;

  private static final double HIGHEST_BRACE = 0.16;

  /** Nobody draws limbs so far beyond their mark: judged. */
  private static final double FAR_BEYOND_MARK_IN = 8;

  private BenchQuestions() {}

  static Optional<TwistReckoning> twists(Typed typed, Bands club) {
    Double bow = needed(typed, "bowLengthIn", 40, 80);
    Double length = needed(typed, "stringLengthMm", 500, 2500);
    Integer strands = typed.whole("strands", 4, 60);
    Double diameter = typed.decimal("strandDiameterMm", 0.1, 2);
    Integer twists = typed.whole("twists", 0, TwistLimits.MOST_AT_ALL);
    Double brace = needed(typed, "braceMm", 100, 320);
    Double target = needed(typed, "targetMm", 100, 320);
    if (typed.sound()) {
      askBack(typed, club, bow, length, brace, target);
    }
    return reckoned(
        typed,
        () -> {
          TwistedString string =
              strands == null || diameter == null
                  ? null
                  : new TwistedString(length, strands, diameter);
          TwistResponse response = TwistReckoning.response(bow, string, twists, OwnRecord.NONE);
          return TwistReckoning.of(response, brace, target, club.twistLimits());
        });
  }

  /** What is no slip on any bow, and most likely one on this. */
  private static void askBack(
      Typed typed, Bands club, double bowIn, double stringMm, double braceMm, double targetMm) {
    if (isMore(stringMm, (bowIn - LEAST_SHORTER_IN) * MM_PER_IN)) {
      typed.fault(
          "stringLengthMm",
          "That is as long as the bow. A label names the bow that a string is made for; the string"
              + " itself is 2 to 5 in shorter: measure it.");
    }
    if (typed.ticked(SURE)) {
      return;
    }
    if (isMore(LOWEST_BRACE * bowIn * MM_PER_IN, braceMm)
        || isMore(braceMm, HIGHEST_BRACE * bowIn * MM_PER_IN)) {
      typed.fault(
          "braceMm",
          "Hardly a bow of %.0f in stands at %s. Look at both figures again; if they are right, say so below."
              .formatted(bowIn, LengthText.both(Length.ofMm(braceMm))));
    }
    club.brace((int) Math.round(bowIn))
        .filter(band -> !band.holdsAsRead(Length.ofMm(targetMm)))
        .ifPresent(
            band ->
                typed.fault(
                    "targetMm",
                    "What is in force here for that length is %s to %s. If the maker says otherwise, say so below."
                        .formatted(LengthText.both(band.low()), LengthText.both(band.high()))));
  }

  /** To what a length is kept by: 61 in are no more than 61 times 25.4 mm. */
  private static boolean isMore(double mm, double thanMm) {
    return Length.ofMm(mm).compareTo(Length.ofMm(thanMm)) > 0;
  }

  static Optional<BoltReckoning> bolts(Typed typed) {
    Style style = typed.has("style") ? typed.word("style", Style.class) : Style.SPLIT_FINGER;
    Double tiller = needed(typed, "tillerMm", -60, 60);
    if (style == null || !typed.sound()) {
      return Optional.empty();
    }
    Target ofStyle = Targets.tillerSetByBolts(style);
    Double aim = typed.decimal("targetMm", -30, 30);
    double target = aim == null ? ofStyle.inner().middle().mm() : aim;
    Double upper = typed.decimal("upperTurnsOut", 0, 20);
    Double lower = typed.decimal("lowerTurnsOut", 0, 20);
    Double most = typed.decimal("maxTurnsOut", 0, 20);
    if (typed.sound() && !ofStyle.outer().holdsAsRead(Length.ofMm(tiller))) {
      return Optional.of(
          BoltReckoning.lookFirst(
              tiller,
              "No bolt work: look first whether the limbs are the right way up and in their seats, and"
                  + " measure again. "
                  + ofStyle.basis()));
    }
    return reckoned(
        typed, () -> BoltReckoning.of(tiller, target, upper, lower, most, OwnRecord.NONE));
  }

  static Optional<WeightOnFingers> drawWeight(Typed typed) {
    Double marked = needed(typed, "markedLb", 4, 120);
    Double at = typed.decimal("markedAtIn", 20, 34);
    Integer markedRiser = typed.whole("markedRiserIn", 13, 30);
    Integer riser = typed.whole("riserIn", 13, 30);
    Double draw = needed(typed, "drawLengthIn", 12, 36);
    Double brace = typed.decimal("braceMm", 100, 320);
    double zero =
        (brace == null ? COMMON_BRACE_IN : brace / 25.4) + FingerWeight.AMO_BEYOND_PIVOT_IN;
    if (draw != null && draw <= zero + 1) {
      typed.fault("drawLengthIn", "That draw hardly goes beyond the braced string.");
    }
    if (draw != null
        && draw >= (at == null ? 28 : at) + FAR_BEYOND_MARK_IN
        && !typed.ticked(SURE)) {
      typed.fault(
          "drawLengthIn",
          "That is far beyond the draw its weight is marked at. Look at both figures again; if they"
              + " are right, say so below.");
    }
    return reckoned(
        typed,
        () -> FingerWeight.estimate(marked, at == null ? 28 : at, markedRiser, riser, draw, zero));
  }

  static Double needed(Typed typed, String field, double low, double high) {
    Double value = typed.decimal(field, low, high);
    missing(typed, field, value);
    return value;
  }

  private static void missing(Typed typed, String field, Object value) {
    if (value == null) {
      typed.fault(field, "A number, please.");
    }
  }

  static <T> Optional<T> reckoned(Typed typed, Supplier<T> reckoning) {
    if (!typed.sound()) {
      return Optional.empty();
    }
    try {
      return Optional.of(reckoning.get());
    } catch (OutOfDomain outside) {
      typed.fault(outside.quantity(), outside.getMessage());
      return Optional.empty();
    }
  }
}
