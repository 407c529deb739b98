package club.ascham.exchange;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes rows of one list into its tables. */
final class RowWriter implements AutoCloseable {
  private final CsvList list;
  private final Map<String, PreparedStatement> inserts = new LinkedHashMap<>();
  private final PreparedStatement update;

  RowWriter(CsvList list, Connection connection) throws SQLException {
    this.list = list;
    for (String table : list.tables()) {
      inserts.put(table, connection.prepareStatement(insert(table)));
    }
    update = list.settings() ? connection.prepareStatement(update()) : null;
  }

  private boolean ownId(String table) {
    return list.isItems() || list.isNumbered() && table.equals(list.tables().get(0));
  }

  private String idField() {
    return list.isItems() ? "id" : list.key().field();
  }

  private String insert(String table) {
    List<String> fields = new ArrayList<>();
    List<String> values = new ArrayList<>();
    if (ownId(table)) {
      fields.add(idField());
      values.add("?");
    }
    for (String field : fieldsWithoutId(table).keySet()) {
      fields.add(field);
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

  private Map<String, Column> fieldsWithoutId(String table) {
    Map<String, Column> fields = list.fieldsOf(table);
    if (ownId(table)) {
      fields.remove(idField());
    }
    return fields;
  }

  /**
   * @param id of the row in every table of the list, where the list has ids
   */
  void add(long id, Map<Column, CellReading.Value> values) throws SQLException {
    for (Map.Entry<String, PreparedStatement> entry : inserts.entrySet()) {
      PreparedStatement insert = entry.getValue();
      int at = 1;
      if (ownId(entry.getKey())) {
        insert.setLong(at++, id);
      }
      for (Column column : fieldsWithoutId(entry.getKey()).values()) {
        insert.setObject(at++, values.get(column).stored());
      }
      insert.executeUpdate();
    }
  }

  void change(Map<Column, CellReading.Value> values) throws SQLException {
    int at = 1;
    for (Column column : list.columns()) {
      if (column != list.key()) {
        update.setObject(at++, values.get(column).stored());
      }
    }
    update.setObject(at, values.get(list.key()).stored());
    update.executeUpdate();
  }

  @Override
  public void close() throws SQLException {
    for (PreparedStatement insert : inserts.values()) {
      insert.close();
    }
    if (update != null) {
      update.close();
    }
  }
}
