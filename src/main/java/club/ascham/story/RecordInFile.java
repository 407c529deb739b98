package club.ascham.story;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * The record of a file that is about to be opened, asked by what is known of it. A seal from before
 * it was carried over is known, too ({@link CarriedRecord}).
 */
final class RecordInFile implements Loss.Opened {
  private final Connection file;
  private final RecordEnd end;

  RecordInFile(Connection file) throws SQLException {
    this.file = file;
    this.end = RecordEnd.in(file).orElse(null);
  }

  @Override
  public RecordEnd end() {
    return end;
  }

  @Override
  public boolean holds(long entry, String seal) {
    return isThere("SELECT 1 FROM story WHERE id = ?1 AND hash = ?2", entry, seal)
        || isThere(
            "SELECT 1 FROM change WHERE table_name = 'story' AND row_id = ?1 AND what ->> '$.seal[0]' = ?2",
            entry,
            seal);
  }

  @Override
  public boolean holdsSeal(String digits) {
    return isThere("SELECT 1 FROM story WHERE substr(hash, 1, length(?1)) = ?1 LIMIT 1", digits)
        || isThere(
            "SELECT 1 FROM change WHERE table_name = 'story' AND substr(what ->> '$.seal[0]', 1, length(?1)) = ?1 LIMIT 1",
            digits);
  }

  private boolean isThere(String sql, Object... asked) {
    try (PreparedStatement statement = file.prepareStatement(sql)) {
      for (int i = 0; i < asked.length; i++) {
        statement.setObject(i + 1, asked[i]);
      }
      try (ResultSet found = statement.executeQuery()) {
        return found.next();
      }
    } catch (SQLException failure) {
      throw new IllegalStateException("the record can't be read", failure);
    }
  }
}
