package club.ascham.withdrawal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.upkeep.Work;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HindranceTest {
  @ParameterizedTest
  @CsvSource({
    "true, LIMB_INSPECTION, true, PASSED, , /items/L-0105-D",
    "false, , false, , , /withdrawals/7/decide",
    "false, , false, , LIMB_INSPECTION, /withdrawals/7/decide",
    "false, LIMB_INSPECTION, true, , , /upkeep/L-0105-D/limb-inspection",
    "false, LIMB_INSPECTION, true, FAILED, LIMB_INSPECTION, /upkeep/L-0105-D/limb-inspection",
    "false, STRING_REPLACEMENT, true, , , /upkeep/L-0105-D/string-replacement",
    "false, STRING_REPLACEMENT, true, REPLACED, , /upkeep/L-0105-D/string-replacement",
    "false, RISER_INSPECTION, true, PASSED, BOLT_INSPECTION, /upkeep/L-0105-D/bolt-inspection",
    "false, , true, , BOLT_INSPECTION, /upkeep/L-0105-D/bolt-inspection",
    "false, LIMB_INSPECTION, true, PASSED, , ",
    "false, STRING_REPLACEMENT, true, PASSED, , ",
    "false, , true, , , "
  })
  void whatStandsInTheWay_saysWhereItIsDone(
      boolean retired, Work work, boolean decided, String result, Work failed, String page) {
    Optional<Hindrance> found =
        Hindrance.of(
            new Hindrance.Weighed(7, "L0105D", retired, work, decided, result, null),
            failed == null ? List.of() : List.of(failed));
    assertEquals(Optional.ofNullable(page), found.map(Hindrance::page));
  }

  @Test
  void aString_thatWasTakenOff_isKeptOnOrScrapped() {
    Hindrance replaced =
        Hindrance.of(
                new Hindrance.Weighed(
                    7, "S0105B", false, Work.STRING_REPLACEMENT, true, "REPLACED", null),
                List.of())
            .orElseThrow();
    assertTrue(replaced.message().startsWith("Another string took its place."));
  }

  @Test
  void whatIsKeptAfterAnAccident_isReleasedByNobody_whateverElseIsDone() {
    Hindrance kept =
        Hindrance.of(new Hindrance.Weighed(7, "L0105D", false, null, true, null, 3L), List.of())
            .orElseThrow();
    assertEquals("/accidents/3", kept.page());
  }
}
