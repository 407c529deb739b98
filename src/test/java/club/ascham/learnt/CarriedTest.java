package club.ascham.learnt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.BracePoint;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.learnt.History.Bow;
import club.ascham.learnt.History.Fitting;
import club.ascham.learnt.History.Measured;
import club.ascham.learnt.History.Parts;
import club.ascham.learnt.History.Place;
import club.ascham.learnt.History.SetUp;
import club.ascham.learnt.History.Work;
import club.ascham.mechanics.Run;
import club.ascham.units.Length;
import club.ascham.verdict.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which adjustments tell of a bow, after parts were moved about. */
class CarriedTest {
  private static final RigId HERE = new RigId(1);
  private static final RigId THERE = new RigId(2);
  private static final ItemId RISER = new ItemId(11);
  private static final ItemId LIMBS = new ItemId(12);
  private static final ItemId STRING = new ItemId(13);
  private static final ItemId OTHER_RISER = new ItemId(21);
  private static final ItemId OTHER_LIMBS = new ItemId(22);
  private static final ItemId OTHER_STRING = new ItemId(23);

  private final List<Work> work = new ArrayList<>();
  private final List<Measured> measured = new ArrayList<>();
  private final List<Fitting> fittings = new ArrayList<>();
  private final List<SetUp> setUps = new ArrayList<>();
  private final Map<Bow, Integer> lengths = new HashMap<>();

  @Test
  void sameParts_tellOfTwistsAndBolts() {
    fit(HERE, RISER, LIMBS, STRING, 0, null);
    setUp(HERE, 1, 20);
    twists(HERE, 10, 8);
    bolts(HERE, 20, 0.25, -0.25);
    Learnt learnt = learnt(RISER, LIMBS, STRING);
    assertEquals(List.of(at(20, 28)), ats(learnt.record().twists()));
    assertEquals(List.of(at(0, 8)), ats(learnt.record().twistsAdded()));
    assertEquals(List.of(at(0, 0.5)), ats(learnt.record().bolts()));
    assertEquals(28, learnt.twists());
    assertEquals(1.75, learnt.turnsUpper());
    assertEquals(2.25, learnt.turnsLower());
  }

  @Test
  void theStringOnAnotherBowOfTheSameLength_bringsItsTwistsAlong_andNoBolts() {
    fit(THERE, OTHER_RISER, OTHER_LIMBS, STRING, 0, 30);
    setUp(THERE, 1, 20);
    twists(THERE, 10, 8);
    bolts(THERE, 20, 0.25, 0);
    fit(HERE, RISER, LIMBS, STRING, 31, null);
    setUp(HERE, 32, 30);
    lengths.put(new Bow(RISER, LIMBS), 68);
    lengths.put(new Bow(OTHER_RISER, OTHER_LIMBS), 68);
    Learnt learnt = learnt(RISER, LIMBS, STRING);
    assertEquals(List.of(at(20, 28)), ats(learnt.record().twists()));
    assertEquals(List.of(), learnt.record().bolts());
    assertEquals(30, learnt.twists());
  }

  @Test
  void onABowOfAnotherLength_orOfUnknownLength_itStartsAnew() {
    fit(THERE, OTHER_RISER, OTHER_LIMBS, STRING, 0, 30);
    setUp(THERE, 1, 20);
    twists(THERE, 10, 8);
    fit(HERE, RISER, LIMBS, STRING, 31, null);
    setUp(HERE, 32, 30);
    assertEquals(List.of(), learnt(RISER, LIMBS, STRING).record().twists());
    lengths.put(new Bow(RISER, LIMBS), 66);
    lengths.put(new Bow(OTHER_RISER, OTHER_LIMBS), 68);
    assertEquals(List.of(), learnt(RISER, LIMBS, STRING).record().twists());
  }

  @Test
  void aNewString_startsAnew_andTheBoltsAreKnownAsBefore() {
    fit(HERE, RISER, LIMBS, STRING, 0, 30);
    setUp(HERE, 1, 20);
    twists(HERE, 10, 8);
    bolts(HERE, 20, 0.25, 0);
    fittings.removeIf(fitting -> fitting.place() != Place.STRING);
    fittings.add(new Fitting(HERE, RISER, Place.BODY, day(0), null));
    fittings.add(new Fitting(HERE, LIMBS, Place.LIMBS, day(0), null));
    fittings.add(new Fitting(HERE, OTHER_STRING, Place.STRING, day(30), null));
    Learnt learnt = learnt(RISER, LIMBS, OTHER_STRING);
    assertEquals(List.of(), learnt.record().twists());
    assertEquals(List.of(), learnt.record().twistsAdded());
    assertEquals(List.of(at(0, 0.25)), ats(learnt.record().bolts()));
    assertNull(learnt.twists(), "nobody counted the new string's");
  }

  @Test
  void otherLimbsOnTheSameRiser_dropWhatTheBoltsShowed() {
    fit(THERE, RISER, OTHER_LIMBS, OTHER_STRING, 0, 30);
    setUp(THERE, 1, 20);
    bolts(THERE, 20, 0.25, 0);
    fit(HERE, RISER, LIMBS, STRING, 31, null);
    assertEquals(List.of(), learnt(RISER, LIMBS, STRING).record().bolts());
    fittings.clear();
    fit(THERE, OTHER_RISER, LIMBS, OTHER_STRING, 0, 30);
    fit(HERE, RISER, LIMBS, STRING, 31, null);
    assertEquals(List.of(), learnt(RISER, LIMBS, STRING).record().bolts());
  }

  @Test
  void riserAndLimbsTogetherOnAnotherRig_keepWhatTheBoltsShowed() {
    fit(THERE, RISER, LIMBS, OTHER_STRING, 0, 30);
    setUp(THERE, 1, 20);
    bolts(THERE, 20, 0.25, 0);
    fit(HERE, RISER, LIMBS, STRING, 31, null);
    assertEquals(List.of(at(0, 0.25)), ats(learnt(RISER, LIMBS, STRING).record().bolts()));
  }

  @Test
  void partsChangedBetweenTheReadings_tellNothing() {
    fit(HERE, RISER, LIMBS, STRING, 0, 11);
    fit(HERE, RISER, OTHER_LIMBS, STRING, 11, null);
    setUp(HERE, 1, 20);
    twists(HERE, 10, 8);
    assertEquals(List.of(), learnt(RISER, OTHER_LIMBS, STRING).record().twists());
    assertEquals(List.of(), learnt(RISER, LIMBS, STRING).record().twists());
  }

  @Test
  void theSecondReadingThatBeginsTheNextAdjustment_makesOneRun() {
    fit(HERE, RISER, LIMBS, STRING, 0, null);
    setUp(HERE, 1, 20);
    long second = twists(HERE, 10, 8);
    long third = check(HERE, 12, 221, 4);
    work.add(work(HERE, 11, second, third, 6, null, null, true));
    twists(HERE, 40, -4);
    Learnt learnt = learnt(RISER, LIMBS, STRING);
    assertEquals(List.of(at(20, 28, 34), at(34, 30)), ats(learnt.record().twists()));
    assertEquals(30, learnt.twists());
  }

  @Test
  void twistsPutInInTwoGoes_countTogether() {
    fit(HERE, RISER, LIMBS, STRING, 0, null);
    setUp(HERE, 1, 20);
    long before = check(HERE, 10, 212, 4);
    long after = check(HERE, 14, 217, 4);
    work.add(work(HERE, 10, before, null, 5, null, null, true));
    work.add(work(HERE, 12, before, after, 4, null, null, true));
    Learnt learnt = learnt(RISER, LIMBS, STRING);
    assertEquals(List.of(at(20, 29)), ats(learnt.record().twists()));
    assertEquals(29, learnt.twists());
  }

  @Test
  void aMeasurementThatIsBeingJudged_tellsAlready() {
    fit(HERE, RISER, LIMBS, STRING, 0, null);
    setUp(HERE, 1, 20);
    work.add(work(HERE, 10, check(HERE, 10, 212, 4), null, 8, null, null, true));
    History history = new History(work, measured, fittings, setUps, lengths);
    Parts now = new Parts(RISER, LIMBS, STRING);
    assertEquals(List.of(), Carried.of(history, HERE, now).record().twists());
    Reading reading =
        new Reading(Length.ofMm(216), BracePoint.GRIP_THROAT, Length.ofMm(184), Length.ofMm(180));
    History measuredNow = history.with(new SecondMeasurement(10, day(12), reading));
    Run run = Carried.of(measuredNow, HERE, now).record().twists().get(0);
    assertEquals(List.of(at(20, 28)), ats(List.of(run)));
    assertEquals(216, run.points().get(1).mm(), 1e-9);
  }

  @Test
  void uncountedTwists_endTheCount_butLaterChangesStillTell() {
    fit(HERE, RISER, LIMBS, STRING, 0, null);
    setUp(HERE, 1, 20);
    twists(HERE, 10, 8);
    work.add(
        work(HERE, 20, check(HERE, 19, 214, 4), check(HERE, 21, 218, 4), null, null, null, true));
    twists(HERE, 30, 5);
    Learnt learnt = learnt(RISER, LIMBS, STRING);
    assertEquals(List.of(at(20, 28)), ats(learnt.record().twists()));
    assertEquals(List.of(at(0, 8), at(0, 5)), ats(learnt.record().twistsAdded()));
    assertNull(learnt.twists());
    setUp(HERE, 50, 33);
    assertEquals(33, learnt(RISER, LIMBS, STRING).twists(), "a new set-up counts anew");
  }

  @Test
  void boltsTurnedWithoutCounting_mayStandAnywhere() {
    fit(HERE, RISER, LIMBS, STRING, 0, null);
    setUp(HERE, 1, 20);
    work.add(new Work(9, HERE, day(20), null, null, null, null, null, false, true));
    Learnt learnt = learnt(RISER, LIMBS, STRING);
    assertNull(learnt.turnsUpper());
    assertNull(learnt.turnsLower());
    assertEquals(20, learnt.twists());
  }

  @Test
  void aCorrectedReading_countsInThePlaceOfTheWrongOne() {
    fit(HERE, RISER, LIMBS, STRING, 0, null);
    setUp(HERE, 1, 20);
    long after = twists(HERE, 10, 8);
    Measured wrong = measured.get(measured.size() - 1);
    measured.add(
        new Measured(
            after + 100,
            after,
            day(90),
            new Reading(
                Length.ofMm(217),
                wrong.reading().from(),
                wrong.reading().tillerUpper(),
                wrong.reading().tillerLower())));
    Run run = learnt(RISER, LIMBS, STRING).record().twists().get(0);
    assertEquals(217, run.points().get(1).mm(), 1e-9);
  }

  @Test
  void braceFromAnotherPoint_orNoSecondReading_tellsNothing() {
    fit(HERE, RISER, LIMBS, STRING, 0, null);
    setUp(HERE, 1, 20);
    long before = check(HERE, 10, 210, 4);
    measured.add(
        new Measured(
            50,
            null,
            day(11),
            new Reading(Length.ofMm(170), BracePoint.BUTTON, Length.ofMm(182), Length.ofMm(178))));
    work.add(work(HERE, 10, before, 50L, 8, null, null, true));
    work.add(work(HERE, 12, before, null, 4, null, null, true));
    Learnt learnt = learnt(RISER, LIMBS, STRING);
    assertEquals(List.of(), learnt.record().twistsAdded());
    assertEquals(32, learnt.twists(), "they were put in all the same");
  }

  @Test
  void inches_scatterMoreThanMillimetres() {
    fit(HERE, RISER, LIMBS, STRING, 0, null);
    setUp(HERE, 1, 20);
    long inInches = check(HERE, 10, 8.5 * 25.4, 4);
    long inMm = check(HERE, 11, 219, 4);
    work.add(work(HERE, 10, inInches, inMm, 8, null, null, true));
    List<Run.Point> points = learnt(RISER, LIMBS, STRING).record().twists().get(0).points();
    assertEquals(Math.hypot(1.5875 / Math.sqrt(12), 1), points.get(0).sdMm(), 1e-12);
    assertEquals(Math.hypot(1 / Math.sqrt(12), 1), points.get(1).sdMm(), 1e-12);
    assertTrue(points.get(0).sdMm() > points.get(1).sdMm());
  }

  private Learnt learnt(ItemId body, ItemId limbs, ItemId string) {
    return Carried.of(
        new History(work, measured, fittings, setUps, lengths),
        HERE,
        new Parts(body, limbs, string));
  }

  private void fit(RigId rig, ItemId body, ItemId limbs, ItemId string, int from, Integer until) {
    Instant end = until == null ? null : day(until);
    fittings.add(new Fitting(rig, body, Place.BODY, day(from), end));
    fittings.add(new Fitting(rig, limbs, Place.LIMBS, day(from), end));
    fittings.add(new Fitting(rig, string, Place.STRING, day(from), end));
  }

  private void setUp(RigId rig, int day, Integer twists) {
    ItemId string =
        fittings.stream()
            .filter(one -> one.rig().equals(rig) && one.place() == Place.STRING && one.at(day(day)))
            .map(Fitting::item)
            .findFirst()
            .orElse(null);
    setUps.add(new SetUp(rig, day(day), string, twists, 2.0, 2.0));
  }

  /** Answers the second check. */
  private long twists(RigId rig, int day, int added) {
    long before = check(rig, day, 212, 4);
    long after = check(rig, day + 1, 216, 4);
    work.add(work(rig, day, before, after, added, null, null, true));
    return after;
  }

  private void bolts(RigId rig, int day, double upper, double lower) {
    long before = check(rig, day, 216, 9);
    long after = check(rig, day + 1, 216, 6);
    work.add(work(rig, day, before, after, null, upper, lower, false));
  }

  private static Work work(
      RigId rig,
      int day,
      Long before,
      Long after,
      Integer added,
      Double upper,
      Double lower,
      boolean asked) {
    return new Work(
        day,
        rig,
        day(day).plus(Duration.ofHours(2)),
        before,
        after,
        added,
        upper,
        lower,
        asked,
        upper != null);
  }

  private long check(RigId rig, int day, double braceMm, double tillerMm) {
    long id = measured.size() + 1;
    measured.add(
        new Measured(
            id,
            null,
            day(day).plus(Duration.ofHours(1)),
            new Reading(
                Length.ofMm(braceMm),
                BracePoint.GRIP_THROAT,
                Length.ofMm(180 + tillerMm),
                Length.ofMm(180))));
    return id;
  }

  private static Instant day(int day) {
    return Instant.parse("2026-03-01T10:00:00Z").plus(Duration.ofDays(day));
  }

  private static List<Double> at(double... ats) {
    List<Double> list = new ArrayList<>();
    for (double at : ats) {
      list.add(at);
    }
    return list;
  }

  private static List<List<Double>> ats(List<Run> runs) {
    return runs.stream().map(run -> run.points().stream().map(Run.Point::at).toList()).toList();
  }
}
