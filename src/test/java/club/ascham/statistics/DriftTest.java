package club.ascham.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.statistics.Drift.Answer;
import club.ascham.statistics.Drift.Measured;
import club.ascham.statistics.Scatter.Offset;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DriftTest {
  private static final Instant FIRST = Instant.parse("2026-03-01T18:00:00Z");
  private static final Scatter BRACE = ScatterPrior.brace(1).scatter();
  private static final Scatter TILLER = ScatterPrior.tiller(1).scatter();

  private static Measured check(int week, Double brace, Double tiller) {
    return new Measured(FIRST.plus(Duration.ofDays(7L * week)), "r" + week, brace, tiller);
  }

  private static List<Measured> checks(double[] braces, double[] tillers) {
    List<Measured> checks = new ArrayList<>();
    for (int i = 0; i < braces.length; i++) {
      checks.add(check(i, braces[i], tillers[i]));
    }
    return checks;
  }

  private static Drift drift(List<Measured> measured) {
    return Drift.of(measured, BRACE, TILLER, true);
  }

  @Test
  void nothingOrOneReading_isUnsure() {
    assertEquals(Answer.UNSURE, drift(List.of()).answer());
    assertNull(drift(List.of()).brace());
    Drift one = drift(List.of(check(0, 210.0, 4.0)));
    assertEquals(Answer.UNSURE, one.answer());
    assertEquals(1, one.brace().chart().points().size());
  }

  @Test
  void aLook_isNoReading() {
    List<Measured> looks = new ArrayList<>(checks(new double[] {210, 209}, new double[] {4, 4}));
    Drift before = drift(looks);
    looks.add(check(2, null, null));
    looks.add(check(3, null, null));
    assertEquals(before, drift(looks));
    assertEquals(2, before.readings());
  }

  @Test
  void theOrderTheyAreHandedIn_isOfNoAccount() {
    List<Measured> checks = checks(new double[] {210, 209, 204}, new double[] {4, 4, 5});
    List<Measured> backwards = new ArrayList<>(checks);
    Collections.reverse(backwards);
    assertEquals(drift(checks), drift(backwards));
  }

  @Test
  void fromTheSecondReading_aChangeBeyondTheScatterIsToldOf() {
    assertEquals(
        Answer.STEADY, drift(checks(new double[] {210, 209}, new double[] {4, 5})).answer());
    assertEquals(
        Answer.UNSURE, drift(checks(new double[] {210, 206.4}, new double[] {4, 5})).answer());
    Drift fallen = drift(checks(new double[] {210, 205}, new double[] {4, 4}));
    assertEquals(Answer.CHANGING, fallen.answer());
    assertFalse(fallen.brace().charted());
    assertEquals(-5, fallen.brace().change(), 1e-12);
    assertEquals(3.0233 * Math.sqrt(2) * BRACE.reproducibility(), fallen.brace().allowed(), 1e-3);
    assertEquals(FIRST.plus(Duration.ofDays(7)), fallen.since());
    assertEquals(fallen.brace().allowed(), 210 - fallen.brace().chart().points().get(1).lower());
  }

  @Test
  void oneReaderAgainstAnother_isNoChange() {
    Scatter known =
        new Scatter(0.5, 2, Map.of("tall", new Offset(2.5, 0.2), "small", new Offset(-2.5, 0.2)));
    List<Measured> checks =
        List.of(
            new Measured(FIRST, "tall", 213.0, null),
            new Measured(FIRST.plusSeconds(1), "small", 208.0, null));
    assertEquals(Answer.STEADY, Drift.of(checks, known, known, true).answer());
    // The same five millimetres by one person are one.
    List<Measured> own =
        List.of(
            new Measured(FIRST, "tall", 213.0, null),
            new Measured(FIRST.plusSeconds(1), "tall", 208.0, null));
    assertEquals(Answer.CHANGING, Drift.of(own, known, known, true).answer());
  }

  @Test
  void fromTheEighthReading_theChartsJudge_andFindWhatNoSinglePairShows() {
    double[] braces = {210, 211, 209, 210, 211, 210, 209, 207.8, 207.6, 207.9, 207.5};
    double[] tillers = {4, 5, 4, 3, 4, 4, 5, 4, 3, 4, 4};
    Drift seven = drift(checks(braces, tillers).subList(0, 7));
    assertEquals(Answer.STEADY, seven.answer());
    assertFalse(seven.brace().charted());
    assertFalse(seven.brace().chart().averaged());
    Drift all = drift(checks(braces, tillers));
    assertTrue(all.brace().charted());
    assertEquals(Answer.CHANGING, all.answer());
    assertTrue(all.brace().change() > -all.brace().allowed());
    assertEquals(FIRST.plus(Duration.ofDays(7 * 6)), all.since());
    assertEquals(Cause.STRING_CREEPS, all.causes().get(0).cause());
    DriftChart chart = all.brace().chart();
    assertTrue(chart.averaged());
    assertEquals(210, chart.centre(), 0.7);
    assertEquals(207.5, chart.points().get(10).mm());
    assertTrue(chart.points().get(10).signal());
  }

  @Test
  void aBowThatChanged_doesNotBecomeItsOwnRule() {
    double[] braces = new double[30];
    double[] tillers = new double[30];
    for (int i = 0; i < 30; i++) {
      braces[i] = (i < 9 ? 210 : 205) + (i % 3 - 1) * 0.5;
      tillers[i] = 4 + (i % 2);
    }
    assertEquals(Answer.CHANGING, drift(checks(braces, tillers)).answer());
  }

  @Test
  void braceFalls_tillerStays_theStringCreeps() {
    Drift drift = drift(checks(new double[] {210, 210, 203}, new double[] {4, 4, 4}));
    assertEquals(Cause.STRING_CREEPS, drift.causes().get(0).cause());
    assertTrue(drift.causes().get(0).probability() > 0.9);
  }

  @Test
  void tillerMoves_braceALittle_aBoltWalks_whereThereAreBolts() {
    List<Measured> checks = checks(new double[] {210, 211, 210}, new double[] {4, 4, 10});
    assertEquals(Cause.BOLT_WALKS, drift(checks).causes().get(0).cause());
    assertEquals(Cause.LIMB, Drift.of(checks, BRACE, TILLER, false).causes().get(0).cause());
  }

  @Test
  void tillerMoves_andBraceByMore_aLimb() {
    Drift drift = drift(checks(new double[] {210, 210, 203}, new double[] {4, 4, 11}));
    assertEquals(Cause.LIMB, drift.causes().get(0).cause());
  }

  @Test
  void braceRises_noCauseIsNamed() {
    Drift drift = drift(checks(new double[] {210, 210, 217}, new double[] {4, 4, 4}));
    assertEquals(Answer.CHANGING, drift.answer());
    assertEquals(List.of(), drift.causes());
  }

  @Test
  void tillerMeasuredOnceOnly_saysNothing() {
    List<Measured> checks =
        List.of(check(0, 210.0, 4.0), check(1, 210.0, null), check(2, 211.0, null));
    Drift drift = drift(checks);
    assertEquals(Answer.STEADY, drift.answer());
    assertEquals(Answer.UNSURE, drift.tiller().answer());
    assertEquals(
        Answer.CHANGING, drift(List.of(check(0, 210.0, null), check(1, 203.0, null))).answer());
  }
}
