package club.ascham.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.DataFolder;
import club.ascham.store.InUse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RestoreTest {
  private static final Instant NOW = Instant.parse("2026-11-25T21:04:09Z");
  private static final String FIRST = "a".repeat(64);
  private static final String LATER = "b".repeat(64);

  @TempDir Path tmp;
  private DataFolder folder;
  private SmallClub club;
  private Path backup;

  @BeforeEach
  void aClubWithABackup() throws Exception {
    folder = new DataFolder(Files.createDirectory(tmp.resolve("data")));
    club = SmallClub.in(folder.file());
    backup = tmp.resolve("backup.db");
    Snapshot.take(club.file(), backup);
    try (SmallClub.Open open = club.open()) {
      open.tell("Told after the backup.", LATER);
    }
  }

  private Restore.Outcome.Done done() throws IOException {
    return assertInstanceOf(Restore.Outcome.Done.class, Restore.run(folder, backup, NOW));
  }

  private String refused() throws IOException {
    List<String> before = there();
    String why =
        assertInstanceOf(Restore.Outcome.Refused.class, Restore.run(folder, backup, NOW)).why();
    assertEquals(before, there());
    assertEquals(LATER, newestSeal(folder.file()));
    return why;
  }

  private List<String> there() throws IOException {
    try (Stream<Path> files = Files.walk(folder.path())) {
      return files
          .map(Path::toString)
          // SQLite's own, beside the file while it is open; and the lock, which stays
          .filter(
              name -> !name.endsWith("-shm") && !name.endsWith("-wal") && !name.endsWith("in-use"))
          .sorted()
          .toList();
    }
  }

  private static String newestSeal(Path file) {
    return assertInstanceOf(Soundness.Sound.class, Soundness.ofAll(file)).newestSeal();
  }

  @Test
  void theBackup_isTheFile_andWhatWasThereIsSetAside() throws IOException {
    Restore.Outcome.Done done = done();
    assertEquals(FIRST, done.now().newestSeal());
    assertEquals(FIRST, newestSeal(folder.file()));
    assertEquals("set-aside-2026-11-25T21-04-09Z", done.setAside().getFileName().toString());
    assertEquals(LATER, newestSeal(done.setAside().resolve("ascham.db")));
    assertTrue(Files.exists(backup), "the backup stays where it is");
  }

  /** After a kill the last saves stand in the log alone: it must not meet the restored file. */
  @Test
  void theLogOfWrites_isSetAsideWithItsFile() throws Exception {
    Path killed = tmp.resolve("killed");
    Files.createDirectory(killed);
    try (SmallClub.Open open = club.open()) {
      open.tell("Only in the log.", "c".repeat(64));
      for (String ending : List.of("", "-wal", "-shm")) {
        Files.copy(Path.of(folder.file() + ending), killed.resolve("ascham.db" + ending));
      }
    }
    folder = new DataFolder(killed);
    Restore.Outcome.Done done = done();
    assertFalse(Files.exists(folder.writeAheadLog()));
    assertFalse(Files.exists(folder.sharedMemory()));
    assertEquals(FIRST, newestSeal(folder.file()));
    assertEquals("c".repeat(64), newestSeal(done.setAside().resolve("ascham.db")));
  }

  @Test
  void intoAnEmptyFolder_nothingIsSetAside() throws IOException {
    folder = new DataFolder(tmp.resolve("new").resolve("data"));
    assertNull(done().setAside());
    assertEquals(FIRST, newestSeal(folder.file()));
  }

  @Test
  void twiceInASecond_bothAreSetAside() throws IOException {
    Path first = done().setAside();
    Path second = done().setAside();
    assertEquals(LATER, newestSeal(first.resolve("ascham.db")));
    assertEquals(FIRST, newestSeal(second.resolve("ascham.db")));
  }

  @Test
  void aRestoreThatWasCutOff_isDoneByTheNext() throws IOException {
    Files.writeString(folder.restoring(), "half a backup");
    done();
    assertFalse(Files.exists(folder.restoring()));
    assertEquals(FIRST, newestSeal(folder.file()));
  }

  @Test
  void aDamagedBackup_isRefused() throws IOException {
    SnapshotTest.damage(backup);
    assertTrue(refused().startsWith("That file is not a sound backup."));
  }

  @Test
  void aCutOffBackup_isRefused() throws IOException {
    byte[] whole = Files.readAllBytes(backup);
    Files.write(backup, Arrays.copyOf(whole, whole.length / 2));
    assertTrue(refused().startsWith("That file is not a sound backup."));
  }

  @Test
  void anyOtherFile_isRefused() throws IOException {
    Files.writeString(backup, "code,maker\nR-1,Hollis\n");
    assertTrue(refused().startsWith("That file is not a sound backup."));
  }

  @Test
  void aFileThatIsNotThere_isRefused() throws IOException {
    Files.delete(backup);
    assertTrue(refused().startsWith("There is no file "));
  }

  @Test
  void whileAServerRunsOnTheFolder_itIsRefused() throws IOException {
    try (InUse server = InUse.take(folder).orElseThrow()) {
      assertTrue(refused().contains("stop it first"));
    }
    done();
  }
}
