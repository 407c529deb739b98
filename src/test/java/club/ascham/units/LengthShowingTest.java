package club.ascham.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthShowingTest {

  // Worked by hand from 1 in = 25.4 mm exactly (the definition of the international inch);
  // C = common knowledge, no page was read for it.
  @ParameterizedTest(name = "{0} hundred-thousandths of a mm show as {1}")
  @DisplayName("inches go to the nearest 1/16, half up, reduced; 1 in = 25.4 mm (C)")
  @CsvSource({
    "22225000, 8 3/4 in",
    "22000000, 8 11/16 in",
    "20399375, 8 1/16 in",
    "20399374, 8 in",
    "165100000, 65 in",
    "0, 0 in",
    "79374, 0 in",
    "-79374, 0 in",
    "79375, 1/16 in",
    "-317500, −1/8 in",
    "-22225000, −8 3/4 in",
    "20240624, 7 15/16 in",
    "20240625, 8 in",
  })
  void inchesGoToTheNearestSixteenth(long units, String shown) {
    assertEquals(shown, LengthText.inches(new Length(units)));
  }

  @ParameterizedTest(name = "{0} hundred-thousandths of a mm show as {1}")
  @CsvSource({
    "22225000, 222.3 mm",
    "22200000, 222 mm",
    "-317500, −3.2 mm",
    "-4999, 0 mm",
    "5000, 0.1 mm",
    "99995000, 1000 mm",
  })
  void millimetresHaveAtMostOneDecimal(long units, String shown) {
    assertEquals(shown, LengthText.mm(new Length(units)));
  }

  @ParameterizedTest(name = "{0} hundred-thousandths of a mm show as {1}")
  @CsvSource({
    "22225000, 8 3/4 in · 222 mm",
    "22250000, 8 3/4 in · 223 mm",
    "317500, 1/8 in · 3.2 mm",
    "-317500, −1/8 in · −3.2 mm",
    "1990000, 13/16 in · 19.9 mm",
    "2050000, 13/16 in · 21 mm",
    "0, 0 in · 0 mm",
  })
  void bothUnitsStandTogetherWithTenthsOnlyForSmallLengths(long units, String shown) {
    assertEquals(shown, LengthText.both(new Length(units)));
  }

  @ParameterizedTest(name = "{0} hundred-thousandths of a mm are filed as {1}")
  @CsvSource({
    "22225000, 222.25 mm",
    "79375, 0.79375 mm",
    "-317500, -3.175 mm",
    "100000000, 1000 mm",
    "0, 0 mm",
    "1, 0.00001 mm",
  })
  void theExactTextHasEveryDecimalThereIs(long units, String filed) {
    assertEquals(filed, LengthText.exact(new Length(units)));
  }
}
