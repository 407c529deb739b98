package club.ascham.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.backup.BackupsOf;
import club.ascham.backup.Soundness;
import club.ascham.store.DataFolder;
import club.ascham.store.RowsOf;
import club.ascham.store.Schema;
import club.ascham.store.SqliteFile;
import club.ascham.story.HighWaterOf;
import club.ascham.story.VerifyOf;
import club.ascham.time.TestClock;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A data folder that 1.0.0 wrote opens in every later build, and its record stays whole. It is
 * never made anew: a club's folder isn't either. It was made with the demo club, by {@code
 * ASCHAM_DEMO=true ASCHAM_DATA_DIR=folder-of-1.0.0 java -jar quarkus-run.jar} of 1.0.0, ended as a
 * service manager ends it, and {@code gzip -9 ascham.db}.
 */
class FolderOfReleaseTest {
  private static final Path WRITTEN =
      Path.of("src/test/resources/club/ascham/start/folder-of-1.0.0");
  private static final String DIGEST =
      "2f65daf31669c063f97cc04ed4b3ff3839e5f92ed420ee450b7068502d99883e";

  @TempDir Path tmp;
  private DataFolder folder;

  @BeforeEach
  void aFolderOf100() throws IOException {
    folder = new DataFolder(Files.createDirectory(tmp.resolve("data")));
    try (InputStream file =
        new GZIPInputStream(Files.newInputStream(WRITTEN.resolve("ascham.db.gz")))) {
      Files.copy(file, folder.file());
    }
    Files.copy(WRITTEN.resolve("high-water-mark"), folder.highWaterMark());
  }

  @Test
  void theFile_isTheOneThat100Wrote() throws Exception {
    assertEquals(
        DIGEST,
        HexFormat.of()
            .formatHex(
                MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(folder.file()))));
  }

  @Test
  void itOpens_isBroughtUpToDate_andItsRecordIsWhole() throws Exception {
    Flyway flyway = Schema.of("jdbc:sqlite:" + folder.file() + "?foreign_keys=true").load();
    ClubsFile clubsFile =
        new ClubsFile(flyway, BackupsOf.folder(folder.path(), TestClock.running()));
    clubsFile.lookAt(folder);
    assertEquals(List.of(), HighWaterOf.opened(folder, null, TestClock.running()).unread());
    clubsFile.migrate();
    assertEquals(0, flyway.info().pending().length);
    assertInstanceOf(Soundness.Sound.class, Soundness.ofAll(folder.file()));
    try (Connection file = SqliteFile.open(folder.file())) {
      var found = VerifyOf.file(file).verify();
      assertEquals(List.of(), found.faults());
      assertTrue(found.entries() > 2_000, found.entries() + " entries");
      var rows = RowsOf.connection(file);
      assertEquals(414, rows.number("SELECT count(*) FROM item_standing"));
      assertTrue(rows.number("SELECT count(*) FROM verdict_line") > 500, "verdicts");
    }
  }
}
