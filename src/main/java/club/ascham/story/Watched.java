package club.ascham.story;

import club.ascham.store.Rows;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A table whose every change is recorded: the SQL that watches it and the SQL that compares it with
 * what was recorded. A row is known by its number, which SQLite calls its rowid: each such table
 * has it as its key.
 */
record Watched(String table, List<String> columns) {
  /**
   * Not facts of the club: the record itself, what is reckoned from facts, and what a process needs
   * for a while.
   */
  static final Set<String> LEFT_OUT =
      Set.of(
          "story",
          "story_about",
          "change",
          "personal",
          "upkeep_plan",
          "idempotency_key",
          "kept_answer",
          "session",
          "clock_offset",
          "taking_in",
          "name_stays",
          "password_link",
          "code_taken",
          "recovery_code");

  /**
   * What says who someone is, and free text, which may name them; by table: kept apart from the
   * chain, so that it can be erased. What a check saw is not among it: three rows a check, nearly
   * always in the words of our own list.
   */
  private static final Map<String, Set<String>> PERSONAL =
      Map.ofEntries(
          Map.entry("borrower", Set.of("name", "contact", "member_no", "guardian")),
          Map.entry("loan", Set.of("leader", "override_why", "override_coach", "deposit_kept_why")),
          Map.entry("session_archer", Set.of("override_why", "override_coach")),
          Map.entry("account", Set.of("name")),
          Map.entry("item", Set.of("maker", "model", "batch", "serial", "notes", "retired_note")),
          Map.entry("riser", Set.of("limb_fitting", "limb_model")),
          Map.entry("limbs", Set.of("limb_fitting", "serial_upper", "serial_lower")),
          Map.entry("kit_item", Set.of("size")),
          Map.entry("receipt", Set.of("words")),
          Map.entry("report", Set.of("words", "answer_words")),
          Map.entry("bow_check", Set.of("correction_why")),
          Map.entry("adjustment", Set.of("words")),
          Map.entry("accident", Set.of("words", "end_why")),
          Map.entry(
              "withdrawal",
              Set.of("why", "release_why", "no_work_why", "looked_at", "looked_by_name")),
          Map.entry("upkeep_record", Set.of("found", "measured", "parts_used")),
          Map.entry("upkeep_task", Set.of("why")));

  /** That these changed is recorded, never what they are. */
  private static final Set<String> SECRET =
      Set.of("password_hash", "access_key_hash", "sealed_secret");

  private static final String NEXT_STORY = "(SELECT coalesce(max(id), 0) + 1 FROM story)";
  private static final UnaryOperator<String> NOTHING = column -> "NULL";

  private record Column(String table, String name) {}

  /** Every table of the file that holds facts of the club. */
  static List<Watched> all(Rows rows) {
    return rows
        .list(
            Column.class,
            """
            SELECT t.name AS "table", c.name FROM pragma_table_list t JOIN pragma_table_info(t.name) c
             WHERE t.schema = 'main' AND t.type = 'table' AND t.name NOT GLOB 'sqlite_*'
               AND t.name NOT GLOB 'flyway_*' ORDER BY t.name, c.cid""")
        .stream()
        .filter(column -> !LEFT_OUT.contains(column.table()))
        .collect(
            Collectors.groupingBy(
                Column::table,
                LinkedHashMap::new,
                Collectors.mapping(Column::name, Collectors.toList())))
        .entrySet()
        .stream()
        .map(table -> new Watched(table.getKey(), table.getValue()))
        .toList();
  }

  static boolean isPersonal(String table, String column) {
    return PERSONAL.getOrDefault(table, Set.of()).contains(column);
  }

  /** A trigger by its name. */
  record Trigger(String name, String sql) {}

  List<Trigger> triggers() {
    return List.of(
        trigger("INSERT", "new", NOTHING, in("new")),
        trigger("UPDATE", "new", in("old"), in("new")),
        trigger("DELETE", "old", in("old"), NOTHING));
  }

  /** Records the rows as they are, as if each were written now. */
  String recordOfWhatIsThere() {
    return "INSERT INTO change (story_id, table_name, row_id, what) SELECT %s, '%s', t.rowid, %s FROM \"%s\" t"
        .formatted(NEXT_STORY, table, changedFields(NOTHING, in("t")), table);
  }

  /** As {@link #recordOfWhatIsThere}, and after it, the fields that are kept apart. */
  List<String> personalRecordOfWhatIsThere() {
    return personal().stream()
        .map(
            field ->
                """
                INSERT INTO personal (change_id, field, salt, value)
                SELECT c.id, '%1$s', hex(randomblob(16)), json_array(NULL, t.%1$s)
                  FROM "%2$s" t JOIN change c ON c.table_name = '%2$s' AND c.row_id = t.rowid
                 WHERE t.%1$s IS NOT NULL"""
                    .formatted(field, table))
        .toList();
  }

  /** Of a row: its number, a field, what was last recorded of it, and what is found in it. */
  String differences() {
    return differing()
        + "SELECT row_id, key AS field, CAST(recorded AS TEXT) AS recorded, CAST(found AS TEXT) AS found FROM differing ORDER BY 1, 2";
  }

  /** Records, with the entry so numbered, what differs in fields that are not kept apart. */
  String recordOfWhatDiffers() {
    return "INSERT INTO change (story_id, table_name, row_id, what) "
        + differing()
        + "SELECT ?1, '%s', row_id, json_group_object(key, json_array(recorded, found)) FROM differing WHERE key NOT IN (%s) GROUP BY row_id ORDER BY row_id"
            .formatted(
                table,
                personal().stream().map(c -> "'" + c + "'").collect(Collectors.joining(", ")));
  }

  /**
   * Fields that are not what was last recorded of them. One statement, so that it sees one moment.
   * A column that a migration took away has nothing to compare.
   */
  private String differing() {
    return """
    WITH told AS (
      SELECT c.row_id, e.key, e.value ->> 1 AS val, c.id AS change_id, 0 AS erased
        FROM change c, json_each(c.what) e WHERE c.table_name = '%1$s' AND e.key IN (%3$s)
      UNION ALL
      SELECT c.row_id, p.field, p.value ->> 1, c.id, p.value IS NULL
        FROM change c JOIN personal p ON p.change_id = c.id WHERE c.table_name = '%1$s' AND p.field IN (%3$s)),
    said AS (
      SELECT row_id, key, val, erased FROM (
        SELECT told.*, row_number() OVER (PARTITION BY row_id, key ORDER BY change_id DESC) AS newest FROM told)
       WHERE newest = 1),
    held AS (
      SELECT t.rowid AS row_id, e.key, e.value AS val
        FROM "%1$s" t, json_each(json_object(%2$s)) e),
    differing AS (
      SELECT row_id, key, max(said) AS recorded, max(found) AS found
        FROM (SELECT row_id, key, val AS said, NULL AS found, erased FROM said
              UNION ALL SELECT row_id, key, NULL, val, 0 FROM held)
       GROUP BY row_id, key HAVING max(said) IS NOT max(found) AND max(erased) = 0)
    """
        .formatted(
            table,
            columns.stream()
                .map(c -> "'" + c + "', " + shown(c, in("t")))
                .collect(Collectors.joining(", ")),
            columns.stream().map(c -> "'" + c + "'").collect(Collectors.joining(", ")));
  }

  private Trigger trigger(
      String event, String row, UnaryOperator<String> from, UnaryOperator<String> to) {
    String name = "record_" + event.toLowerCase(Locale.ROOT) + "_" + table;
    String anyDiffers =
        columns.stream().map(c -> differs(c, from, to)).collect(Collectors.joining(" OR "));
    String sql =
        "CREATE TRIGGER %s AFTER %s ON \"%s\" WHEN %s BEGIN INSERT INTO change (story_id, table_name, row_id, what) VALUES (%s, '%s', %s.rowid, %s);%s END"
            .formatted(
                name,
                event,
                table,
                anyDiffers,
                NEXT_STORY,
                table,
                row,
                changedFields(from, to),
                personal().stream()
                    .sorted()
                    .map(c -> keepApart(c, from, to))
                    .collect(Collectors.joining()));
    return new Trigger(name, sql);
  }

  /**
   * JSON of the fields that differ, put together as text: SQLite's own functions for objects would
   * parse each part again, in the middle of every save.
   */
  private String changedFields(UnaryOperator<String> from, UnaryOperator<String> to) {
    return columns.stream()
        .filter(c -> !personal().contains(c))
        .map(
            c ->
                "iif(%s, ',\"%s\":[' || json_quote(%s) || ',' || json_quote(%s) || ']', '')"
                    .formatted(differs(c, from, to), c, shown(c, from), shown(c, to)))
        .collect(Collectors.joining(" || ", "'{' || substr(", ", 2) || '}'"))
        .replace("json_quote(NULL)", "'null'");
  }

  /** Those that it has: a file from before may lack one. */
  private List<String> personal() {
    return PERSONAL.getOrDefault(table, Set.of()).stream().filter(columns::contains).toList();
  }

  private static String keepApart(
      String column, UnaryOperator<String> from, UnaryOperator<String> to) {
    return " INSERT INTO personal (change_id, field, salt, value) SELECT (SELECT max(id) FROM change), '%s', hex(randomblob(16)), json_array(%s, %s) WHERE %s;"
        .formatted(column, from.apply(column), to.apply(column), differs(column, from, to));
  }

  private static String differs(
      String column, UnaryOperator<String> from, UnaryOperator<String> to) {
    return from.apply(column) + " IS NOT " + to.apply(column);
  }

  private static String shown(String column, UnaryOperator<String> value) {
    String sql = value.apply(column);
    return SECRET.contains(column) && value != NOTHING
        ? "iif(" + sql + " IS NULL, NULL, 'secret')"
        : sql;
  }

  private static UnaryOperator<String> in(String row) {
    return column -> row + ".\"" + column + "\"";
  }
}
