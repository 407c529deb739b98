package club.ascham.worksheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TurnsTextTest {
  @ParameterizedTest(name = "“{0}” is {1} turns")
  @CsvSource(
      delimiter = '|',
      value = {
        "2|2",
        "2 1/4|2.25",
        "2¼|2.25",
        "2 ½|2.5",
        "1/2|0.5",
        "½|0.5",
        "2.25|2.25",
        "2,5|2.5",
        "0|0",
        " 3 |3",
        "7/8|0.875"
      })
  void whatPeopleWrite_isRead(String text, double turns) {
    assertEquals(turns, TurnsText.read(text).orElseThrow());
  }

  @ParameterizedTest(name = "“{0}” is no number of turns")
  @ValueSource(strings = {"", " ", "two", "-1", "2.5 1/2", "1/0", "1/", "2 in", "2..5", "123"})
  void whatIsNoNumber_isNotGuessed(String text) {
    assertTrue(TurnsText.read(text).isEmpty());
  }

  @Property
  @Label("eighths are read as they are written")
  void eighthsComeBack(@ForAll @IntRange(max = 96) int eighths) {
    double turns = eighths / 8.0;
    assertEquals(turns, TurnsText.read(TurnsText.of(turns)).orElseThrow());
  }
}
