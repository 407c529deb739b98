package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.start.CarriedOver;
import club.ascham.store.DataFolder;
import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import club.ascham.store.Schema;
import club.ascham.store.SqliteFile;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A club that began before sources were named by title keeps its own, and its record stays whole.
 */
class NewSourcesTest {
  private static final String TOLD =
      "Sources that came with the program are named by title, institution and year; no rule"
          + " changed.";

  @TempDir Path folder;

  @Test
  void whatTheClubWrote_stays_andWhatChanged_isToldInOneSentence() throws Exception {
    DataFolder club = new DataFolder(folder.resolve("club"));
    OlderClub.in(club, "028", "hash", "Wystan Holt");
    OlderClub.change(
        club,
        "Wrote our own source.",
        "UPDATE upkeep_rule SET source = 'Our own: ours.example.com' WHERE work = 'ARROW_INSPECTION'");
    CarriedOver.folder(club);
    try (Connection file = SqliteFile.open(club.file())) {
      Rows rows = RowsOf.connection(file);
      assertEquals(
          List.of("Our own: ours.example.com"),
          rows.texts("SELECT source FROM upkeep_rule WHERE source GLOB '*[.]com*'"));
      assertEquals(
          1,
          rows.number("SELECT count(*) FROM club WHERE twists_source GLOB '*La Flèche Gasconne*'"));
      assertEquals(
          List.of("Wrote our own source.", TOLD),
          rows.texts("SELECT sentence FROM story WHERE id > 1 ORDER BY id LIMIT 2"));
      assertEquals(
          List.of("club 1", "upkeep_rule 5"),
          rows.texts(
              "SELECT table_name || ' ' || count(*) FROM change WHERE story_id = (SELECT id FROM"
                  + " story WHERE sentence = ?1) GROUP BY table_name ORDER BY 1",
              TOLD));
      assertEquals(
          0,
          rows.number("SELECT count(*) FROM change WHERE story_id > (SELECT max(id) FROM story)"));
      assertEquals(List.of(), new VerifyRecord(rows, new SealedEntries(rows)).verify().faults());
    }
  }

  @Test
  void aNewClub_isToldNothing() throws Exception {
    Path file = folder.resolve("club.db");
    Schema.make(file);
    try (Connection connection = SqliteFile.open(file)) {
      Rows rows = RowsOf.connection(connection);
      assertEquals(0, rows.number("SELECT count(*) FROM story"));
      assertEquals(0, rows.number("SELECT count(*) FROM upkeep_rule WHERE source GLOB '*[.]com*'"));
      assertEquals(
          List.of("0"),
          rows.texts(
              "SELECT instr(dflt_value, '.com') FROM pragma_table_info('club') WHERE name ="
                  + " 'twists_source'"));
    }
  }
}
