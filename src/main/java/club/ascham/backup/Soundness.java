package club.ascham.backup;

import club.ascham.store.SqliteFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** Opens a file and looks whether it holds a club, whole. */
public sealed interface Soundness {
  /**
   * It does.
   *
   * @param schema the last migration it went through, such as {@code 010}
   * @param newestSeal of its record; empty where nothing was told yet
   */
  record Sound(String schema, String newestSeal) implements Soundness {}

  /**
   * @param why one sentence
   */
  record Unsound(String why) implements Soundness {}

  /** Every page, every index, every reference. */
  static Soundness ofAll(Path file) {
    return of(file, "PRAGMA integrity_check(5)");
  }

  /** Every page, without comparing indexes: fast enough for each start. */
  static Soundness atAGlance(Path file) {
    return of(file, "PRAGMA quick_check(5)");
  }

  private static Soundness of(Path file, String check) {
    if (!Files.isRegularFile(file)) {
      return new Unsound("There is no file " + file + ".");
    }
    try (Connection connection = SqliteFile.open(file)) {
      List<String> found = texts(connection, check);
      if (!found.equals(List.of("ok"))) {
        return new Unsound("SQLite found: " + String.join("; ", found) + ".");
      }
      List<String> astray =
          texts(connection, "SELECT \"table\" FROM pragma_foreign_key_check LIMIT 5");
      if (!astray.isEmpty()) {
        return new Unsound(
            "Rows point to what is not there, in " + String.join(", ", astray) + ".");
      }
      List<String> schema =
          texts(
              connection,
              "SELECT version FROM flyway_schema_history WHERE success = 1 AND version IS NOT NULL"
                  + " ORDER BY installed_rank DESC LIMIT 1");
      if (schema.isEmpty()) {
        return new Unsound("It is no file of Ascham.");
      }
      return new Sound(schema.get(0), newestSeal(connection));
    } catch (SQLException failure) {
      return new Unsound("SQLite can’t read it (" + failure.getMessage() + ").");
    }
  }

  /** The record's newest seal in this file; empty where nothing was told yet. */
  static String newestSeal(Connection connection) throws SQLException {
    return texts(
            connection, "SELECT hash FROM story WHERE hash IS NOT NULL ORDER BY id DESC LIMIT 1")
        .stream()
        .findFirst()
        .orElse("");
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
}
