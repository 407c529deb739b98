package club.ascham.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.bow.BracePoint;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.statistics.Drift;
import club.ascham.statistics.ScatterPrior;
import club.ascham.units.Length;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TrendTest {
  private static final Instant MONDAY = Instant.parse("2026-03-02T19:00:00Z");

  private static final Targets TARGETS =
      new Targets(
          new Target(Band.ofMm(210, 222), Band.ofMm(203, 228), "a table"),
          new Target(Band.ofMm(3, 6), Band.ofMm(-3, 12), "a table"),
          new Target(null, null, "none"));

  private static Trend.Reading reading(int day, double braceMm, double tillerMm) {
    return new Trend.Reading(day(day), Length.ofMm(braceMm), Length.ofMm(tillerMm));
  }

  private static Instant day(int days) {
    return MONDAY.plusSeconds(86_400L * days);
  }

  private static SetUpFigures setUp(double braceMm, double upperMm, double lowerMm) {
    return new SetUpFigures(
        Length.ofMm(braceMm),
        BracePoint.GRIP_THROAT,
        Length.ofMm(upperMm),
        Length.ofMm(lowerMm),
        Length.ofMm(4),
        true,
        null,
        null,
        null);
  }

  private static Trend trend(Trend.Reading... readings) {
    return Trend.of(
        List.of(readings), new Trend.Against(List.of(), TARGETS, setUp(216, 190, 186), null));
  }

  @Test
  void oneCheck_isNoTrend() {
    assertNull(trend(reading(0, 216, 4)));
  }

  @Test
  void checks_standInTheirOrder_oneStepEach_whateverLiesBetween() {
    List<Trend.Dot> dots =
        trend(reading(0, 216, 4), reading(1, 215, 4), reading(90, 214, 4)).strips().get(0).dots();

    assertEquals(3, dots.size());
    assertEquals(
        dots.get(1).x() - dots.get(0).x(), dots.get(2).x() - dots.get(1).x(), 0.11, "even steps");
    assertTrue(dots.get(0).x() < dots.get(1).x(), "the oldest is on the left");
  }

  @Test
  void aLowerReading_standsLower_andASignSaysHowItLies() {
    List<Trend.Dot> dots =
        trend(reading(0, 216, 4), reading(1, 207, 8), reading(2, 200, 20)).strips().get(0).dots();

    assertTrue(dots.get(0).y() < dots.get(1).y() && dots.get(1).y() < dots.get(2).y());
    assertEquals(List.of("fine", "note", "stop"), dots.stream().map(Trend.Dot::sign).toList());
  }

  @Test
  void bandAndSetUp_areToTheScaleOfTheReadings() {
    Trend.Strip brace = trend(reading(0, 222, 4), reading(1, 210, 4)).strips().get(0);

    assertEquals(brace.dots().get(0).y(), brace.band().y(), 0.11, "222 mm is the band's top");
    assertEquals(
        brace.dots().get(1).y(), brace.band().y() + brace.band().height(), 0.21, "210 its foot");
    assertEquals(
        (brace.dots().get(0).y() + brace.dots().get(1).y()) / 2, brace.setUp(), 0.11, "216");
  }

  @Test
  void everything_liesOnThePaper_howeverFarOut() {
    Trend trend = trend(reading(0, 100, -30), reading(1, 300, 45), reading(2, 216, 4));

    trend
        .strips()
        .forEach(
            strip ->
                Stream.concat(
                        strip.dots().stream().map(Trend.Dot::y),
                        Stream.of(strip.setUp(), strip.band().y()))
                    .forEach(
                        y -> assertTrue(strip.top() <= y && y <= strip.bottom(), y + " on paper")));
    assertTrue(trend.strips().get(1).bottom() + 12 <= trend.height(), "room for the wedges");
    assertTrue(
        trend.strips().get(0).bottom() < trend.strips().get(1).nameY() - 13,
        "the strips are apart");
  }

  @Test
  void readingsThatHardlyDiffer_areDrawnNearlyLevel() {
    Targets noBand =
        new Targets(
            new Target(null, null, "none"),
            new Target(null, null, "none"),
            new Target(null, null, "none"));
    Trend trend =
        Trend.of(
            List.of(reading(0, 216, 4), reading(1, 216.2, 4)),
            new Trend.Against(List.of(), noBand, null, null));

    List<Trend.Dot> dots = trend.strips().get(0).dots();
    assertTrue(Math.abs(dots.get(0).y() - dots.get(1).y()) < 4);
    assertNull(trend.strips().get(0).band());
    assertNull(trend.strips().get(0).setUp());
    assertNull(dots.get(0).sign());
  }

  @Test
  void anAdjustment_standsBetweenTheChecksAroundIt_andOneFromBeforeThemIsLeftOut() {
    List<Trend.Reading> readings =
        List.of(reading(0, 208, 4), reading(10, 216, 4), reading(20, 215, 4));
    Trend trend =
        Trend.of(
            readings,
            new Trend.Against(
                List.of(day(-5), day(5), day(6), day(25)), TARGETS, setUp(216, 190, 186), null));

    List<Trend.Dot> dots = trend.strips().get(0).dots();
    assertEquals(2, trend.adjustments().size(), "two between the same checks are one wedge");
    double first = trend.adjustments().get(0).x();
    assertTrue(dots.get(0).x() < first && first < dots.get(1).x());
    assertTrue(trend.adjustments().get(1).x() > dots.get(2).x(), "after the last check");
    assertTrue(trend.description().contains("brace from 208 mm to 215 mm"), trend.description());
  }

  @Test
  void figuresBesideAStrip_neverLieOverOneAnother() {
    for (double setUpMm = 208; setUpMm <= 224; setUpMm += 0.5) {
      Trend trend =
          Trend.of(
              List.of(reading(0, 216, 4), reading(1, 214, 5)),
              new Trend.Against(List.of(), TARGETS, setUp(setUpMm, 190, 186), null));
      for (Trend.Strip strip : trend.strips()) {
        List<Double> rows = strip.words().stream().map(Trend.Words::y).sorted().toList();
        for (int i = 1; i < rows.size(); i++) {
          assertTrue(rows.get(i) - rows.get(i - 1) >= 14, setUpMm + ": " + strip.words());
        }
      }
    }
  }

  /** Twelve checks that lie well, and one that does not: the limits stand since the first. */
  @Test
  void limits_standSinceTheLastAdjustment_andTheAverageOnceThereAreReadingsEnough() {
    List<Drift.Measured> measured = new ArrayList<>();
    List<Trend.Reading> readings = new ArrayList<>();
    readings.add(reading(-9, 210, 4));
    for (int i = 0; i < 12; i++) {
      double brace = 216 + (i % 3 - 1) * 0.6;
      readings.add(reading(7 * i, brace, 4));
      measured.add(new Drift.Measured(day(7 * i), "a", brace, 4.0));
    }
    for (int known : new int[] {3, 12}) {
      Drift drift =
          Drift.of(
              measured.subList(0, known),
              ScatterPrior.brace(1).scatter(),
              ScatterPrior.tiller(1).scatter(),
              true);
      Trend trend =
          Trend.of(
              readings.subList(0, known + 1),
              new Trend.Against(List.of(day(-2)), TARGETS, setUp(216, 190, 186), drift));
      Trend.Strip brace = trend.strips().get(0);
      double first = brace.dots().get(1).x();
      assertTrue(brace.limits().startsWith("M" + SideView.number(first)), brace.limits());
      assertEquals(2, brace.limits().chars().filter(c -> c == 'M').count(), "above and below");
      assertEquals(known >= 8, trend.hasAverage());
      assertTrue(trend.hasLimits());
    }
  }

  @Test
  void oneQuantity_isOneStrip_ofTheReadingsThatHaveIt() {
    List<Trend.Reading> readings =
        List.of(
            reading(0, 216, 4),
            reading(1, 215, 4),
            new Trend.Reading(day(2), Length.ofMm(214), null));
    Trend.Against against = new Trend.Against(List.of(), TARGETS, null, null);

    assertEquals(3, Trend.ofBrace(readings, against).strips().get(0).dots().size());
    assertEquals(2, Trend.ofTiller(readings, against).strips().get(0).dots().size());
    assertEquals(1, Trend.ofBrace(readings, against).strips().size());
    assertNull(Trend.ofTiller(readings.subList(1, 3), against));
  }
}
