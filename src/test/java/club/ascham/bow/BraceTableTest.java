package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.units.Length;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class BraceTableTest {

  // Source: archery360.com/2020/07/29/how-to-adjust-brace-height/ (R: read)
  @ParameterizedTest(name = "{0} in bow: {1} to {2} in")
  @DisplayName("Brace band, Archery Trade Association, 29 July 2020")
  @CsvSource({
    "62, 7.5, 8.5",
    "64, 7.5, 8.5",
    "66, 8, 9",
    "68, 8, 9",
    "70, 8.75, 9.5",
    "72, 8.75, 9.5"
  })
  void band_tradeOutreach(int bowIn, double lowIn, double highIn) {
    assertEquals(
        new Band(Length.ofInches(lowIn), Length.ofInches(highIn)),
        BraceTable.TRADE_OUTREACH_2020.band(bowIn).orElseThrow());
  }

  // Source: FFTA (2008) as quoted by laflechegasconne.fr/category/reglage-arc (R)
  @ParameterizedTest(name = "{0} in bow: {1} to {2} mm")
  @DisplayName("Brace band, French federation 2008, quoted by La Flèche Gasconne")
  @CsvSource({"54, 180, 190", "64, 200, 210", "66, 210, 220", "68, 220, 230", "70, 230, 240"})
  void band_frenchFederation(int bowIn, double lowMm, double highMm) {
    assertEquals(
        new Band(Length.ofMm(lowMm), Length.ofMm(highMm)),
        BraceTable.FRENCH_FEDERATION_2008.band(bowIn).orElseThrow());
  }

  // Source: greygoosearchery.co.uk/bracing-height-adjustments/, centimetre column (R)
  @ParameterizedTest(name = "{0} in bow: {1} to {2} mm")
  @DisplayName("Brace band, a British dealer, centimetre column")
  @CsvSource({"64, 210, 216", "66, 213, 219", "68, 216, 222", "70, 217, 225"})
  void band_britishDealer(int bowIn, double lowMm, double highMm) {
    assertEquals(
        new Band(Length.ofMm(lowMm), Length.ofMm(highMm)),
        BraceTable.BRITISH_DEALER.band(bowIn).orElseThrow());
  }

  // Source: arcbazancourt.netne.net/reglageclassique, centimetre column (R)
  @ParameterizedTest(name = "{0} in bow: {1} to {2} mm")
  @DisplayName("Brace band, archery club of Bazancourt, centimetre column")
  @CsvSource({"64, 195, 230", "66, 205, 235", "68, 210, 240", "70, 215, 250"})
  void band_frenchClub(int bowIn, double lowMm, double highMm) {
    assertEquals(
        new Band(Length.ofMm(lowMm), Length.ofMm(highMm)),
        BraceTable.FRENCH_CLUB.band(bowIn).orElseThrow());
  }

  // Calculated from the four tables above.
  @ParameterizedTest(name = "{0} in bow, {1} mm")
  @DisplayName("Brace heights inside all four published tables (calculated from R values)")
  @CsvSource({"64, 210", "66, 213", "66, 219", "68, 220", "68, 222"})
  void everyTable_holdsTheCommonPoints(int bowIn, double mm) {
    assertEquals(4, tablesHolding(bowIn, Length.ofMm(mm)).size());
  }

  @Test
  @DisplayName("No brace height of a 70 in bow satisfies all four published tables (calculated)")
  void seventyInch_hasNoCommonPoint() {
    for (int tenths = 2000; tenths <= 2600; tenths++) {
      assertTrue(tablesHolding(70, Length.ofMm(tenths / 10.0)).size() < 4);
    }
  }

  @ParameterizedTest(name = "{0} in bow, {1} mm")
  @DisplayName("Brace heights outside all four published tables (calculated from R values)")
  @CsvSource({
    "64, 189.9",
    "64, 230.1",
    "66, 202.9",
    "66, 235.1",
    "68, 202.9",
    "68, 240.1",
    "70, 214.9",
    "70, 250.1"
  })
  void everyTable_refusesTheOuterPoints(int bowIn, double mm) {
    assertEquals(List.of(), tablesHolding(bowIn, Length.ofMm(mm)));
  }

  @ParameterizedTest
  @ValueSource(ints = {48, 52, 58, 60, 65, 67, 69, 74})
  void band_lengthThatNoTableLists_isEmptyAndNotGuessed(int bowIn) {
    for (BraceTable table : BraceTable.values()) {
      assertTrue(table.band(bowIn).isEmpty(), table.name());
    }
  }

  @ParameterizedTest
  @EnumSource(BraceTable.class)
  void source_isASentence(BraceTable table) {
    assertFalse(table.source().isBlank());
    assertTrue(table.source().endsWith("."));
  }

  private static List<BraceTable> tablesHolding(int bowIn, Length brace) {
    return Arrays.stream(BraceTable.values())
        .filter(table -> table.band(bowIn).orElseThrow().holds(brace))
        .toList();
  }
}
