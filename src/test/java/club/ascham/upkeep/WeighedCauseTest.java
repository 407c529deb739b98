package club.ascham.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A club that began before the scale could ask for work keeps what was asked, and takes one more
 * word.
 */
class WeighedCauseTest {
  @TempDir Path folder;

  @Test
  void anOlderFile_keepsItsTasks_takesTheNewCause_andStillRefusesAnyOther() throws SQLException {
    migrate("030");
    try (Connection connection = DriverManager.getConnection(url());
        Statement statement = connection.createStatement()) {
      // What keeps the plan of what is due looks into the views, which this file has not yet.
      String written = "SELECT %s FROM sqlite_master WHERE type = 'trigger' ORDER BY rowid";
      List<String> triggers = texts(statement, written.formatted("sql"));
      for (String name : texts(statement, written.formatted("name"))) {
        statement.execute("DROP TRIGGER \"" + name + "\"");
      }
      statement.execute(
          "INSERT INTO account (id, name, password_hash, role) VALUES (1, 'a', 'x', 'OFFICER')");
      statement.execute(
          "INSERT INTO item (id, code, kind, registered_on) VALUES (1, 'L01011', 'LIMBS', '2026-01-01')");
      statement.execute(task("CHANGING"));
      for (String trigger : triggers) {
        statement.execute(trigger);
      }
    }
    migrate("latest");
    try (Connection connection = DriverManager.getConnection(url());
        Statement statement = connection.createStatement()) {
      assertEquals("CHANGING", text(statement, "SELECT cause FROM upkeep_task"));
      statement.execute("DELETE FROM upkeep_task");
      statement.execute(task("WEIGHED"));
      statement.execute("DELETE FROM upkeep_task");
      SQLException refused =
          assertThrows(SQLException.class, () -> statement.execute(task("GUESSED")));
      assertTrue(refused.getMessage().contains("CHECK"), refused.getMessage());
      assertEquals("ok", text(statement, "PRAGMA integrity_check"));
    }
  }

  private static String task(String cause) {
    return "INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause) VALUES"
        + " (1, 'LIMB_INSPECTION', '2026-01-01T10:00:00.000Z', 1, 'why', 0, '"
        + cause
        + "')";
  }

  private static List<String> texts(Statement statement, String sql) throws SQLException {
    List<String> found = new ArrayList<>();
    try (ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        found.add(rows.getString(1));
      }
    }
    return found;
  }

  private static String text(Statement statement, String sql) throws SQLException {
    try (ResultSet rows = statement.executeQuery(sql)) {
      return rows.next() ? rows.getString(1) : null;
    }
  }

  private String url() {
    return "jdbc:sqlite:" + folder.resolve("club.db");
  }

  private void migrate(String target) {
    Flyway.configure()
        .dataSource(url(), "", "")
        .locations("classpath:db/migration")
        .target(target)
        // The views are those of the newest tables: an older file has none of them yet.
        .repeatableSqlMigrationPrefix(target.equals("latest") ? "R" : "not-yet")
        .load()
        .migrate();
  }
}
