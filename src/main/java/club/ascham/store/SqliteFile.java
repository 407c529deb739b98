package club.ascham.store;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;

/** Opens a SQLite file beside the pool: to copy it, or to look whether it is sound. */
public final class SqliteFile {
  private static final int PATIENCE_MS = 5_000;

  private SqliteFile() {}

  /** A connection whose transactions begin with a read lock at most. */
  public static SQLiteConnection open(Path file) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setBusyTimeout(PATIENCE_MS);
    config.enforceForeignKeys(true);
    config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true");
    return JDBC.createConnection(JDBC.PREFIX + file.toAbsolutePath(), config.toProperties());
  }
}
