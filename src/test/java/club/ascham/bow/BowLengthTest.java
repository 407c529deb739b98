package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BowLengthTest {

  // Source: archerycoach.wordpress.com/tag/ilf-limb-pockets/ "Personalizing Recurve Limbs" (R)
  @ParameterizedTest(name = "{0} in riser with {1} limbs: {2} in")
  @DisplayName("Bow length from riser and limbs (Personalizing Recurve Limbs)")
  @CsvSource({
    "23, SHORT, 64",
    "23, MEDIUM, 66",
    "23, LONG, 68",
    "25, SHORT, 66",
    "25, MEDIUM, 68",
    "25, LONG, 70",
    "27, SHORT, 68",
    "27, MEDIUM, 70",
    "27, LONG, 72"
  })
  void of_riserAndSize(int riserIn, LimbSize size, int bowIn) {
    assertEquals(
        OptionalInt.of(bowIn),
        BowLength.of(Bows.adjustableRiser(riserIn), Bows.slotInLimbs(size, 24)));
  }

  @Test
  void of_makersFigure_winsOverTheSum() {
    assertEquals(
        OptionalInt.of(62), BowLength.of(Bows.screwInRiser(19), Bows.screwInLimbs(62, 18)));
  }

  @Test
  void of_neitherSizeNorFigure_isUnknown() {
    LimbsSpec limbs =
        new LimbsSpec(Build.ADJUSTABLE, null, null, "ILF", null, 24, 28, null, Known.UNKNOWN, null);
    assertEquals(OptionalInt.empty(), BowLength.of(Bows.adjustableRiser(25), limbs));
  }
}
