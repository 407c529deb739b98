package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class FingerWeightLawsTest {
  /** A 68 in bow braced at 8 1/2 in. */
  private static final double ZERO_IN = 10.25;

  @Property
  void estimate_risesWithTheDraw(
      @ForAll @DoubleRange(min = 8, max = 60) double markedLb,
      @ForAll @DoubleRange(min = 12, max = 34) double drawIn,
      @ForAll @DoubleRange(min = 0.01, max = 3) double moreIn,
      @ForAll @IntRange(min = 17, max = 27) int riserIn) {
    WeightOnFingers at = FingerWeight.estimate(markedLb, 28, 25, riserIn, drawIn, ZERO_IN);
    WeightOnFingers beyond =
        FingerWeight.estimate(markedLb, 28, 25, riserIn, drawIn + moreIn, ZERO_IN);
    assertTrue(beyond.lb() > at.lb());
    assertTrue(beyond.highLb() > at.highLb());
  }

  @Property
  void estimate_liesInItsOwnRange(
      @ForAll @DoubleRange(min = 8, max = 60) double markedLb,
      @ForAll @DoubleRange(min = 12, max = 36) double drawIn,
      @ForAll @IntRange(min = 17, max = 27) int markedRiserIn,
      @ForAll @IntRange(min = 17, max = 27) int riserIn) {
    WeightOnFingers weight =
        FingerWeight.estimate(markedLb, 28, markedRiserIn, riserIn, drawIn, ZERO_IN);
    assertTrue(weight.lowLb() < weight.lb() && weight.lb() < weight.highLb());
  }

  @Property
  void estimate_shorterRiserNeverWeighsLess(
      @ForAll @DoubleRange(min = 8, max = 60) double markedLb,
      @ForAll @IntRange(min = 17, max = 26) int riserIn) {
    WeightOnFingers shorter = FingerWeight.estimate(markedLb, 28, 25, riserIn, 27, ZERO_IN);
    WeightOnFingers longer = FingerWeight.estimate(markedLb, 28, 25, riserIn + 1, 27, ZERO_IN);
    assertTrue(shorter.lb() > longer.lb());
    assertTrue(shorter.highLb() >= longer.highLb());
  }

  @Property(tries = 200)
  void oneMoreReadingThatAgrees_narrowsTheRange(
      @ForAll @DoubleRange(min = 14, max = 40) double markedLb,
      @ForAll @DoubleRange(min = 22, max = 31) double drawIn,
      @ForAll @DoubleRange(min = 0.96, max = 1.04) double off,
      @ForAll @IntRange(min = 0, max = 5) int before) {
    WeightOnFingers fewer = read(markedLb, drawIn, off, before);
    WeightOnFingers more = read(markedLb, drawIn, off, before + 1);
    assertTrue(more.highLb() - more.lowLb() < fewer.highLb() - fewer.lowLb());
  }

  @Property(tries = 200)
  void whatTheScaleShowedAtThisDraw_isNeverRuledOut_andPullsTowardItself(
      @ForAll @DoubleRange(min = 14, max = 40) double markedLb,
      @ForAll @DoubleRange(min = 22, max = 31) double drawIn,
      @ForAll @DoubleRange(min = 0.8, max = 1.25) double off,
      @ForAll @IntRange(min = 0, max = 5) int before) {
    double reading = off * read(markedLb, drawIn, off, 0).lb();
    WeightOnFingers fewer = read(markedLb, drawIn, off, before);
    WeightOnFingers more = read(markedLb, drawIn, off, before + 1);
    assertTrue(more.lowLb() <= reading && reading <= more.highLb(), more + " without " + reading);
    assertTrue(Math.abs(more.lb() - reading) <= Math.abs(fewer.lb() - reading) + 1e-9);
  }

  /** After so many equal readings at this draw, each so many times what the mark says. */
  private static WeightOnFingers read(double markedLb, double drawIn, double off, int readings) {
    SetUpFigures setUp = Bows.setUp(222, 180, 176);
    double expected = FingerWeight.of(Bows.weighedRig(25, markedLb, List.of()), setUp, drawIn).lb();
    ScaleReading reading = new ScaleReading(drawIn, off * expected, 25);
    return FingerWeight.of(
        Bows.weighedRig(25, markedLb, Collections.nCopies(readings, reading)), setUp, drawIn);
  }
}
