package club.ascham.exchange;

import club.ascham.store.FileTrouble;
import club.ascham.units.ItemCode;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The import of one file into its list, row by row, within a transaction that may be rolled back.
 */
final class ListImport {
  private static final int NOWHERE = -1;

  /**
   * So far beyond what is there may a new number lie: more than any club writes of one kind, and so
   * little that what the club writes after it stays within what an import reads.
   */
  private static final long FARTHEST = 1_000_000;

  private final Sheet sheet;
  private final CsvList list;
  private final KnownRows known;
  private final LocalDate today;
  private final BadCells bad;
  private final RowWriter writer;
  private final int codeAt;
  private final int registeredAt;
  private final int kindAt;
  private final Map<String, List<String>> there = new HashMap<>();
  private final Map<String, Long> lineOfKey = new HashMap<>();
  private int added;
  private int changed;
  private int unchanged;
  private final List<Long> newItems = new ArrayList<>();
  private final List<Long> changedRules = new ArrayList<>();
  private final Map<Long, Long> newRows = new LinkedHashMap<>();

  /**
   * @param bad gets everything that stands in the way
   */
  ListImport(
      Sheet sheet,
      Connection connection,
      Currency currency,
      KnownRows known,
      LocalDate today,
      BadCells bad)
      throws SQLException {
    this.sheet = sheet;
    this.list = sheet.list();
    this.known = known;
    this.today = today;
    this.bad = bad;
    this.writer = new RowWriter(list, connection);
    this.codeAt = place("item", "code");
    this.registeredAt = place("item", "registered_on");
    this.kindAt = place("item", "kind");
    for (List<String> row : Export.rows(list, connection, currency)) {
      there.put(row.get(0), row);
    }
  }

  private int place(String table, String field) {
    for (int i = 0; i < list.columns().size(); i++) {
      Column column = list.columns().get(i);
      if (column.table().equals(table) && column.field().equals(field)) {
        return i;
      }
    }
    return NOWHERE;
  }

  ImportReport.PerList run() throws SQLException {
    try (writer) {
      for (Sheet.Row row : sheet.rows()) {
        row(row);
      }
    }
    return new ImportReport.PerList(
        sheet.file(), list.name(), list.title(), added, changed, unchanged);
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

  private void row(Sheet.Row row) throws SQLException {
    if (!row.misshapen().isEmpty()) {
      refuse(row, "", row.misshapen());
      return;
    }
    int badBefore = bad.inAll();
    CellReading.Value[] values = values(row);
    if (bad.inAll() > badBefore) {
      return;
    }
    String key = values[0].canonical();
    if (!key.isEmpty()) {
      Long before = lineOfKey.putIfAbsent(key, row.line());
      if (before != null) {
        refuse(row, list.key().name(), key + " stands on line " + before + " already");
        return;
      }
      List<String> existing = there.get(key);
      if (existing != null) {
        alreadyThere(row, values, existing);
        return;
      }
    }
    add(row, values);
  }

  /** By column; what is wrong with any of them was said. */
  private CellReading.Value[] values(Sheet.Row row) {
    CellReading.Value[] values = new CellReading.Value[row.cells().size()];
    Set<String> said = new HashSet<>();
    for (int i = 0; i < values.length; i++) {
      CellReading cell = row.cells().get(i);
      if (cell instanceof CellReading.Refers refers) {
        cell = refers.finder().among(known);
      }
      if (cell instanceof CellReading.Value value) {
        values[i] = value;
      } else {
        String column = list.columns().get(i).name();
        said.add(column);
        refuse(row, column, ((CellReading.Fault) cell).message());
      }
    }
    if (!row.formFaults().isEmpty() && !isThereAsItIs(values)) {
      row.formFaults().stream()
          .filter(fault -> !said.contains(fault.column()))
          .forEach(fault -> refuse(row, fault.column(), fault.message()));
    }
    return values;
  }

  /** What an export gave is taken back as it is, whatever a form would ask of it by now. */
  private boolean isThereAsItIs(CellReading.Value[] values) {
    List<String> existing = values[0] == null ? null : there.get(values[0].canonical());
    if (existing == null) {
      return false;
    }
    for (int i = 0; i < values.length; i++) {
      if (values[i] == null || differs(i, values[i], existing)) {
        return false;
      }
    }
    return true;
  }

  private boolean differs(int place, CellReading.Value value, List<String> existing) {
    return !list.columns().get(place).onlyTold() && !value.canonical().equals(existing.get(place));
  }

  private void alreadyThere(Sheet.Row row, CellReading.Value[] values, List<String> existing)
      throws SQLException {
    for (int i = 0; i < values.length; i++) {
      String here = values[i].canonical();
      if (differs(i, values[i], existing)) {
        if (list.settings()) {
          written(
              row,
              () -> writer.change(values),
              () -> {
                changed++;
                noteRule((Long) values[0].stored());
              });
        } else {
          refuse(
              row,
              list.columns().get(i).name(),
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

  private void add(Sheet.Row row, CellReading.Value[] values) throws SQLException {
    long id;
    String code = null;
    if (list.isItems()) {
      code = code(row, values);
      if (code == null) {
        return;
      }
      id = known.nextNumber("item");
      fill(values, codeAt, code);
      fill(values, registeredAt, today.toString());
    } else if (list.isNumbered()) {
      Object number = values[0].stored();
      long next = known.nextNumber(list.tables().get(0));
      id = number == null ? next : (Long) number;
      if (id > next + FARTHEST) {
        refuse(
            row,
            list.key().name(),
            "%d is far beyond the next free number, %d: give a number near it, or leave it empty"
                .formatted(id, next));
        return;
      }
    } else {
      id = 0;
    }
    String bare = code;
    written(
        row,
        () -> writer.add(id, values),
        () -> {
          added++;
          if (bare != null) {
            known.addItem(bare, id);
            newItems.add(id);
          } else if (list.isNumbered()) {
            known.add(list.tables().get(0), id);
            newRows.put(id, row.line());
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
  private String code(Sheet.Row row, CellReading.Value[] values) {
    char letter = letter(values);
    String given = (String) values[0].stored();
    if (given == null) {
      OptionalInt next = known.nextCode(letter);
      if (next.isEmpty()) {
        refuse(row, "code", "all codes with " + letter + " are used up");
        return null;
      }
      return ItemCode.of(letter, next.getAsInt()).orElseThrow().bare();
    }
    if (given.charAt(0) != letter) {
      refuse(row, "code", "a code of this kind of item begins with " + letter);
      return null;
    }
    if (known.item(given).isPresent()) {
      refuse(row, "code", "an item of another list has that code");
      return null;
    }
    return given;
  }

  private char letter(CellReading.Value[] values) {
    return CodeLetter.of(
        kindAt == NOWHERE ? list.fixed().get("item.kind") : (String) values[kindAt].stored());
  }

  private static void fill(CellReading.Value[] values, int at, String stored) {
    if (at != NOWHERE && values[at].stored() == null) {
      values[at] = new CellReading.Value(stored, stored);
    }
  }

  private void written(Sheet.Row row, Write write, Runnable then) throws SQLException {
    try {
      write.run();
    } catch (SQLException refusal) {
      Optional<FileTrouble> trouble = FileTrouble.in(refusal);
      if (trouble.isPresent()) {
        // No fault of this row: the next would meet it too.
        throw trouble.get();
      }
      // What no rule said is a defect, and no fault of the row.
      Refused said = Refused.by(list, refusal).orElseThrow(() -> refusal);
      refuse(row, said.column(), said.message());
      return;
    }
    then.run();
  }

  private void refuse(Sheet.Row row, String column, String message) {
    bad.add(new BadCell(sheet.file(), row.line(), column, message));
  }

  private interface Write {
    void run() throws SQLException;
  }
}
