package club.ascham.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.id.RigId;
import club.ascham.store.StatementCount;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.Test;

@QuarkusTest
class RigSpecsTest {
  @Inject Bench bench;
  @Inject RigSpecs specs;

  @Test
  void aNewRig_isKnownByItsPartsAndHasTargetsButNoSetUp() {
    Bench.Laid riser = bench.adjustableRiser("LEFT", 25);
    RigId rig =
        new RigId(
            bench.assembled(riser, bench.slotInLimbs("MEDIUM", 22), bench.polyesterString(68)));

    RigCard card = specs.of(rig).orElseThrow();

    assertEquals(riser.code(), card.name());
    assertEquals(68, card.spec().orElseThrow().bowLengthIn().getAsInt());
    assertTrue(card.isWhole());
    assertNull(card.setUp());
    assertEquals(Band.ofInches(8, 9), card.targets().brace().inner());
  }

  @Test
  void aOnePieceBow_isWholeWithItsStringAlone() {
    RigId rig = new RigId(bench.assembled(bench.onePieceBow(48), bench.polyesterString(48)));

    RigCard card = specs.of(rig).orElseThrow();

    assertTrue(card.isWhole());
    assertEquals(2, card.parts().size());
  }

  @Test
  void aRiserAlone_hasNoTargets() {
    RigCard card =
        specs.of(new RigId(bench.assembled(bench.adjustableRiser("RIGHT", 23)))).orElseThrow();

    assertTrue(card.spec().isEmpty());
    assertNull(card.targets());
  }

  @Test
  void manyRigs_areReadInAsManyStatementsAsOneOfTheirKind() {
    RigId one = screwIn(66);
    RigId other = screwIn(62);
    specs.of(one);

    long before = StatementCount.run();
    specs.of(one);
    long forOne = StatementCount.run() - before;
    specs.of(List.of(one, other));
    long forTwo = StatementCount.run() - before - forOne;

    assertEquals(forOne, forTwo);
  }

  private RigId screwIn(int lengthIn) {
    return new RigId(
        bench.assembled(
            bench.screwInRiser("Thatch"),
            bench.screwInLimbs("Thatch", lengthIn),
            bench.polyesterString(lengthIn)));
  }
}
