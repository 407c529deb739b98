package club.ascham.concern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.id.ItemId;
import club.ascham.upkeep.Work;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What each fact weighs, on the days around which that changes. */
class WeighingTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 3);
  private static final ItemId LIMBS = new ItemId(7);

  private static Fact fact(Matter matter, boolean grave, LocalDate since, LocalDate until) {
    return new Fact(
        matter,
        LIMBS,
        "L-0105-D",
        null,
        since,
        until,
        grave,
        Work.LIMB_INSPECTION,
        false,
        "a crack",
        1,
        null);
  }

  static Stream<Arguments> weights() {
    return Stream.of(
        Arguments.of("withdrawn", fact(Matter.WITHDRAWN, true, DAY, null), Weight.BLOCKS),
        Arguments.of("retired", fact(Matter.RETIRED, true, DAY, null), Weight.BLOCKS),
        Arguments.of("failed", fact(Matter.INSPECTION_FAILED, true, DAY, null), Weight.BLOCKS),
        Arguments.of("dangerous report", fact(Matter.REPORTED, true, DAY, null), Weight.BLOCKS),
        Arguments.of(
            "other report", fact(Matter.REPORTED, false, DAY, null), Weight.SPEAKS_AGAINST),
        Arguments.of("changing limb", fact(Matter.CHANGING, true, DAY, null), Weight.BLOCKS),
        Arguments.of("changing", fact(Matter.CHANGING, false, DAY, null), Weight.SPEAKS_AGAINST),
        Arguments.of("blocking work", fact(Matter.ASKED, true, DAY, null), Weight.BLOCKS),
        Arguments.of("work", fact(Matter.ASKED, false, DAY, null), Weight.SPEAKS_AGAINST),
        Arguments.of("last day of an inspection", fact(Matter.OVERDUE, true, DAY, null), null),
        Arguments.of(
            "inspection a day late",
            fact(Matter.OVERDUE, true, DAY.minusDays(1), null),
            Weight.BLOCKS),
        Arguments.of(
            "string a day late",
            fact(Matter.OVERDUE, false, DAY.minusDays(1), DAY),
            Weight.SPEAKS_AGAINST),
        Arguments.of(
            "string a day beyond",
            fact(Matter.OVERDUE, false, DAY.minusDays(99), DAY.minusDays(1)),
            Weight.BLOCKS),
        Arguments.of(
            "however late, where the club lets it",
            fact(Matter.OVERDUE, false, DAY.minusYears(9), null),
            Weight.SPEAKS_AGAINST),
        Arguments.of("not set up", fact(Matter.NOT_SET_UP, true, DAY, null), Weight.BLOCKS),
        Arguments.of("not checked", fact(Matter.NOT_CHECKED, true, DAY, null), Weight.BLOCKS),
        Arguments.of("watched, last day", fact(Matter.WATCHED, false, DAY, DAY), Weight.NOTE),
        Arguments.of(
            "watched until then", fact(Matter.WATCHED, false, DAY, DAY.minusDays(1)), null),
        Arguments.of(
            "limbs due on the scale", fact(Matter.WEIGHING_DUE, false, DAY, null), Weight.NOTE),
        Arguments.of(
            "arrows nobody weighed",
            fact(Matter.ARROWS_NOT_WEIGHED, false, DAY, null),
            Weight.NOTE),
        Arguments.of(
            "fewer than the set holds",
            fact(Matter.ARROWS_MISSING, false, DAY, null),
            Weight.NOTE));
  }

  @ParameterizedTest(name = "{0}: {2}")
  @MethodSource("weights")
  void eachFact_hasItsWeight(String what, Fact fact, Weight weight) {
    assertEquals(Optional.ofNullable(weight), Weighing.weight(fact, DAY));
  }

  @Test
  void everyMatter_isInTheTable() {
    List<Matter> weighed =
        weights().map(row -> ((Fact) row.get()[1]).matter()).distinct().sorted().toList();
    assertEquals(List.of(Matter.values()), weighed);
  }

  @Test
  void aWithdrawal_andTheWorkItAskedFor_areToldOnce() {
    Against against =
        Weighing.on(
            DAY,
            List.of(
                fact(Matter.ASKED, true, DAY, null),
                fact(Matter.INSPECTION_FAILED, true, DAY, null),
                fact(Matter.WITHDRAWN, true, DAY, null)));
    assertEquals(List.of(Matter.WITHDRAWN), against.all().stream().map(Concern::matter).toList());
    assertEquals(
        "Until the limb inspection is passed and the permit holder releases it.",
        against.all().get(0).ends());
    assertEquals("L-0105-D is withdrawn: a crack.", against.all().get(0).said());
  }

  @Test
  void releasedWithoutAPass_theFailureStillBlocks() {
    Against against =
        Weighing.on(DAY, List.of(fact(Matter.INSPECTION_FAILED, true, DAY.minusDays(5), null)));
    assertTrue(against.blocks());
    assertEquals("Until it passes the limb inspection.", against.all().get(0).ends());
  }

  @Test
  void theHeaviestComesFirst_thenTheOldest() {
    Against against =
        Weighing.on(
            DAY,
            List.of(
                fact(Matter.ARROWS_NOT_WEIGHED, false, DAY.minusDays(9), null),
                fact(Matter.REPORTED, false, DAY.minusDays(1), null),
                fact(Matter.CHANGING, false, DAY.minusDays(3), null),
                fact(Matter.REPORTED, true, DAY, null)));
    assertEquals(
        List.of(Weight.BLOCKS, Weight.SPEAKS_AGAINST, Weight.SPEAKS_AGAINST, Weight.NOTE),
        against.all().stream().map(Concern::weight).toList());
    assertEquals(Matter.CHANGING, against.all().get(1).matter());
    assertFalse(against.speaks(), "it blocks");
  }
}
