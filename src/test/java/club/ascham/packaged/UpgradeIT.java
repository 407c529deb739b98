package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.DataFolder;
import club.ascham.store.SqliteFile;
import club.ascham.story.OlderClub;
import io.quarkus.elytron.security.common.BcryptUtil;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The steps that the README writes down, and its way back, on a folder from before 1.0.0 and on one
 * whose schema lacks the newest migration.
 */
class UpgradeIT {
  private static final String OLDER = "036";
  private static final String NAME = "Ann Before";

  private static final Path NEWEST =
      Path.of("migrations", "common", "V118__what_is_asked_for_by_its_time.sql");

  @TempDir Path folder;
  private Path data;
  private Path aside;

  /** Step 1: the older program is stopped, and the whole folder copied. */
  @BeforeEach
  void stoppedAndCopied() throws Exception {
    data = folder.resolve("data");
    aside = folder.resolve("before");
    OlderClub.in(new DataFolder(data), OLDER, BcryptUtil.bcryptHash("demo-fleet", 4), NAME);
    copy(data, aside);
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
  }

  private List<String> backups() throws IOException {
    try (Stream<Path> files = Files.list(data.resolve("backups"))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /** Step 3, of a folder from before. Answers the file of before. */
  private Path carriedOver() throws Exception {
    try (PackagedServer server = PackagedServer.club(data)) {
      throw new AssertionError("it started\n" + server.log());
    } catch (PackagedServer.DidNotStart refused) {
      assertTrue(
          refused
              .getMessage()
              .contains("carry it over once with: java -jar quarkus-run.jar carry-over " + data),
          refused.getMessage());
      assertFalse(refused.getMessage().contains("\tat "), refused.getMessage());
    }
    assertEquals(36, schemaOf(data.resolve("ascham.db")), "it was left as it is");
    RestoreCommand.Ended done = RestoreCommand.carryOver(data);
    assertEquals(0, done.code(), done.said());
    assertTrue(done.said().contains("Its record is whole, "), done.said());
    Path kept = data.resolve("ascham-before-1.0.0.db");
    assertTrue(done.said().contains("is kept in " + kept), done.said());
    assertEquals(36, schemaOf(kept), "as it was");
    return kept;
  }

  /** Step 4: what there is to see. */
  private void looksRight(PackagedServer server) throws Exception {
    assertTrue(server.log().contains("is open."), server::log);
    ApiCaller officer = server.as("officer");
    assertEquals(200, officer.get("/q/health/ready").status());
    assertEquals(200, officer.get("/q/health/well").status());
    officer.findsTheRecordWhole();
    assertEquals("[]", officer.get("/api/server").body().path("items").toString());
    assertTrue(officer.get("/api/borrowers").body().toString().contains(NAME));
    try (Ledger ledger = Ledger.of(data)) {
      ledger.isSound();
      assertEquals(
          1,
          ledger.number(
              "SELECT count(*) FROM story WHERE sentence LIKE 'Carried over into the file of Ascham"
                  + " 1.0.0: the record of before was whole, 2 entries up to seal %'"));
      assertTrue(
          ledger.number("SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history") > 100);
    }
  }

  private void startsAndLooksRight() throws Exception {
    try (PackagedServer server = PackagedServer.club(data)) {
      looksRight(server);
      server.stop();
    }
  }

  private static long schemaOf(Path file) throws SQLException {
    try (Connection connection = SqliteFile.open(file);
        Statement statement = connection.createStatement();
        ResultSet found =
            statement.executeQuery(
                "SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history")) {
      return found.getLong(1);
    }
  }

  @Test
  void aFolderFromBefore_isCarriedOver_andAnswers() throws Exception {
    carriedOver();
    startsAndLooksRight();
    RestoreCommand.Ended again = RestoreCommand.carryOver(data);
    assertEquals(0, again.code(), again.said());
    assertTrue(again.said().startsWith("It is done: "), again.said());
    startsAndLooksRight();
  }

  @Test
  void killedAtSomeMoment_theFolderIsAsItWas_orDone_andTheNextRunEndsIt() throws Exception {
    for (int wait = 400; wait <= 2_800; wait += 600) {
      RestoreCommand.carryOverKilledAfter(data, Duration.ofMillis(wait));
      Path file = data.resolve("ascham.db");
      long schema = schemaOf(file);
      assertTrue(schema == 36 || schema > 100, "schema " + schema + " after " + wait + " ms");
      try (Ledger ledger = Ledger.of(data)) {
        assertEquals(List.of("ok"), ledger.texts("PRAGMA integrity_check"));
        assertEquals(
            1, ledger.number("SELECT count(*) FROM story WHERE sentence = 'Entered a borrower.'"));
      }
    }
    RestoreCommand.Ended done = RestoreCommand.carryOver(data);
    assertEquals(0, done.code(), done.said());
    startsAndLooksRight();
    try (Stream<Path> left = Files.list(data)) {
      assertEquals(
          List.of(),
          left.map(one -> one.getFileName().toString())
              .filter(name -> name.startsWith("ascham.db."))
              .toList());
    }
  }

  @Test
  void theWayBack_theFileOfBefore_isBroughtBackByTheCommand() throws Exception {
    Path kept = carriedOver();
    startsAndLooksRight();
    RestoreCommand.Ended back = RestoreCommand.run(data, kept);
    assertEquals(0, back.code(), back.said());
    assertTrue(back.said().contains("carry it over with: "), back.said());
    assertEquals(36, schemaOf(data.resolve("ascham.db")), "what the older program opens");
    Files.delete(kept);
    carriedOver();
    startsAndLooksRight();
  }

  @Test
  void theWayBack_theCopiedFolder_startsAgain() throws Exception {
    carriedOver();
    startsAndLooksRight();
    data = aside;
    assertEquals(36, schemaOf(data.resolve("ascham.db")));
    carriedOver();
    startsAndLooksRight();
  }

  /** As a program had left it that did not know the last migration there is yet. */
  private void takeBackTheNewestMigration() throws IOException, SQLException {
    try (Connection connection = SqliteFile.open(data.resolve("ascham.db"));
        Statement statement = connection.createStatement()) {
      Matcher made = Pattern.compile("CREATE INDEX (\\w+)").matcher(Files.readString(NEWEST));
      while (made.find()) {
        statement.execute("DROP INDEX " + made.group(1));
      }
      assertEquals(
          1,
          statement.executeUpdate(
              "DELETE FROM flyway_schema_history WHERE version = '118' AND installed_rank >= (SELECT"
                  + " max(installed_rank) FROM flyway_schema_history WHERE version IS NOT NULL)"));
    }
  }

  @Test
  void anOlderSchema_isBackedUp_broughtUpToDate_andAnswers() throws Exception {
    carriedOver();
    takeBackTheNewestMigration();
    String before;
    try (PackagedServer server = PackagedServer.club(data)) {
      looksRight(server);
      before = backupFromBefore();
      assertTrue(server.log().contains("Backup " + before + " is made and sound"), server::log);
      server.stop();
    }
    assertEquals(117, schemaOf(data.resolve("backups").resolve(before)), "as it was");
    startsAndLooksRight();
    assertEquals(1, backups().size(), "the next start has nothing to bring up to date");
    RestoreCommand.Ended back = RestoreCommand.run(data, data.resolve("backups").resolve(before));
    assertEquals(0, back.code(), back.said());
    assertEquals(117, schemaOf(data.resolve("ascham.db")), "what the older program opens");
    startsAndLooksRight();
  }

  private String backupFromBefore() throws Exception {
    List<String> before =
        backups().stream().filter(name -> name.contains("-before-V118.db")).toList();
    assertEquals(1, before.size(), backups()::toString);
    try (Ledger ledger = Ledger.of(data)) {
      assertEquals(
          1,
          ledger.number(
              "SELECT count(*) FROM story WHERE sentence LIKE 'Made a backup before the migration"
                  + " V118, %'"));
    }
    return before.get(0);
  }
}
