package club.ascham.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.mechanics.ReadingScatter;
import club.ascham.statistics.Drift.Answer;
import club.ascham.statistics.Drift.Measured;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How often the watch over a bow cries for nothing, and how soon it sees. The bows and their
 * readings are made here: people with offsets of their own who take turns, scales read in their
 * real steps.
 */
class DriftFoundTest {
  private static final Instant FIRST = Instant.parse("2026-03-01T18:00:00Z");
  private static final double EYE = Math.sqrt(0.5) * ReadingScatter.EYE_MM;
  private static final double MONTH_DAYS = 365.25 / 12;
  private static final int CADENCE_DAYS = 14;

  private static final class Club {
    final Random random;
    final double step;
    final double[] readers = new double[10];

    Club(long seed, double step) {
      random = new Random(seed);
      this.step = step;
    }

    /** A bow's checks, each by someone of ten, the bow's brace so far from its set-up figure. */
    List<Measured> bow(int checks, IntToDoubleFunction braceOff) {
      for (int i = 0; i < readers.length; i++) {
        readers[i] = EYE * random.nextGaussian();
      }
      double brace = 200 + 20 * random.nextDouble();
      double tiller = 6 * random.nextDouble();
      List<Measured> bow = new ArrayList<>();
      for (int i = 0; i < checks; i++) {
        int who = random.nextInt(readers.length);
        double off = readers[who];
        double upper = read(170 + tiller + off / 2 + EYE * Math.sqrt(0.5) * random.nextGaussian());
        double lower = read(170 - off / 2 + EYE * Math.sqrt(0.5) * random.nextGaussian());
        bow.add(
            new Measured(
                FIRST.plus(Duration.ofDays((long) CADENCE_DAYS * i)),
                "r" + who,
                read(brace + braceOff.applyAsDouble(i) + off + EYE * random.nextGaussian()),
                upper - lower));
      }
      return bow;
    }

    private double read(double mm) {
      return Math.rint(mm / step) * step;
    }

    Answer answer(List<Measured> bow) {
      return Drift.of(
              bow, ScatterPrior.brace(step).scatter(), ScatterPrior.tiller(step).scatter(), true)
          .answer();
    }
  }

  @ParameterizedTest(name = "read in steps of {0} mm")
  @ValueSource(doubles = {1, 25.4 / 16})
  @DisplayName("a steady bow is called changing in one check of 200")
  void falseAlarms(double step) {
    Club club = new Club(20_260_401, step);
    int checks = 0;
    int alarms = 0;
    for (int bow = 0; bow < 3_000; bow++) {
      List<Measured> all = club.bow(25, i -> 0);
      for (int n = 2; n <= all.size(); n++) {
        checks++;
        if (club.answer(all.subList(0, n)) == Answer.CHANGING) {
          alarms++;
          break;
        }
      }
    }
    double oneIn = (double) checks / alarms;
    assertTrue(oneIn > 170 && oneIn < 240, "one alarm in " + oneIn);
  }

  @ParameterizedTest(name = "after {0} checks without it")
  @ValueSource(ints = {1, 4, 7, 12, 20})
  @DisplayName(
      "a fall of 5 mm is found, 9 times in 10, within the checks that the help page states")
  void aFall(int steady) {
    Club club = new Club(20_260_402, 25.4 / 16);
    double found = found(club, steady, Drift.CHECKS_FOR_A_FALL, i -> i < steady ? 0 : -5);
    assertTrue(found >= 0.9, "found " + found);
  }

  @ParameterizedTest(name = "after {0} checks without it")
  @ValueSource(ints = {1, 4, 7, 12, 20})
  @DisplayName("a fall of 2 mm a month is found, 9 times in 10, as soon as the help page states")
  void aSlowFall(int steady) {
    Club club = new Club(20_260_403, 25.4 / 16);
    double found =
        found(
            club,
            steady,
            Drift.CHECKS_FOR_CREEP,
            i -> -2 * CADENCE_DAYS / MONTH_DAYS * Math.max(0, i - steady + 1));
    assertTrue(found >= 0.9, "found " + found);
  }

  private static double found(Club club, int steady, int within, IntToDoubleFunction brace) {
    int found = 0;
    int bows = 1_500;
    for (int bow = 0; bow < bows; bow++) {
      List<Measured> all = club.bow(steady + within, brace);
      for (int n = steady + 1; n <= all.size(); n++) {
        if (club.answer(all.subList(0, n)) == Answer.CHANGING) {
          found++;
          break;
        }
      }
    }
    return (double) found / bows;
  }

  @Test
  @DisplayName("a month and a fortnight are what the numbers rest on")
  void cadence() {
    assertEquals(0.92, 2 * CADENCE_DAYS / MONTH_DAYS, 0.001);
  }
}
