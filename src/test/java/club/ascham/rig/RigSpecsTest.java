package club.ascham.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.id.RigId;
import club.ascham.store.StatementCount;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.Test;

@QuarkusTest
class RigSpecsTest {
  @Inject ClubFixture fixture;
  @Inject RigSpecs specs;

  @Test
  void aNewRig_isKnownByItsPartsAndHasTargetsButNoSetUp() {
    Laid riser = fixture.aRiser("LEFT", 25);
    RigId rig =
        new RigId(fixture.assembled(riser, fixture.limbs("MEDIUM", 22), fixture.aString(68)));

    RigCard card = specs.of(rig).orElseThrow();

    assertEquals(riser.code(), card.name());
    assertEquals(68, card.spec().orElseThrow().bowLengthIn().getAsInt());
    assertTrue(card.isWhole());
    assertNull(card.setUp());
    assertEquals(Band.ofInches(8, 9), card.targets().brace().inner());
  }

  @Test
  void aOnePieceBow_isWholeWithItsStringAlone() {
    RigId rig = new RigId(fixture.assembled(fixture.aOnePieceBow(48), fixture.aString(48)));

    RigCard card = specs.of(rig).orElseThrow();

    assertTrue(card.isWhole());
    assertEquals(2, card.parts().size());
  }

  @Test
  void aRiserAlone_hasNoTargets() {
    RigCard card =
        specs.of(new RigId(fixture.assembled(fixture.aRiser("RIGHT", 23)))).orElseThrow();

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
        fixture.assembled(
            fixture.aScrewInRiser("Thatch"),
            fixture.screwInLimbs("Thatch", lengthIn),
            fixture.aString(lengthIn)));
  }
}
