package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class SuitabilityLawsTest {

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void rank_everyRigOnceAndSuitableOnesSortedByPoints(
      @ForAll("answers") NewcomerAnswers answers, @ForAll("rigs") List<RigSpec> rigs) {
    Ranking<Integer> ranking = Suitability.rank(answers, numbered(rigs));
    List<Integer> all = new ArrayList<>(suited(ranking));
    ranking.unsuited().forEach(unsuited -> all.add(unsuited.rig()));
    Collections.sort(all);
    assertEquals(IntStream.range(0, rigs.size()).boxed().toList(), all);
    List<Integer> points = ranking.suited().stream().map(Suited::misfitScore).toList();
    assertEquals(points.stream().sorted().toList(), points);
    ranking.unsuited().forEach(unsuited -> assertTrue(!unsuited.why().isEmpty()));
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void rank_noSuitableRigIsOfAnotherHandOrAboveTheMost(
      @ForAll("answers") NewcomerAnswers answers, @ForAll("rigs") List<RigSpec> rigs) {
    NewcomerFit fit = Newcomer.fit(answers);
    for (Suited<Integer> suited : Suitability.rank(answers, numbered(rigs)).suited()) {
      Hand hand = rigs.get(suited.rig()).hand();
      assertTrue(hand == null || hand == answers.hand());
      assertEquals(Heaviness.LIGHT_ENOUGH, fit.ceiling().of(suited.weight()));
      assertTrue(suited.weight().lb() <= fit.ceiling().freeLb() + 1e-9);
    }
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void rank_sameRigsInAnotherOrder_suitTheSame(
      @ForAll("answers") NewcomerAnswers answers,
      @ForAll("rigs") List<RigSpec> rigs,
      @ForAll long seed) {
    List<Candidate<Integer>> candidates = numbered(rigs);
    Set<Integer> before = new HashSet<>(suited(Suitability.rank(answers, candidates)));
    Collections.shuffle(candidates, new Random(seed));
    assertEquals(before, new HashSet<>(suited(Suitability.rank(answers, candidates))));
  }

  @Provide
  Arbitrary<NewcomerAnswers> answers() {
    return Combinators.combine(
            Arbitraries.of(Hand.class),
            Arbitraries.doubles().between(14, 36),
            Arbitraries.of(true, false),
            Arbitraries.of(AgeBand.class),
            Arbitraries.of(Experience.class))
        .as(
            (hand, draw, estimated, age, experience) ->
                new NewcomerAnswers(hand, null, draw, estimated, age, experience));
  }

  @Provide
  Arbitrary<List<RigSpec>> rigs() {
    Arbitrary<RigSpec> adjustable =
        Combinators.combine(
                Arbitraries.of(Hand.class),
                Arbitraries.of(23, 25, 27),
                Arbitraries.of(LimbSize.class),
                Arbitraries.integers().between(12, 48))
            .as(
                (hand, riserIn, size, lb) -> {
                  RiserSpec riser = Bows.adjustableRiser(riserIn, hand, "ILF");
                  LimbsSpec limbs = Bows.slotInLimbs(size, lb);
                  return Bows.rig(
                      riser,
                      limbs,
                      Bows.polyesterString(BowLength.of(riser, limbs).orElseThrow()),
                      Style.SPLIT_FINGER);
                });
    Arbitrary<RigSpec> others =
        Combinators.combine(
                Arbitraries.of(true, false),
                Arbitraries.of(48, 54, 58, 62, 66, 68),
                Arbitraries.integers().between(10, 34))
            .as((one, bowIn, lb) -> one ? Bows.onePieceRig(bowIn, lb) : Bows.screwInRig(bowIn, lb));
    return Arbitraries.oneOf(adjustable, others).list().ofMaxSize(12);
  }

  private static List<Candidate<Integer>> numbered(List<RigSpec> rigs) {
    List<Candidate<Integer>> candidates = new ArrayList<>();
    for (RigSpec rig : rigs) {
      candidates.add(new Candidate<>(candidates.size(), rig, null));
    }
    return candidates;
  }

  private static List<Integer> suited(Ranking<Integer> ranking) {
    return ranking.suited().stream().map(Suited::rig).toList();
  }
}
