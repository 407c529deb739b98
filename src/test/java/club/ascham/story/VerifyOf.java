package club.ascham.story;

import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import java.sql.Connection;

/** The looking through of a file's record, without a server. */
public final class VerifyOf {
  private VerifyOf() {}

  public static VerifyRecord file(Connection file) {
    Rows rows = RowsOf.connection(file);
    return new VerifyRecord(rows, new SealedEntries(rows));
  }
}
