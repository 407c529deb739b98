package club.ascham.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Hand;
import club.ascham.standing.State;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class FleetLawsTest {
  @Property(tries = 200)
  void everyTraitOfTheRigs_countsEachRigOnce(@ForAll("rigs") List<FleetRig> rigs) {
    Fleet fleet = CountedRigs.fleet(rigs);
    ToIntFunction<List<Figure>> sum = figures -> figures.stream().mapToInt(Figure::count).sum();
    assertEquals(rigs.size(), sum.applyAsInt(fleet.byState()));
    for (var lines : List.of(fleet.byLength(), fleet.byWeight(), fleet.byHand())) {
      assertEquals(rigs.size(), sum.applyAsInt(lines.stream().map(Fleet.Line::all).toList()));
      assertEquals(
          fleet.byState().get(0).count(),
          sum.applyAsInt(lines.stream().map(Fleet.Line::ready).toList()),
          "ready in all");
    }
    assertEquals(
        rigs.size(),
        fleet.asTheyAre().count() + fleet.afterWork().count() + fleet.notCounted().count());
    assertEquals(fleet.afterWork().count(), sum.applyAsInt(fleet.workFirst()));
    assertEquals(fleet.notCounted().count(), sum.applyAsInt(fleet.hindered()));
  }

  @Property(tries = 200)
  void theCourseTable_addsUpToItsTotals(@ForAll("rigs") List<FleetRig> rigs) {
    Fleet fleet = CountedRigs.fleet(rigs);
    int asTheyAre = 0;
    int afterWork = 0;
    for (var line : fleet.courseLines()) {
      for (var cell : line.cells()) {
        asTheyAre += cell.asItIs().count();
        afterWork += cell.afterWork().count();
      }
    }
    assertEquals(fleet.asTheyAre().count(), asTheyAre);
    assertEquals(fleet.afterWork().count(), afterWork);
    assertEquals(
        asTheyAre, fleet.courseTotal().cells().stream().mapToInt(c -> c.asItIs().count()).sum());
  }

  @Property(tries = 200)
  void everyFigureOfTheRigs_opensIntoExactlyAsManyRows(@ForAll("rigs") List<FleetRig> rigs) {
    Fleet fleet = CountedRigs.fleet(rigs);
    List<Figure> all =
        new ArrayList<>(
            List.of(fleet.all(), fleet.asTheyAre(), fleet.afterWork(), fleet.notCounted()));
    all.addAll(fleet.byState());
    all.addAll(fleet.workFirst());
    all.addAll(fleet.hindered());
    for (var lines : List.of(fleet.byLength(), fleet.byWeight(), fleet.byHand())) {
      lines.forEach(line -> all.addAll(List.of(line.ready(), line.all())));
    }
    fleet
        .courseLines()
        .forEach(l -> l.cells().forEach(c -> all.addAll(List.of(c.asItIs(), c.afterWork()))));
    for (Figure figure : all) {
      Map<String, String> address =
          Arrays.stream(figure.query().split("&"))
              .map(pair -> pair.split("="))
              .collect(
                  Collectors.toMap(
                      pair -> pair[0], pair -> URLDecoder.decode(pair[1], StandardCharsets.UTF_8)));
      assertEquals(figure.count(), RigChoice.parse(address::get).of(rigs).size(), figure.query());
      assertTrue(figure.href().startsWith("/fleet/rows?list=rigs"));
    }
  }

  @Provide
  Arbitrary<List<FleetRig>> rigs() {
    Arbitrary<State> states = Arbitraries.of(State.class).filter(s -> s != State.RETIRED);
    Arbitrary<Hand> hands = Arbitraries.of(Hand.class).injectNull(0.2);
    Arbitrary<Integer> lengths = Arbitraries.of(48, 54, 62, 66, 68, 70).injectNull(0.1);
    Arbitrary<Double> weights = Arbitraries.doubles().between(5, 80).ofScale(1).injectNull(0.1);
    Arbitrary<LocalDate> days =
        Arbitraries.integers().between(-10, 20).map(CountedRigs.TODAY::plusDays);
    return Combinators.combine(
            states,
            hands,
            Arbitraries.of(true, false),
            lengths,
            weights,
            days,
            days.injectNull(0.3))
        .as(CountedRigs::rig)
        .list()
        .ofMaxSize(40);
  }
}
