package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Properties;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepingDriverTest {
  private static final String IN = "INSERT INTO bow (name) VALUES (?1)";

  private Connection connection;

  private static Connection opened() throws SQLException {
    return new KeepingDriver().connect("jdbc:sqlite::memory:", new Properties());
  }

  @BeforeEach
  void open() throws SQLException {
    connection = opened();
    change("CREATE TABLE bow (id INTEGER PRIMARY KEY, name TEXT)");
  }

  @AfterEach
  void close() throws SQLException {
    connection.close();
  }

  private PreparedStatement prepared(String sql) throws SQLException {
    return connection.prepareStatement(sql);
  }

  private PreparedStatement ran(String sql, String bound) throws SQLException {
    try (PreparedStatement statement = prepared(sql)) {
      statement.setString(1, bound);
      statement.executeUpdate();
      return statement;
    }
  }

  private void change(String sql) throws SQLException {
    try (PreparedStatement statement = prepared(sql)) {
      statement.executeUpdate();
    }
  }

  private String text(String sql) throws SQLException {
    try (PreparedStatement statement = prepared(sql);
        ResultSet found = statement.executeQuery()) {
      return found.getString(1);
    }
  }

  @Test
  void theSameWords_arePreparedOnce_andRunAgainWithWhatIsBoundThen() throws SQLException {
    PreparedStatement first = ran(IN, "Tern");
    assertSame(first, ran(IN, "Kestrel"));
    assertEquals("Tern Kestrel", text("SELECT group_concat(name, ' ') FROM bow"));
  }

  @Test
  void twoAtOnce_areTwo() throws SQLException {
    try (PreparedStatement one = prepared(IN);
        PreparedStatement other = prepared(IN)) {
      assertNotSame(one, other);
      one.setString(1, "Tern");
      other.setString(1, "Kestrel");
      one.executeUpdate();
      other.executeUpdate();
    }
    assertEquals("Kestrel,Tern", text("SELECT group_concat(name ORDER BY name) FROM bow"));
  }

  @Test
  void whatTheLastOneBound_isNotBoundForTheNext() throws SQLException {
    ran(IN, "Tern");
    try (PreparedStatement statement = prepared(IN)) {
      statement.executeUpdate();
    }
    ran(IN, "a note ".repeat(1_000));
    assertSame(ran(IN, "Tern"), ran(IN, null));
    assertEquals("2", text("SELECT count(*) FROM bow WHERE name IS NULL"));
  }

  /** A copy can't be made while any statement is under way, nor the log be written back. */
  @Test
  void whatWasClosed_isNoLongerUnderWay(@TempDir Path folder) throws SQLException {
    ran(IN, "Tern");
    ran(IN, "Kestrel");
    try (PreparedStatement half = prepared("SELECT name FROM bow");
        ResultSet found = half.executeQuery()) {
      assertTrue(found.next());
    }
    change("VACUUM INTO '" + folder.resolve("copy.db") + "'");
    assertTrue(Files.exists(folder.resolve("copy.db")));
  }

  @Test
  void whatFailed_runsAgain() throws SQLException {
    change("CREATE UNIQUE INDEX one_name ON bow (name)");
    ran(IN, "Tern");
    assertThrows(SQLException.class, () -> ran(IN, "Tern"));
    ran(IN, "Kestrel");
    assertEquals("2", text("SELECT count(*) FROM bow"));
  }

  @Test
  void onlySoManyAreKept_theLongestUnusedGoesFirst() throws SQLException {
    PreparedStatement often = prepared("SELECT 0");
    often.close();
    PreparedStatement once = prepared("SELECT 1");
    once.close();
    for (int i = 2; i < 300; i++) {
      text("SELECT " + i);
      text("SELECT 0");
    }
    assertSame(often, prepared("SELECT 0"));
    assertNotSame(once, prepared("SELECT 1"));
  }

  @Test
  void aChangedTable_isSeenByWhatWasPreparedBefore() throws SQLException {
    ran(IN, "Tern");
    change(
        "CREATE TRIGGER twice AFTER INSERT ON bow WHEN new.name <> 'copy'"
            + " BEGIN INSERT INTO bow (name) VALUES ('copy'); END");
    ran(IN, "Kestrel");
    assertEquals("3", text("SELECT count(*) FROM bow"));
  }

  @Test
  void closedTwice_itIsStillOne() throws SQLException {
    PreparedStatement statement = ran(IN, "Tern");
    statement.close();
    assertTrue(statement.isClosed());
    PreparedStatement taken = prepared(IN);
    assertSame(statement, taken);
    assertFalse(taken.isClosed());
    assertNotSame(taken, prepared(IN));
  }

  @Test
  void eachConnection_hasItsOwn_andEndsThem() throws SQLException {
    PreparedStatement here = ran(IN, "Tern");
    try (Connection other = opened()) {
      try (PreparedStatement create = other.prepareStatement("CREATE TABLE bow (name TEXT)")) {
        create.executeUpdate();
      }
      assertNotSame(here, other.prepareStatement(IN));
    }
    PreparedStatement open = prepared(IN);
    connection.close();
    open.close();
    assertThrows(SQLException.class, () -> prepared(IN));
  }

  @Test
  void anotherDriversAddress_isNotItsOwn() throws SQLException {
    assertNull(new KeepingDriver().connect("jdbc:postgresql://localhost/club", new Properties()));
  }
}
