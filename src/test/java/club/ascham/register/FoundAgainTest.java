package club.ascham.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.upkeep.Work;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FoundAgainTest {
  @ParameterizedTest
  @CsvSource({
    "RISER, 'BOLT_INSPECTION RISER_INSPECTION', RISER_INSPECTION",
    "LIMBS, LIMB_INSPECTION, LIMB_INSPECTION",
    "BOW, LIMB_INSPECTION, LIMB_INSPECTION",
    "STRING, STRING_REPLACEMENT, STRING_REPLACEMENT",
    "STRINGER, STRINGER_INSPECTION, STRINGER_INSPECTION",
    "ARROWS, ARROW_INSPECTION, ARROW_INSPECTION",
    "SIGHT, '', "
  })
  void eachKind_waitsForItsInspections_andScrappedForARelease(
      ItemKind kind, String works, Work afterScrapping) {
    List<Work> inspections =
        Stream.of(works.split(" ")).filter(w -> !w.isEmpty()).map(Work::valueOf).toList();
    for (RetiredWhy why : RetiredWhy.values()) {
      FoundAgain again = FoundAgain.of(kind, why, List.of(), false);
      assertEquals(inspections, again.inspections());
      boolean scrapped = why == RetiredWhy.SCRAPPED;
      assertEquals(scrapped, again.withdrawnBecause().isPresent(), why.name());
      assertEquals(scrapped ? afterScrapping : null, again.work());
    }
  }

  @Test
  void whatFailedLast_isOutOfUse_forThatWork() {
    FoundAgain again =
        FoundAgain.of(ItemKind.RISER, RetiredWhy.LOST, List.of(Work.BOLT_INSPECTION), true);
    assertEquals(Work.BOLT_INSPECTION, again.work());
    assertTrue(again.said().contains("newest limb-bolt inspection was not passed"), again.said());
    assertTrue(again.said().contains("someone with the permit"), again.said());
  }

  @Test
  void whatWasNeverReleased_staysWithdrawn_forItsOwnWork() {
    FoundAgain again = FoundAgain.of(ItemKind.LIMBS, RetiredWhy.SOLD, List.of(), true);
    assertTrue(again.withdrawnBecause().isPresent());
    assertNull(again.work());
  }

  @Test
  void aSight_thatWasLost_waitsForNothing() {
    assertEquals(
        List.of(), FoundAgain.of(ItemKind.SIGHT, RetiredWhy.LOST, List.of(), false).stands());
  }
}
