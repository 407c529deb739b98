package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptStatementsTest {
  private Connection connection;

  @BeforeEach
  void open() throws SQLException {
    connection = DriverManager.getConnection("jdbc:sqlite::memory:");
    connection.createStatement().execute("CREATE TABLE bow (id INTEGER PRIMARY KEY, name TEXT)");
  }

  @AfterEach
  void close() throws SQLException {
    connection.close();
  }

  @Test
  void theSameSql_isPreparedOnce_andRunsAgainWithWhatIsBoundThen() throws SQLException {
    KeptStatements kept = KeptStatements.of(connection);
    String sql = "INSERT INTO bow (name) VALUES (?1)";
    PreparedStatement first = kept.prepared(sql);
    for (String name : new String[] {"Tern", "Kestrel"}) {
      PreparedStatement statement = kept.prepared(sql);
      assertSame(first, statement);
      statement.setString(1, name);
      assertEquals(1, kept.changed(statement));
      kept.done(statement, new Object[0]);
    }
    assertEquals("Tern Kestrel", text("SELECT group_concat(name, ' ') FROM bow"));
  }

  /** A copy can't be made while any statement is under way, nor the log be written back. */
  @Test
  void whatRan_isNoLongerUnderWay(@TempDir Path folder) throws SQLException {
    KeptStatements kept = KeptStatements.of(connection);
    for (String sql :
        new String[] {
          "INSERT INTO bow (name) VALUES ('Tern')",
          "UPDATE bow SET name = 'Kestrel'",
          "DELETE FROM bow",
          "VACUUM INTO '" + folder.resolve("copy.db") + "'"
        }) {
      kept.changed(kept.prepared(sql));
    }
    assertTrue(Files.exists(folder.resolve("copy.db")));
  }

  @Test
  void aFailedOne_isPreparedAnew() throws SQLException {
    KeptStatements kept = KeptStatements.of(connection);
    String sql = "INSERT INTO bow (id) VALUES (?1)";
    PreparedStatement first = kept.prepared(sql);
    first.setInt(1, 1);
    first.executeUpdate();
    assertThrows(SQLException.class, first::executeUpdate);
    kept.forget(sql);

    assertTrue(first.isClosed());
    assertNotSame(first, kept.prepared(sql));
  }

  @Test
  void onlySoManyAreKept_theLongestUnusedGoesFirst() throws SQLException {
    KeptStatements kept = KeptStatements.of(connection);
    PreparedStatement often = kept.prepared("SELECT 0");
    PreparedStatement once = kept.prepared("SELECT 1");
    for (int i = 2; i < 300; i++) {
      kept.prepared("SELECT " + i);
      kept.prepared("SELECT 0");
    }
    assertFalse(often.isClosed());
    assertTrue(once.isClosed());
  }

  @Test
  void aChangedTable_isSeenByWhatWasPreparedBefore() throws SQLException {
    KeptStatements kept = KeptStatements.of(connection);
    String sql = "INSERT INTO bow (name) VALUES (?1)";
    kept.prepared(sql);
    connection
        .createStatement()
        .execute(
            "CREATE TRIGGER twice AFTER INSERT ON bow WHEN new.name <> 'copy' BEGIN INSERT INTO bow (name) VALUES ('copy'); END");
    PreparedStatement statement = kept.prepared(sql);
    statement.setString(1, "Tern");
    statement.executeUpdate();
    kept.done(statement, new Object[0]);
    assertEquals("2", text("SELECT count(*) FROM bow"));
  }

  @Test
  void eachConnection_hasItsOwn() throws SQLException {
    assertSame(KeptStatements.of(connection), KeptStatements.of(connection));
    try (Connection other = DriverManager.getConnection("jdbc:sqlite::memory:")) {
      assertNotSame(KeptStatements.of(connection), KeptStatements.of(other));
    }
  }

  private String text(String sql) throws SQLException {
    try (ResultSet found = connection.createStatement().executeQuery(sql)) {
      return found.getString(1);
    }
  }
}
