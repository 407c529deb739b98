package club.ascham.exchange;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One list of the club as a file: which columns it has, and from which tables they come.
 *
 * @param name of the file, without {@code .csv}
 * @param title for people
 * @param tables the first holds the rows; a second one holds more of each row under the same id
 * @param fixed what every row of the list has without a column for it, by {@code table.field}
 * @param settings its rows are rules rather than records: an import changes the ones it finds
 * @param columns the first is the key that tells rows apart
 */
record CsvList(
    String name,
    String title,
    List<String> tables,
    Map<String, String> fixed,
    boolean settings,
    List<Column> columns) {

  static CsvList of(String name, String title, String table, Column... columns) {
    return new CsvList(name, title, List.of(table), Map.of(), false, List.of(columns));
  }

  /** Items of one kind: what every item has, with the columns of the kind's own table between. */
  static CsvList ofItems(
      String name, String title, String table, Map<String, String> fixed, List<Column> columns) {
    return new CsvList(name, title, List.of("item", table), fixed, false, columns);
  }

  /** The same with more columns after its own. */
  CsvList and(List<Column> more) {
    return new CsvList(
        name,
        title,
        tables,
        fixed,
        settings,
        Stream.concat(columns.stream(), more.stream()).toList());
  }

  CsvList asSettings() {
    return new CsvList(name, title, tables, fixed, true, columns);
  }

  Column key() {
    return columns.get(0);
  }

  List<String> header() {
    return columns.stream().map(Column::name).toList();
  }

  /** Whether these name its columns; what an export only tells may be missing. */
  boolean isOf(Set<String> names) {
    return Set.copyOf(header()).containsAll(names)
        && columns.stream().allMatch(c -> c.onlyTold() || names.contains(c.name()));
  }

  /** Whether its rows are items with codes. */
  boolean isItems() {
    return tables.get(0).equals("item");
  }

  /** Whether its rows are told apart by a number that the database can give. */
  boolean isNumbered() {
    return key().name().equals("number");
  }

  /** All rows in the order of their key. */
  String select() {
    String first = tables.get(0);
    StringBuilder sql = new StringBuilder("SELECT ");
    sql.append(String.join(", ", columns.stream().map(Column::selected).toList()));
    sql.append(" FROM ").append(first);
    for (String other : tables.subList(1, tables.size())) {
      sql.append(" JOIN ").append(other).append(" ON ");
      sql.append(other).append(".id = ").append(first).append(".id");
    }
    if (isNumbered()) {
      // Number 0 is the beginning of this club's own record: nothing to hand on.
      sql.append(" WHERE ").append(key().table()).append('.').append(key().field()).append(" > 0");
    }
    return sql.append(" ORDER BY ")
        .append(key().table())
        .append('.')
        .append(key().field())
        .toString();
  }
}
