package club.ascham.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.mechanics.OutOfDomain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LifeTest {
  private static final List<Service> HANDBOOK =
      services("54 187 216 240 244 335 361 373 375 386", "500 ".repeat(10));

  static List<Service> services(String failed, String suspended) {
    List<Service> services = new ArrayList<>();
    ages(failed).forEach(age -> services.add(new Service(0, age, true)));
    ages(suspended).forEach(age -> services.add(new Service(0, age, false)));
    return services;
  }

  private static List<Double> ages(String text) {
    return text.isBlank()
        ? List.of()
        : Arrays.stream(text.strip().split("\\s+")).map(Double::valueOf).toList();
  }

  private static WeibullFit fit(List<Service> services) {
    return ((LifeEstimate.Fitted) LifeEstimate.of(services)).fit();
  }

  @Test
  @DisplayName(
      "Weibull, right-censored, NIST/SEMATECH e-Handbook 8.4.1.3: 1.7207 and 606.528; to more"
          + " digits by life.py")
  void weibull_ofTheHandbook() {
    WeibullFit fit = fit(HANDBOOK);
    assertEquals(1.7207, fit.life().shape(), 1.5e-4);
    assertEquals(606.528, fit.life().scale(), 1e-3);
    assertEquals(1.720797, fit.life().shape(), 1e-6);
    assertEquals(606.5276, fit.life().scale(), 1e-4);
    assertEquals(-75.13462, fit.logLikelihood(), 1e-5);
    assertEquals(0.205944, Math.sqrt(fit.varianceOfLogScale()), 1e-6);
    assertEquals(0.291813, Math.sqrt(fit.varianceOfLogShape()), 1e-6);
    assertEquals(164.02, fit.life().quantile(0.1), 5e-3);
    assertEquals(490.17, fit.life().quantile(0.5), 5e-3);
    assertEquals(540.74, fit.life().mean(), 5e-3);
    assertEquals(10, fit.failures());
    assertEquals(20, fit.parts());
  }

  @Test
  @DisplayName(
      "the likelihood's own answer is 3.0170, 87.956 (life.py), not the 2.024, 94.998 often quoted")
  void weibull_isTheMaximum() {
    WeibullFit fit = fit(services("30 49 82 90 96", "10 45 100"));
    assertEquals(3.0170, fit.life().shape(), 5e-5);
    assertEquals(87.956, fit.life().scale(), 5e-4);
    WeibullLikelihood likelihood = new WeibullLikelihood(services("30 49 82 90 96", "10 45 100"));
    assertTrue(likelihood.value(fit.life()) > likelihood.value(new Weibull(2.024, 94.998)) + 0.2);
  }

  @Test
  @DisplayName(
      "Kaplan-Meier of NIST/SEMATECH e-Handbook 8.2.1.5; Greenwood and log-log band by"
          + " life.py")
  void kaplanMeier_ofTheHandbook() {
    List<Service> services = services("10 32 56 98 122 181", "50 100 125 150" + " 200".repeat(10));
    List<KaplanMeier.Step> steps = KaplanMeier.of(services, 0.95).steps();
    double[] printed = {.950000, .900000, .847059, .794118, .737395, .670359};
    assertEquals(6, steps.size());
    for (int i = 0; i < 6; i++) {
      assertEquals(printed[i], steps.get(i).value(), 5e-7);
    }
    assertEquals(.1121407, steps.get(5).standardError(), 5e-8);
    assertEquals(.403377, steps.get(5).low(), 5e-7);
    assertEquals(.838465, steps.get(5).high(), 5e-7);
    assertNull(KaplanMeier.of(services, 0.95).median());
  }

  @Test
  @DisplayName("delayed entry by hand: at 5, two of three were watched; a tie leaves after failing")
  void kaplanMeier_countsWhoWasWatched() {
    List<KaplanMeier.Step> steps =
        KaplanMeier.of(
                List.of(
                    new Service(0, 5, true),
                    new Service(0, 5, false),
                    new Service(5, 9, true),
                    new Service(2, 7, true),
                    new Service(6, 12, false)),
                0.95)
            .steps();
    assertEquals(List.of(3, 3, 2), steps.stream().map(KaplanMeier.Step::watched).toList());
    assertEquals(2 / 3.0, steps.get(0).value(), 1e-12);
    assertEquals(2 / 3.0 * 2 / 3 / 2, steps.get(2).value(), 1e-12);
  }

  /** By hand: 6 at risk at 10, 5 at 20, 4 at 30, then 2 after two were taken off. */
  @Test
  void steps_thatRestOnFewerThanFive_areMarked_andFromWhichAgeOn() {
    KaplanMeier curve = KaplanMeier.of(services("10 20 30 50", "40 60"), 0.95);
    assertEquals(
        List.of(6, 5, 4, 2), curve.steps().stream().map(KaplanMeier.Step::watched).toList());
    assertEquals(
        List.of(false, false, true, true),
        curve.steps().stream().map(KaplanMeier.Step::few).toList());
    assertEquals(30, curve.fewFrom());
    assertNull(KaplanMeier.of(services("10 20", "40 50 60 70"), 0.95).fewFrom());
    assertNull(KaplanMeier.of(services("", "40"), 0.95).fewFrom());
  }

  /** Only the youngest were watched by few: the tail does not rest on few. */
  @Test
  void fewAtTheBeginning_areMarkedThereOnly() {
    List<Service> late =
        List.of(
            new Service(0, 10, true),
            new Service(0, 90, false),
            new Service(20, 50, true),
            new Service(20, 90, false),
            new Service(20, 90, false),
            new Service(20, 90, false));
    KaplanMeier curve = KaplanMeier.of(late, 0.95);
    assertEquals(List.of(true, false), curve.steps().stream().map(KaplanMeier.Step::few).toList());
    assertNull(curve.fewFrom());
  }

  @Test
  void kaplanMeier_whereTheLastOneFails_staysFinite() {
    KaplanMeier curve = KaplanMeier.of(services("1 2 3", ""), 0.95);
    assertEquals(0, curve.steps().get(2).value());
    curve
        .steps()
        .forEach(
            step ->
                assertTrue(
                    step.low() >= 0
                        && step.low() <= step.value()
                        && step.high() <= 1
                        && step.value() <= step.high(),
                    step.toString()));
    assertEquals(2, curve.median());
    assertEquals(List.of(), KaplanMeier.of(services("", "3 4"), 0.95).steps());
  }

  @Test
  @DisplayName("delayed entry (life.py): shape 2.7132, scale 112.56")
  void weibull_withDelayedEntry() {
    List<Service> services = new ArrayList<>();
    double[][] failed = {{0, 40}, {30, 75}, {60, 90}, {0, 110}, {80, 120}, {20, 60}, {50, 130}};
    double[][] suspended = {{0, 50}, {70, 100}, {10, 95}, {0, 140}};
    for (double[] part : failed) {
      services.add(new Service(part[0], part[1], true));
    }
    for (double[] part : suspended) {
      services.add(new Service(part[0], part[1], false));
    }
    WeibullFit fit = fit(services);
    assertEquals(2.713186, fit.life().shape(), 1e-5);
    assertEquals(112.5557, fit.life().scale(), 1e-3);
    assertEquals(-36.6888557, fit.logLikelihood(), 1e-6);
  }

  @ParameterizedTest(name = "failed {0}, suspended {1}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "''|3 4 5|None of 3 parts failed",
        "''|''|no parts",
        "7|3 4|1 of 3 parts failed; at least 5",
        "7 7 7 7 7 7|3 9|all at the same age",
        "7 8 9 10|3 4|4 of 6 parts failed; at least 5"
      })
  void whatTheDataCantCarry_isRefusedInWords(String failed, String suspended, String why) {
    LifeEstimate.Answer answer = LifeEstimate.of(services(failed, suspended));
    assertTrue(((LifeEstimate.Refused) answer).why().contains(why), answer.toString());
  }

  @Test
  void agesAllButAlike_areRefused_notAnsweredAtABound() {
    LifeEstimate.Answer answer =
        LifeEstimate.of(services("100 100.000001 100.000002 100.000003 100.000004", ""));
    assertTrue(((LifeEstimate.Refused) answer).why().contains("no shape"), answer.toString());
  }

  @Test
  void theUnitOfAge_theOrderAndWhatIsNew_areOfNoAccount() {
    List<Service> weeks = new ArrayList<>();
    HANDBOOK.forEach(s -> weeks.add(new Service(0, s.until() / 7, s.failed())));
    weeks.add(new Service(0, 0, false));
    Collections.shuffle(weeks, new Random(1));
    WeibullFit one = fit(HANDBOOK);
    WeibullFit other = fit(weeks);
    assertEquals(one.life().shape(), other.life().shape(), 1e-8);
    assertEquals(one.life().scale() / 7, other.life().scale(), 1e-7);
    assertEquals(one.varianceOfLogShape(), other.varianceOfLogShape(), 1e-8);
    assertEquals(one.logLikelihood() + 10 * Math.log(7), other.logLikelihood(), 1e-7);
  }

  @Test
  void aLostString_isNoBrokenOne() {
    List<Service.Ended> ended =
        List.of(
            new Service.Ended(0, 300, "worn"),
            new Service.Ended(0, 200, "lost"),
            new Service.Ended(10, 400, null));
    List<Service> worn = ended.stream().map(part -> part.by(Set.of("worn"))).toList();
    assertEquals(List.of(true, false, false), worn.stream().map(Service::failed).toList());
    assertEquals(10, worn.get(2).entered());
  }

  @ParameterizedTest(name = "{0}: entered {1}, until {2}, failed {3}")
  @CsvSource({
    "failed, 0, 0, true",
    "failed, 0, -1, true",
    "failed, 0, NaN, true",
    "suspended, 0, Infinity, false",
    "entered, 5, 5, false",
    "entered, -1, 5, false",
    "entered, 6, 5, true"
  })
  void hostileAges_areRefusedByName(String name, double entered, double until, boolean failed) {
    assertEquals(
        name,
        assertThrows(OutOfDomain.class, () -> new Service(entered, until, failed)).quantity());
  }

  @Test
  @DisplayName("10,000 strings are fitted, with their curve, in less than a second")
  void tenThousand_inLessThanASecond() {
    Random random = new Random(9);
    List<Service> many = new ArrayList<>();
    while (many.size() < 10_000) {
      double life = new Weibull(2.5, 400).quantile(random.nextDouble());
      double entered = random.nextBoolean() ? 0 : 300 * random.nextDouble();
      double end = entered + 500 * random.nextDouble();
      if (life > entered) {
        many.add(new Service(entered, Math.min(life, end), life < end));
      }
    }
    long begun = System.nanoTime();
    WeibullFit fit = fit(many);
    KaplanMeier curve = KaplanMeier.of(many, LifeEstimate.BAND);
    double seconds = (System.nanoTime() - begun) / 1e9;
    assertEquals(2.5, fit.life().shape(), 0.1);
    assertEquals(400, fit.life().scale(), 8);
    assertTrue(curve.steps().size() > 1000);
    assertTrue(seconds < 1, seconds + " s");
  }
}
