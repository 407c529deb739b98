package club.ascham.backup;

import club.ascham.store.SqliteFile;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** As much of a club's file as a copy is judged by: its schema's number and its record. */
record SmallClub(Path file) {
  static SmallClub in(Path file) throws SQLException {
    SmallClub club = new SmallClub(file);
    try (Open open = club.open()) {
      open.run("PRAGMA journal_mode=WAL");
      open.run(
          "CREATE TABLE flyway_schema_history (installed_rank INTEGER PRIMARY KEY, version TEXT, success INTEGER)");
      open.run("INSERT INTO flyway_schema_history VALUES (1, '010', 1), (2, NULL, 1)");
      open.run(
          "CREATE TABLE story (id INTEGER PRIMARY KEY, sentence TEXT, recorded_at TEXT, hash TEXT)");
      open.run("CREATE TABLE change (table_name TEXT, row_id INTEGER, what TEXT)");
      open.run("CREATE TABLE told_of (story_id INTEGER REFERENCES story (id))");
      open.tell("Told first.", "a".repeat(64));
    }
    return club;
  }

  Open open() throws SQLException {
    return new Open(SqliteFile.open(file));
  }

  /** Open, as a server holds it. */
  record Open(Connection connection) implements AutoCloseable {
    void run(String sql) throws SQLException {
      try (Statement statement = connection.createStatement()) {
        statement.execute(sql);
      }
    }

    void tell(String sentence, String seal) throws SQLException {
      run(
          "INSERT INTO story (sentence, recorded_at, hash) VALUES ('"
              + sentence
              + "', '2026-11-24T19:00:00.000Z', '"
              + seal
              + "')");
    }

    long number(String sql) throws SQLException {
      try (Statement statement = connection.createStatement();
          ResultSet found = statement.executeQuery(sql)) {
        return found.next() ? found.getLong(1) : 0;
      }
    }

    @Override
    public void close() throws SQLException {
      connection.close();
    }
  }
}
