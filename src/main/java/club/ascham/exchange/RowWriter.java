package club.ascham.exchange;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** Writes rows of one list into its tables. */
final class RowWriter implements AutoCloseable {
  private final CsvList list;
  private final List<Insert> inserts = new ArrayList<>();
  private final PreparedStatement update;

  /**
   * @param ownId whether the row's id comes first
   * @param columns whose values follow, by their place in the list
   */
  private record Insert(PreparedStatement statement, boolean ownId, int[] columns) {}

  RowWriter(CsvList list, Connection connection) throws SQLException {
    this.list = list;
    for (String table : list.tables()) {
      int[] columns = columnsOf(table);
      inserts.add(
          new Insert(connection.prepareStatement(insert(table, columns)), ownId(table), columns));
    }
    update = list.settings() ? connection.prepareStatement(update()) : null;
  }

  private boolean ownId(String table) {
    return list.isItems() || list.isNumbered() && table.equals(list.tables().get(0));
  }

  private String idField() {
    return list.isItems() ? "id" : list.key().field();
  }

  /** Without the one that is the row's id. */
  private int[] columnsOf(String table) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < list.columns().size(); i++) {
      Column column = list.columns().get(i);
      if (column.table().equals(table)
          && !column.onlyTold()
          && !(ownId(table) && column.field().equals(idField()))) {
        places.add(i);
      }
    }
    return places.stream().mapToInt(Integer::intValue).toArray();
  }

  private String insert(String table, int[] columns) {
    List<String> fields = new ArrayList<>();
    List<String> values = new ArrayList<>();
    if (ownId(table)) {
      fields.add(idField());
      values.add("?");
    }
    for (int place : columns) {
      fields.add(list.columns().get(place).field());
      values.add("?");
    }
    list.fixed()
        .forEach(
            (place, value) -> {
              if (place.startsWith(table + ".")) {
                fields.add(place.substring(table.length() + 1));
                values.add("'" + value + "'");
              }
            });
    return "INSERT INTO %s (%s) VALUES (%s)"
        .formatted(table, String.join(", ", fields), String.join(", ", values));
  }

  private String update() {
    String table = list.tables().get(0);
    List<String> sets = new ArrayList<>();
    for (Column column : list.columns()) {
      if (column != list.key()) {
        sets.add(column.field() + " = ?");
      }
    }
    if (table.equals("upkeep_rule")) {
      // A form opened before must notice that someone saved meanwhile.
      sets.add("version = version + 1");
    }
    return "UPDATE %s SET %s WHERE %s = ?"
        .formatted(table, String.join(", ", sets), list.key().field());
  }

  /**
   * @param id of the row in every table of the list, where the list has ids
   * @param values in the order of the list's columns
   */
  void add(long id, CellReading.Value[] values) throws SQLException {
    for (Insert insert : inserts) {
      int at = 1;
      if (insert.ownId()) {
        insert.statement().setLong(at++, id);
      }
      for (int place : insert.columns()) {
        insert.statement().setObject(at++, values[place].stored());
      }
      insert.statement().executeUpdate();
    }
  }

  void change(CellReading.Value[] values) throws SQLException {
    int at = 1;
    for (int i = 1; i < values.length; i++) {
      update.setObject(at++, values[i].stored());
    }
    update.setObject(at, values[0].stored());
    update.executeUpdate();
  }

  @Override
  public void close() throws SQLException {
    for (Insert insert : inserts) {
      insert.statement().close();
    }
    if (update != null) {
      update.close();
    }
  }
}
