package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import club.ascham.store.Schema;
import club.ascham.store.SqliteFile;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The record knows a row by its number: one that no column holds could change in a copy. */
class WatchedKeysTest {
  @TempDir Path folder;

  @Test
  void everyTableThatIsRecorded_andWhatASealOrdersBy_hasANumberAsItsKey() throws Exception {
    Path file = folder.resolve("club.db");
    Schema.make(file);
    try (Connection connection = SqliteFile.open(file)) {
      Rows rows = RowsOf.connection(connection);
      List<String> tables =
          new ArrayList<>(Watched.all(rows).stream().map(Watched::table).toList());
      assertTrue(tables.size() > 30, tables.size() + " tables");
      tables.addAll(List.of("story", "story_about", "change", "personal"));
      assertEquals(
          List.of(),
          tables.stream()
              .filter(
                  table ->
                      !rows.texts("SELECT type FROM pragma_table_info(?1) WHERE pk > 0", table)
                          .equals(List.of("INTEGER")))
              .toList());
    }
  }
}
