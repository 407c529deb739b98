package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import club.ascham.story.EntryText.About;
import club.ascham.story.EntryText.Changed;
import club.ascham.story.EntryText.Head;
import club.ascham.story.EntryText.Personal;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An entry is written as it is told at {@link EntryText}. */
class EntryTextTest {
  private static final String HASH = "0".repeat(64);

  private static Head head(String sentence, String why) {
    return new Head(
        7, HASH, "2026-01-01T10:00:00.000Z", "2026-01-02T10:00:00.000Z", null, sentence, why, 3L);
  }

  @Test
  void everyPart_standsInItsPlace() {
    assertEquals(
        "[7,\"2026-01-01T10:00:00.000Z\",\"2026-01-02T10:00:00.000Z\",null,\"Done.\",\""
            + HASH
            + "\",3,[[1,null],[null,2]],[[11,\"item\",5,{\"price_minor\":[null,1.50]},{}],"
            + "[12,\"borrower\",6,{},{\"name\":\""
            + HASH
            + "\",\"contact\":null}]]]",
        EntryText.of(
            head("Done.", HASH),
            List.of(new About(1L, null), new About(null, 2L)),
            List.of(
                new Changed(7, 11, "item", 5, "{\"price_minor\":[null,1.50]}"),
                new Changed(7, 12, "borrower", 6, "{}")),
            List.of(new Personal(12, "name", HASH), new Personal(12, "contact", null))));
  }

  @Test
  void beforeIt_anArrayWithinWasAText() {
    assertEquals(
        "[7,\"2026-01-01T10:00:00.000Z\",\"2026-01-02T10:00:00.000Z\",null,\"Done.\",null,3,"
            + "\"[[1,null]]\",\"[[12,\\\"account\\\",6,{},\\\"{\\\\\\\"name\\\\\\\":null}\\\"]]\"]",
        EntryText.before(
            head("Done.", null),
            List.of(new About(1L, null)),
            List.of(new Changed(7, 12, "account", 6, "{}")),
            List.of(new Personal(12, "name", null))));
  }

  @Test
  void anEntryOfNothing_hasEmptyArrays() {
    assertEquals(
        "[7,\"2026-01-01T10:00:00.000Z\",\"2026-01-02T10:00:00.000Z\",null,\"Done.\",null,3,[],[]]",
        EntryText.of(head("Done.", null), List.of(), List.of(), List.of()));
  }

  /** As SQLite's own function wrote it into the seals of before. */
  @Test
  void everyCharacter_isWrittenAsSeals_fromBefore_haveIt() throws SQLException {
    try (Connection memory = DriverManager.getConnection("jdbc:sqlite::memory:")) {
      Rows rows = RowsOf.connection(memory);
      for (int c = 1; c < 0x2100; c++) {
        String text = "a" + Character.toString(c) + "b😀";
        assertEquals(
            rows.texts("SELECT json_array(?1)", text).get(0), asArray(text), "U+%04X".formatted(c));
      }
    }
  }

  private static String asArray(String text) {
    String whole = EntryText.of(head(text, null), List.of(), List.of(), List.of());
    String before = "[7,\"2026-01-01T10:00:00.000Z\",\"2026-01-02T10:00:00.000Z\",null,";
    return "[" + whole.substring(before.length(), whole.length() - ",null,3,[],[]]".length()) + "]";
  }
}
