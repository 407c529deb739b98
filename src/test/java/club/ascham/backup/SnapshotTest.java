package club.ascham.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.OpenFile;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SnapshotTest {
  @TempDir Path folder;
  private SmallClub club;
  private Path copy;

  @BeforeEach
  void aClub() throws SQLException {
    club = SmallClub.in(folder.resolve("ascham.db"));
    copy = folder.resolve("copy.db");
  }

  @Test
  void aCopy_holdsWhatIsOnlyInTheLogOfWrites() throws Exception {
    try (SmallClub.Open open = club.open()) {
      open.tell("Told last.", "b".repeat(64));
      assertTrue(Files.size(Path.of(club.file() + "-wal")) > 0, "it is in the log");
      assertEquals("b".repeat(64), Snapshot.take(club.file(), copy).newestSeal());
    }
    assertInstanceOf(Soundness.Sound.class, Soundness.ofAll(copy));
    assertFalse(Files.exists(Path.of(copy + "-wal")));
  }

  @Test
  void aRowsNumber_staysWhatItWas_sinceTheRecordGoesByIt() throws Exception {
    try (SmallClub.Open open = club.open()) {
      open.run("CREATE TABLE loose (word TEXT) STRICT");
      open.run("INSERT INTO loose (rowid, word) VALUES (1, 'one'), (7, 'seven')");
      Snapshot.take(club.file(), copy);
    }
    try (SmallClub.Open open = new SmallClub(copy).open()) {
      assertEquals(7, open.number("SELECT max(rowid) FROM loose"));
    }
  }

  @Test
  void aCopyOfAFileFromBefore_holdsNothingThatWasDeletedThere() throws Exception {
    String name = "Planted Nobody Else";
    try (SmallClub.Open open = club.open()) {
      open.run("PRAGMA secure_delete = OFF");
      open.run("CREATE TABLE person (id INTEGER PRIMARY KEY, name TEXT) STRICT");
      open.run("INSERT INTO person VALUES (1, '" + name + "'), (2, 'Who stays')");
      open.run("DELETE FROM person WHERE id = 1");
      open.run("PRAGMA wal_checkpoint(TRUNCATE)");
      assertTrue(OpenFile.bytes(club.file()).contains(name), "SQLite left it in the page");
      Snapshot.take(club.file(), copy);
    }
    assertFalse(OpenFile.bytes(copy).contains(name));
    assertTrue(OpenFile.bytes(copy).contains("Who stays"));
    assertFalse(Files.exists(Path.of(copy + ".clean")));
  }

  @Test
  void aDamagedFile_makesNoBackup_andLeavesNothing() throws IOException {
    damage(club.file());
    Snapshot.NotMade failure =
        assertThrows(Snapshot.NotMade.class, () -> Snapshot.take(club.file(), copy));
    assertTrue(
        failure.getMessage().contains("damaged") || failure.getMessage().contains("not sound"),
        failure.getMessage());
    assertFalse(Files.exists(copy));
  }

  @Test
  void aDiskWithTooLittleRoom_isSaidWithFigures() {
    assertEquals(
        "The disk is full: a copy needs 4.2 MB, and 512 kB are free. Make room on the server’s disk.",
        Snapshot.tooLittle(4_200_000, 512_000));
    assertNull(Snapshot.tooLittle(4_200_000, 6_000_000));
  }

  @Test
  void whatIsNoClub_isNotSound() throws IOException {
    assertInstanceOf(Soundness.Unsound.class, Soundness.ofAll(folder.resolve("none.db")));
    Path text =
        Files.writeString(folder.resolve("text.db"), "not a database, far from it ".repeat(99));
    assertInstanceOf(Soundness.Unsound.class, Soundness.ofAll(text));
    Path empty = Files.createFile(folder.resolve("empty.db"));
    assertInstanceOf(Soundness.Unsound.class, Soundness.ofAll(empty));
  }

  @Test
  void aReferenceToNothing_isNotSound() throws SQLException {
    try (SmallClub.Open open = club.open()) {
      open.run("PRAGMA foreign_keys=OFF");
      open.run("INSERT INTO told_of VALUES (99)");
    }
    Soundness.Unsound found =
        assertInstanceOf(Soundness.Unsound.class, Soundness.ofAll(club.file()));
    assertEquals("Rows point to what is not there, in told_of.", found.why());
  }

  static void damage(Path file) throws IOException {
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
      for (long page = 1; page * 4096 < bytes.length(); page++) {
        bytes.seek(page * 4096);
        bytes.write(new byte[] {'X', 'X', 'X', 'X', 'X', 'X', 'X', 'X', 'X', 'X', 'X', 'X'});
      }
    }
  }
}
