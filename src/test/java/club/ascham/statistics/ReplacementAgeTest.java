package club.ascham.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.mechanics.OutOfDomain;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReplacementAgeTest {
  @Test
  @DisplayName("shape 2, scale 1000, costs 1 and 5: 510.655224 at 0.00408524 (replacement_age.py)")
  void shapeTwo() {
    ReplacementAge best = ReplacementAge.of(new Weibull(2, 1000), 1, 5);
    assertEquals(510.655224, best.age(), 1e-6);
    assertEquals(0.00408524, best.costRate(), 5e-9);
    assertEquals(0.00564190, best.runToFailureCostRate(), 5e-9);
  }

  @Test
  @DisplayName("shape 3, scale 1, costs 1 and 5: 0.502610 at 3.03139670 (replacement_age.py)")
  void shapeThree() {
    ReplacementAge best = ReplacementAge.of(new Weibull(3, 1), 1, 5);
    assertEquals(0.502610, best.age(), 5e-7);
    assertEquals(3.03139670, best.costRate(), 5e-9);
  }

  @ParameterizedTest(name = "shape {0}, costs {1} and {2}")
  @CsvSource({"1, 1, 5", "0.7, 1, 100", "2, 5, 5", "3, 5, 1", "1.02, 1, 1.5", "1.001, 1, 2"})
  void whereNoAgePays_thereIsNone(double shape, double planned, double unplanned) {
    ReplacementAge none = ReplacementAge.of(new Weibull(shape, 100), planned, unplanned);
    assertNull(none.age());
    assertEquals(none.runToFailureCostRate(), none.costRate());
    assertTrue(Double.isFinite(none.costRate()));
  }

  @ParameterizedTest(name = "shape {0}, costs 1 and {1}")
  @CsvSource({"1.3, 5", "1.5, 20", "2, 1.5", "4, 3", "8, 50", "50, 1000000", "100, 1.01"})
  void theAge_isTheCheapest(double shape, double unplanned) {
    Weibull life = new Weibull(shape, 365);
    ReplacementAge best = ReplacementAge.of(life, 1, unplanned);
    assertNotNull(best.age());
    for (double factor : new double[] {0.9, 0.99, 1.01, 1.1}) {
      assertTrue(costRate(life, best.age() * factor, unplanned) > best.costRate());
    }
    assertEquals(costRate(life, best.age(), unplanned), best.costRate(), 1e-6 * best.costRate());
  }

  @ParameterizedTest(name = "shape {0}, costs {1} and {2}")
  @CsvSource({"50, 0.001, 1e8", "2, 0.001, 1e8", "1.1, 1e-9, 1e9", "100, 1e-9, 1e9"})
  void howeverDearAFailure_anAgePays(double shape, double planned, double unplanned) {
    Weibull life = new Weibull(shape, 1000);
    ReplacementAge best = ReplacementAge.of(life, planned, unplanned);
    assertNotNull(best.age());
    // Long before any fail, C(T) = (planned + unplanned (T / scale)^shape) / T, least where its
    // slope is 0: (T / scale)^shape = planned / unplanned / (shape - 1).
    double byHand = 1000 * Math.pow(planned / unplanned / (shape - 1), 1 / shape);
    assertEquals(byHand, best.age(), 1e-4 * byHand);
    assertEquals(planned / byHand * shape / (shape - 1), best.costRate(), 1e-4 * best.costRate());
  }

  /** By summing the survival curve, without the incomplete gamma function. */
  private static double costRate(Weibull life, double age, double unplanned) {
    int steps = 20_000;
    double up = 0;
    for (int i = 0; i < steps; i++) {
      up += life.survival((i + 0.5) * age / steps) * age / steps;
    }
    return (life.survival(age) + unplanned * (1 - life.survival(age))) / up;
  }

  @Test
  void theUnitOfAgeAndMoney_areOfNoAccount() {
    ReplacementAge days = ReplacementAge.of(new Weibull(2.2, 700), 3, 40);
    ReplacementAge weeks = ReplacementAge.of(new Weibull(2.2, 100), 300, 4000);
    assertEquals(days.age(), weeks.age() * 7, 1e-6);
    assertEquals(days.costRate() * 700, weeks.costRate(), 1e-6);
  }

  @Test
  void anUnsureLife_hasAWideInterval_theSameEachTime() {
    ReplacementAge.Likely sure = ReplacementAge.likely(fit(2, 0.001, 0.001), 1, 5, 7);
    ReplacementAge.Likely unsure = ReplacementAge.likely(fit(2, 0.04, 0.01), 1, 5, 7);
    assertEquals(unsure, ReplacementAge.likely(fit(2, 0.04, 0.01), 1, 5, 7));
    assertTrue(unsure.low() < sure.low() && sure.low() < 510.7);
    assertTrue(unsure.high() > sure.high() && sure.high() > 510.6);
    assertEquals(1, sure.pays());
  }

  @Test
  void aShapeThatMayBeOne_hasNoUpperEnd() {
    ReplacementAge.Likely likely = ReplacementAge.likely(fit(1.3, 0.09, 0.02), 1, 5, 7);
    assertNotNull(likely.low());
    assertNull(likely.high());
    assertTrue(likely.pays() > 0.6 && likely.pays() < 0.9, likely.toString());
  }

  private static WeibullFit fit(double shape, double ofLogShape, double ofLogScale) {
    return new WeibullFit(new Weibull(shape, 1000), 0, 20, 40, 19, ofLogShape, ofLogScale, 0);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"plannedCost, 0, 1", "unplannedCost, 1, -1", "plannedCost, NaN, 1"})
  void costsThatAreNone_areRefused(String name, double planned, double unplanned) {
    assertEquals(
        name,
        assertThrows(
                OutOfDomain.class, () -> ReplacementAge.of(new Weibull(2, 1), planned, unplanned))
            .quantity());
  }

  @ParameterizedTest
  @CsvSource({"shape, 0, 1", "shape, 1000, 1", "scale, 2, 0", "scale, 2, Infinity"})
  void livesThatAreNone_areRefused(String name, double shape, double scale) {
    assertEquals(name, assertThrows(OutOfDomain.class, () -> new Weibull(shape, scale)).quantity());
  }
}
