package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What was deleted is in a file's free pages, in its slack and in its log, until it is scrubbed.
 */
class ScrubTest {
  private static final int PEOPLE = 3_000;
  private static final List<String> KEPT =
      List.of(
          "SELECT group_concat(id || name || note, ',') FROM (SELECT id, name, note FROM person ORDER BY 1)",
          "SELECT group_concat(n || word, ',') FROM (SELECT rowid AS n, word FROM loose ORDER BY 1)",
          "SELECT group_concat(day || n, ',') FROM (SELECT day, n FROM plain ORDER BY day)",
          "SELECT group_concat(sql, ';') FROM (SELECT sql FROM sqlite_master ORDER BY type, name)",
          "SELECT count(*) FROM told");

  @TempDir Path folder;
  private Path file;

  /** Names of all lengths come and go, as in years of lending; every fourth person stays. */
  @BeforeEach
  void aFileFromBefore() throws SQLException {
    file = folder.resolve("ascham.db");
    try (Connection club = before();
        Statement does = club.createStatement()) {
      does.execute("CREATE TABLE person (id INTEGER PRIMARY KEY, name TEXT, note TEXT) STRICT");
      does.execute("CREATE INDEX person_by_name ON person (name)");
      does.execute("CREATE TABLE loose (word TEXT PRIMARY KEY) STRICT");
      does.execute("CREATE TABLE plain (day TEXT PRIMARY KEY, n INTEGER) STRICT, WITHOUT ROWID");
      does.execute("CREATE TABLE told (what TEXT) STRICT");
      does.execute("CREATE VIEW named AS SELECT name FROM person");
      does.execute(
          "CREATE TRIGGER telling AFTER INSERT ON person BEGIN INSERT INTO told VALUES ('one came'); END");
      club.setAutoCommit(false);
      Random chance = new Random(11);
      for (int n = 1; n <= PEOPLE; n++) {
        does.execute(
            "INSERT INTO person VALUES (%d, '%d %s', '%s')"
                .formatted(n, chance.nextInt(1000), name(n), "x".repeat(chance.nextInt(300))));
        if (n % 3 == 0) {
          int other = 1 + chance.nextInt(n);
          does.execute(
              "UPDATE person SET note = '%s%s' WHERE id = %d"
                  .formatted(
                      name(other), "y".repeat(chance.nextInt(n % 9 == 0 ? 9000 : 400)), other));
        }
        does.execute("INSERT INTO loose (rowid, word) VALUES (%d, 'w%d')".formatted(n * 7, n));
      }
      does.execute("INSERT INTO plain VALUES ('2026-01-01', 1), ('2025-01-01', 2)");
      does.execute("DELETE FROM loose WHERE rowid % 3 = 0");
      erase(does);
      club.commit();
    }
  }

  private static void erase(Statement does) throws SQLException {
    does.execute("UPDATE person SET name = 'Borrower ' || id, note = '' WHERE id % 4 <> 0");
  }

  private static String name(int n) {
    return "Planted" + n + "Here";
  }

  /** As files were written before: nothing is wiped. */
  private Connection before() throws SQLException {
    return DriverManager.getConnection(
        "jdbc:sqlite:" + file + "?journal_mode=WAL&secure_delete=false");
  }

  private static long left(Path... files) throws IOException {
    StringBuilder all = new StringBuilder();
    for (Path one : files) {
      all.append(
          Files.exists(one)
              ? new String(Files.readAllBytes(one), StandardCharsets.ISO_8859_1)
              : "");
    }
    String text = all.toString();
    return IntStream.rangeClosed(1, PEOPLE)
        .filter(n -> n % 4 != 0 && text.contains(name(n)))
        .count();
  }

  private Path log() {
    return Path.of(file + "-wal");
  }

  private static List<String> kept(Path file) throws SQLException {
    List<String> kept = new ArrayList<>();
    try (Connection club = SqliteFile.open(file);
        Statement asks = club.createStatement()) {
      for (String sql : KEPT) {
        try (ResultSet found = asks.executeQuery(sql)) {
          found.next();
          kept.add(found.getString(1));
        }
      }
    }
    return kept;
  }

  @Test
  void aFileFromBefore_losesWhatWasDeleted_andNotARowOrItsNumber() throws Exception {
    assertTrue(left(file) > PEOPLE / 2, "names are left in it: else this test shows nothing");
    assertTrue(Scrub.isOwed(file));
    List<String> before = kept(file);
    assertTrue(Scrub.run(file));
    assertEquals(0, left(file, log()));
    assertEquals(before, kept(file));
    assertFalse(Scrub.isOwed(file));
    assertEquals(List.of("ascham.db"), names());
  }

  private List<String> names() throws IOException {
    try (var found = Files.list(folder)) {
      return found.map(one -> one.getFileName().toString()).sorted().toList();
    }
  }

  /** Pages that SQLite lays out anew keep copies of cells in their slack. */
  @Test
  void secureDeletionAlone_leavesNames_soItIsNotEnough() throws Exception {
    for (String one : names()) {
      Files.delete(folder.resolve(one));
    }
    Files.deleteIfExists(file);
    secureFromTheBeginning();
    assertTrue(left(file) > 0);
    assertTrue(Scrub.run(file));
    assertEquals(0, left(file, log()));
  }

  private void secureFromTheBeginning() throws SQLException {
    try (Connection club = SqliteFile.open(file);
        Statement does = club.createStatement()) {
      try (ResultSet found = does.executeQuery("PRAGMA secure_delete")) {
        assertEquals(1, found.getInt(1), "our own connections wipe");
      }
      does.execute("CREATE TABLE person (id INTEGER PRIMARY KEY, name TEXT, note TEXT) STRICT");
      does.execute("CREATE INDEX person_by_name ON person (name)");
      club.setAutoCommit(false);
      Random chance = new Random(11);
      for (int n = 1; n <= PEOPLE; n++) {
        does.execute(
            "INSERT INTO person VALUES (%d, '%d %s', '%s')"
                .formatted(n, chance.nextInt(1000), name(n), "x".repeat(chance.nextInt(300))));
      }
      erase(does);
      club.commit();
    }
  }

  @Test
  void whoeverReads_readsOn_andHoldsTheLogUntilTheyAreDone() throws Exception {
    try (Connection reader = before();
        Statement asks = reader.createStatement()) {
      reader.setAutoCommit(false);
      try (ResultSet found = asks.executeQuery("SELECT count(*) FROM person")) {
        assertEquals(PEOPLE, found.getInt(1));
      }
      assertFalse(Scrub.run(file, 50), "the log can't be emptied while someone reads from it");
      try (ResultSet found = asks.executeQuery("SELECT name FROM person WHERE id = 4")) {
        assertTrue(found.getString(1).contains(name(4)));
      }
      reader.rollback();
      assertTrue(Scrub.emptyLog(file));
      assertEquals(0, left(file, log()));
    }
  }

  @Test
  void whoWritesNext_findsTheFileAsItWas() throws Exception {
    try (Connection pooled = before();
        Statement does = pooled.createStatement()) {
      does.execute("INSERT INTO person VALUES (90001, 'Before', '')");
      assertTrue(Scrub.run(file));
      does.execute("INSERT INTO person VALUES (90002, 'After', '')");
      try (ResultSet found = does.executeQuery("SELECT count(*) FROM told")) {
        assertEquals(PEOPLE + 2, found.getInt(1), "the triggers are there");
      }
      try (ResultSet found = does.executeQuery("PRAGMA integrity_check")) {
        assertEquals("ok", found.getString(1));
      }
    }
  }
}
