package club.ascham.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteErrorCode;

/**
 * Takes out of a SQLite file what was deleted: its rows are copied into a new file, each under the
 * number it has (a vacuum may number them anew), compared, and brought back page by page in one
 * transaction, so that every page is written over. Secure deletion alone leaves copies of cells in
 * pages that SQLite laid out anew.
 */
public final class Scrub {
  /** What {@code PRAGMA user_version} says of a file that nobody was erased from since. */
  private static final int DONE = 1;

  private static final int PATIENCE_MS = 5_000;
  private static final int ALL_PAGES = -1;

  private Scrub() {}

  /** What a transaction that erases someone runs, so that no copy is taken for a scrubbed one. */
  static final String OWE = "PRAGMA user_version = 0";

  /** Whether someone was erased since it was last scrubbed, or it never was. */
  public static boolean isOwed(Path file) throws SQLException {
    try (Connection club = SqliteFile.open(file)) {
      return number(club, "PRAGMA user_version") != DONE;
    }
  }

  /**
   * Nobody may write meanwhile.
   *
   * @return false: it is scrubbed, but its log still holds what was; see {@link #emptyLog}
   */
  public static boolean run(Path file) throws SQLException {
    return run(file, PATIENCE_MS);
  }

  static boolean run(Path file, int patienceMs) throws SQLException {
    Path clean = Path.of(file + ".clean");
    try {
      forget(clean);
      copyRows(file, clean);
      bringBack(clean, file);
      return emptyLog(file, patienceMs);
    } finally {
      forget(clean);
    }
  }

  /**
   * Brings the log of writes into the file and cuts it to nothing.
   *
   * @return false: someone still reads from it
   */
  public static boolean emptyLog(Path file) throws SQLException {
    return emptyLog(file, PATIENCE_MS);
  }

  private static boolean emptyLog(Path file, int patienceMs) throws SQLException {
    try (Connection club = SqliteFile.open(file)) {
      number(club, "PRAGMA busy_timeout = " + patienceMs);
      return number(club, "PRAGMA wal_checkpoint(TRUNCATE)") == 0;
    }
  }

  private static void bringBack(Path clean, Path file) throws SQLException {
    try (SQLiteConnection club = SqliteFile.open(file)) {
      int ended = club.getDatabase().restore("main", clean.toString(), null, 100, 50, ALL_PAGES);
      if (ended != SQLiteErrorCode.SQLITE_OK.code) {
        throw new SQLException(
            "scrubbing ended with " + SQLiteErrorCode.getErrorCode(ended), null, ended);
      }
    }
  }

  private static void copyRows(Path file, Path clean) throws SQLException {
    try (Connection copy = SqliteFile.open(clean)) {
      try (PreparedStatement attach = copy.prepareStatement("ATTACH ? AS club")) {
        attach.setString(1, file.toAbsolutePath().toString());
        attach.execute();
      }
      run(copy, "PRAGMA main.page_size = " + number(copy, "PRAGMA club.page_size"));
      // It is thrown away if anything goes wrong, and what refers to what is compared as it was.
      run(copy, "PRAGMA main.journal_mode = OFF");
      run(copy, "PRAGMA main.synchronous = OFF");
      run(copy, "PRAGMA foreign_keys = OFF");
      copy.setAutoCommit(false);
      List<String> tables =
          texts(
              copy,
              "SELECT name FROM club.sqlite_master WHERE type = 'table' AND name NOT GLOB 'sqlite_*' ORDER BY rowid");
      for (String table : tables) {
        run(copy, schemaOf(copy, table));
        String columns = columns(copy, table);
        run(
            copy,
            "INSERT INTO main.\"%1$s\" (%2$s) SELECT %2$s FROM club.\"%1$s\""
                .formatted(table, columns));
      }
      // After the rows: a trigger would tell of each, and an index is made whole in one go.
      for (String sql :
          texts(
              copy,
              "SELECT sql FROM club.sqlite_master WHERE type <> 'table' AND sql IS NOT NULL ORDER BY type = 'trigger', rowid")) {
        run(copy, sql);
      }
      for (String table : tables) {
        refuseDifference(copy, table);
      }
      run(copy, "PRAGMA main.user_version = " + DONE);
      copy.commit();
    }
  }

  private static String schemaOf(Connection copy, String table) throws SQLException {
    return texts(
            copy,
            "SELECT sql FROM club.sqlite_master WHERE type = 'table' AND name = '" + table + "'")
        .get(0);
  }

  /** With the row's number where no column is that number. */
  private static String columns(Connection copy, String table) throws SQLException {
    String of = "pragma_table_xinfo('" + table + "', 'club')";
    String columns =
        String.join(
            ", ",
            texts(
                copy, "SELECT '\"' || name || '\"' FROM " + of + " WHERE hidden = 0 ORDER BY cid"));
    boolean numbered =
        number(
                copy,
                "SELECT wr FROM pragma_table_list WHERE schema = 'club' AND name = '" + table + "'")
            == 0;
    boolean byColumn =
        number(
                copy,
                "SELECT count(*) = 1 AND max(upper(type) = 'INTEGER') FROM " + of + " WHERE pk > 0")
            == 1;
    return numbered && !byColumn ? "rowid, " + columns : columns;
  }

  private static void refuseDifference(Connection copy, String table) throws SQLException {
    String rows = "SELECT %s FROM %%s.\"%s\"".formatted(columns(copy, table), table);
    long differ =
        number(
            copy,
            "SELECT (SELECT count(*) FROM main.\"%1$s\") - (SELECT count(*) FROM club.\"%1$s\") <> 0 OR EXISTS (%2$s EXCEPT %3$s)"
                .formatted(table, rows.formatted("club"), rows.formatted("main")));
    if (differ != 0) {
      throw new SQLException("scrubbing would have changed rows of " + table);
    }
  }

  private static void run(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private static long number(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      return found.next() ? found.getLong(1) : 0;
    }
  }

  private static List<String> texts(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      List<String> texts = new ArrayList<>();
      while (found.next()) {
        texts.add(found.getString(1));
      }
      return texts;
    }
  }

  private static void forget(Path clean) {
    try {
      for (String ending : new String[] {"", "-journal", "-wal", "-shm"}) {
        Files.deleteIfExists(Path.of(clean + ending));
      }
    } catch (IOException failure) {
      throw new UncheckedIOException("can't take away " + clean, failure);
    }
  }
}
