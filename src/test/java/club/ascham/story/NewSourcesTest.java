package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A club that began before sources were named by title keeps its own, and its record stays whole.
 */
class NewSourcesTest {
  @TempDir Path folder;

  @Test
  void whatTheClubWrote_stays_andWhatChanged_isToldInOneSentence() throws SQLException {
    migrate("028");
    run(
        "INSERT INTO club (id, name, demo, brace_table) VALUES (1, 'Fen Archers', 0,"
            + " 'FRENCH_CLUB')",
        "UPDATE upkeep_rule SET source = 'Our own: ours.example.com' WHERE work ="
            + " 'ARROW_INSPECTION'",
        "INSERT INTO story (happened_at, recorded_at, sentence) VALUES ('2026-11-01T10:00:00.000Z',"
            + " '2026-11-01T10:00:00.000Z', 'Began.')");
    for (String table : List.of("upkeep_rule", "club")) {
      for (Watched.Trigger trigger : new Watched(table, columns(table)).triggers()) {
        run(trigger.sql());
      }
    }
    migrate("latest");
    assertEquals(
        List.of("Our own: ours.example.com"),
        texts("SELECT source FROM upkeep_rule WHERE source GLOB '*[.]com*'"));
    assertEquals(
        List.of("1"),
        texts("SELECT count(*) FROM club WHERE twists_source GLOB '*La Flèche Gasconne*'"));
    assertEquals(
        List.of(
            "Began.",
            "Sources that came with the program are named by title, institution and year; no rule"
                + " changed."),
        texts("SELECT sentence FROM story ORDER BY id"));
    assertEquals(
        List.of("club 1", "upkeep_rule 5"),
        texts(
            "SELECT table_name || ' ' || count(*) FROM change WHERE story_id = (SELECT max(id) FROM"
                + " story) GROUP BY table_name ORDER BY 1"));
    assertEquals(
        List.of("0"),
        texts("SELECT count(*) FROM change WHERE story_id > (SELECT max(id) FROM story)"));
  }

  @Test
  void aNewClub_isToldNothing() throws SQLException {
    migrate("latest");
    assertEquals(List.of("0"), texts("SELECT count(*) FROM story"));
    assertEquals(
        List.of("0"), texts("SELECT count(*) FROM upkeep_rule WHERE source GLOB '*[.]com*'"));
  }

  private String url() {
    return "jdbc:sqlite:" + folder.resolve("club.db");
  }

  private void migrate(String target) {
    Flyway.configure()
        .dataSource(url(), "", "")
        .locations("classpath:db/migration")
        .target(target)
        // The views are those of the newest tables: an older file has none of them yet.
        .repeatableSqlMigrationPrefix(target.equals("latest") ? "R" : "not-yet")
        .load()
        .migrate();
  }

  private List<String> columns(String table) throws SQLException {
    return texts("SELECT name FROM pragma_table_info('" + table + "')");
  }

  private void run(String... statements) throws SQLException {
    try (Connection connection = DriverManager.getConnection(url());
        Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql);
      }
    }
  }

  private List<String> texts(String sql) throws SQLException {
    List<String> texts = new ArrayList<>();
    try (Connection connection = DriverManager.getConnection(url());
        Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        texts.add(rows.getString(1));
      }
    }
    return texts;
  }
}
