package club.ascham.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is estimated of simulated fleets whose lives are known. The fleets are made here: strings
 * bought over the years before the record began and since, some lost, some still on their bows.
 */
class LifeFoundTest {
  private static final int FLEETS = 1_000;
  private static final double LEVEL = 0.9;
  private static final double RECORD_DAYS = 900;
  private static final double BEFORE_DAYS = 700;

  /** Drawn without the code under test: -ln U is the hazard that a life has gone through. */
  private static double life(double shape, double scale, Random random) {
    return scale * Math.pow(-Math.log(1 - random.nextDouble()), 1 / shape);
  }

  /** So many strings on record; those that broke before the record began were never seen. */
  private static List<Service> fleet(int strings, double shape, double scale, Random random) {
    List<Service> fleet = new ArrayList<>();
    while (fleet.size() < strings) {
      double bought = -BEFORE_DAYS + (BEFORE_DAYS + RECORD_DAYS) * random.nextDouble();
      double breaks = life(shape, scale, random);
      double lost = 3_000 * -Math.log(1 - random.nextDouble());
      double entered = Math.max(0, -bought);
      double end = Math.min(lost, RECORD_DAYS - bought);
      if (Math.min(breaks, end) > entered) {
        fleet.add(new Service(entered, Math.min(breaks, end), breaks < end));
      }
    }
    return fleet;
  }

  @ParameterizedTest(name = "of {0} strings")
  @ValueSource(ints = {25, 60, 150})
  @DisplayName("90 in 100 intervals hold the truth, of 1,000 fleets")
  void intervals_holdTheTruth(int strings) {
    Random random = new Random(20_260_501 + strings);
    Map<String, Integer> held = new LinkedHashMap<>();
    int refused = 0;
    for (int i = 0; i < FLEETS; i++) {
      double shape = 1.2 + 1.8 * random.nextDouble();
      double scale = 400 + 400 * random.nextDouble();
      Weibull truth = new Weibull(shape, scale);
      if (LifeEstimate.of(fleet(strings, shape, scale, random))
          instanceof LifeEstimate.Fitted fitted) {
        WeibullFit fit = fitted.fit();
        count(held, "shape", fit.shape(LEVEL), shape);
        count(held, "scale", fit.scale(LEVEL), scale);
        count(held, "B10", fit.quantile(0.1, LEVEL), truth.quantile(0.1));
        count(held, "median", fit.quantile(0.5, LEVEL), truth.quantile(0.5));
        count(held, "mean", fit.mean(LEVEL), truth.mean());
      } else {
        refused++;
      }
    }
    assertTrue(refused < FLEETS / 50, refused + " refused");
    int fitted = FLEETS - refused;
    held.forEach((what, count) -> assertBetween87And93(what, count, fitted));
    assertEquals(5, held.size());
  }

  private static void count(
      Map<String, Integer> held, String what, Interval interval, double truth) {
    held.merge(what, interval.low() <= truth && truth <= interval.high() ? 1 : 0, Integer::sum);
  }

  private static void assertBetween87And93(String what, int held, int of) {
    double share = 100.0 * held / of;
    assertTrue(share >= 87 && share <= 93, what + " held in " + share + " of 100");
  }

  @Test
  @DisplayName("so do those of the best age to replace at, where no upper end means any age")
  void replacementAges_areHeld() {
    Random random = new Random(20_260_507);
    int held = 0;
    for (int i = 0; i < FLEETS; i++) {
      double shape = 1.6 + 1.4 * random.nextDouble();
      double scale = 400 + 400 * random.nextDouble();
      double truth = ReplacementAge.of(new Weibull(shape, scale), 1, 8).age();
      LifeEstimate.Fitted fitted =
          (LifeEstimate.Fitted) LifeEstimate.of(fleet(60, shape, scale, random));
      ReplacementAge.Likely likely = ReplacementAge.likely(fitted.fit(), 1, 8, i);
      boolean above = likely.low() != null && likely.low() <= truth;
      held += above && (likely.high() == null || truth <= likely.high()) ? 1 : 0;
    }
    assertBetween87And93("the age", held, FLEETS);
  }

  @Test
  @DisplayName("delayed entry leaves no bias; leaving it out makes lives 8 in 100 longer")
  void delayedEntry_isUnbiased() {
    Random random = new Random(20_260_502);
    double[] with = new double[2];
    double[] without = new double[2];
    int fleets = 400;
    for (int i = 0; i < fleets; i++) {
      List<Service> fleet = fleet(300, 2, 500, random);
      add(with, fleet);
      add(without, fleet.stream().map(s -> new Service(0, s.until(), s.failed())).toList());
    }
    assertEquals(0, with[0] / fleets, 0.012, "log shape");
    assertEquals(0, with[1] / fleets, 0.006, "log scale");
    assertTrue(without[1] / fleets > 0.07, "log scale without it");
  }

  private static void add(double[] sums, List<Service> fleet) {
    WeibullFit fit = ((LifeEstimate.Fitted) LifeEstimate.of(fleet)).fit();
    sums[0] += Math.log(fit.life().shape() / 2);
    sums[1] += Math.log(fit.life().scale() / 500);
  }

  @Test
  @DisplayName("the survival curve with delayed entry: its band holds the truth at 400 days")
  void kaplanMeier_holdsTheTruth() {
    Random random = new Random(20_260_503);
    double truth = Math.exp(-Math.pow(400 / 500.0, 2));
    int held = 0;
    double sum = 0;
    for (int i = 0; i < FLEETS; i++) {
      KaplanMeier.Step at = null;
      for (KaplanMeier.Step step : KaplanMeier.of(fleet(100, 2, 500, random), LEVEL).steps()) {
        at = step.time() <= 400 ? step : at;
      }
      sum += at.value();
      held += at.low() <= truth && truth <= at.high() ? 1 : 0;
    }
    assertBetween87And93("the curve", held, FLEETS);
    assertEquals(truth, sum / FLEETS, 0.006);
  }

  @Test
  @DisplayName("groups that lean on one another: nearer to the truth than alone, intervals honest")
  void pooled_areNearerAndHonest() {
    Random random = new Random(20_260_504);
    double alone = 0;
    double pooled = 0;
    int held = 0;
    int groups = 0;
    for (int club = 0; club < 250; club++) {
      Map<String, List<Service>> byMaterial = new LinkedHashMap<>();
      double[] medians = new double[4];
      for (int i = 0; i < 4; i++) {
        double shape = 2 * Math.exp(0.15 * random.nextGaussian());
        double scale = 500 * Math.exp(0.3 * random.nextGaussian());
        byMaterial.put("material " + i, fleet(i == 0 ? 6 : 30, shape, scale, random));
        medians[i] = scale * Math.pow(Math.log(2), 1 / shape);
      }
      PooledLife life = PooledLife.of(byMaterial).orElseThrow();
      for (int i = 0; i < 4; i++) {
        Interval median = life.groups().get("material " + i).quantile(0.5, LEVEL);
        held += median.low() <= medians[i] && medians[i] <= median.high() ? 1 : 0;
        groups++;
        if (LifeEstimate.of(byMaterial.get("material " + i)) instanceof LifeEstimate.Fitted own) {
          alone += Math.pow(Math.log(own.fit().life().quantile(0.5) / medians[i]), 2);
          pooled += Math.pow(Math.log(median.estimate() / medians[i]), 2);
        }
      }
    }
    assertTrue(pooled < 0.85 * alone, pooled + " against " + alone);
    assertBetween87And93("the median", held, groups);
  }

  @Test
  void aGroupThatLostNone_isToldFromWhatItSurvived() {
    Random random = new Random(20_260_505);
    Map<String, List<Service>> groups = new LinkedHashMap<>();
    groups.put("common", fleet(60, 2, 500, random));
    groups.put("young", List.of(new Service(0, 30, false)));
    groups.put("old", List.of(new Service(0, 900, false), new Service(0, 800, false)));
    PooledLife life = PooledLife.of(groups).orElseThrow();
    Function<String, Double> scale = name -> life.groups().get(name).life().scale();
    assertEquals(life.together().life().scale(), scale.apply("young"), 5);
    assertTrue(scale.apply("old") > 1.3 * life.together().life().scale());
    assertTrue(
        life.groups().get("old").varianceOfLogScale()
            > life.groups().get("common").varianceOfLogScale());
    groups.remove("common");
    assertTrue(PooledLife.of(groups).isEmpty());
  }

  @Test
  @DisplayName("fleets of odd sizes and ages: a finite answer or a refusal, never a failure")
  void oddFleets_areAnsweredOrRefused() {
    Random random = new Random(20_260_506);
    int fitted = 0;
    for (int i = 0; i < 3_000; i++) {
      Map<String, List<Service>> groups = new LinkedHashMap<>();
      double unit = Math.pow(10, random.nextInt(12) - 3);
      for (int group = 0; group < 1 + random.nextInt(3); group++) {
        List<Service> odd = new ArrayList<>();
        for (int part = random.nextInt(12); part > 0; part--) {
          double until = (1 + random.nextInt(5)) * unit * (random.nextBoolean() ? 1 : 0.999);
          double entered = random.nextInt(3) == 0 ? until * random.nextDouble() * 0.999 : 0;
          odd.add(new Service(entered, until, random.nextInt(3) > 0));
        }
        groups.put("group " + group, odd);
      }
      PooledLife life = PooledLife.of(groups).orElse(null);
      if (life != null) {
        fitted++;
        life.groups().values().forEach(LifeFoundTest::assertFinite);
        assertFinite(life.together());
      }
    }
    assertTrue(fitted > 500, fitted + " fitted");
  }

  private static void assertFinite(WeibullFit fit) {
    for (double number :
        new double[] {
          fit.logLikelihood(),
          fit.quantile(0.1, LEVEL).low(),
          fit.quantile(0.5, LEVEL).high(),
          fit.mean(LEVEL).estimate(),
          fit.shape(LEVEL).low()
        }) {
      assertTrue(Double.isFinite(number), fit.toString());
    }
  }
}
