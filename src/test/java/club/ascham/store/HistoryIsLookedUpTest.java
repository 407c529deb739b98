package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.WholeStatements.Whole;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * After ten years a page or a save still looks up what it needs: no statement goes through a table
 * that grows with every loan, check or save. Read off the programs that SQLite makes of statements,
 * their triggers' among them: {@code Rewind} and {@code Next} on one cursor go through all of it.
 */
class HistoryIsLookedUpTest {
  private static final Set<String> HISTORY =
      Set.of(
          "adjustment",
          "bow_check",
          "change",
          "check_sign",
          "loan",
          "loan_line",
          "move",
          "moved",
          "personal",
          "receipt",
          "story",
          "story_about",
          "upkeep_record",
          "verdict_line");

  /** Where it may, by what is asked for there. */
  private static final Map<String, String> MAY =
      Map.ofEntries(
          Map.entry("backup/BackupList.lines", "the seals that entries bore before 1.0.0"),
          Map.entry("borrower/EraseBorrower.whoseTimeIsOver", "once a night"),
          Map.entry(
              "check/Checks.count", "how many pages there are: numbers alone, and none is read"),
          Map.entry("session/Sessions.count", "likewise"),
          Map.entry("worksheet/WorkRecords.count", "likewise"),
          Map.entry("story/RecordInFile.holdsSeal", "of a backup that is brought back"),
          Map.entry("story/Story.keepReasonsApart", "after an import"),
          Map.entry("story/VerifyRecord.reasons", "to verify is to look at all of it"),
          Map.entry("story/VerifyRecord.verify", "likewise"),
          Map.entry("story/Watch.tellWhatWasThere", "as a club begins"),
          Map.entry("story/Watch.isRecorded", "the first row answers"));

  @TempDir Path folder;

  @Test
  void noStatement_goesThroughAllThatEverHappened() throws Exception {
    Map<String, Set<String>> found = new TreeMap<>();
    int looked = 0;
    try (Connection file = migrated()) {
      Map<Integer, String> roots = roots(file);
      for (Whole one : WholeStatements.all()) {
        Set<String> gone = goneThrough(file, one.sql(), roots);
        gone.retainAll(HISTORY);
        if (!gone.isEmpty()) {
          found
              .computeIfAbsent(one.where().replace("club/ascham/", ""), where -> new TreeSet<>())
              .addAll(gone);
        }
        looked++;
      }
      // It would be seen.
      assertEquals(
          Set.of("change"),
          goneThrough(file, "SELECT 1 FROM change WHERE table_name = 'verdict_line'", roots));
      assertEquals(
          Set.of("loan_line"),
          goneThrough(file, "SELECT count(*) FROM loan_line WHERE shots > 3", roots));
    }
    assertTrue(looked > 250, "few were found: " + looked);
    Set<String> idle = new TreeSet<>(MAY.keySet());
    idle.removeAll(found.keySet());
    assertEquals(Set.of(), idle, "may, and does not");
    found.keySet().removeAll(MAY.keySet());
    assertEquals(Map.of(), found);
  }

  /** Whatever writes a row: its triggers look something up, or are held up by the years. */
  @Test
  void noTrigger_goesThroughAllThatEverHappened() throws Exception {
    Map<String, Set<String>> found = new TreeMap<>();
    try (Connection file = migrated()) {
      Map<Integer, String> roots = roots(file);
      Rows rows = RowsInFile.of(file);
      for (String table :
          rows.texts(
              "SELECT DISTINCT tbl_name FROM sqlite_master WHERE type = 'trigger' AND tbl_name IN (SELECT name FROM sqlite_master WHERE type = 'table')")) {
        String columns =
            rows.texts("SELECT name FROM pragma_table_info(?1)", table).stream()
                .map("\"%1$s\" = \"%1$s\""::formatted)
                .collect(Collectors.joining(", "));
        for (String sql :
            List.of(
                "INSERT INTO \"%s\" DEFAULT VALUES".formatted(table),
                "UPDATE \"%s\" SET %s WHERE rowid = 1".formatted(table, columns))) {
          Set<String> gone = goneThrough(file, sql, roots);
          gone.retainAll(HISTORY);
          if (!gone.isEmpty()) {
            found.computeIfAbsent(table, t -> new TreeSet<>()).addAll(gone);
          }
        }
      }
    }
    assertEquals(Map.of(), found);
  }

  private Connection migrated() throws SQLException {
    String url = "jdbc:sqlite:" + folder.resolve("club.db");
    Schema.of(url).load().migrate();
    return DriverManager.getConnection(url);
  }

  /** Tables by the pages at which they, and those indices that hold all their rows, begin. */
  private static Map<Integer, String> roots(Connection file) throws SQLException {
    Map<Integer, String> roots = new HashMap<>();
    try (Statement statement = file.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "SELECT rootpage, iif(name = 'change_of_row', 'change by row', tbl_name) FROM sqlite_master WHERE type = 'table' OR (type = 'index' AND coalesce(sql, '') NOT LIKE '% WHERE %')")) {
      while (rows.next()) {
        roots.put(rows.getInt(1), rows.getString(2));
      }
    }
    return roots;
  }

  private static Set<String> goneThrough(Connection file, String sql, Map<Integer, String> roots)
      throws SQLException {
    Map<Integer, String> open = new HashMap<>();
    Set<Integer> rewound = new HashSet<>();
    Set<String> gone = new TreeSet<>();
    try (Statement statement = file.createStatement();
        ResultSet steps = statement.executeQuery("EXPLAIN " + sql)) {
      while (steps.next()) {
        int cursor = steps.getInt("p1");
        switch (steps.getString("opcode")) {
          case "Init" -> {
            open.clear();
            rewound.clear();
          }
          case "OpenRead", "OpenWrite", "ReopenIdx" ->
              open.put(cursor, roots.get(steps.getInt("p2")));
          case "OpenEphemeral", "OpenAutoindex", "OpenPseudo", "VOpen", "SorterOpen" ->
              open.remove(cursor);
          case "Rewind" -> rewound.add(cursor);
          case "SeekGE", "SeekGT", "SeekLE", "SeekLT" -> {
            // Of the record's index by table and row, the table alone is all that table ever was.
            if ("change by row".equals(open.get(cursor)) && "1".equals(steps.getString("p4"))) {
              gone.add("change");
            }
          }
          case "Next" -> {
            if (rewound.contains(cursor) && open.get(cursor) != null) {
              gone.add(open.get(cursor));
            }
          }
          default -> {}
        }
      }
    }
    return gone;
  }
}
