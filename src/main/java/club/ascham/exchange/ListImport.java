package club.ascham.exchange;

import club.ascham.form.Typed;
import club.ascham.store.FileTrouble;
import club.ascham.units.ItemCode;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The import of one file into its list, row by row, within a transaction that may be rolled back.
 */
final class ListImport {
  private final CsvList list;
  private final String file;
  private final List<String> header;
  private final Surroundings around;
  private final KnownRows known;
  private final RowRules rules;
  private final LocalDate today;
  private final List<BadCell> bad;
  private final RowWriter writer;
  private final Map<String, List<String>> there = new HashMap<>();
  private final Map<String, Long> lineOfKey = new HashMap<>();
  private int added;
  private int changed;
  private int unchanged;
  private final List<Long> newItems = new ArrayList<>();
  private final List<Long> changedRules = new ArrayList<>();
  private final Map<Long, Long> newRows = new LinkedHashMap<>();

  /**
   * @param rules what the list's form asks; null: it has none
   * @param bad gets everything that stands in the way
   */
  ListImport(
      CsvList list,
      String file,
      List<String> header,
      Connection connection,
      Surroundings around,
      KnownRows known,
      RowRules rules,
      LocalDate today,
      List<BadCell> bad)
      throws SQLException {
    this.list = list;
    this.file = file;
    this.header = header;
    this.around = around;
    this.known = known;
    this.rules = rules;
    this.today = today;
    this.bad = bad;
    this.writer = new RowWriter(list, connection);
    for (List<String> row : Export.rows(list, connection, around.currency())) {
      there.put(row.get(0), row);
    }
  }

  ImportReport.PerList run(List<CsvText.Line> lines) throws SQLException {
    try (writer) {
      for (CsvText.Line line : lines) {
        row(line);
      }
    }
    return new ImportReport.PerList(file, list.name(), list.title(), added, changed, unchanged);
  }

  /** The items that were added, by id. */
  List<Long> newItems() {
    return newItems;
  }

  /** The upkeep rules that were added or changed, by number. */
  List<Long> changedRules() {
    return changedRules;
  }

  /** The line of each numbered row that was added, by the row's number. */
  Map<Long, Long> newRows() {
    return newRows;
  }

  private void row(CsvText.Line line) throws SQLException {
    if (line.cells().size() != header.size()) {
      refuse(
          line,
          "",
          "it has %d cells and the first line names %d columns"
              .formatted(line.cells().size(), header.size()));
      return;
    }
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < header.size(); i++) {
      cells.put(header.get(i), line.cells().get(i));
    }
    int badBefore = bad.size();
    Map<Column, CellReading.Value> values = values(line, cells);
    if (rules != null && !isThereAsItIs(values)) {
      askTheForm(line, cells);
    }
    if (bad.size() > badBefore) {
      return;
    }
    String key = values.get(list.key()).canonical();
    if (!key.isEmpty()) {
      Long before = lineOfKey.putIfAbsent(key, line.number());
      if (before != null) {
        refuse(line, list.key().name(), key + " stands on line " + before + " already");
        return;
      }
      List<String> existing = there.get(key);
      if (existing != null) {
        alreadyThere(line, values, existing);
        return;
      }
    }
    add(line, values);
  }

  /** What an export gave is taken back as it is, whatever a form would ask of it by now. */
  private boolean isThereAsItIs(Map<Column, CellReading.Value> values) {
    CellReading.Value key = values.get(list.key());
    List<String> existing = key == null ? null : there.get(key.canonical());
    if (existing == null) {
      return false;
    }
    for (int i = 0; i < list.columns().size(); i++) {
      CellReading.Value value = values.get(list.columns().get(i));
      if (value == null || !value.canonical().equals(existing.get(i))) {
        return false;
      }
    }
    return true;
  }

  private Map<Column, CellReading.Value> values(CsvText.Line line, Map<String, String> cells) {
    Map<Column, CellReading.Value> values = new LinkedHashMap<>();
    for (Column column : list.columns()) {
      String cell = cells.get(column.name());
      CellReading reading = cell.isBlank() ? nothingIn(column) : column.codec().read(cell, around);
      if (reading instanceof CellReading.Value value) {
        values.put(column, value);
      } else {
        refuse(line, column.name(), ((CellReading.Fault) reading).message());
      }
    }
    return values;
  }

  private CellReading nothingIn(Column column) {
    if (column.required()) {
      return new CellReading.Fault("it is empty; every row needs it");
    }
    Object usual = column.otherwise();
    return usual == null || usual.equals("")
        ? new CellReading.Value(usual, "")
        : new CellReading.Value(usual, column.codec().written(usual, around));
  }

  private void askTheForm(CsvText.Line line, Map<String, String> cells) {
    Typed typed = Typed.of(cells);
    rules.check(typed);
    typed
        .faultsInOrder()
        .forEach(
            fault -> {
              boolean said =
                  bad.stream()
                      .anyMatch(
                          b -> b.line() == line.number() && b.column().equals(fault.getKey()));
              if (!said) {
                refuse(line, fault.getKey(), fault.getValue().message());
              }
            });
  }

  private void alreadyThere(
      CsvText.Line line, Map<Column, CellReading.Value> values, List<String> existing)
      throws SQLException {
    for (int i = 0; i < list.columns().size(); i++) {
      Column column = list.columns().get(i);
      String here = values.get(column).canonical();
      if (!here.equals(existing.get(i))) {
        if (list.settings()) {
          written(
              line,
              () -> writer.change(values),
              () -> {
                changed++;
                noteRule((Long) values.get(list.key()).stored());
              });
        } else {
          refuse(
              line,
              column.name(),
              "%s is there already, with %s and not %s. An import adds and never changes."
                  .formatted(
                      existing.get(0),
                      existing.get(i).isEmpty() ? "nothing" : Codecs.quoted(existing.get(i)),
                      here.isEmpty() ? "nothing" : Codecs.quoted(here)));
        }
        return;
      }
    }
    unchanged++;
  }

  private void add(CsvText.Line line, Map<Column, CellReading.Value> values) throws SQLException {
    long id;
    String code = null;
    if (list.isItems()) {
      code = code(line, values);
      if (code == null) {
        return;
      }
      id = known.nextNumber("item");
      fill(values, "item.code", code);
      fill(values, "item.registered_on", today.toString());
    } else if (list.isNumbered()) {
      Object number = values.get(list.key()).stored();
      id = number == null ? known.nextNumber(list.tables().get(0)) : (Long) number;
    } else {
      id = 0;
    }
    String bare = code;
    written(
        line,
        () -> writer.add(id, values),
        () -> {
          added++;
          if (bare != null) {
            known.addItem(bare, id);
            newItems.add(id);
          } else if (list.isNumbered()) {
            known.add(list.tables().get(0), id);
            newRows.put(id, line.number());
            noteRule(id);
          }
        });
  }

  private void noteRule(long number) {
    if (list.tables().get(0).equals("upkeep_rule")) {
      changedRules.add(number);
    }
  }

  /** The row's own code, or the next one of its kind; null: there is none, and that is said. */
  private String code(CsvText.Line line, Map<Column, CellReading.Value> values) {
    char letter = letter(values);
    String given = (String) values.get(list.key()).stored();
    if (given == null) {
      OptionalInt next = known.nextCode(letter);
      if (next.isEmpty()) {
        refuse(line, "code", "all codes with " + letter + " are used up");
        return null;
      }
      return ItemCode.of(letter, next.getAsInt()).orElseThrow().bare();
    }
    if (given.charAt(0) != letter) {
      refuse(line, "code", "a code of this kind of item begins with " + letter);
      return null;
    }
    if (known.item(given).isPresent()) {
      refuse(line, "code", "an item of another list has that code");
      return null;
    }
    return given;
  }

  private char letter(Map<Column, CellReading.Value> values) {
    String kind = list.fixed().get("item.kind");
    for (Map.Entry<Column, CellReading.Value> entry : values.entrySet()) {
      if (kind == null && entry.getKey().field().equals("kind")) {
        kind = (String) entry.getValue().stored();
      }
    }
    return CodeLetter.of(kind);
  }

  private static void fill(Map<Column, CellReading.Value> values, String place, String stored) {
    for (Map.Entry<Column, CellReading.Value> entry : values.entrySet()) {
      Column column = entry.getKey();
      if (place.equals(column.table() + "." + column.field())
          && entry.getValue().stored() == null) {
        entry.setValue(new CellReading.Value(stored, stored));
      }
    }
  }

  private void written(CsvText.Line line, Write write, Runnable then) throws SQLException {
    try {
      write.run();
    } catch (SQLException refusal) {
      Optional<FileTrouble> trouble = FileTrouble.in(refusal);
      if (trouble.isPresent()) {
        // No fault of this row: the next would meet it too.
        throw trouble.get();
      }
      refuse(line, "", Refused.said(refusal));
      return;
    }
    then.run();
  }

  private void refuse(CsvText.Line line, String column, String message) {
    bad.add(new BadCell(file, line.number(), column, message));
  }

  private interface Write {
    void run() throws SQLException;
  }
}
