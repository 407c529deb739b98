package club.ascham.exchange;

import club.ascham.exchange.Import.CsvFile;
import club.ascham.store.Stored;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

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

  /**
   * @param rules of the forms, by the name of the list
   */
  ImportRun(
      Connection connection, Currency currency, LocalDate today, Map<String, RowRules> rules) {
    this.connection = connection;
    this.currency = currency;
    this.today = today;
    this.rules = rules;
  }

  private record Recognised(CsvList list, String file, CsvText.Table table) {}

  /** Takes the files in; what they say left today is then judged by all that is known. */
  ImportReport run(List<CsvFile> files, long shiftDays) throws SQLException {
    Set<Long> blockedBefore = outTodayThoughBlocked();
    mark("INSERT INTO taking_in (id) VALUES (1)");
    try {
      return rowsOf(files, shiftDays, blockedBefore);
    } finally {
      mark("DELETE FROM taking_in");
    }
  }

  private ImportReport rowsOf(List<CsvFile> files, long shiftDays, Set<Long> blockedBefore)
      throws SQLException {
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
    }
    Set<Long> blocked = outTodayThoughBlocked();
    blocked.removeAll(blockedBefore);
    if (!blocked.isEmpty()) {
      bad.add(
          BadCell.ofFile(
              "loan-lines",
              "Something that these files let leave today is kept in: look at what stands against"
                  + " it (lines "
                  + blocked.stream().map(String::valueOf).collect(Collectors.joining(", "))
                  + ")."));
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

  /** Lines that are open, left on this very day, and are of something that may not leave. */
  private Set<Long> outTodayThoughBlocked() throws SQLException {
    Set<Long> lines = new TreeSet<>();
    try (PreparedStatement statement =
        connection.prepareStatement(
            """
            SELECT x.id FROM loan_line x JOIN item_blocked b ON b.item_id = x.item_id
             WHERE x.back_at IS NULL AND b.blocked_from < ?1
               AND date(x.out_at, coalesce((SELECT o.ahead_s FROM clock_offset o WHERE o.from_at <= x.out_at
                                             ORDER BY o.from_at DESC LIMIT 1), 0) || ' seconds') = ?1""")) {
      statement.setString(1, Stored.day(today));
      try (ResultSet found = statement.executeQuery()) {
        while (found.next()) {
          lines.add(found.getLong(1));
        }
      }
    }
    return lines;
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
