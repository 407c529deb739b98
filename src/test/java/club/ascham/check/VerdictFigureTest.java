package club.ascham.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.units.Length;
import club.ascham.units.LengthText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A verdict shows a length as every other page does. */
class VerdictFigureTest {
  @ParameterizedTest(name = "{0} in is {1}")
  @CsvSource({"0.1875, 4.8 mm", "0.125, 3.2 mm", "8.75, 222 mm", "8.5, 216 mm"})
  void millimetres_areThoseOfEveryPage(double inches, String mm) {
    Length length = Length.ofInches(inches);
    assertEquals(mm, VerdictView.Figure.of(length).mm());
    assertEquals(VerdictView.Figure.of(length).inches() + " · " + mm, LengthText.both(length));
  }
}
