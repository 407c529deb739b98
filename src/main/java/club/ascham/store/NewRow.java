package club.ascham.store;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A fact about to be kept: a row of a table, each value beside the name of its column. Facts are
 * written once and never changed, so that they need no entity; what changes is one.
 */
public final class NewRow {
  private final String table;
  private final Map<String, Object> values = new LinkedHashMap<>();

  private NewRow(String table) {
    this.table = table;
  }

  /**
   * @param table whose rows are numbered by {@code id}
   */
  public static NewRow of(String table) {
    return new NewRow(table);
  }

  /**
   * @param value null: there is none
   */
  public NewRow with(String column, Object value) {
    if (values.containsKey(column)) {
      throw new IllegalArgumentException(table + "." + column + " has its value already");
    }
    values.put(column, value);
    return this;
  }

  String insert() {
    return "INSERT INTO %s (%s) VALUES (%s) RETURNING id"
        .formatted(
            table,
            String.join(", ", values.keySet()),
            String.join(", ", Collections.nCopies(values.size(), "?")));
  }

  Object[] values() {
    return values.values().toArray();
  }
}
