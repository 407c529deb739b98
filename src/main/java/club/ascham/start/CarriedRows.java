package club.ascham.start;

import club.ascham.store.Rows;
import club.ascham.store.RowsInFile;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

/**
 * Every row of one file in the tables of another, while no trigger watches: what is copied was
 * judged when it was written, and is no change.
 */
final class CarriedRows implements AutoCloseable {
  /** The columns that are there now and were not before: the number that a row had unsaid. */
  private static final String NUMBER = "id";

  private record Trigger(String name, String sql) {}

  private final Connection file;
  private final Rows rows;
  private final List<Trigger> triggers;

  private CarriedRows(Connection file, Path from) throws SQLException {
    this.file = file;
    this.rows = RowsInFile.of(file);
    // Compared as a whole once all is in.
    rows.change("PRAGMA foreign_keys = OFF");
    rows.change("ATTACH ?1 AS before", from.toAbsolutePath().toString());
    file.setAutoCommit(false);
    triggers =
        rows.list(Trigger.class, "SELECT name, sql FROM main.sqlite_master WHERE type = 'trigger'");
  }

  static CarriedRows between(Connection file, Path from) throws SQLException {
    return new CarriedRows(file, from);
  }

  void copy() {
    triggers.forEach(trigger -> rows.change("DROP TRIGGER main." + trigger.name()));
    List<String> tables = tables("main");
    if (!tables.equals(tables("before"))) {
      throw new IllegalStateException("other tables than before: " + tables("before"));
    }
    for (String table : tables) {
      copy(table);
    }
  }

  private List<String> tables(String of) {
    return rows.texts(
        "SELECT name FROM %s.sqlite_master WHERE type = 'table' AND name NOT GLOB 'sqlite_*' AND name NOT GLOB 'flyway_*' ORDER BY name"
            .formatted(of));
  }

  private List<String> columns(String table, String of) {
    return rows.texts("SELECT name FROM pragma_table_info(?1, ?2) ORDER BY cid", table, of);
  }

  private void copy(String table) {
    List<String> now = columns(table, "main");
    List<String> earlier = columns(table, "before");
    if (!now.containsAll(earlier)) {
      throw new IllegalStateException(table + " would lose one of " + earlier);
    }
    String into = quoted(now);
    String from =
        String.join(
            ", ",
            now.stream()
                .map(
                    column ->
                        earlier.contains(column)
                            ? quoted(List.of(column))
                            : numberOf(table, column))
                .toList());
    rows.change("DELETE FROM main.\"%s\"".formatted(table));
    rows.change(
        "INSERT INTO main.\"%1$s\" (%2$s) SELECT %3$s FROM before.\"%1$s\""
            .formatted(table, into, from));
    long lost =
        rows.number(
            "SELECT abs((SELECT count(*) FROM main.\"%1$s\") - (SELECT count(*) FROM before.\"%1$s\")) + (SELECT count(*) FROM (SELECT %3$s FROM before.\"%1$s\" EXCEPT SELECT %2$s FROM main.\"%1$s\"))"
                .formatted(table, into, from));
    if (lost > 0) {
      throw new IllegalStateException(lost + " rows of " + table + " are not as they were");
    }
  }

  private static String numberOf(String table, String column) {
    if (!column.equals(NUMBER)) {
      throw new IllegalStateException("nothing is known for " + column + " of " + table);
    }
    return "rowid";
  }

  private static String quoted(List<String> columns) {
    return String.join(", ", columns.stream().map(column -> "\"" + column + "\"").toList());
  }

  /** All that was done is on the disk when this returns. */
  void done() throws SQLException {
    triggers.forEach(trigger -> rows.change(trigger.sql()));
    file.commit();
  }

  @Override
  public void close() throws SQLException {
    file.rollback();
    file.setAutoCommit(true);
  }
}
