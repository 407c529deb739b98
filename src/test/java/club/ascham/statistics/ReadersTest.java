package club.ascham.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.mechanics.OutOfDomain;
import club.ascham.mechanics.ReadingScatter;
import club.ascham.statistics.Readers.Reading;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ReadersTest {
  private static final double[][] DYESTUFF = {
    {1545, 1440, 1440, 1520, 1580},
    {1540, 1555, 1490, 1560, 1495},
    {1595, 1550, 1605, 1510, 1560},
    {1445, 1440, 1595, 1465, 1545},
    {1595, 1630, 1515, 1635, 1625},
    {1520, 1455, 1450, 1480, 1445}
  };

  private static List<Reading> readings(double[][] byReader) {
    List<Reading> readings = new ArrayList<>();
    for (int reader = 0; reader < byReader.length; reader++) {
      for (double value : byReader[reader]) {
        readings.add(new Reading("bow", "reader " + reader, value));
      }
    }
    return readings;
  }

  @Test
  @DisplayName(
      "Davies' dyestuff yields (Box and Tiao 1973): mean squares 11272 and 2451, between (11272 -"
          + " 2451)/5 = 1764")
  void balanced_isTheAnalysisOfVariance() {
    Readers readers = Readers.of(readings(DYESTUFF));
    assertEquals(1527.5, readers.mean(), 1e-9);
    assertEquals(2451.25, Math.pow(readers.repeatability(), 2), 1e-6);
    assertEquals(1764.05, Math.pow(readers.between(), 2), 1e-6);
    assertEquals(Math.sqrt(2451.25 + 1764.05), readers.reproducibility(), 1e-9);
    // Shrunk by n s_L^2 / (s_r^2 + n s_L^2) = 8820.25 / 11271.5.
    assertEquals((1600 - 1527.5) * 0.782527, readers.offsets().get("reader 4").mean(), 1e-4);
  }

  @Test
  @DisplayName("pooled repeatability of NIST/SEMATECH e-Handbook 2.4.4.4: 0.10290 with 300 degrees")
  void repeatability_isPooled() {
    double[] sums = {0.48115, 0.69209, 0.48483, 1.21752, 0.30076};
    double[][] byReader = new double[5][61];
    for (int reader = 0; reader < 5; reader++) {
      // 61 readings with this sum of squares: 30 above, 30 below, one at the mean.
      for (int i = 0; i < 60; i++) {
        byReader[reader][i] = (i % 2 == 0 ? 1 : -1) * Math.sqrt(sums[reader] / 60);
      }
    }
    assertEquals(0.10290, Readers.of(readings(byReader)).repeatability(), 5e-6);
  }

  @Test
  @DisplayName("unbalanced, by hand: readers with 3, 2 and 1 readings")
  void unbalanced_usesTheMeanCountOfTheOneWayAnalysis() {
    Readers readers = Readers.of(readings(new double[][] {{10, 11, 12}, {14, 16}, {13}}));
    // Within: (2 + 2)/3. Between: 3*(11-12.6667)^2 + 2*(15-12.6667)^2 + (13-12.6667)^2 = 19.3333
    // on 2; mean count (6 - 14/6)/2 = 1.83333.
    assertEquals(4 / 3.0, Math.pow(readers.repeatability(), 2), 1e-9);
    assertEquals((19.33333333 / 2 - 4 / 3.0) / (11 / 6.0), Math.pow(readers.between(), 2), 1e-8);
  }

  @Test
  void readersWhoDifferLessThanTheyRepeat_differByNothing() {
    Readers readers = Readers.of(readings(new double[][] {{10, 14}, {11, 13}, {12, 12.5}}));
    assertEquals(0, readers.between());
    readers.offsets().values().forEach(offset -> assertEquals(0, offset.mean()));
  }

  @Test
  @DisplayName("over many bows: 1,000 readings by 12 people give back what they were made with")
  void manyThings_giveBackWhatTheyWereMadeWith() {
    Random random = new Random(4);
    double[] offsets = new double[12];
    double sum = 0;
    for (int i = 0; i < 12; i++) {
      offsets[i] = 1.5 * random.nextGaussian();
      sum += offsets[i];
    }
    List<Reading> readings = new ArrayList<>();
    for (int bow = 0; bow < 250; bow++) {
      double brace = 190 + 40 * random.nextDouble();
      for (int i = 0; i < 4; i++) {
        int who = random.nextInt(12);
        readings.add(
            new Reading("bow " + bow, "r" + who, brace + offsets[who] + random.nextGaussian()));
      }
    }
    Readers readers = Readers.of(readings);
    assertEquals(1, readers.repeatability(), 0.06);
    double square = 0;
    for (double offset : offsets) {
      square += Math.pow(offset - sum / 12, 2) / 11;
    }
    assertEquals(Math.sqrt(square), readers.between(), 0.1);
    for (int i = 0; i < 12; i++) {
      assertEquals(offsets[i] - sum / 12, readers.offsets().get("r" + i).mean(), 0.35);
    }
  }

  @Test
  void few_stayNearThePrior_andManyOutvoteIt() {
    ScatterPrior prior = ScatterPrior.brace(1);
    List<Reading> few = readings(new double[][] {{210, 216}, {213}});
    List<Reading> many = new ArrayList<>();
    Random random = new Random(5);
    for (int reader = 0; reader < 60; reader++) {
      double offset = 3 * random.nextGaussian();
      for (int i = 0; i < 20; i++) {
        many.add(new Reading("bow", "r" + reader, 210 + offset + 2 * random.nextGaussian()));
      }
    }
    Scatter after = Readers.learnt(few, prior);
    assertTrue(after.repeatability() > prior.repeatability());
    assertTrue(after.repeatability() < 2 * prior.repeatability(), "3 readings, one step of 6 mm");
    assertEquals(2, Readers.learnt(many, prior).repeatability(), 0.1);
    assertEquals(3, Readers.learnt(many, prior).between(), 0.6);
  }

  @Test
  void withoutReadings_thePriorHolds_asTheBenchReckonsIt() {
    Scatter scatter = Readers.learnt(List.of(), ScatterPrior.brace(1));
    assertEquals(ReadingScatter.braceMm(1), scatter.reproducibility(), 1e-12);
    assertEquals(
        ReadingScatter.tillerMm(25.4 / 16),
        ScatterPrior.tiller(25.4 / 16).scatter().reproducibility(),
        1e-12);
    // One reading tells nothing of scatter.
    Scatter one = Readers.learnt(List.of(new Reading("bow", "a", 210)), ScatterPrior.brace(1));
    assertEquals(scatter.repeatability(), one.repeatability(), 1e-12);
    assertEquals(scatter.between(), one.between(), 1e-12);
  }

  @Test
  @DisplayName("k is 2.807 for one false alarm in 200, on both sides")
  void k_ofOneIn200() {
    assertEquals(2.807, Scatter.k(Scatter.FALSE_ALARMS), 5e-4);
    Scatter scatter = new Scatter(0.6, 0.8, Map.of());
    assertEquals(2.8070 * Math.sqrt(2), scatter.allowedChange(1, 1 / 200.0), 1e-3);
  }

  @Test
  void order_unitAndZero_areOfNoAccount() {
    List<Reading> readings = readings(DYESTUFF);
    List<Reading> other = new ArrayList<>();
    readings.forEach(r -> other.add(new Reading("bow", r.reader(), 25.4 * r.value() - 300)));
    Collections.shuffle(other, new Random(6));
    Readers one = Readers.of(readings);
    Readers two = Readers.of(other);
    assertEquals(25.4 * one.repeatability(), two.repeatability(), 1e-8);
    assertEquals(25.4 * one.between(), two.between(), 1e-8);
    one.offsets()
        .forEach(
            (who, offset) ->
                assertEquals(25.4 * offset.mean(), two.offsets().get(who).mean(), 1e-8));
  }

  @Test
  void peopleWhoseNameWasErased_areEachTheirOwn() {
    List<Reading> readings = readings(DYESTUFF);
    readings.add(new Reading("bow", null, 1500));
    readings.add(new Reading("bow", null, 1560));
    Readers readers = Readers.of(readings);
    assertEquals(6, readers.offsets().size());
    assertEquals(2451.25, Math.pow(readers.repeatability(), 2), 1e-6);
  }

  @Test
  void whatNobodyRepeated_orOnePersonMeasured_isRefused() {
    refused(readings(new double[][] {{210}, {211}, {212}}));
    refused(readings(new double[][] {{210, 211, 212}}));
    refused(List.of());
    refused(
        List.of(
            new Reading("bow 1", "a", 1),
            new Reading("bow 1", "a", 2),
            new Reading("bow 2", "b", 1),
            new Reading("bow 2", "b", 2)));
  }

  private static void refused(List<Reading> readings) {
    assertEquals(
        "readings", assertThrows(OutOfDomain.class, () -> Readers.of(readings)).quantity());
  }

  @Test
  void allAlike_isNoScatterAtAll() {
    Readers readers = Readers.of(readings(new double[][] {{7, 7}, {7, 7}}));
    assertEquals(0, readers.repeatability());
    assertEquals(0, readers.reproducibility());
    readers.offsets().values().forEach(offset -> assertEquals(0, offset.mean()));
  }
}
