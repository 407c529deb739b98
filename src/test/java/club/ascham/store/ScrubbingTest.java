package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.SettingsOf;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScrubbingTest {
  private static final String NAME = "Planted Nobody Else";

  @TempDir Path folder;
  private Connection club;
  private Scrubbing scrubbing;

  @BeforeEach
  void someoneIsKept() throws SQLException {
    club = SqliteFile.open(file());
    try (Statement does = club.createStatement()) {
      does.execute("PRAGMA journal_mode = WAL");
      does.execute("CREATE TABLE person (id INTEGER PRIMARY KEY, name TEXT) STRICT");
      does.execute("INSERT INTO person VALUES (1, '" + NAME + "')");
    }
    scrubbing =
        new Scrubbing(
            new SettingsOf(folder, ZoneId.of("Europe/London")),
            RowsOf.connection(club),
            new SameFile());
    scrubbing.atStart();
  }

  @AfterEach
  void close() throws SQLException {
    club.close();
  }

  private Path file() {
    return new DataFolder(folder).file();
  }

  private void erase() throws SQLException {
    club.setAutoCommit(false);
    try (Statement does = club.createStatement()) {
      does.execute("UPDATE person SET name = 'Borrower 1'");
    }
    scrubbing.onceSaved();
    club.commit();
    club.setAutoCommit(true);
  }

  private boolean isLeft() throws Exception {
    DataFolder data = new DataFolder(folder);
    return OpenFile.bytes(data.file()).contains(NAME)
        || OpenFile.bytes(data.writeAheadLog()).contains(NAME);
  }

  @Test
  void onceSaved_theFileAndItsLogHoldNothing() throws Exception {
    assertTrue(isLeft(), "it was there");
    erase();
    scrubbing.ifAsked();
    assertFalse(isLeft());
    assertEquals(Optional.empty(), scrubbing.worry());
  }

  @Test
  void whileSomeoneReads_anOfficerIsTold_andItIsTriedAgain() throws Exception {
    try (Connection reader = SqliteFile.open(file());
        Statement asks = reader.createStatement()) {
      reader.setAutoCommit(false);
      try (ResultSet found = asks.executeQuery("SELECT count(*) FROM person")) {
        assertEquals(1, found.getInt(1));
      }
      erase();
      scrubbing.ifAsked();
      assertEquals(Optional.of(Scrubbing.LOG_IS_READ), scrubbing.worry());
      assertTrue(isLeft(), "the sentence is true");
      reader.rollback();
    }
    scrubbing.again();
    assertEquals(Optional.empty(), scrubbing.worry());
    assertFalse(isLeft());
  }

  @Test
  void atAStart_thatCannotLookAtTheFile_nobodyIsSaidToBeErased() throws Exception {
    club.close();
    try (Connection other = SqliteFile.open(file());
        Statement holds = other.createStatement()) {
      holds.execute("PRAGMA locking_mode = EXCLUSIVE");
      holds.execute("BEGIN EXCLUSIVE");
      scrubbing.atStart();
      String said = scrubbing.worry().orElseThrow();
      assertTrue(said.startsWith(Scrubbing.NOT_LOOKED_AT), said);
      assertTrue(said.endsWith(FileTrouble.Kind.LOCKED.heading() + "."), said);
      holds.execute("ROLLBACK");
    }
    scrubbing.again();
    assertEquals(Optional.empty(), scrubbing.worry());
  }

  @Test
  void atAStart_whileSomeoneReads_itIsOnlySaidThatTheLogMayHoldSomeone() throws Exception {
    try (Connection reader = SqliteFile.open(file());
        Statement asks = reader.createStatement()) {
      reader.setAutoCommit(false);
      try (ResultSet found = asks.executeQuery("SELECT count(*) FROM person")) {
        assertEquals(1, found.getInt(1));
      }
      try (Statement does = club.createStatement()) {
        does.execute("UPDATE person SET name = 'Another'");
      }
      scrubbing.atStart();
      assertEquals(Optional.of(Scrubbing.LOG_NOT_CUT), scrubbing.worry());
      reader.rollback();
    }
    scrubbing.again();
    assertEquals(Optional.empty(), scrubbing.worry());
  }

  @Test
  void aPowerCutInBetween_isMadeUpForAtTheNextStart() throws Exception {
    erase();
    assertTrue(Scrub.isOwed(file()), "the file itself says so");
    scrubbing.atStart();
    assertFalse(Scrub.isOwed(file()));
    assertFalse(isLeft());
  }

  @Test
  void anErasingTakenBack_owesNothing() throws Exception {
    club.setAutoCommit(false);
    scrubbing.onceSaved();
    club.rollback();
    club.setAutoCommit(true);
    assertFalse(Scrub.isOwed(file()));
  }
}
