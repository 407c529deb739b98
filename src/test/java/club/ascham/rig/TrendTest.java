package club.ascham.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.bow.BracePoint;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.units.Length;
import java.time.Instant;
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
    return Trend.of(List.of(readings), List.of(), TARGETS, setUp(216, 190, 186));
  }

  @Test
  void oneCheck_isNoTrend() {
    assertNull(trend(reading(0, 216, 4)));
  }

  @Test
  void checks_standInTheirOrder_oneStepEach_whateverLiesBetween() {
    List<Trend.Dot> dots =
        trend(reading(0, 216, 4), reading(1, 215, 4), reading(90, 214, 4)).brace().dots();

    assertEquals(3, dots.size());
    assertEquals(
        dots.get(1).x() - dots.get(0).x(), dots.get(2).x() - dots.get(1).x(), 0.11, "even steps");
    assertTrue(dots.get(0).x() < dots.get(1).x(), "the oldest is on the left");
  }

  @Test
  void aLowerReading_standsLower_andASignSaysHowItLies() {
    List<Trend.Dot> dots =
        trend(reading(0, 216, 4), reading(1, 207, 8), reading(2, 200, 20)).brace().dots();

    assertTrue(dots.get(0).y() < dots.get(1).y() && dots.get(1).y() < dots.get(2).y());
    assertEquals(List.of("fine", "note", "stop"), dots.stream().map(Trend.Dot::sign).toList());
  }

  @Test
  void bandAndSetUp_areToTheScaleOfTheReadings() {
    Trend.Strip brace = trend(reading(0, 222, 4), reading(1, 210, 4)).brace();

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
    assertTrue(trend.tiller().bottom() + 12 <= Trend.HEIGHT, "room for the wedges");
    assertTrue(trend.brace().bottom() < trend.tiller().nameY() - 13, "the strips are apart");
  }

  @Test
  void readingsThatHardlyDiffer_areDrawnNearlyLevel() {
    Targets noBand =
        new Targets(
            new Target(null, null, "none"),
            new Target(null, null, "none"),
            new Target(null, null, "none"));
    Trend trend =
        Trend.of(List.of(reading(0, 216, 4), reading(1, 216.2, 4)), List.of(), noBand, null);

    List<Trend.Dot> dots = trend.brace().dots();
    assertTrue(Math.abs(dots.get(0).y() - dots.get(1).y()) < 4);
    assertNull(trend.brace().band());
    assertNull(trend.brace().setUp());
    assertNull(dots.get(0).sign());
  }

  @Test
  void anAdjustment_standsBetweenTheChecksAroundIt_andOneFromBeforeThemIsLeftOut() {
    List<Trend.Reading> readings =
        List.of(reading(0, 208, 4), reading(10, 216, 4), reading(20, 215, 4));
    Trend trend =
        Trend.of(
            readings, List.of(day(-5), day(5), day(6), day(25)), TARGETS, setUp(216, 190, 186));

    List<Trend.Dot> dots = trend.brace().dots();
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
              List.of(),
              TARGETS,
              setUp(setUpMm, 190, 186));
      for (Trend.Strip strip : trend.strips()) {
        List<Double> rows = strip.words().stream().map(Trend.Words::y).sorted().toList();
        for (int i = 1; i < rows.size(); i++) {
          assertTrue(rows.get(i) - rows.get(i - 1) >= 14, setUpMm + ": " + strip.words());
        }
      }
    }
  }
}
