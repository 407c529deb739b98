package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

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
    assertEquals(Optional.of(why), sameFile.trouble());
    FileTrouble trouble = assertThrows(FileTrouble.class, sameFile::mustBe);
    assertEquals(FileTrouble.Kind.ANOTHER, trouble.kind());
  }

  @Test
  void movedAway_nothingIsSaved_untilItIsBack() throws IOException {
    Path away = folder.resolve("elsewhere.db");
    Files.move(file, away);
    refuses("it is gone from its folder");
    Files.move(away, file);
    assertDoesNotThrow(sameFile::mustBe);
  }

  @Test
  void aCopyInItsPlace_isAnotherFile() throws IOException {
    Path copy = Files.copy(file, folder.resolve("copy.db"));
    Files.move(copy, file, StandardCopyOption.REPLACE_EXISTING);
    refuses("another file stands in its place");
  }

  @Test
  void cutShort_evenAfterItHadGrown() throws IOException {
    Files.write(file, new byte[4096], StandardOpenOption.APPEND);
    assertDoesNotThrow(sameFile::mustBe);
    Files.write(file, new byte[8192], StandardOpenOption.TRUNCATE_EXISTING);
    refuses("it was cut short");
  }

  @Test
  void scrubbed_itMayBeSmaller() throws IOException {
    Files.write(file, new byte[4096], StandardOpenOption.TRUNCATE_EXISTING);
    sameFile.scrubbed();
    assertDoesNotThrow(sameFile::mustBe);
  }

  @Test
  void beforeAnythingWasOpened_nothingIsAmiss() throws IOException {
    SameFile none = new SameFile();
    assertDoesNotThrow(none::mustBe);
    none.scrubbed();
    assertEquals(Optional.empty(), none.trouble());
  }
}
