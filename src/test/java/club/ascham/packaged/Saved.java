package club.ascham.packaged;

import java.sql.SQLException;

/**
 * A save that the server acknowledged, and how the file shows that it is there and whole.
 *
 * @param what for whoever reads a failure
 * @param sql answers {@code expected} as long as nothing was lost
 */
record Saved(String what, long expected, String sql, Object... parameters) {
  boolean isIn(Ledger ledger) throws SQLException {
    return ledger.number(sql, parameters) == expected;
  }
}
