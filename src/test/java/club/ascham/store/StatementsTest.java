package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.WholeStatements.Whole;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every statement that stands whole in the program can be prepared, and what it selects is what its
 * record has.
 */
class StatementsTest {
  @TempDir Path folder;

  @Test
  void eachOne_isPrepared_andSelectsWhatItsRecordHas() throws Exception {
    List<Whole> all = WholeStatements.all();
    assertTrue(all.size() > 250, "few were found: " + all.size());
    assertTrue(all.stream().filter(one -> one.shape() != null).count() > 120, "few with a record");
    List<String> wrong = new ArrayList<>();
    try (Connection file = migrated()) {
      for (Whole one : all) {
        try (PreparedStatement statement = file.prepareStatement(one.sql())) {
          if (one.shape() != null) {
            RowShape.of(Class.forName(one.shape()).asSubclass(Record.class))
                .places(statement.getMetaData());
          }
        } catch (SQLException | IllegalStateException failure) {
          wrong.add(one.where() + ": " + failure.getMessage());
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private Connection migrated() throws SQLException {
    String url = "jdbc:sqlite:" + folder.resolve("club.db");
    Schema.of(url).load().migrate();
    return DriverManager.getConnection(url);
  }
}
