package club.ascham.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GrainsTest {
  // 1 lb = 7,000 gr and 453.59237 g, so 1 gr = 0.0648 g (R).
  @ParameterizedTest(name = "{0} g is {1} gr, shown as {2}")
  @DisplayName("7,000 grains to the pound; 1 gr = 0.0648 g")
  @CsvSource({
    "453.59237, 7000, 7000 gr · 453.6 g",
    "0.0648, 1, 1 gr · 0.1 g",
    "20, 308.6, 308.6 gr · 20 g",
    "20.2, 311.7, 311.7 gr · 20.2 g"
  })
  void grams(double grams, double grains, String both) {
    assertEquals(grains, Grains.ofGrams(grams));
    assertEquals(both, Grains.both(grains));
  }
}
