package club.ascham.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.DataFolder;
import club.ascham.story.HighWater;
import club.ascham.story.HighWaterOf;
import club.ascham.story.Loss;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a start finds of a club's folder after one thing or another befell it. */
class LostLogTest {
  private static final Instant NOW = Instant.parse("2026-11-25T21:04:09Z");
  private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
  private static final String LATER = "b".repeat(64);

  @TempDir Path tmp;
  private DataFolder folder;
  private SmallClub club;

  @BeforeEach
  void aClub() throws Exception {
    folder = new DataFolder(Files.createDirectory(tmp.resolve("data")));
    club = SmallClub.in(folder.file());
  }

  private HighWater start(DataFolder of) throws IOException {
    Loss.Backup newest =
        new BackupFolder(of.backups())
            .names().stream()
                .findFirst()
                .map(name -> new Loss.Backup(name.fileName(), name.seal()))
                .orElse(null);
    return HighWaterOf.opened(of, newest, CLOCK);
  }

  private List<String> missed(DataFolder of) throws IOException {
    HighWater highWater = start(of);
    return highWater.unread().stream().map(highWater::said).toList();
  }

  /** Everything in the data folder at this moment, as a killed process leaves it. */
  private DataFolder killed() throws IOException {
    DataFolder left = new DataFolder(Files.createDirectory(tmp.resolve("killed")));
    for (String file : folder.path().toFile().list()) {
      if (Files.isRegularFile(folder.path().resolve(file))) {
        Files.copy(folder.path().resolve(file), left.path().resolve(file));
      }
    }
    return left;
  }

  private Path backup() throws IOException {
    Files.createDirectories(folder.backups());
    Path part = tmp.resolve("part.db");
    Soundness.Sound sound = Snapshot.take(folder.file(), part);
    BackupName name = BackupName.of(NOW.minusSeconds(60), sound.newestSeal(), null);
    return Files.move(part, folder.backups().resolve(name.fileName()));
  }

  @Test
  void aNewFolder_missesNothing() throws IOException {
    assertEquals(List.of(), missed(new DataFolder(Files.createDirectory(tmp.resolve("new")))));
    DataFolder empty = new DataFolder(Files.createDirectory(tmp.resolve("empty")));
    Files.createFile(empty.file());
    assertEquals(List.of(), missed(empty));
  }

  @Test
  void aKilledProcess_leavesNothingMissing() throws Exception {
    HighWater highWater = start(folder);
    DataFolder left;
    try (SmallClub.Open server = club.open()) {
      server.run("PRAGMA wal_autocheckpoint=0");
      server.tell("Told.", LATER);
      highWater.follow();
      server.tell("Told after the mark.", "c".repeat(64));
      left = killed();
    }
    assertEquals(List.of(), missed(left));
  }

  @Test
  void aLostLogOfWrites_isTold_atEachStart_untilItIsRead() throws Exception {
    HighWater highWater = start(folder);
    DataFolder left;
    try (SmallClub.Open server = club.open()) {
      server.run("PRAGMA wal_autocheckpoint=0");
      server.tell("Told.", LATER);
      highWater.follow();
      left = killed();
    }
    assertTrue(Files.size(left.writeAheadLog()) > 0, "there is something to lose");
    Files.delete(left.writeAheadLog());
    Files.deleteIfExists(left.sharedMemory());
    List<String> said = missed(left);
    assertEquals(
        List.of(
            "The club’s file was opened on Wed 25 Nov 2026, 21:04 without entry 2 of the record, of"
                + " Tue 24 Nov 2026, 19:00. If the newer file was moved away, put it back; else"
                + " enter again what was done since Tue 24 Nov 2026, 19:00."),
        said);
    HighWater next = start(left);
    assertEquals(said, next.unread().stream().map(next::said).toList(), "told once, still unread");
    next.follow();
    next.allRead();
    assertEquals(List.of(), missed(left));
  }

  @Test
  void theMark_followsTheRecord_andNeverGoesBack() throws Exception {
    HighWater highWater = start(folder);
    highWater.follow();
    try (SmallClub.Open server = club.open()) {
      server.tell("Told.", LATER);
      highWater.follow();
      server.run("DELETE FROM story WHERE id = 2");
      highWater.follow();
    }
    assertEquals(1, missed(folder).size());
  }

  @Test
  void whileTheFileIsAnother_theMarkStays() throws Exception {
    HighWater highWater = start(folder);
    highWater.follow();
    byte[] before = Files.readAllBytes(folder.highWaterMark());
    Files.move(folder.file(), tmp.resolve("away.db"));
    try (SmallClub.Open other = SmallClub.in(folder.file()).open()) {
      other.tell("Told elsewhere.", LATER);
    }
    highWater.follow();
    assertEquals(new String(before), Files.readString(folder.highWaterMark()));
  }

  @Test
  void aMarkThatCantBeWritten_isWrittenOnceItCan() throws Exception {
    HighWater highWater = start(folder);
    highWater.follow();
    Path inTheWay = Files.createDirectory(folder.path().resolve("high-water-mark.new"));
    Files.createFile(inTheWay.resolve("x"));
    String before = Files.readString(folder.highWaterMark());
    try (SmallClub.Open server = club.open()) {
      server.tell("Told.", LATER);
      highWater.follow();
      assertEquals(before, Files.readString(folder.highWaterMark()));
      Files.delete(inTheWay.resolve("x"));
      Files.delete(inTheWay);
      highWater.follow();
    }
    assertTrue(Files.readString(folder.highWaterMark()).contains(LATER));
  }

  @Test
  void aMarkThatCantBeRead_beginsAnew() throws Exception {
    Files.writeString(folder.highWaterMark(), "chewed by a mouse");
    assertEquals(List.of(), missed(folder));
    start(folder).follow();
    assertTrue(Files.readString(folder.highWaterMark()).contains("a".repeat(64)));
  }

  @Test
  void anOlderFilePutInPlaceByHand_isTold_namingTheBackupThatHoldsMore() throws Exception {
    Path older = backup();
    Path copy = Files.copy(older, tmp.resolve("older.db"));
    try (SmallClub.Open server = club.open()) {
      server.tell("Told.", LATER);
    }
    Files.delete(older);
    String newer = backup().getFileName().toString();
    Files.delete(folder.file());
    Files.deleteIfExists(folder.writeAheadLog());
    Files.deleteIfExists(folder.sharedMemory());
    Files.copy(copy, folder.file());
    List<String> said = missed(folder);
    assertEquals(1, said.size());
    assertTrue(said.get(0).contains("without what the backup " + newer + " holds"), said.get(0));
    assertTrue(said.get(0).contains("Bring back the backup " + newer), said.get(0));
    assertEquals(said, missed(folder), "once");
  }

  @Test
  void anOlderBackup_restoredOnPurpose_missesNothing() throws Exception {
    Path older = backup();
    Path elsewhere = Files.move(older, tmp.resolve("older.db"));
    HighWater highWater = start(folder);
    try (SmallClub.Open server = club.open()) {
      server.tell("Told.", LATER);
    }
    highWater.follow();
    backup();
    assertInstanceOf(Restore.Outcome.Done.class, Restore.run(folder, elsewhere, NOW));
    assertEquals(List.of(), missed(folder));
    start(folder).follow();
    assertEquals(List.of(), missed(folder), "nor at the start after");
  }

  @Test
  void aRestoreThatRefuses_leavesTheMark() throws Exception {
    start(folder).follow();
    String before = Files.readString(folder.highWaterMark());
    Path wrong = Files.writeString(tmp.resolve("wrong.db"), "no database");
    assertInstanceOf(Restore.Outcome.Refused.class, Restore.run(folder, wrong, NOW));
    assertEquals(before, Files.readString(folder.highWaterMark()));
  }

  @Test
  void restoring_isTheAnswerToALoss() throws Exception {
    try (SmallClub.Open server = club.open()) {
      server.tell("Told.", LATER);
    }
    start(folder).follow();
    Path backup = backup();
    try (SmallClub.Open server = club.open()) {
      server.run("DELETE FROM story WHERE id = 2");
    }
    assertEquals(1, missed(folder).size());
    assertInstanceOf(Restore.Outcome.Done.class, Restore.run(folder, backup, NOW));
    assertEquals(List.of(), missed(folder));
  }

  @Test
  void aBackup_holdsNoMark() throws Exception {
    start(folder).follow();
    backup();
    assertEquals(
        Optional.empty(),
        List.of(folder.backups().toFile().list()).stream()
            .filter(name -> BackupName.read(name).isEmpty())
            .findFirst());
  }
}
