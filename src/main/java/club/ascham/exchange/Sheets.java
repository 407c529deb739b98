package club.ascham.exchange;

import club.ascham.exchange.Import.CsvFile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The files of one import, read: what refers to something comes after it, whatever the order of the
 * files.
 *
 * @param unreadable why some of them are no list of ours
 */
record Sheets(List<Sheet> sheets, List<BadCell> unreadable) {

  /**
   * @param rules of the forms, by the name of the list
   */
  static Sheets read(List<CsvFile> files, Surroundings around, Map<String, RowRules> rules) {
    List<BadCell> unreadable = new ArrayList<>();
    List<Sheet> sheets = new ArrayList<>();
    for (CsvFile file : files) {
      read(file, around, rules, unreadable).ifPresent(sheets::add);
    }
    sheets.sort(Comparator.comparingInt(sheet -> Lists.all().indexOf(sheet.list())));
    return new Sheets(List.copyOf(sheets), List.copyOf(unreadable));
  }

  private static Optional<Sheet> read(
      CsvFile file, Surroundings around, Map<String, RowRules> rules, List<BadCell> unreadable) {
    CsvText.Reading reading = CsvText.read(file.bytes());
    if (reading instanceof CsvText.NotCsv not) {
      unreadable.add(BadCell.ofFile(file.name(), not.message()));
      return Optional.empty();
    }
    CsvText.Table table = (CsvText.Table) reading;
    Optional<CsvList> list = Lists.withHeader(table.header());
    if (list.isEmpty()) {
      unreadable.add(BadCell.ofFile(file.name(), Lists.misfit(table.header())));
    }
    return list.map(
        found -> Sheet.read(found, file.name(), table, around, rules.get(found.name())));
  }

  /** The same, or none of it where all of them together have more lines. */
  Sheets atMost(int lines) {
    int all = sheets.stream().mapToInt(sheet -> sheet.rows().size()).sum();
    if (all <= lines) {
      return this;
    }
    List<BadCell> bad = new ArrayList<>(unreadable);
    bad.add(
        BadCell.ofFile(
            "All files together",
            "They have %,d lines, and %,d are taken at once, so that others get their turn to save. Send them in several goes, in this order: %s. All that one verdict says goes together."
                .formatted(
                    all,
                    lines,
                    sheets.stream().map(Sheet::file).collect(Collectors.joining(", ")))));
    return new Sheets(List.of(), List.copyOf(bad));
  }
}
