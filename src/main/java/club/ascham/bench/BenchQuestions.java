package club.ascham.bench;

import club.ascham.bow.FingerWeight;
import club.ascham.bow.WeightOnFingers;
import club.ascham.form.Typed;
import club.ascham.mechanics.BoltReckoning;
import club.ascham.mechanics.OutOfDomain;
import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.TwistLimits;
import club.ascham.mechanics.TwistReckoning;
import club.ascham.mechanics.TwistResponse;
import club.ascham.mechanics.TwistedString;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads a question put to the bench, from a page or from JSON, and has it reckoned; each fault
 * stands at its field.
 */
final class BenchQuestions {
  /** A common brace height, where the question does not say: 8 5/8 in. */
  private static final double COMMON_BRACE_IN = 8.625;

  private BenchQuestions() {}

  static Optional<TwistReckoning> twists(Typed typed, TwistLimits limits) {
    Double bow = needed(typed, "bowLengthIn", 40, 80);
    Double length = needed(typed, "stringLengthMm", 500, 2500);
    Integer strands = typed.whole("strands", 4, 60);
    Double diameter = typed.decimal("strandDiameterMm", 0.1, 2);
    Integer twists = typed.whole("twists", 0, TwistLimits.MOST_AT_ALL);
    Double brace = needed(typed, "braceMm", 100, 320);
    Double target = needed(typed, "targetMm", 100, 320);
    return reckoned(
        typed,
        () -> {
          TwistedString string =
              strands == null || diameter == null
                  ? null
                  : new TwistedString(length, strands, diameter);
          TwistResponse response = TwistReckoning.response(bow, string, twists, OwnRecord.NONE);
          return TwistReckoning.of(response, brace, target, limits);
        });
  }

  static Optional<BoltReckoning> bolts(Typed typed) {
    Double tiller = needed(typed, "tillerMm", -60, 60);
    Double target = needed(typed, "targetMm", -30, 30);
    Double upper = typed.decimal("upperTurnsOut", 0, 20);
    Double lower = typed.decimal("lowerTurnsOut", 0, 20);
    Double most = typed.decimal("maxTurnsOut", 0, 20);
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
