package club.ascham.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
    assertEquals(enough, LookRule.suffices(seen, looks, every));
  }
}
