package club.ascham.exchange;

import club.ascham.exchange.Import.CsvFile;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One import of some files within a transaction that somebody else ends: what refers to something
 * comes after it, whatever the order of the files.
 */
final class ImportRun {
  private static final int MOST_SHOWN = 200;

  private final Connection connection;
  private final Currency currency;
  private final LocalDate today;
  private final Map<String, RowRules> rules;
  private final List<AfterRows> afterwards;

  /**
   * @param rules of the forms, by the name of the list
   * @param afterwards what judges all that was added
   */
  ImportRun(
      Connection connection,
      Currency currency,
      LocalDate today,
      Map<String, RowRules> rules,
      List<AfterRows> afterwards) {
    this.connection = connection;
    this.currency = currency;
    this.today = today;
    this.rules = rules;
    this.afterwards = afterwards;
  }

  private record Recognised(CsvList list, String file, CsvText.Table table) {}

  /** Takes the files in; what they added is then judged by all that is known. */
  ImportReport run(List<CsvFile> files, long shiftDays) throws SQLException {
    mark("INSERT INTO taking_in (id) VALUES (1)");
    try {
      return rowsOf(files, shiftDays);
    } finally {
      mark("DELETE FROM taking_in");
    }
  }

  private ImportReport rowsOf(List<CsvFile> files, long shiftDays) throws SQLException {
    List<BadCell> bad = new ArrayList<>();
    List<Recognised> recognised = new ArrayList<>();
    for (CsvFile file : files) {
      recognised(file, bad).ifPresent(recognised::add);
    }
    recognised.sort(Comparator.comparingInt(r -> Lists.all().indexOf(r.list())));
    KnownRows known = new KnownRows(connection);
    Surroundings around = new Surroundings(currency, known, shiftDays);
    List<ImportReport.PerList> done = new ArrayList<>();
    List<Long> newItems = new ArrayList<>();
    List<Long> changedRules = new ArrayList<>();
    List<AfterRows.Added> added = new ArrayList<>();
    for (Recognised one : recognised) {
      ListImport rows =
          new ListImport(
              one.list(),
              one.file(),
              one.table().header(),
              connection,
              around,
              known,
              rules.get(one.list().name()),
              today,
              bad);
      done.add(rows.run(one.table().lines()));
      newItems.addAll(rows.newItems());
      changedRules.addAll(rows.changedRules());
      added.add(new AfterRows.Added(one.list().name(), one.file(), rows.newRows()));
    }
    for (AfterRows rule : afterwards) {
      added.stream()
          .filter(one -> one.list().equals(rule.list()) && !one.lines().isEmpty())
          .forEach(one -> bad.addAll(rule.check(one)));
    }
    List<BadCell> shown = bad.subList(0, Math.min(bad.size(), MOST_SHOWN));
    return new ImportReport(done, shown, bad.size(), newItems, changedRules);
  }

  /**
   * Fills a club that owns nothing yet. Its upkeep rules step aside meanwhile: with them in force
   * the plan would be reckoned again at each of thousands of loans.
   */
  ImportReport fill(List<CsvFile> files, long shiftDays) throws SQLException {
    CsvList rulesInForce = UpkeepLists.rules();
    List<CsvFile> all = new ArrayList<>(files);
    if (files.stream().noneMatch(file -> file.name().equals(rulesInForce.name() + ".csv"))) {
      byte[] kept = Export.csv(rulesInForce, connection, currency).getBytes(StandardCharsets.UTF_8);
      all.add(new CsvFile("the upkeep rules in force", kept));
    }
    try (Statement statement = connection.createStatement()) {
      statement.executeUpdate("DELETE FROM upkeep_rule");
    }
    return run(all, shiftDays);
  }

  private void mark(String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  private static Optional<Recognised> recognised(CsvFile file, List<BadCell> bad) {
    CsvText.Reading reading = CsvText.read(file.bytes());
    if (reading instanceof CsvText.NotCsv not) {
      bad.add(BadCell.ofFile(file.name(), not.message()));
      return Optional.empty();
    }
    CsvText.Table table = (CsvText.Table) reading;
    Optional<CsvList> list = Lists.withHeader(table.header());
    if (list.isEmpty()) {
      bad.add(BadCell.ofFile(file.name(), Lists.misfit(table.header())));
    }
    return list.map(found -> new Recognised(found, file.name(), table));
  }
}
