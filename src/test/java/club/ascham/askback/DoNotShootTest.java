package club.ascham.askback;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import club.ascham.concern.Weight;
import club.ascham.id.ItemId;
import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DoNotShootTest {
  private static final Set<Matter> UNSAFE =
      Set.of(Matter.WITHDRAWN, Matter.INSPECTION_FAILED, Matter.REPORTED, Matter.CHANGING);

  @ParameterizedTest
  @EnumSource(Matter.class)
  void onlyWhatIsUnsafeAndBlocks_isAskedBack(Matter matter) {
    assertEquals(UNSAFE.contains(matter), DoNotShoot.says(concern(Weight.BLOCKS, matter)));
  }

  @ParameterizedTest
  @EnumSource(Matter.class)
  void whatOnlySpeaksAgainstIt_isNoReasonToTelephone(Matter matter) {
    assertEquals(false, DoNotShoot.says(concern(Weight.SPEAKS_AGAINST, matter)));
    assertEquals(false, DoNotShoot.says(concern(Weight.NOTE, matter)));
  }

  private static Concern concern(Weight weight, Matter matter) {
    return new Concern(
        weight,
        matter,
        LocalDate.of(2026, 5, 3),
        new ItemId(1),
        "L-0105-D",
        null,
        null,
        "Something is known.",
        "known",
        "Until it is done.",
        "/items/L-0105-D",
        1);
  }
}
