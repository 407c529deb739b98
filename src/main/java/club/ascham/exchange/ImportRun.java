package club.ascham.exchange;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/** One import of some files within a transaction that somebody else ends. */
final class ImportRun {
  private final Connection connection;
  private final Currency currency;
  private final LocalDate today;
  private final List<AfterRows> afterwards;

  /**
   * @param afterwards what judges all that was added
   */
  ImportRun(Connection connection, Currency currency, LocalDate today, List<AfterRows> afterwards) {
    this.connection = connection;
    this.currency = currency;
    this.today = today;
    this.afterwards = afterwards;
  }

  /** Takes the files in; what they added is then judged by all that is known. */
  ImportReport run(Sheets read) throws SQLException {
    BadCells bad = new BadCells();
    read.unreadable().forEach(bad::add);
    List<ImportReport.PerList> done = new ArrayList<>();
    List<Long> newItems = new ArrayList<>();
    List<Long> changedRules = new ArrayList<>();
    List<AfterRows.Added> added = new ArrayList<>();
    KnownRows known = new KnownRows(connection);
    // Nothing is planned row by row meanwhile: once all of it is in, the plan is reckoned anew.
    run("INSERT INTO taking_in (id) VALUES (1)");
    for (Sheet sheet : read.sheets()) {
      ListImport rows = new ListImport(sheet, connection, currency, known, today, bad);
      done.add(rows.run());
      newItems.addAll(rows.newItems());
      changedRules.addAll(rows.changedRules());
      added.add(new AfterRows.Added(sheet.list().name(), sheet.file(), rows.newRows()));
    }
    run("DELETE FROM taking_in");
    for (AfterRows rule : afterwards) {
      added.stream()
          .filter(one -> one.list().equals(rule.list()) && !one.lines().isEmpty())
          .forEach(one -> rule.check(one).forEach(bad::add));
    }
    List<Long> newEntries =
        added.stream()
            .filter(one -> one.list().equals("stories"))
            .flatMap(one -> one.lines().keySet().stream())
            .toList();
    return new ImportReport(done, bad.first(), bad.inAll(), newItems, changedRules, newEntries);
  }

  private void run(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }
}
