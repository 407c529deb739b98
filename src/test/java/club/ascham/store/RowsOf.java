package club.ascham.store;

import java.sql.Connection;

/** Rows of a file that no server has open. */
public final class RowsOf {
  private RowsOf() {}

  /** The connection stays open when a statement is done. */
  public static Rows connection(Connection connection) {
    return RowsInFile.of(connection);
  }
}
