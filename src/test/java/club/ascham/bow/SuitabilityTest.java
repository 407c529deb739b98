package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SuitabilityTest {
  private static final SetUpFigures SET_UP = Bows.setUp(220, 180, 176);

  private final NewcomerAnswers beginner =
      new NewcomerAnswers(Hand.RIGHT, Hand.RIGHT, 27, false, AgeBand.ADULT, Experience.BEGINNER);

  @Test
  void rank_rightLengthAndWeightFirst() {
    Ranking<String> ranking =
        Suitability.rank(
            beginner,
            List.of(
                candidate("too long", rig(LimbSize.LONG, 20, Hand.RIGHT, 27)),
                candidate("light", rig(LimbSize.MEDIUM, 14, Hand.RIGHT, 25)),
                candidate("right", rig(LimbSize.MEDIUM, 22, Hand.RIGHT, 25)),
                candidate("a bit short", rig(LimbSize.SHORT, 22, Hand.RIGHT, 25))));
    assertEquals(List.of("right", "a bit short", "light", "too long"), rigs(ranking));
    assertTrue(ranking.unsuited().isEmpty());
    Suited<String> best = ranking.suited().get(0);
    assertTrue(best.why().get(0).contains("preferred"), best.why().toString());
    assertTrue(best.weight().lb() > 20 && best.weight().lb() < 22);
  }

  @Test
  void rank_otherHand_isLeftOutAndNotAMatterOfAdvice() {
    Ranking<String> ranking =
        Suitability.rank(
            beginner, List.of(candidate("left", rig(LimbSize.MEDIUM, 20, Hand.LEFT, 25))));
    assertEquals(List.of(), ranking.suited());
    assertFalse(ranking.unsuited().get(0).adviceOnly());
    assertTrue(ranking.unsuited().get(0).why().get(0).contains("left hand"));
  }

  @Test
  void rank_tooHeavyOrTooShort_isLeftOutButMayBeGivenWithAReason() {
    Ranking<String> ranking =
        Suitability.rank(
            beginner,
            List.of(
                candidate("heavy", rig(LimbSize.MEDIUM, 36, Hand.RIGHT, 25)),
                candidate("short", Bows.screwInRig(62, 18)),
                candidate("both", Bows.screwInRig(58, 40))));
    assertEquals(List.of(), ranking.suited());
    assertEquals(
        List.of("heavy", "short", "both"), ranking.unsuited().stream().map(Unsuited::rig).toList());
    assertTrue(ranking.unsuited().get(0).why().get(0).startsWith("Too heavy"));
    assertTrue(ranking.unsuited().get(1).why().get(0).startsWith("Too short"));
    assertEquals(2, ranking.unsuited().get(2).why().size());
    assertTrue(ranking.unsuited().stream().allMatch(Unsuited::adviceOnly));
  }

  @Test
  void rank_onePieceForEitherHand_suitsALeftHandedChild() {
    NewcomerAnswers child =
        new NewcomerAnswers(Hand.LEFT, Hand.LEFT, 19, false, AgeBand.UP_TO_12, Experience.BEGINNER);
    Ranking<String> ranking =
        Suitability.rank(
            child,
            List.of(
                new Candidate<>("junior", Bows.onePieceRig(54, 16), Bows.setUp(170, 120, 118))));
    assertEquals(List.of("junior"), rigs(ranking));
  }

  @Test
  void rank_partsThatDoNotFit_areLeftOutWithTheirReason() {
    RigSpec wrongString =
        Bows.rig(
            Bows.adjustableRiser(25),
            Bows.slotInLimbs(LimbSize.MEDIUM, 20),
            Bows.polyesterString(66),
            Style.SPLIT_FINGER);
    Unsuited<String> unsuited =
        Suitability.rank(beginner, List.of(candidate("wrong string", wrongString)))
            .unsuited()
            .get(0);
    assertFalse(unsuited.adviceOnly());
    assertTrue(unsuited.why().get(0).contains("66 in"));
  }

  @Test
  void rank_weightThatCannotBeReckoned_isLeftOutRatherThanFailing() {
    RigSpec unmarked = rig(LimbSize.MEDIUM, 0, Hand.RIGHT, 25);
    Unsuited<String> unsuited =
        Suitability.rank(beginner, List.of(candidate("unmarked", unmarked))).unsuited().get(0);
    assertFalse(unsuited.adviceOnly());
    assertTrue(unsuited.why().get(0).contains("marked weight"));
  }

  @Test
  void rank_equals_keepTheOrderTheyCameIn() {
    RigSpec rig = rig(LimbSize.MEDIUM, 22, Hand.RIGHT, 25);
    assertEquals(
        List.of("first", "second", "third"),
        rigs(
            Suitability.rank(
                beginner,
                List.of(
                    candidate("first", rig), candidate("second", rig), candidate("third", rig)))));
  }

  @Test
  void rank_partsNotYetSetUp_areRankedOnAnAssumedBrace() {
    Ranking<String> ranking =
        Suitability.rank(
            beginner,
            List.of(new Candidate<>("parts", rig(LimbSize.MEDIUM, 22, Hand.RIGHT, 25), null)));
    assertTrue(ranking.suited().get(0).weight().basis().contains("not measured"));
  }

  private static RigSpec rig(LimbSize size, double markedLb, Hand hand, int riserIn) {
    RiserSpec riser = Bows.adjustableRiser(riserIn, hand, "ILF");
    LimbsSpec limbs = Bows.slotInLimbs(size, markedLb);
    int bowIn = BowLength.of(riser, limbs).orElseThrow();
    return Bows.rig(riser, limbs, Bows.polyesterString(bowIn), Style.SPLIT_FINGER);
  }

  private static Candidate<String> candidate(String name, RigSpec rig) {
    return new Candidate<>(name, rig, SET_UP);
  }

  private static List<String> rigs(Ranking<String> ranking) {
    return ranking.suited().stream().map(Suited::rig).toList();
  }
}
