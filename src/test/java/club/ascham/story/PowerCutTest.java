package club.ascham.story;

import static club.ascham.web.Program.sending;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.Settings;
import club.ascham.store.DataFolder;
import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import club.ascham.store.Scrubbing;
import club.ascham.store.SqliteFile;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The power is cut in the middle of writing: of the log of writes only so many bytes reached the
 * disk. Whatever that length, the file opens, holds every save whose last byte was there and no
 * part of another, and its record is whole.
 */
@QuarkusTest
@Order(2)
class PowerCutTest {
  private static final int CUTS = 200;
  private static final long SEED = Long.getLong("ascham.cut-seed", 1545);

  /** Small enough that SQLite does not fold the log into the file meanwhile. */
  private static final int SAVES = 25;

  @Inject Settings settings;
  @Inject Rows rows;
  @Inject Scrubbing scrubbing;
  @TempDir Path folder;

  @Test
  void cutAtAnyOfTwoHundredLengths_theFileHoldsJustWhatWasSavedBefore() throws Exception {
    DataFolder club = new DataFolder(settings.dataDir());
    scrubbing.atStart();
    assertEquals(0, Files.size(club.writeAheadLog()), "all is in the file");
    NavigableMap<Long, Long> newestEntryAtLength = new TreeMap<>();
    newestEntryAtLength.put(0L, rows.number("SELECT max(id) FROM story"));
    for (int i = 0; i < SAVES; i++) {
      sending("officer")
          .body(Map.of("name", "Power " + i, "contact", "p@example.org", "ageBand", "adult"))
          .post("/api/borrowers")
          .then()
          .statusCode(201);
      newestEntryAtLength.put(
          Files.size(club.writeAheadLog()), rows.number("SELECT max(id) FROM story"));
    }
    assertEquals(SAVES + 1, newestEntryAtLength.size(), "each save made the log longer");
    Path file = Files.copy(club.file(), folder.resolve("whole.db"));
    Path log = Files.copy(club.writeAheadLog(), folder.resolve("whole.db-wal"));

    Random random = new Random(SEED);
    int inTheMiddleOfASave = 0;
    for (int cut = 0; cut < CUTS; cut++) {
      long length = random.nextLong(Files.size(log) + 1);
      long expected = newestEntryAtLength.floorEntry(length).getValue();
      inTheMiddleOfASave += newestEntryAtLength.containsKey(length) ? 0 : 1;
      assertEquals(
          expected,
          newestEntryAfter(file, log, length, newestEntryAtLength.get(0L)),
          "cut at " + length);
    }
    assertTrue(inTheMiddleOfASave > CUTS / 2, "the cuts fell between saves");
  }

  /** Opens a copy with so much of the log, and looks through it. */
  private long newestEntryAfter(Path file, Path log, long length, long since) throws Exception {
    Path copy = folder.resolve("cut.db");
    Path copyOfLog = folder.resolve("cut.db-wal");
    Files.deleteIfExists(folder.resolve("cut.db-shm"));
    Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
    Files.copy(log, copyOfLog, StandardCopyOption.REPLACE_EXISTING);
    shorten(copyOfLog, length);
    try (Connection connection = SqliteFile.open(copy)) {
      Rows found = RowsOf.connection(connection);
      assertEquals(List.of("ok"), found.texts("PRAGMA integrity_check"), "cut at " + length);
      assertEquals(List.of(), found.texts("PRAGMA foreign_key_check"), "cut at " + length);
      assertEquals(0, found.number("SELECT count(*) FROM story WHERE hash IS NULL"));
      assertTrue(chainIsWhole(found, since), "cut at " + length);
      return found.number("SELECT max(id) FROM story");
    }
  }

  /** Every entry since the log began is sealed upon the one before it. */
  private static boolean chainIsWhole(Rows found, long since) {
    String before = found.texts("SELECT hash FROM story WHERE id = ?1", since).get(0);
    for (SealedEntries.Entry entry : new SealedEntries(found).after(since)) {
      if (!Chain.seal(before, entry.entry()).equals(entry.seal())) {
        return false;
      }
      before = entry.seal();
    }
    return true;
  }

  private static void shorten(Path file, long length) throws IOException {
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
      bytes.setLength(length);
    }
  }
}
