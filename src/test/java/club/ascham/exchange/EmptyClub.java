package club.ascham.exchange;

import club.ascham.exchange.Import.CsvFile;
import club.ascham.store.Schema;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;

/** A new database with the tables, the accounts of the demo, and nothing else. */
record EmptyClub(Connection connection) implements AutoCloseable {
  static final Currency POUNDS = Currency.getInstance("GBP");
  static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  static EmptyClub in(Path folder) throws SQLException {
    String url = "jdbc:sqlite:" + folder.resolve("club.db") + "?foreign_keys=true";
    Schema.of(url).load().migrate();
    Connection connection = DriverManager.getConnection(url);
    try (Statement statement = connection.createStatement()) {
      statement.execute(
          "INSERT INTO account (name, password_hash, role) VALUES ('officer', 'x', 'OFFICER'),"
              + " ('volunteer', 'x', 'VOLUNTEER'), ('committee', 'x', 'COMMITTEE')");
    }
    connection.setAutoCommit(false);
    return new EmptyClub(connection);
  }

  ImportReport take(CsvFile... files) throws SQLException {
    return take(List.of(files), 0);
  }

  ImportReport take(List<CsvFile> files, long shiftDays) throws SQLException {
    return take(Sheets.read(files, new Surroundings(POUNDS, shiftDays), Map.of()));
  }

  ImportReport take(Sheets files) throws SQLException {
    return new ImportRun(connection, POUNDS, TODAY, List.of()).run(files);
  }

  String csv(String list) throws SQLException {
    return Export.csv(Lists.named(list).orElseThrow(), connection, POUNDS);
  }

  /** Every list as a file. */
  List<CsvFile> everything() throws SQLException {
    List<CsvFile> files = new ArrayList<>();
    for (CsvList list : Lists.all()) {
      files.add(file(list.name() + ".csv", csv(list.name())));
    }
    return files;
  }

  long count(String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        var row = statement.executeQuery(sql)) {
      return row.next() ? row.getLong(1) : 0;
    }
  }

  static CsvFile file(String name, String text) {
    return new CsvFile(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** The demo's files as they lie in the folder. */
  static List<CsvFile> demoFiles() throws IOException {
    List<CsvFile> files = new ArrayList<>();
    for (CsvList list : Lists.all()) {
      String name = list.name() + ".csv";
      try (InputStream file = EmptyClub.class.getResourceAsStream("/demo-data/" + name)) {
        if (file != null) {
          files.add(new CsvFile(name, file.readAllBytes()));
        }
      }
    }
    return files;
  }

  @Override
  public void close() throws SQLException {
    connection.rollback();
    connection.close();
  }
}
