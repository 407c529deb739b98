package club.ascham.store;

import java.sql.SQLException;
import org.sqlite.SQLiteConnection;
import org.sqlite.core.DB;
import org.sqlite.jdbc4.JDBC4PreparedStatement;

/** A prepared statement that goes back to its connection when it is closed. */
final class KeptStatement extends JDBC4PreparedStatement {
  private static final int LONG_TEXT = 1_000;

  /** Who has it while nobody uses it. */
  interface Keeper {
    void back(String sql, KeptStatement statement) throws SQLException;
  }

  private final Keeper keeper;
  private final String text;
  private boolean inUse = true;

  KeptStatement(SQLiteConnection connection, Keeper keeper, String sql) throws SQLException {
    super(connection, sql);
    this.keeper = keeper;
    this.text = sql;
  }

  KeptStatement taken() {
    inUse = true;
    return this;
  }

  /** Its cursor ends and what was bound is not known any more to the next. */
  @Override
  public void close() throws SQLException {
    if (!inUse) {
      return;
    }
    inUse = false;
    if (pointer.isClosed()) {
      super.close();
      return;
    }
    clearGeneratedKeys();
    rs.close();
    pointer.safeRunInt(DB::reset);
    letGo();
    keeper.back(text, this);
  }

  /**
   * What is not bound next time is NULL then. A long note or a picture is let go at once; short
   * values stay with SQLite until the next are bound, since it may prepare a cleared statement
   * anew, and that costs more than to run it.
   */
  private void letGo() throws SQLException {
    if (batch == null) {
      return;
    }
    for (Object value : batch) {
      if (value instanceof byte[] || value instanceof String said && said.length() > LONG_TEXT) {
        clearParameters();
        break;
      }
    }
    clearBatch();
  }

  @Override
  public boolean isClosed() {
    return !inUse || super.isClosed();
  }

  void forget() throws SQLException {
    super.close();
  }
}
