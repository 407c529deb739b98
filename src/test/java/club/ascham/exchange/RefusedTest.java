package club.ascham.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever rule of the database speaks, a file is told in words for people. */
class RefusedTest {
  private static final Pattern RAW =
      Pattern.compile("SQLITE|constraint|NULL|CHECK|[a-z]_[a-z]|[<>=()]|length|BETWEEN");

  @TempDir Path folder;

  /** What the driver says of each constraint of the list's tables that a row of it may break. */
  private static List<String> constraints(CsvList list, Statement file) throws SQLException {
    List<String> all = new ArrayList<>();
    for (String table : list.tables()) {
      for (String check :
          checks(text(file, "SELECT sql FROM sqlite_master WHERE name = '" + table + "'"))) {
        if (list.columns().stream()
            .anyMatch(c -> c.table().equals(table) && names(check, c.field()))) {
          all.add("A CHECK constraint failed (CHECK constraint failed: " + check + ")");
        }
      }
      for (String columns :
          texts(
              file,
              "SELECT (SELECT group_concat('%1$s.' || c.name, ', ') FROM pragma_index_info(i.name) c) FROM pragma_index_list('%1$s') i WHERE i.\"unique\""
                  .formatted(table))) {
        all.add("A UNIQUE constraint failed (UNIQUE constraint failed: " + columns + ")");
      }
      for (Column column : list.columns()) {
        if (column.table().equals(table)) {
          all.add(
              "A NOT NULL constraint failed (NOT NULL constraint failed: %s.%s)"
                  .formatted(table, column.field()));
        }
      }
      if (!texts(file, "SELECT \"table\" FROM pragma_foreign_key_list('" + table + "')")
          .isEmpty()) {
        all.add("A foreign key constraint failed (FOREIGN KEY constraint failed)");
      }
    }
    return all;
  }

  /** What stands between the brackets of each CHECK, as SQLite repeats it. */
  private static List<String> checks(String table) {
    List<String> found = new ArrayList<>();
    Matcher check = Pattern.compile("CHECK\\s*\\(").matcher(table);
    while (check.find()) {
      int open = 1;
      int at = check.end();
      for (; open > 0; at++) {
        open += table.charAt(at) == '(' ? 1 : table.charAt(at) == ')' ? -1 : 0;
      }
      found.add(table.substring(check.end(), at - 1).strip());
    }
    return found;
  }

  private static boolean names(String check, String field) {
    return Pattern.compile("\\b" + field + "\\b").matcher(check).find();
  }

  private static String text(Statement file, String sql) throws SQLException {
    return texts(file, sql).get(0);
  }

  private static List<String> texts(Statement file, String sql) throws SQLException {
    List<String> all = new ArrayList<>();
    try (ResultSet found = file.executeQuery(sql)) {
      while (found.next()) {
        all.add(found.getString(1));
      }
    }
    return all;
  }

  @Test
  void everyConstraintOfEveryList_hasItsSentence() throws SQLException {
    List<String> raw = new ArrayList<>();
    int seen = 0;
    try (EmptyClub club = EmptyClub.in(folder);
        Statement file = club.connection().createStatement()) {
      for (CsvList list : Lists.all()) {
        for (String constraint : constraints(list, file)) {
          String said =
              Refused.by(list, new SQLException("[SQLITE_CONSTRAINT] " + constraint))
                  .map(Refused::message)
                  .orElse(constraint);
          if (RAW.matcher(said).find()) {
            raw.add(list.name() + ": " + constraint + " → " + said);
          }
          seen++;
        }
      }
    }
    assertEquals(List.of(), raw);
    assertTrue(seen > 400, seen + " were seen");
  }

  @Test
  void everySentence_isOfOneConstraint() throws SQLException {
    List<String> spoken = new ArrayList<>();
    try (EmptyClub club = EmptyClub.in(folder);
        Statement file = club.connection().createStatement()) {
      for (CsvList list : Lists.all()) {
        spoken.addAll(constraints(list, file));
      }
      spoken.addAll(texts(file, "SELECT sql FROM sqlite_master WHERE type = 'trigger'"));
    }
    for (String one : spoken) {
      assertTrue(Refused.SAID.keySet().stream().filter(one::contains).count() <= 1, one);
    }
    assertEquals(
        List.of(),
        Refused.SAID.keySet().stream()
            .filter(key -> spoken.stream().noneMatch(one -> one.contains(key)))
            .toList());
  }

  @Test
  void whatStandsAgainstTheSameThingTwice_isSaidAtItsColumn() throws Exception {
    try (EmptyClub club = EmptyClub.in(folder);
        Statement file = club.connection().createStatement()) {
      club.take(EmptyClub.demoFiles(), 0);
      file.execute(
          "INSERT INTO accident (id, rig_id, happened_at, recorded_at, told_by, words) VALUES (1, 1, '2026-01-02T18:30:00.000Z', '2026-01-02T18:30:00.000Z', 1, 'A limb broke.')");
      file.execute("INSERT INTO accident_item (accident_id, item_id) VALUES (1, 1)");
      for (String list : List.of("report-parts", "accident-items")) {
        String[] lines = club.csv(list).split("\r\n");
        ImportReport report =
            club.take(
                EmptyClub.file(
                    "again.csv", lines[0] + "\n" + lines[1].replaceFirst("^[0-9]+", "") + "\n"));
        assertEquals("item", report.bad().get(0).column());
        assertEquals(
            "another row has the same %s and item".formatted(list.substring(0, list.indexOf('-'))),
            report.bad().get(0).message());
      }
    }
  }

  @Test
  void aFailureThatNoRuleSpoke_isNoFaultOfTheFile() {
    assertTrue(Refused.by(Lists.all().get(0), new SQLException("out of memory")).isEmpty());
  }
}
