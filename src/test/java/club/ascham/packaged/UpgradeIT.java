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
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The three steps that the README writes down, and its way back, on a folder of an older program.
 */
class UpgradeIT {
  private static final String OLDER = "036";
  private static final String NAME = "Ann Before";

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

  /** Step 3: what there is to see. Answers the file name of the backup from before. */
  private String looksRight(PackagedServer server) throws Exception {
    assertTrue(server.log().contains("is open."), server::log);
    ApiCaller officer = server.as("officer");
    assertEquals(200, officer.get("/q/health/ready").status());
    assertEquals(200, officer.get("/q/health/well").status());
    officer.findsTheRecordWhole();
    assertEquals("[]", officer.get("/api/server").body().path("items").toString());
    assertTrue(officer.get("/api/borrowers").body().toString().contains(NAME));
    List<String> before =
        backups().stream().filter(name -> name.contains("-before-V037.db")).toList();
    assertFalse(before.isEmpty(), backups()::toString);
    try (Ledger ledger = Ledger.of(data)) {
      ledger.isSound();
      assertEquals(
          1,
          ledger.number(
              "SELECT count(*) FROM story WHERE sentence LIKE 'Made a backup before the migration"
                  + " V037, %'"));
      assertTrue(
          ledger.number("SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history") > 36);
    }
    return before.get(before.size() - 1);
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
  void anOlderFolder_isBackedUp_broughtUpToDate_andAnswers() throws Exception {
    try (PackagedServer server = PackagedServer.club(data)) {
      String before = looksRight(server);
      assertTrue(server.log().contains("Backup " + before + " is made and sound"), server::log);
      assertEquals(36, schemaOf(data.resolve("backups").resolve(before)), "as it was");
      server.stop();
    }
    try (PackagedServer server = PackagedServer.club(data)) {
      looksRight(server);
      assertEquals(1, backups().size(), "the next start has nothing to bring up to date");
      server.stop();
    }
  }

  @Test
  void theWayBack_theBackupFromBefore_isBroughtBackByTheCommand() throws Exception {
    String before;
    try (PackagedServer server = PackagedServer.club(data)) {
      before = looksRight(server);
      server.stop();
    }
    RestoreCommand.Ended back = RestoreCommand.run(data, data.resolve("backups").resolve(before));
    assertEquals(0, back.code(), back.said());
    assertEquals(36, schemaOf(data.resolve("ascham.db")), "what the older program opens");
    try (PackagedServer server = PackagedServer.club(data)) {
      looksRight(server);
      server.stop();
    }
  }

  @Test
  void theWayBack_theCopiedFolder_startsAgain() throws Exception {
    try (PackagedServer server = PackagedServer.club(data)) {
      looksRight(server);
      server.stop();
    }
    data = aside;
    assertEquals(36, schemaOf(data.resolve("ascham.db")));
    try (PackagedServer server = PackagedServer.club(data)) {
      looksRight(server);
      server.stop();
    }
  }
}
