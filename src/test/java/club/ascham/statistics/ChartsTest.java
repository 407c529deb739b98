package club.ascham.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.mechanics.OutOfDomain;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartsTest {
  private static final List<Double> HANDBOOK_EWMA =
      numbers(
          "52.0 47.0 53.0 49.3 50.1 47.0 51.0 50.1 51.2 50.5 49.6 47.6 49.9 51.3 47.8 51.2 52.6"
              + " 52.4 53.6 52.1");
  private static final List<Double> HANDBOOK_CUSUM =
      numbers(
          "324.925 324.675 324.725 324.350 325.350 325.225 324.125 324.525 325.225 324.600 324.625"
              + " 325.150 328.325 327.250 327.825 328.500 326.675 327.775 326.875 328.350");

  static List<Double> numbers(String text) {
    return Arrays.stream(text.split("\\s+")).map(Double::valueOf).toList();
  }

  @Test
  @DisplayName("EWMA of NIST/SEMATECH e-Handbook 6.3.2.4, to the two digits printed")
  void ewma_ofTheHandbook() {
    Ewma chart = Ewma.of(HANDBOOK_EWMA, 50, 2.0539, 0.3, 3);
    List<Double> printed =
        numbers(
            "50.60 49.52 50.56 50.18 50.16 49.21 49.75 49.85 50.26 50.33 50.11 49.36 49.52 50.05"
                + " 49.38 49.92 50.73 51.23 51.94 51.99");
    for (int i = 0; i < printed.size(); i++) {
      assertEquals(printed.get(i), chart.ewma().get(i), 0.00501, "reading " + (i + 1));
    }
    assertEquals(List.of(), chart.signals());
    assertEquals(52.5884, chart.upper().get(19), 1e-4);
    assertEquals(47.4115, chart.lower().get(19), 1e-4);
  }

  @Test
  @DisplayName("exact limits of its first readings: 51.8485, 52.2564, 52.4314 (charts.py)")
  void ewma_limitsOfAShortHistory() {
    List<Double> upper = Ewma.of(HANDBOOK_EWMA, 50, 2.0539, 0.3, 3).upper();
    assertEquals(51.8485, upper.get(0), 5e-5);
    assertEquals(52.2564, upper.get(1), 5e-5);
    assertEquals(52.4314, upper.get(2), 5e-5);
  }

  @Test
  @DisplayName("CUSUM of NIST/SEMATECH e-Handbook 6.3.2.3: first signal at observation 14")
  void cusum_ofTheHandbook() {
    Cusum chart = Cusum.of(HANDBOOK_CUSUM, 325, 0.3175, 4.1959);
    assertEquals(14, chart.firstSignal());
    List<Double> printed = numbers("3.0075 4.94 7.4475 10.63 11.9875 14.445 16.0025 19.035");
    for (int i = 0; i < printed.size(); i++) {
      assertEquals(printed.get(i), chart.high().get(12 + i), 1e-9, "reading " + (13 + i));
    }
    assertEquals(0, chart.low().get(19));
  }

  @Test
  @DisplayName("individuals of NIST/SEMATECH e-Handbook 6.3.2.2: 50.81, 55.8041 and 45.8159")
  void movingRange_ofTheHandbook() {
    MovingRange range =
        MovingRange.of(numbers("49.6 47.6 49.9 51.3 47.8 51.2 52.6 52.4 53.6 52.1"));
    assertEquals(50.81, range.centre(), 1e-9);
    assertEquals(55.8041, range.upper(), 5e-5);
    assertEquals(45.8159, range.lower(), 5e-5);
  }

  @Test
  @DisplayName(
      "EWMA 0.2, 2.962: 500 readings to a false alarm, 10.5 to see 1 sd (a Markov chain,"
          + " charts.py)")
  void ewma_runLengths() {
    // The chain knows the limits of the long run only.
    Function<List<Double>, Integer> first =
        x -> {
          Ewma chart = Ewma.of(x, 0, 1, 0.2, 2.962);
          double limit = chart.upper().get(x.size() - 1);
          for (int i = 0; i < x.size(); i++) {
            if (Math.abs(chart.ewma().get(i)) > limit) {
              return i + 1;
            }
          }
          return null;
        };
    assertEquals(500, runLength(first, 0, 5000, 1500, 1), 40);
    assertEquals(10.5, runLength(first, 1, 200, 4000, 2), 0.3);
  }

  @Test
  @DisplayName(
      "CUSUM 0.5, 4: 168 readings to a false alarm, 8.4 to see 1 sd (a Markov chain, charts.py)")
  void cusum_runLengths() {
    Function<List<Double>, Integer> first = x -> Cusum.of(x, 0, 0.5, 4).firstSignal();
    assertEquals(168, runLength(first, 0, 2000, 2500, 3), 10);
    assertEquals(8.4, runLength(first, 1, 200, 4000, 4), 0.3);
  }

  private static double runLength(
      Function<List<Double>, Integer> first, double shift, int longest, int runs, long seed) {
    Random random = new Random(seed);
    double sum = 0;
    for (int run = 0; run < runs; run++) {
      List<Double> readings =
          IntStream.range(0, longest).mapToObj(i -> shift + random.nextGaussian()).toList();
      Integer signal = first.apply(readings);
      sum += signal == null ? longest : signal;
    }
    return sum / runs;
  }

  @Test
  void aChart_turnedUpsideDown_signalsTheSame() {
    List<Double> down = HANDBOOK_CUSUM.stream().map(x -> 650 - x).toList();
    Cusum upward = Cusum.of(HANDBOOK_CUSUM, 325, 0.3175, 4.1959);
    Cusum downward = Cusum.of(down, 325, 0.3175, 4.1959);
    assertEquals(upward.firstSignal(), downward.firstSignal());
    assertEquals(upward.high().get(19), downward.low().get(19), 1e-9);
    assertEquals(
        Ewma.of(HANDBOOK_CUSUM, 325, 0.635, 0.2, 3).signals(),
        Ewma.of(down, 325, 0.635, 0.2, 3).signals());
    assertTrue(Ewma.of(down, 325, 0.635, 0.2, 3).signals().contains(14));
  }

  @Test
  void noReadings_areAnEmptyChart() {
    assertEquals(List.of(), Ewma.of(List.of(), 0, 1, 0.2, 3).ewma());
    assertNull(Cusum.of(List.of(), 0, 1, 3).firstSignal());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "sigma, 50, 0, 0.3, 3",
    "sigma, 50, NaN, 0.3, 3",
    "lambda, 50, 1, 0, 3",
    "lambda, 50, 1, 1.1, 3",
    "width, 50, 1, 0.3, -3",
    "centre, Infinity, 1, 0.3, 3"
  })
  void outsideTheDomain_isRefusedByName(
      String name, double centre, double sigma, double lambda, double width) {
    OutOfDomain refused =
        assertThrows(OutOfDomain.class, () -> Ewma.of(HANDBOOK_EWMA, centre, sigma, lambda, width));
    assertEquals(name, refused.quantity());
  }

  @Test
  void aReadingThatIsNoNumber_isRefused() {
    assertEquals(
        "readings",
        assertThrows(OutOfDomain.class, () -> Cusum.of(List.of(1.0, Double.NaN), 0, 1, 1))
            .quantity());
  }
}
