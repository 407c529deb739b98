package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What may happen to the club's file under a running server. */
class SameFileTest {
  @TempDir Path folder;
  private final SameFile sameFile = new SameFile();
  private Path file;

  @BeforeEach
  void opened() throws IOException {
    file = Files.write(folder.resolve("ascham.db"), new byte[8192]);
    sameFile.is(file);
  }

  private void refuses(String why) {
    FileTrouble before = assertThrows(FileTrouble.class, sameFile::mustBe);
    assertEquals(FileTrouble.Kind.ANOTHER, before.kind());
    assertTrue(
        before.getMessage().endsWith("Nothing was changed. What was found: " + why + "."),
        before.getMessage());
    FileTrouble after = assertThrows(FileTrouble.class, sameFile::mustStillBe);
    assertTrue(after.getMessage().contains("What was sent may be kept or not"), after.getMessage());
  }

  @Test
  void onceFoundDamaged_nothingIsSaved_untilItIsOpenedAgain() throws IOException {
    sameFile.found(new FileTrouble(FileTrouble.Kind.LOCKED, null));
    assertDoesNotThrow(sameFile::mustBe);
    sameFile.found(new FileTrouble(FileTrouble.Kind.DAMAGED, null));
    sameFile.found(new FileTrouble(FileTrouble.Kind.LOCKED, null));
    FileTrouble refused = assertThrows(FileTrouble.class, sameFile::mustBe);
    assertEquals(FileTrouble.Kind.DAMAGED, refused.kind());
    assertDoesNotThrow(sameFile::mustStillBe, "what was saved meanwhile went well");
    sameFile.is(file);
    assertDoesNotThrow(sameFile::mustBe);
  }

  @Test
  void movedAway_nothingIsSaved_untilItIsBack() throws IOException {
    Path away = folder.resolve("elsewhere.db");
    Files.move(file, away);
    refuses("the club’s file is gone from its folder");
    Files.move(away, file);
    assertDoesNotThrow(sameFile::mustBe);
  }

  @Test
  void aCopyInItsPlace_isAnotherFile() throws IOException {
    Path copy = Files.copy(file, folder.resolve("copy.db"));
    Files.move(copy, file, StandardCopyOption.REPLACE_EXISTING);
    refuses("another file stands in the place of the club’s file");
  }

  @Test
  void cutShort_evenAfterItHadGrown() throws IOException {
    Files.write(file, new byte[4096], StandardOpenOption.APPEND);
    assertDoesNotThrow(sameFile::mustBe);
    Files.write(file, new byte[8192], StandardOpenOption.TRUNCATE_EXISTING);
    refuses("the club’s file was cut short");
  }

  /** As SQLite lays them beside a file in use. */
  private void writtenByWayOfALog() throws IOException {
    Files.write(folder.resolve("ascham.db-wal"), new byte[4096]);
    Files.write(folder.resolve("ascham.db-shm"), new byte[32768]);
    sameFile.is(file);
  }

  @Test
  void theLog_isNotCutShort_takenAwayOrReplaced() throws IOException {
    writtenByWayOfALog();
    Path log = folder.resolve("ascham.db-wal");
    byte[] whole = Files.readAllBytes(log);
    Files.write(log, new byte[0], StandardOpenOption.TRUNCATE_EXISTING);
    refuses("its log was cut short");
    Files.write(log, whole);
    assertDoesNotThrow(sameFile::mustBe);

    Path away = Files.move(log, folder.resolve("log"));
    refuses("its log is gone from its folder");
    Files.write(log, new byte[4096]);
    refuses("another file stands in the place of its log");
    Files.move(away, log, StandardCopyOption.REPLACE_EXISTING);
    assertDoesNotThrow(sameFile::mustBe);
  }

  @Test
  void theLogsIndex_too() throws IOException {
    writtenByWayOfALog();
    Files.delete(folder.resolve("ascham.db-shm"));
    refuses("its log’s index is gone from its folder");
  }

  @Test
  void cleaned_theyMayBeSmaller_andThenNotAgain() throws Exception {
    writtenByWayOfALog();
    Path log = folder.resolve("ascham.db-wal");
    sameFile.whileItShrinks(
        () -> {
          Files.write(file, new byte[4096], StandardOpenOption.TRUNCATE_EXISTING);
          assertDoesNotThrow(sameFile::mustBe);
          return Files.write(log, new byte[2048], StandardOpenOption.TRUNCATE_EXISTING);
        });
    assertDoesNotThrow(sameFile::mustBe);
    Files.write(log, new byte[0], StandardOpenOption.TRUNCATE_EXISTING);
    refuses("its log was cut short");
  }

  @Test
  void beforeAnythingWasOpened_nothingIsAmiss() throws Exception {
    SameFile none = new SameFile();
    assertDoesNotThrow(none::mustBe);
    none.whileItShrinks(() -> null);
    assertEquals(Optional.empty(), none.trouble());
  }
}
