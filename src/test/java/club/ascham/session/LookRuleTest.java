package club.ascham.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import club.ascham.concern.Weight;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LookRuleTest {
  @ParameterizedTest(name = "seen {0}, {1} looks since the full check, a full check every {2}: {3}")
  @CsvSource({
    "false, 0, 6, true",
    "false, 5, 6, true",
    "false, 6, 6, false",
    "false, 60, 6, false",
    "true, 0, 6, false",
    "false, 0, 0, false",
  })
  void aLookSuffices_onlyWhenNothingWasSeen_andTheFullCheckIsYoungEnough(
      boolean seen, long looks, int every, boolean enough) {
    assertEquals(enough, LookRule.suffices(seen, Against.NOTHING, looks, every));
  }

  @ParameterizedTest(name = "{0}, which {1}: {2}")
  @CsvSource({
    "REPORTED, SPEAKS_AGAINST, false",
    "CHANGING, SPEAKS_AGAINST, false",
    "ASKED, BLOCKS, false",
    "NOT_SET_UP, BLOCKS, false",
    "OVERDUE, SPEAKS_AGAINST, true",
    "WATCHED, NOTE, true",
  })
  void whatALookCantAnswer_isNotPutBackByOne(Matter matter, Weight weight, boolean enough) {
    Concern concern =
        new Concern(
            weight,
            matter,
            LocalDate.EPOCH,
            null,
            "R-1",
            null,
            null,
            "told",
            "told",
            "ends",
            "/",
            1);
    assertEquals(enough, LookRule.suffices(false, new Against(List.of(concern)), 0, 6));
  }
}
