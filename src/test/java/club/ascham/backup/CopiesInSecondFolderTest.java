package club.ascham.backup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.SettingsOf;
import club.ascham.store.DataFolder;
import club.ascham.store.OlderBackups;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The second folder, on a disk that comes and goes. */
class CopiesInSecondFolderTest {
  private static final Instant START = Instant.parse("2026-11-25T21:04:09Z");

  @TempDir Path tmp;
  private Instant now = START;
  private Path stick;
  private Path data;
  private Backups backups;

  @BeforeEach
  void aClub() throws Exception {
    data = Files.createDirectory(tmp.resolve("data"));
    stick = Files.createDirectory(tmp.resolve("stick"));
    SmallClub.in(new DataFolder(data).file());
    backups = begun(Optional.of(stick));
  }

  private Backups begun(Optional<Path> second) {
    Clock clock =
        new Clock() {
          @Override
          public Instant instant() {
            return now;
          }

          @Override
          public ZoneId getZone() {
            return ZoneOffset.UTC;
          }

          @Override
          public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException();
          }
        };
    return BackupsOf.of(new SettingsOf(data, second, ZoneId.of("Europe/London")), clock);
  }

  private String made() {
    return backups.make().name().fileName();
  }

  private String madeAfter(Duration later) {
    now = now.plus(later);
    return made();
  }

  private static List<String> in(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private Optional<String> worry() {
    return backups.copies().worry();
  }

  @Test
  void eachBackup_isCopied_byteForByte_forItsOwnerAlone() throws IOException {
    String name = made();
    assertEquals(List.of(name), in(stick));
    assertArrayEquals(
        Files.readAllBytes(data.resolve("backups").resolve(name)),
        Files.readAllBytes(stick.resolve(name)));
    assertEquals(
        "rw-------",
        PosixFilePermissions.toString(Files.getPosixFilePermissions(stick.resolve(name))));
    assertEquals(Optional.empty(), worry());
  }

  @Test
  void withoutTheSetting_nothingIsCopied() throws IOException {
    backups = begun(Optional.empty());
    made();
    assertEquals(List.of(), in(stick));
    assertEquals(Optional.empty(), worry());
    assertNull(backups.older().copies());
  }

  @Test
  void aStickThatIsNotThere_isTold_andNoFolderIsMadeInItsPlace() throws IOException {
    Files.delete(stick);
    made();
    assertTrue(worry().orElseThrow().contains("is not there: plug in or mount its disk"));
    assertTrue(Files.notExists(stick));
    assertEquals(Optional.empty(), backups.worry(), "the backup itself is made");
  }

  @Test
  void onceTheStickIsBack_itGetsWhatItMissed() throws IOException {
    String first = made();
    Path away = Files.move(stick, tmp.resolve("in a pocket"));
    String second = madeAfter(Duration.ofDays(1));
    String third = madeAfter(Duration.ofDays(1));
    assertTrue(worry().isPresent());
    Files.move(away, stick);
    backups.copyAgain();
    assertEquals(List.of(first, second, third), in(stick));
    assertEquals(Optional.empty(), worry());
  }

  @Test
  void aFolderThatIsJustSet_getsWhatThereIs() throws IOException {
    backups = begun(Optional.empty());
    String before = made();
    backups = begun(Optional.of(stick));
    backups.copyAgain();
    assertEquals(List.of(before), in(stick));
  }

  @Test
  void aFolderInTheDataFolder_isRefused() throws IOException {
    Path within = Files.createDirectory(data.resolve("copies"));
    backups = begun(Optional.of(within));
    made();
    assertTrue(worry().orElseThrow().contains("lies in the data folder"));
    assertEquals(List.of(), in(within));
    Path link = Files.createSymbolicLink(tmp.resolve("link"), data);
    backups = begun(Optional.of(link.resolve("backups")));
    made();
    assertTrue(worry().orElseThrow().contains("lies in the data folder"), "by any name");
  }

  @Test
  void aFileInTheFoldersPlace_isNoFolder() throws IOException {
    Files.delete(stick);
    Files.createFile(stick);
    made();
    assertTrue(worry().orElseThrow().contains("is not there"));
  }

  @Test
  void whatCantBeWritten_isTold_andTriedAgainAnHourLater() throws IOException {
    String name = "ascham-" + START.toEpochMilli() + ".part";
    Files.createFile(Files.createDirectory(stick.resolve(name)).resolve("x"));
    made();
    assertTrue(worry().isPresent());
    Files.delete(stick.resolve(name).resolve("x"));
    Files.delete(stick.resolve(name));
    now = now.plus(Duration.ofMinutes(59));
    backups.copyAgain();
    assertTrue(worry().isPresent(), "not yet");
    now = now.plus(Duration.ofMinutes(1));
    backups.copyAgain();
    assertEquals(Optional.empty(), worry());
    assertEquals(1, in(stick).size());
  }

  @Test
  void whatAPowerCutLeft_isGoneWithTheNext() throws IOException {
    Files.writeString(stick.resolve("ascham-1795640649000.part"), "half a page");
    Files.writeString(stick.resolve("holiday.jpg"), "somebody’s own");
    String name = made();
    assertEquals(List.of(name, "holiday.jpg"), in(stick));
  }

  @Test
  void aDiskThatReadsBackOtherwise_getsNoCopyByThatName() throws IOException {
    Path file = Files.writeString(tmp.resolve("file"), "as it was written");
    Path copy = stick.resolve("copy");
    CopyOfFile.NotMade refused =
        assertThrows(
            CopyOfFile.NotMade.class,
            () -> CopyOfFile.make(file, copy, START, part -> new byte[32]));
    assertTrue(refused.getMessage().contains("did not read back as it was written"));
    assertEquals(List.of(), in(stick));
  }

  @Test
  void theRota_cleansThereToo() throws IOException {
    for (int night = 0; night < 40; night++) {
      madeAfter(Duration.ofDays(1));
    }
    assertEquals(in(data.resolve("backups")), in(stick));
    assertTrue(in(stick).size() < 20, "thinned out");
  }

  @Test
  void aCopyThatAWrongClockDatedAhead_holdsUpNoOther() throws IOException {
    now = START.plus(Duration.ofDays(400));
    String ahead = made();
    now = START;
    String right = made();
    assertEquals(List.of(right, ahead), in(stick));
  }

  @Test
  void aBackupBeforeAMigration_isCopiedLater_sinceNoStartWaitsForADisk() throws IOException {
    Backups.Backup made = backups.makeBefore("V900");
    assertEquals(List.of(), in(stick));
    backups.copyAgain();
    assertEquals(List.of(made.name().fileName()), in(stick));
  }

  @Test
  void atErasing_theCopiesAreCounted() throws IOException {
    made();
    OlderBackups.Older older = backups.older();
    assertEquals(new OlderBackups.OlderCopies(true, older.lastDay(), 0), older.copies());
    assertTrue(older.lastDay().isAfter(LocalDate.of(2026, 11, 25)));
    try (Stream<Path> files = Files.list(data.resolve("backups"))) {
      files.forEach(Snapshot::forget);
    }
    assertNull(backups.older().lastDay());
    assertEquals(older.lastDay(), backups.older().copies().lastDay(), "they stay when others go");
    assertTrue(!backups.older().none());
    Files.move(stick, tmp.resolve("in a pocket"));
    assertEquals(new OlderBackups.OlderCopies(false, null, 0), backups.older().copies());
    assertTrue(!backups.older().none(), "nobody knows what is on it");
  }

  @Test
  void aCopy_isRestored_byItsPath() throws IOException {
    String name = made();
    DataFolder folder = new DataFolder(data);
    Restore.Outcome outcome = Restore.run(folder, stick.resolve(name), now);
    assertInstanceOf(Restore.Outcome.Done.class, outcome);
    assertInstanceOf(Soundness.Sound.class, Soundness.ofAll(folder.file()));
  }

  @Test
  void whereNoBackupIsSound_theNewestCopyIsNamed() throws IOException {
    String name = made();
    Files.write(data.resolve("backups").resolve(name), new byte[10]);
    assertEquals(Optional.of(stick.resolve(name)), backups.newestSound());
  }

  @Test
  void whatIsThere_isSaid() {
    String said = stick.toString();
    assertEquals(
        new SecondFolder.State(said, true, null, true), backups.copies().state().orElseThrow());
    made();
    assertEquals(
        new SecondFolder.State(said, true, START, true), backups.copies().state().orElseThrow());
  }
}
