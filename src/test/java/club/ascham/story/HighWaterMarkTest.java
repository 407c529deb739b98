package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import club.ascham.SettingsOf;
import club.ascham.time.ClubTime;
import club.ascham.time.ClubTimeOf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is known of a file from elsewhere, held against it. */
class HighWaterMarkTest {
  private static final Instant NOW = Instant.parse("2026-11-25T21:04:09Z");
  private static final Instant BEFORE = Instant.parse("2026-11-24T19:00:00Z");
  private static final ClubTime TIME =
      ClubTimeOf.clock(
          Clock.fixed(NOW, ZoneOffset.UTC), new SettingsOf(Path.of("."), ZoneId.of("UTC")));

  @TempDir Path folder;

  private static String seal(long entry) {
    return Long.toString(entry).repeat(64).substring(0, 64);
  }

  private static RecordEnd end(long entry) {
    return new RecordEnd(entry, seal(entry), BEFORE);
  }

  private static HighWaterMark markAt(long entry) {
    return new HighWaterMark(end(entry), null, List.of());
  }

  private static Loss.Backup backupAt(long entry) {
    return new Loss.Backup("ascham-of-" + entry + ".db", seal(entry).substring(0, 12));
  }

  /** A file whose record has these entries and seals. */
  private record Held(TreeMap<Long, String> seals) implements Loss.Opened {
    static Held upTo(long last) {
      TreeMap<Long, String> seals = new TreeMap<>();
      for (long entry = 1; entry <= last; entry++) {
        seals.put(entry, seal(entry));
      }
      return new Held(seals);
    }

    @Override
    public RecordEnd end() {
      return seals.isEmpty()
          ? null
          : new RecordEnd(seals.lastKey(), seals.lastEntry().getValue(), BEFORE);
    }

    @Override
    public boolean holds(long entry, String seal) {
      return seal.equals(seals.get(entry));
    }

    @Override
    public boolean holdsSeal(String digits) {
      return seals.values().stream().anyMatch(seal -> seal.startsWith(digits));
    }
  }

  private static String said(HighWaterMark mark, Loss.Backup newest, Held file) {
    return Loss.between(mark, newest, file, NOW)
        .map(loss -> loss.what(TIME) + ". " + loss.whatToDo(TIME))
        .orElse("nothing");
  }

  @Test
  void aFileThatWentAsFarOrFarther_lacksNothing() {
    assertEquals("nothing", said(HighWaterMark.NONE, null, Held.upTo(0)));
    assertEquals("nothing", said(HighWaterMark.NONE, null, Held.upTo(5)));
    assertEquals("nothing", said(markAt(5), backupAt(5), Held.upTo(5)));
    assertEquals("nothing", said(markAt(5), backupAt(3), Held.upTo(7)));
  }

  @Test
  void fewerEntriesThanTheMark_areALoss() {
    assertEquals(
        "the club’s file was opened on Wed 25 Nov 2026, 21:04 without entries 4 to 5 of the record,"
            + " the last of Tue 24 Nov 2026, 19:00. If the newer file was moved away, put it back;"
            + " else enter again what was done since Tue 24 Nov 2026, 19:00.",
        said(markAt(5), backupAt(3), Held.upTo(3)));
    assertEquals(
        "the club’s file was opened on Wed 25 Nov 2026, 21:04 without entry 5 of the record, of Tue"
            + " 24 Nov 2026, 19:00. If the newer file was moved away, put it back; else enter again"
            + " what was done since Tue 24 Nov 2026, 19:00.",
        said(markAt(5), null, Held.upTo(4)));
  }

  @Test
  void anEmptyRecord_isALossOfAll() {
    assertEquals(
        "the club’s file was opened on Wed 25 Nov 2026, 21:04 without entries 0 to 5 of the record,"
            + " the last of Tue 24 Nov 2026, 19:00. If the newer file was moved away, put it back;"
            + " else enter again what the club had.",
        said(markAt(5), null, Held.upTo(0)));
  }

  @Test
  void anotherRecord_isALoss_howeverLongItIs() {
    Held other = Held.upTo(9);
    other.seals().put(5L, "f".repeat(64));
    assertEquals(
        "the club’s file was opened on Wed 25 Nov 2026, 21:04 with another record than before: entry"
            + " 5 bears another seal. If an older file was put in its place, put the right one"
            + " back.",
        said(markAt(5), null, other));
  }

  @Test
  void withoutAMark_theNewestBackupTells() {
    String said = said(HighWaterMark.NONE, backupAt(5), Held.upTo(4));
    assertEquals(
        "the club’s file was opened on Wed 25 Nov 2026, 21:04 without what the backup"
            + " ascham-of-5.db holds. Bring back the backup ascham-of-5.db, which holds more, and"
            + " enter what came after it.",
        said);
  }

  @Test
  void whereTheBackupHoldsMore_itIsWhatToBringBack() {
    assertEquals(
        "the club’s file was opened on Wed 25 Nov 2026, 21:04 without entries 4 to 6 of the record,"
            + " the last of Tue 24 Nov 2026, 19:00. Bring back the backup ascham-of-5.db, which"
            + " holds more, and enter what came after it.",
        said(markAt(6), backupAt(5), Held.upTo(3)));
  }

  @Test
  void aBackupThatARestorePassedOver_isNotAskedAgain_andALaterOneIs() {
    HighWaterMark restored = new HighWaterMark(end(3), backupAt(5).fileName(), List.of());
    assertEquals("nothing", said(restored, backupAt(5), Held.upTo(3)));
    assertEquals(
        Optional.of("ascham-of-6.db"),
        Loss.between(restored, backupAt(6), Held.upTo(4), NOW).map(Loss::backup));
  }

  @Test
  void aBackupOfNothingTold_tellsOfNothing() {
    Loss.Backup empty = new Loss.Backup("ascham-empty.db", "0".repeat(12));
    assertEquals("nothing", said(HighWaterMark.NONE, empty, Held.upTo(3)));
  }

  @Test
  void whatIsWritten_isRead() throws IOException {
    Path file = folder.resolve("high-water-mark");
    Loss first = new Loss(NOW, "ascham-of-5.db", end(6), end(3));
    Loss second = new Loss(NOW, null, end(6), null);
    Loss third = new Loss(NOW, "ascham-of-5.db", null, end(3));
    for (HighWaterMark mark :
        List.of(
            HighWaterMark.NONE,
            markAt(7),
            new HighWaterMark(end(7), "ascham-of-5.db", List.of(first, second, third)))) {
      mark.write(file);
      assertEquals(Optional.of(mark), HighWaterMark.read(file));
    }
    assertEquals(List.of("high-water-mark"), List.of(folder.toFile().list()), "nothing unfinished");
  }

  @Test
  void onlyItsOwnerReadsIt_whateverAPowerCutLeft() throws IOException {
    Path left = Files.writeString(folder.resolve("high-water-mark.new"), "half");
    Files.setPosixFilePermissions(left, PosixFilePermissions.fromString("rw-rw-rw-"));
    Path file = folder.resolve("high-water-mark");
    markAt(7).write(file);
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
  }

  @Test
  void noMark_isNoFault_andOneThatSaysNothingIs() throws IOException {
    Path file = folder.resolve("high-water-mark");
    assertEquals(Optional.empty(), HighWaterMark.read(file));
    for (Map.Entry<String, String> wrong :
        Map.of(
                "empty", "",
                "cut short", "How far\nend 5 abc",
                "no number", "How far\nend five a b\nsettled -\n",
                "no moment", "How far\nend 5 a yesterday\nsettled -\n")
            .entrySet()) {
      Files.writeString(file, wrong.getValue());
      assertThrows(IOException.class, () -> HighWaterMark.read(file), wrong.getKey());
    }
  }
}
