package club.ascham.start;

import club.ascham.store.SqliteFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * The migrations of before 1.0.0: history, kept for folders that never went through all of them and
 * never added to. They run on a copy that is thrown away, and nothing keeps account of them.
 */
final class BeforeMigrations {
  private static final String FOLDER = "/db/before/";

  private BeforeMigrations() {}

  /** Their file names, in order. */
  static List<String> inOrder() throws IOException {
    return text("in-order.txt").lines().toList();
  }

  static void bringUpToDate(Path file) throws IOException, SQLException {
    try (Connection connection = SqliteFile.open(file);
        Statement statement = connection.createStatement()) {
      int newest;
      try (ResultSet found =
          statement.executeQuery(
              "SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history WHERE success = 1")) {
        newest = found.getInt(1);
      }
      for (String name : inOrder()) {
        if (Integer.parseInt(name.substring(1, 4)) > newest) {
          // All of its statements, which none of the other ways of running one would do.
          statement.executeUpdate(text(name));
        }
      }
    }
  }

  private static String text(String name) throws IOException {
    try (InputStream script = BeforeMigrations.class.getResourceAsStream(FOLDER + name)) {
      return new String(script.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
