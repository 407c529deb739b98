package club.ascham.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.WeakHashMap;
import org.sqlite.SQLiteConnection;

/**
 * The prepared statements of one connection to the file, kept from use to use: with the triggers
 * that watch every table, preparing a write costs SQLite more than doing it. Whoever holds the
 * connection is alone with them.
 */
final class KeptStatements {
  private static final int AT_MOST = 256;
  private static final int LONG_TEXT = 1_000;
  private static final Map<SQLiteConnection, KeptStatements> OF = new WeakHashMap<>();

  private final SQLiteConnection connection;
  private final Map<String, PreparedStatement> kept = new LinkedHashMap<>(AT_MOST, 0.75f, true);

  private KeptStatements(SQLiteConnection connection) {
    this.connection = connection;
  }

  /** Those of the connection that the pool has lent. */
  static KeptStatements of(Connection lent) throws SQLException {
    SQLiteConnection connection = lent.unwrap(SQLiteConnection.class);
    synchronized (OF) {
      KeptStatements known = OF.get(connection);
      if (known == null) {
        OF.values().removeIf(KeptStatements::areOver);
        known = new KeptStatements(connection);
        OF.put(connection, known);
      }
      return known;
    }
  }

  /**
   * Runs one that writes. The driver would ask after each for the key it made, and leave that
   * question open until the statement is closed; nobody here wants it.
   */
  int changed(PreparedStatement statement) throws SQLException {
    connection.getConnectionConfig().setGetGeneratedKeys(false);
    try {
      return statement.executeUpdate();
    } finally {
      connection.getConnectionConfig().setGetGeneratedKeys(true);
    }
  }

  /** Ready to be bound and run; give it back with {@link #done}. */
  PreparedStatement prepared(String sql) throws SQLException {
    PreparedStatement statement = kept.get(sql);
    if (statement == null) {
      if (kept.size() >= AT_MOST) {
        forget(kept.keySet().iterator().next());
      }
      statement = connection.prepareStatement(sql);
      kept.put(sql, statement);
    }
    return statement;
  }

  /**
   * It ran. A long note or a picture that was bound is let go; short values stay until the next
   * ones, since SQLite may prepare a cleared statement anew, and that costs more than to run it.
   */
  void done(PreparedStatement statement, Object[] bound) throws SQLException {
    if (Arrays.stream(bound).anyMatch(KeptStatements::isLong)) {
      statement.clearParameters();
    }
  }

  private static boolean isLong(Object value) {
    return value instanceof byte[] || value instanceof String text && text.length() > LONG_TEXT;
  }

  /** It failed: nobody knows what it still holds. */
  void forget(String sql) throws SQLException {
    PreparedStatement statement = kept.remove(sql);
    if (statement != null) {
      statement.close();
    }
  }

  private boolean areOver() {
    try {
      return connection.isClosed();
    } catch (SQLException closed) {
      return true;
    }
  }
}
