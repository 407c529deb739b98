package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

@PropertyDefaults(edgeCases = EdgeCasesMode.NONE)
class LearnerLawsTest {
  private static final TwistedString STRING = new TwistedString(1651, 14, 0.45);

  @Property
  void theOrderOfAdjustments_playsNoPart(@ForAll("runs") List<Run> runs, @ForAll long seed) {
    List<Run> shuffled = new ArrayList<>(runs);
    Collections.shuffle(shuffled, new Random(seed));
    Posterior one = TwistResponse.priorOfBundle().after(runs);
    Posterior other = TwistResponse.priorOfBundle().after(shuffled);
    Posterior oneByOne = TwistResponse.priorOfBundle();
    for (Run run : shuffled) {
      oneByOne = oneByOne.after(List.of(run));
    }
    for (Posterior same : List.of(other, oneByOne)) {
      assertEquals(one.mean(), same.mean(), 1e-9 * Math.max(1, Math.abs(one.mean())));
      assertEquals(one.sd(), same.sd(), 1e-12);
      assertEquals(one.shown(), same.shown());
    }
  }

  @Property
  void oneMoreAdjustment_neverWidensTheInterval(
      @ForAll("runs") List<Run> runs, @ForAll("run") Run more) {
    Posterior before = TwistResponse.priorOfBundle().after(runs);
    List<Run> all = new ArrayList<>(runs);
    all.add(more);
    assertTrue(TwistResponse.priorOfBundle().after(all).sd() <= before.sd());
    if (more.moves() > 0) {
      assertTrue(TwistResponse.priorOfBundle().after(all).sd() < before.sd());
    }
  }

  @Property
  void theBaseline_tellsNothing(
      @ForAll("run") Run run, @ForAll @DoubleRange(min = -50, max = 50) double shift) {
    Run higher =
        new Run(
            run.points().stream()
                .map(point -> new Run.Point(point.at(), point.mm() + shift, point.sdMm()))
                .toList());
    assertEquals(
        Posterior.prior(1, 1).after(List.of(run)).mean(),
        Posterior.prior(1, 1).after(List.of(higher)).mean(),
        1e-7);
  }

  @Property
  void moreTwists_neverLowerTheBrace(
      @ForAll("runs") List<Run> runs,
      @ForAll @IntRange(min = 5, max = 70) int count,
      @ForAll @IntRange(min = 0, max = 40) int more) {
    OwnRecord record = new OwnRecord(runs, runs, List.of());
    for (TwistResponse response :
        List.of(
            TwistResponse.of(STRING, count, record), TwistResponse.byTheTrade(null, "", record))) {
      assertTrue(response.change(more).mean() >= 0, response.toString());
      assertTrue(response.change(more + 1).mean() >= response.change(more).mean());
      assertTrue(response.change(-more).mean() <= 0, response.toString());
    }
  }

  @Property
  void advice_staysInsideTheLimits(
      @ForAll("likelyRuns") List<Run> runs,
      @ForAll @IntRange(min = 0, max = 90) int count,
      @ForAll @IntRange(min = 5, max = 20) int fewest,
      @ForAll @IntRange(min = 15, max = 60) int room,
      @ForAll @DoubleRange(min = 190, max = 240) double brace,
      @ForAll @DoubleRange(min = 190, max = 240) double aim) {
    TwistLimits limits = new TwistLimits(fewest, fewest + room);
    OwnRecord record = new OwnRecord(runs, runs, List.of());
    TwistReckoning twists =
        TwistReckoning.of(TwistReckoning.response(68.0, STRING, count, record), brace, aim, limits);
    if (twists.reach() == TwistReckoning.Reach.THIS_STRING) {
      assertTrue(Math.abs(twists.low()) <= Math.abs(twists.turns()), twists.toString());
      int after = count + twists.turns();
      assertTrue(after >= fewest && after <= limits.most(), count + ": " + twists);
    } else {
      assertEquals(0, twists.turns());
      assertEquals(twists.reach() != TwistReckoning.Reach.LEAVE_IT, twists.otherStringMm() != null);
    }
  }

  @Property
  void bolts_keepTheMakersTurns_theQuarterAndTheDrawWeight(
      @ForAll @DoubleRange(min = -15, max = 15) double tiller,
      @ForAll @DoubleRange(min = -5, max = 8) double aim,
      @ForAll @DoubleRange(min = 0, max = 6) double most,
      @ForAll @DoubleRange(min = 0, max = 1) double upper,
      @ForAll @DoubleRange(min = 0, max = 1) double lower) {
    double upperOut = upper * most;
    double lowerOut = lower * most;
    BoltReckoning bolts = BoltReckoning.of(tiller, aim, upperOut, lowerOut, most, OwnRecord.NONE);
    for (double turns : new double[] {bolts.firstUpper(), bolts.firstLower()}) {
      assertTrue(Math.abs(turns) <= 0.25);
      assertEquals(0, Math.IEEEremainder(turns, 0.125), 1e-12);
    }
    double slack = 1e-9;
    assertTrue(upperOut - bolts.firstUpper() <= most + slack, bolts.toString());
    assertTrue(lowerOut - bolts.firstLower() <= most + slack, bolts.toString());
    assertTrue(upperOut - bolts.firstUpper() >= -slack && lowerOut - bolts.firstLower() >= -slack);
    double wanted = Math.abs(bolts.upper()) + Math.abs(bolts.lower());
    if (upperOut > wanted && lowerOut > wanted && most - Math.max(upperOut, lowerOut) > wanted) {
      assertEquals(0, bolts.upper() + bolts.lower(), 1e-9, "one in, the other out by the same");
    }
  }

  @Provide
  Arbitrary<Run> run() {
    Arbitrary<Run.Point> point =
        Combinators.combine(
                Arbitraries.integers().between(10, 60),
                Arbitraries.doubles().between(200, 230).ofScale(2),
                Arbitraries.doubles().between(0.5, 2).ofScale(2))
            .as((at, mm, sd) -> new Run.Point(at, mm, sd));
    return point.list().ofMinSize(2).ofMaxSize(4).map(Run::new);
  }

  @Provide
  Arbitrary<List<Run>> runs() {
    return run().list().ofMaxSize(6);
  }

  /** Runs as they happen: brace rises with the twists, give or take what people read. */
  @Provide
  Arbitrary<List<Run>> likelyRuns() {
    return Combinators.combine(
            Arbitraries.integers().between(10, 50),
            Arbitraries.integers().between(4, 12),
            Arbitraries.doubles().between(0.1, 0.9).ofScale(3),
            Arbitraries.doubles().between(-1, 1).ofScale(2))
        .as(
            (from, added, slope, error) ->
                new Run(
                    List.of(
                        new Run.Point(from, 210, 1.1),
                        new Run.Point(from + added, 210 + slope * added + error, 1.1))))
        .list()
        .ofMaxSize(4);
  }
}
