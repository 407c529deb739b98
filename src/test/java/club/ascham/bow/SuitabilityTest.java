package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
                candidate("right", rig(LimbSize.MEDIUM, 20, Hand.RIGHT, 25)),
                candidate("a bit short", rig(LimbSize.SHORT, 20, Hand.RIGHT, 25))));
    assertEquals(List.of("right", "a bit short", "light", "too long"), rigs(ranking));
    assertTrue(ranking.unsuited().isEmpty());
    Suited<String> best = ranking.suited().get(0);
    assertTrue(best.why().get(0).contains("preferred"), best.why().toString());
    assertTrue(best.weight().lb() > 18 && best.weight().lb() < 20);
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
    RigSpec rig = rig(LimbSize.MEDIUM, 20, Hand.RIGHT, 25);
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
            List.of(new Candidate<>("parts", rig(LimbSize.MEDIUM, 20, Hand.RIGHT, 25), null)));
    assertTrue(ranking.suited().get(0).weight().basis().contains("not measured"));
  }

  // A draw of 28 in is the marked draw, so a marked weight is the weight on the fingers.
  @ParameterizedTest(name = "{0} lb on the fingers: {1} points")
  @CsvSource({"18, 0", "16, 4", "19, 5", "20, 8"})
  void rank_points_heavierCountsMoreThanLighter(double markedLb, int points) {
    NewcomerAnswers grown = adult(28, Experience.BEGINNER);
    Ranking<String> ranking =
        Suitability.rank(
            grown, List.of(candidate("70 in", rig(LimbSize.LONG, markedLb, Hand.RIGHT, 25))));
    assertEquals(points, ranking.suited().get(0).misfitScore());
  }

  @Test
  void rank_twoInchesBelowTheRow_isRankedSinceTablesDiffer() {
    Ranking<String> ranking =
        Suitability.rank(
            adult(27, Experience.BEGINNER),
            List.of(
                candidate("64 in", rig(LimbSize.SHORT, 18, Hand.RIGHT, 23)),
                candidate("62 in", rig(LimbSize.MEDIUM, 16, Hand.RIGHT, 19))));
    assertEquals(List.of("64 in"), rigs(ranking));
    assertTrue(ranking.suited().get(0).why().get(0).contains("2 in shorter"));
    assertEquals("62 in", ranking.unsuited().get(0).rig());
  }

  @Test
  void rank_fixedTiller_ranksLowerForWhoeverIsPastTheCourse() {
    // Each at the length preferred and the weight aimed for, so that nothing else counts.
    assertEquals(0, screwInPoints(adult(28, Experience.BEGINNER), 18));
    assertEquals(3, screwInPoints(adult(28, Experience.IMPROVER), 24));
  }

  @Test
  void rank_equalPoints_nearerToTheAimFirst() {
    // 0.2 lb and 0.1 lb below the aim of 18 lb both round to no point.
    Ranking<String> ranking =
        Suitability.rank(
            adult(28, Experience.BEGINNER),
            List.of(
                candidate("further", rig(LimbSize.LONG, 17.8, Hand.RIGHT, 25)),
                candidate("nearer", rig(LimbSize.LONG, 17.9, Hand.RIGHT, 25))));
    assertEquals(List.of("nearer", "further"), rigs(ranking));
  }

  @Test
  void rank_aJuniorsBow_isHeldToTheHighEndOfItsWeight() {
    // About 13 lb at the marked draw, and at most 15: a grown-up's likeliest value would let it go.
    NewcomerAnswers child = junior(28, AgeBand.UP_TO_12);
    Unsuited<String> asked =
        Suitability.rank(child, List.of(candidate("13 lb", rig(LimbSize.LONG, 13, Hand.RIGHT, 25))))
            .unsuited()
            .get(0);
    assertTrue(asked.adviceOnly() && asked.asksCoach());
    assertTrue(asked.why().get(0).contains("high end"), asked.why().toString());
  }

  @Test
  void rank_farTooHeavyForAJuniorBeginner_isNoMatterOfAdvice() {
    RigSpec heavy = rig(LimbSize.LONG, 26, Hand.RIGHT, 25);
    Unsuited<String> refused =
        Suitability.rank(junior(28, AgeBand.UP_TO_12), List.of(candidate("26 lb", heavy)))
            .unsuited()
            .get(0);
    assertFalse(refused.adviceOnly());
    assertFalse(refused.asksCoach());
    NewcomerAnswers improver =
        new NewcomerAnswers(Hand.RIGHT, null, 28, false, AgeBand.UP_TO_12, Experience.IMPROVER);
    assertTrue(
        Suitability.rank(improver, List.of(candidate("26 lb", heavy)))
            .unsuited()
            .get(0)
            .adviceOnly());
  }

  @Test
  void rank_lengthAlone_asksForNoCoach() {
    Unsuited<String> shortBow =
        Suitability.rank(beginner, List.of(candidate("short", Bows.screwInRig(62, 16))))
            .unsuited()
            .get(0);
    assertTrue(shortBow.adviceOnly());
    assertFalse(shortBow.asksCoach());
  }

  @Test
  void rank_aChildAndBowsOfBothEnds_saysWhyTheLongOneIsAcceptableAndTheShortOneIsNot() {
    Ranking<String> ranking =
        Suitability.rank(
            junior(24, AgeBand.UP_TO_12),
            List.of(
                candidate("68 in", Bows.screwInRig(68, 14)),
                candidate("54 in", Bows.screwInRig(54, 14))));
    String whyLong = String.join(" ", ranking.suited().get(0).why());
    assertEquals("68 in", ranking.suited().get(0).rig());
    assertTrue(whyLong.contains("longer than the table gives"), whyLong);
    assertTrue(whyLong.contains("does no harm"), whyLong);
    String whyShort = String.join(" ", ranking.unsuited().get(0).why());
    assertEquals("54 in", ranking.unsuited().get(0).rig());
    assertTrue(whyShort.contains("pinches the fingers"), whyShort);
  }

  private static NewcomerAnswers junior(double drawIn, AgeBand age) {
    return new NewcomerAnswers(Hand.RIGHT, Hand.RIGHT, drawIn, false, age, Experience.BEGINNER);
  }

  private static int screwInPoints(NewcomerAnswers answers, double markedLb) {
    return Suitability.rank(
            answers, List.of(candidate("screw-in", Bows.screwInRig(screwInBow(answers), markedLb))))
        .suited()
        .get(0)
        .misfitScore();
  }

  private static int screwInBow(NewcomerAnswers answers) {
    return Newcomer.fit(answers).bowPreferredIn();
  }

  private static NewcomerAnswers adult(double drawIn, Experience experience) {
    return new NewcomerAnswers(Hand.RIGHT, Hand.RIGHT, drawIn, false, AgeBand.ADULT, experience);
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
