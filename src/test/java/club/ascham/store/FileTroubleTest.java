package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

class FileTroubleTest {
  @ParameterizedTest
  @CsvSource({
    "SQLITE_FULL, DISK_FULL, 507",
    "SQLITE_READONLY, READ_ONLY, 503",
    "SQLITE_READONLY_DBMOVED, READ_ONLY, 503",
    "SQLITE_BUSY, LOCKED, 503",
    "SQLITE_BUSY_SNAPSHOT, LOCKED, 503",
    "SQLITE_CORRUPT, DAMAGED, 503",
    "SQLITE_NOTADB, DAMAGED, 503",
    "SQLITE_IOERR_FSYNC, UNREACHABLE, 503",
    "SQLITE_CANTOPEN, UNREACHABLE, 503"
  })
  void whatSqliteSays_isTroubleOfThatKind(SQLiteErrorCode code, FileTrouble.Kind kind, int status) {
    FileTrouble trouble =
        FileTrouble.in(new IllegalStateException(new SQLiteException("x", code))).orElseThrow();
    assertEquals(kind, trouble.kind());
    assertEquals(status, trouble.kind().status());
  }

  @Test
  void whatFailedAtTheEndOfATransaction_isFoundBesideTheFailure() {
    Exception rolledBack = new Exception("rolled back");
    rolledBack.addSuppressed(new SQLiteException("x", SQLiteErrorCode.SQLITE_FULL));
    assertEquals(
        FileTrouble.Kind.DISK_FULL,
        FileTrouble.in(new RuntimeException(rolledBack)).orElseThrow().kind());
  }

  @Test
  void aFailureThatGoesRoundInCircles_isReadOnce() {
    Exception one = new Exception("one");
    Exception other = new Exception("other", one);
    one.addSuppressed(other);
    assertTrue(FileTrouble.in(one).isEmpty());
  }

  @Test
  void aRefusal_isNoTrouble() {
    assertTrue(
        FileTrouble.in(new SQLiteException("x", SQLiteErrorCode.SQLITE_CONSTRAINT_UNIQUE))
            .isEmpty());
    assertTrue(FileTrouble.in(new SQLException("no such table")).isEmpty());
  }

  @Test
  void eachKind_saysWhatBecameOfWhatWasSent() {
    for (FileTrouble.Kind kind : FileTrouble.Kind.values()) {
      // A save may already stand in the file that was moved away: its moment decides what is said.
      String said =
          kind == FileTrouble.Kind.ANOTHER
              ? FileTrouble.another("it is gone", "Nothing was changed.").getMessage()
              : new FileTrouble(kind, null).getMessage();
      assertTrue(said.contains("Nothing was changed"), said);
    }
  }
}
