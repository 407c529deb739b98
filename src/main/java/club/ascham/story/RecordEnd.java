package club.ascham.story;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;

/**
 * The newest sealed entry of a record.
 *
 * @param seal whole
 * @param recorded when it was written down
 */
public record RecordEnd(long entry, String seal, Instant recorded) {
  private static final String NEWEST =
      "SELECT id, hash, recorded_at FROM story WHERE hash IS NOT NULL ORDER BY id DESC LIMIT 1";

  /** Of the record in this file; empty where nothing was told yet. */
  public static Optional<RecordEnd> in(Connection file) throws SQLException {
    try (PreparedStatement statement = file.prepareStatement(NEWEST);
        ResultSet found = statement.executeQuery()) {
      return found.next()
          ? Optional.of(
              new RecordEnd(
                  found.getLong(1), found.getString(2), Instant.parse(found.getString(3))))
          : Optional.empty();
    }
  }
}
