package club.ascham.standing;

import club.ascham.store.Schema;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/** A real SQLite file with our migrations and nothing else around it. */
final class BenchFile {
  private final Connection connection;

  private BenchFile(Connection connection) {
    this.connection = connection;
  }

  static BenchFile migrated() throws Exception {
    Path folder = Files.createTempDirectory("standing");
    String url = "jdbc:sqlite:" + folder.resolve("bench.db") + "?foreign_keys=true";
    Schema.of(url).load().migrate();
    Connection connection = DriverManager.getConnection(url);
    connection.setAutoCommit(false);
    return new BenchFile(connection);
  }

  OneRig aRig() throws SQLException {
    return new OneRig(connection);
  }

  void close() throws SQLException {
    connection.close();
  }
}
