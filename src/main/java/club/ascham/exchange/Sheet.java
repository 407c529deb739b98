package club.ascham.exchange;

import club.ascham.form.Typed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A file whose list is known, read as far as that goes without the rows that are there: nobody
 * waits at the gate meanwhile.
 *
 * @param file as the person named it
 */
record Sheet(CsvList list, String file, List<Row> rows) {

  /**
   * One row.
   *
   * @param line that it begins on
   * @param misshapen why it is no row of this list at all; empty: it is one
   * @param cells in the order of the list's columns
   * @param formFaults what the list's form says, by column
   */
  record Row(long line, String misshapen, List<CellReading> cells, List<FormFault> formFaults) {}

  /** What a form says at one of its fields. */
  record FormFault(String column, String message) {}

  /**
   * @param rules what the list's form asks; null: it has none
   */
  static Sheet read(
      CsvList list, String file, CsvText.Table table, Surroundings around, RowRules rules) {
    int[] places = list.header().stream().mapToInt(table.header()::indexOf).toArray();
    return new Sheet(
        list,
        file,
        table.lines().stream()
            .map(line -> row(list, places, table.header(), line, around, rules))
            .toList());
  }

  private static Row row(
      CsvList list,
      int[] places,
      List<String> header,
      CsvText.Line line,
      Surroundings around,
      RowRules rules) {
    if (line.cells().size() != header.size()) {
      return new Row(
          line.number(),
          "it has %d cells and the first line names %d columns"
              .formatted(line.cells().size(), header.size()),
          List.of(),
          List.of());
    }
    List<CellReading> cells = new ArrayList<>(places.length);
    for (int i = 0; i < places.length; i++) {
      Column column = list.columns().get(i);
      String cell = places[i] < 0 ? "" : line.cells().get(places[i]);
      cells.add(cell.isBlank() ? nothingIn(column, around) : column.codec().read(cell, around));
    }
    return new Row(
        line.number(), "", cells, rules == null ? List.of() : askTheForm(header, line, rules));
  }

  private static CellReading nothingIn(Column column, Surroundings around) {
    if (column.required()) {
      return new CellReading.Fault("it is empty; every row needs it");
    }
    Object usual = column.otherwise();
    return usual == null || usual.equals("")
        ? new CellReading.Value(usual, "")
        : new CellReading.Value(usual, column.codec().written(usual, around));
  }

  private static List<FormFault> askTheForm(
      List<String> header, CsvText.Line line, RowRules rules) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < header.size(); i++) {
      cells.put(header.get(i), line.cells().get(i));
    }
    Typed typed = Typed.of(cells);
    rules.check(typed);
    List<FormFault> faults = new ArrayList<>();
    typed
        .faultsInOrder()
        .forEach(fault -> faults.add(new FormFault(fault.getKey(), fault.getValue().message())));
    return List.copyOf(faults);
  }
}
