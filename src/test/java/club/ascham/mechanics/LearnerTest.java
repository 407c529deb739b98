package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * What the learner believes of simulated bows. The bows and their readings are made here from the
 * formulas alone, with scales read in their real steps, and know nothing of the learner.
 */
class LearnerTest {
  private static final int BOWS = 2_000;
  private static final double INCH_STEP = 25.4 / 16;
  private static final TwistedString STRING = new TwistedString(1651, 14, 0.45);

  @Test
  @DisplayName("twists: 9 in 10 of the intervals hold the truth, of 2,000 bows after 3 adjustments")
  void twists_theIntervalHoldsTheTruthNineTimesInTen() {
    Random random = new Random(20_260_101);
    int held = 0;
    for (int bow = 0; bow < BOWS; bow++) {
      double factor = 1.5 + 0.5 / 1.645 * random.nextGaussian();
      double follows = 1.02 + 0.07 * random.nextGaussian();
      double step = random.nextBoolean() ? INCH_STEP : 1;
      int count = 15 + random.nextInt(15);
      List<Run> runs = new ArrayList<>();
      List<Run.Point> points = new ArrayList<>();
      double baseline = 190 + 20 * random.nextDouble();
      for (int adjustment = 0; adjustment < 3; adjustment++) {
        if (adjustment == 0 || random.nextBoolean()) {
          // Later, and the string has crept: another baseline.
          points = new ArrayList<>();
          baseline -= 2 * random.nextDouble();
          points.add(brace(baseline, factor * follows, count, step, random));
        } else {
          runs.remove(runs.size() - 1);
        }
        count += (count > 25 && random.nextInt(3) == 0 ? -1 : 1) * (4 + random.nextInt(8));
        points.add(brace(baseline, factor * follows, count, step, random));
        runs.add(new Run(points));
      }
      TwistResponse response =
          TwistResponse.of(STRING, count, new OwnRecord(runs, List.of(), List.of()));
      assertEquals(3, response.shown());
      // The last count is an end of some run, so one twist more or one less was tried.
      int from = response.tried(1) ? count : count - 1;
      double truth =
          factor * follows * (STRING.leastShorteningMm(from + 1) - STRING.leastShorteningMm(from));
      if (holds(response.oneTwist(), truth)) {
        held++;
      }
    }
    assertBetween87And93(held);
  }

  private static Run.Point brace(
      double baseline, double response, int twists, double step, Random random) {
    double shortening = Math.pow(Math.PI * STRING.radiusMm() * twists, 2) / 1651;
    return new Run.Point(
        twists, read(baseline + response * shortening, step, random), ReadingScatter.braceMm(step));
  }

  @Test
  @DisplayName("tiller: 9 in 10 of the intervals hold the truth, of 2,000 bows after 3 adjustments")
  void tiller_theIntervalHoldsTheTruthNineTimesInTen() {
    Random random = new Random(20_260_102);
    int held = 0;
    for (int bow = 0; bow < BOWS; bow++) {
      double mmPerTurn = 7.5 + 4.5 * random.nextGaussian();
      double step = random.nextBoolean() ? INCH_STEP : 1;
      List<Run> runs = new ArrayList<>();
      for (int adjustment = 0; adjustment < 3; adjustment++) {
        double upper = 180 + 10 * random.nextDouble();
        double lower = 177 + 10 * random.nextDouble();
        double turns = (random.nextBoolean() ? 1 : -1) * (1 + random.nextInt(4)) / 8.0;
        runs.add(
            new Run(
                List.of(
                    tiller(0, upper, lower, step, random),
                    tiller(
                        turns,
                        upper - mmPerTurn * turns / 2,
                        lower + mmPerTurn * turns / 2,
                        step,
                        random))));
      }
      if (holds(BoltReckoning.mmPerTurn(new OwnRecord(List.of(), List.of(), runs)), mmPerTurn)) {
        held++;
      }
    }
    assertBetween87And93(held);
  }

  /** The eye's scatter of tiller is that of both distances together. */
  private static Run.Point tiller(
      double turns, double upper, double lower, double step, Random random) {
    double half = Math.sqrt(0.5) * ReadingScatter.EYE_MM;
    double up = rounded(upper + half * random.nextGaussian(), step);
    double down = rounded(lower + half * random.nextGaussian(), step);
    return new Run.Point(turns, up - down, ReadingScatter.tillerMm(step));
  }

  private static double read(double mm, double step, Random random) {
    return rounded(mm + ReadingScatter.EYE_MM * random.nextGaussian(), step);
  }

  private static double rounded(double mm, double step) {
    return Math.rint(mm / step) * step;
  }

  private static boolean holds(Posterior belief, double truth) {
    return belief.low() <= truth && truth <= belief.high();
  }

  private static void assertBetween87And93(int held) {
    double share = 100.0 * held / BOWS;
    assertTrue(share >= 87 && share <= 93, "held in " + share + " of 100");
  }

  @Test
  @DisplayName("one observation of a normal mean, by the textbook: precisions add")
  void oneAdjustment_isTheConjugateUpdate() {
    // Prior 7.5 +- 4.5; half a turn moved tiller by 4 mm, each reading +- 1.2 mm: 8 +- 3.394.
    Run run = new Run(List.of(new Run.Point(0, 9, 1.2), new Run.Point(-0.5, 5, 1.2)));
    Posterior belief = Posterior.prior(7.5, 4.5).after(List.of(run));
    double precision = 1 / 20.25 + 0.25 / (2 * 1.44);
    assertEquals(1 / Math.sqrt(precision), belief.sd(), 1e-12);
    assertEquals((7.5 / 20.25 + 8 * 0.25 / 2.88) / precision, belief.mean(), 1e-12);
    assertEquals(1, belief.shown());
  }

  @Test
  void aReadingSharedByTwoAdjustments_countsOnce() {
    Run.Point first = new Run.Point(0, 210, 1);
    Run.Point middle = new Run.Point(1, 214, 1);
    Run.Point last = new Run.Point(2, 218, 1);
    Posterior chained =
        Posterior.prior(0, 10).after(List.of(new Run(List.of(first, middle, last))));
    Posterior apart =
        Posterior.prior(0, 10)
            .after(List.of(new Run(List.of(first, middle)), new Run(List.of(middle, last))));
    assertEquals(apart.shown(), chained.shown());
    // Ends two apart: variance 1/2; as if the middle one had been read twice it would be 1 as well,
    // were the errors independent. Here the line through three points has information 2.
    assertEquals(1 / Math.sqrt(0.01 + 2), chained.sd(), 1e-12);
    assertEquals(1 / Math.sqrt(0.01 + 1), apart.sd(), 1e-12);
  }

  @Test
  void theLearner_findsThisStringsOwnSlope_andSaysOnWhatItRests() {
    // A bundle at the outer end: brace rises twice what the mean strand says.
    List<Run.Point> points = new ArrayList<>();
    for (int twists : new int[] {20, 28, 36, 44}) {
      points.add(
          new Run.Point(
              twists, 205 + 2 * STRING.leastShorteningMm(twists), ReadingScatter.braceMm(1)));
    }
    OwnRecord record = new OwnRecord(List.of(new Run(points)), List.of(), List.of());
    TwistResponse own = TwistResponse.of(STRING, 44, record);
    TwistResponse none = TwistResponse.of(STRING, 44, OwnRecord.NONE);
    double truth = 2 * (STRING.leastShorteningMm(30) - STRING.leastShorteningMm(44));
    assertEquals(truth, own.change(-14).mean(), 0.1 * Math.abs(truth));
    assertTrue(
        Math.abs(own.change(-14).mean() - truth) < Math.abs(none.change(-14).mean() - truth) / 3);
    assertEquals("from 3 adjustments of this bow", own.restsOn());
    assertTrue(own.basis().contains("tried from 20 to 44 twists"), own.basis());
  }

  @Test
  void beyondWhatWasTried_itSaysSo_andTheRangeIsWider() {
    List<Run> runs =
        List.of(new Run(List.of(new Run.Point(25, 210, 1.1), new Run.Point(35, 215.1, 1.1))));
    TwistResponse response =
        TwistResponse.of(STRING, 35, new OwnRecord(runs, List.of(), List.of()));
    assertTrue(response.tried(-10));
    assertFalse(response.tried(-11));
    assertFalse(response.tried(1));
    double inside = response.change(-10).sd() / Math.abs(response.change(-10).mean());
    double outside = response.change(10).sd() / response.change(10).mean();
    assertTrue(outside > inside, outside + " beyond, " + inside + " inside");
    TwistReckoning beyond = TwistReckoning.of(response, 215, 221, TwistLimits.IN_PRINT);
    assertTrue(beyond.basis().contains("goes beyond the twists tried"), beyond.basis());
    TwistReckoning within = TwistReckoning.of(response, 215, 212, TwistLimits.IN_PRINT);
    assertFalse(within.basis().contains("beyond"), within.basis());
  }

  @Test
  void oneReadingTheWrongWay_turnsNoAdviceOver() {
    // The upper bolt went in by a quarter, and tiller rose by 3 mm.
    List<Run> wrong =
        List.of(new Run(List.of(new Run.Point(0, 8, 1.2), new Run.Point(0.25, 11, 1.2))));
    BoltReckoning bolts =
        BoltReckoning.of(11, 4.8, 2.0, 2.0, 4.0, new OwnRecord(List.of(), List.of(), wrong));
    assertTrue(bolts.firstUpper() > 0 && bolts.firstLower() < 0, bolts.toString());
  }

  @Test
  void boltsThatKeepTurningTillerTheWrongWay_areLeftAlone() {
    List<Run> wrong = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      wrong.add(new Run(List.of(new Run.Point(0, 8, 1.2), new Run.Point(0.5, 11, 1.2))));
    }
    BoltReckoning bolts =
        BoltReckoning.of(11, 4.8, 2.0, 2.0, 4.0, new OwnRecord(List.of(), List.of(), wrong));
    assertEquals(0, bolts.firstUpper());
    assertEquals(0, bolts.firstLower());
    assertFalse(bolts.reached());
    assertTrue(bolts.basis().contains("find out why first"), bolts.basis());
  }
}
