package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChildsBowTest {
  // Sizes for youngsters of a French club's page, undated: 54, 58, 62 in. 24 in: judged.
  @ParameterizedTest(name = "{0} in, marked at {1} in: a child''s {2}, told to {3} in")
  @DisplayName("A child's limbs are told to their marked draw, to 24 in where only 28 is known")
  @CsvSource({
    "54, 28, true, 24",
    "62, 28, true, 24",
    "54, 22, true, 22",
    "58, 26, true, 26",
    "66, 24, true, 24",
    "64, 28, false, 32",
    "68, 28, false, 32",
    "68, 30, false, 32"
  })
  void howFarItsForceIsTold(int bowIn, double markedAtIn, boolean childs, double toIn) {
    RigSpec rig =
        new RigSpec(
            null,
            null,
            new OnePieceSpec(null, bowIn, 14, markedAtIn, Known.NO, null),
            Bows.polyesterString(bowIn),
            Style.SPLIT_FINGER);
    assertEquals(childs, rig.isAChilds());
    assertEquals(toIn, rig.drawnToIn(32));
  }
}
