package club.ascham.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A name that looks like another, or turns the words after it round, is not taken. */
class SeenCharactersTest {
  @ParameterizedTest(name = "U+{0}")
  @CsvSource({
    "202E, right-to-left override",
    "2066, isolate",
    "200B, zero width space",
    "FEFF, byte order mark",
    "00AD, soft hyphen",
    "0085, next line",
    "007F, delete",
    "E0041, tag"
  })
  void whatCanNotBeSeen_isRefusedAtItsField(String codePoint) {
    Typed typed =
        Typed.nothing()
            .with("name", "Ida" + Character.toString(Integer.parseInt(codePoint, 16)) + "Fenn");
    assertNull(typed.optional("name", 40));
    assertNotNull(typed.messageAt("name"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Ödön Łucja Ó’Brien", "علی‌رضا", "two\nlines\tand a tab", "क्‍ष", "👩‍🎨 bow"})
  void whatScriptsAreWrittenWith_isTaken(String name) {
    assertEquals(name, Typed.nothing().with("name", name).text("name", 40));
  }
}
