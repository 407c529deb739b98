package club.ascham.start;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.backup.Backups;
import club.ascham.backup.BackupsOf;
import club.ascham.backup.Soundness;
import club.ascham.store.DataFolder;
import club.ascham.store.InUse;
import club.ascham.store.RowsOf;
import club.ascham.store.Schema;
import club.ascham.store.SqliteFile;
import club.ascham.story.HighWater;
import club.ascham.story.HighWaterOf;
import club.ascham.story.Loss;
import club.ascham.story.OlderClub;
import club.ascham.story.Seal;
import club.ascham.story.VerifyOf;
import club.ascham.story.VerifyRecord;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A data folder from before 1.0.0 is carried over whole, once, or stays as it is. */
class CarryOverTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T21:04:09Z"), ZoneOffset.UTC);
  private static final String NAME = "Wystan Holt";

  @TempDir Path tmp;
  private DataFolder folder;

  private void aClubOf(String schema) throws IOException, SQLException {
    folder = new DataFolder(tmp.resolve("data"));
    OlderClub.in(folder, schema, "hash", NAME);
  }

  private static List<String> texts(Path file, String sql) throws SQLException {
    try (Connection connection = SqliteFile.open(file)) {
      return RowsOf.connection(connection).texts(sql);
    }
  }

  private List<String> texts(String sql) throws SQLException {
    return texts(folder.file(), sql);
  }

  private void run(String sql) throws SQLException {
    try (Connection connection = SqliteFile.open(folder.file());
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private CarryOver.Outcome carry() throws IOException {
    return CarryOver.run(folder, CLOCK.instant());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder.path())) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"010", "016", "028", "043", "046"})
  void whateverVersionItIsOf_itComesWithNamesNumbersAndSentences(String schema) throws Exception {
    aClubOf(schema);
    List<String> entries =
        texts("SELECT id || happened_at || recorded_at || sentence FROM story ORDER BY id");
    List<String> changes = texts("SELECT id || ' ' || story_id || what FROM change ORDER BY id");
    List<String> values = texts("SELECT id || ' ' || value || hash FROM personal ORDER BY id");
    assertTrue(entries.size() >= 2 && changes.size() > 10 && values.size() > 2);
    CarryOver.Outcome.Done done = assertInstanceOf(CarryOver.Outcome.Done.class, carry());
    assertEquals(List.of(), done.now().faults());
    assertEquals(List.of(NAME), texts("SELECT name FROM borrower"));
    assertEquals(
        entries,
        texts("SELECT id || happened_at || recorded_at || sentence FROM story ORDER BY id")
            .subList(0, entries.size()));
    assertEquals(
        changes,
        texts("SELECT id || ' ' || story_id || what FROM change ORDER BY id")
            .subList(0, changes.size()));
    assertEquals(values, texts("SELECT id || ' ' || value || hash FROM personal ORDER BY id"));
    Soundness.Sound now = assertInstanceOf(Soundness.Sound.class, soundness());
    assertFalse(Schema.isFromBefore(now.schema()));
    assertEquals(done.now().newest(), now.newestSeal());
  }

  private Soundness soundness() {
    return Soundness.ofAll(folder.file());
  }

  @Test
  void theRecordSays_thatItWasWhole_andUpToWhichSeal() throws Exception {
    aClubOf("046");
    String seal = texts("SELECT hash FROM story ORDER BY id DESC LIMIT 1").get(0);
    carry();
    String newest = texts("SELECT hash FROM story ORDER BY id DESC LIMIT 1 OFFSET 1").get(0);
    assertNotEquals(seal, newest);
    assertEquals(
        "Carried over into the file of Ascham 1.0.0: the record of before was whole, 2 entries up to"
            + " seal %s; it is sealed anew, up to seal %s."
                .formatted(Seal.shortened(seal), Seal.shortened(newest)),
        texts("SELECT sentence FROM story ORDER BY id DESC LIMIT 1").get(0));
    assertEquals(
        List.of("replacement_terms 6", "story 2", "work_time 6"),
        texts(
            "SELECT table_name || ' ' || count(*) FROM change WHERE story_id = (SELECT max(id) FROM"
                + " story) GROUP BY table_name ORDER BY 1"),
        "rows that had no key have one, and each seal of before is kept");
  }

  /** On paper, in the name of a backup, in the high-water mark. */
  @Test
  void aSealFromBefore_isKnownAsEver_andNothingIsMissed() throws Exception {
    aClubOf("046");
    Backups.Backup made = BackupsOf.folder(folder.path(), CLOCK).make();
    List<String> seals = texts("SELECT hash FROM story ORDER BY id");
    Loss.Backup newest = new Loss.Backup(made.name().fileName(), made.name().seal());
    HighWaterOf.opened(folder, newest, CLOCK).follow();
    String mark = Files.readString(folder.highWaterMark());
    assertTrue(mark.contains(seals.get(1)), mark);
    carry();
    assertEquals(mark, Files.readString(folder.highWaterMark()));
    HighWater highWater = HighWaterOf.opened(folder, newest, CLOCK);
    assertEquals(List.of(), highWater.unread());
    highWater.follow();
    assertFalse(Files.readString(folder.highWaterMark()).contains(seals.get(1)), "it goes on");
    try (Connection file = SqliteFile.open(folder.file())) {
      VerifyRecord verify = VerifyOf.file(file);
      assertEquals(
          new VerifyRecord.SealSeen.Known(1, 1), verify.seen(seals.get(1).substring(0, 12)));
      assertEquals(new VerifyRecord.SealSeen.Unknown(), verify.seen("0123456789ab"));
    }
  }

  @Test
  void theFileOfBefore_isKept_asItWas() throws Exception {
    aClubOf("046");
    List<String> before = texts("SELECT hash FROM story ORDER BY id");
    CarryOver.Outcome.Done done = assertInstanceOf(CarryOver.Outcome.Done.class, carry());
    assertEquals(folder.path().resolve("ascham-before-1.0.0.db"), done.kept());
    assertEquals(before, texts(done.kept(), "SELECT hash FROM story ORDER BY id"));
    assertEquals(
        List.of("46"),
        texts(done.kept(), "SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history"));
    assertEquals(List.of("ascham-before-1.0.0.db", "ascham.db", "in-use"), names());
  }

  @Test
  void everyTable_comesAsItWas() throws Exception {
    aClubOf("046");
    CarryOver.Outcome.Done done = assertInstanceOf(CarryOver.Outcome.Done.class, carry());
    for (String table :
        List.of("club", "account", "upkeep_rule", "plan_rule", "borrower", "door_rule")) {
      String columns =
          String.join(
              " || '|' || ",
              texts("SELECT 'quote(' || name || ')' FROM pragma_table_info('" + table + "')"));
      String all = "SELECT " + columns + " FROM " + table + " ORDER BY 1";
      assertFalse(texts(all).isEmpty(), table);
      assertEquals(texts(done.kept(), all), texts(all), table);
    }
    assertEquals(
        texts(done.kept(), "SELECT rowid || work || minutes FROM work_time ORDER BY 1"),
        texts("SELECT id || work || minutes FROM work_time ORDER BY 1"));
  }

  @ParameterizedTest
  @EnumSource(CarryOver.Step.class)
  void cutOffAnywhere_theFolderIsAsItWas_orDone_andTheNextRunEndsIt(CarryOver.Step cutBefore)
      throws Exception {
    aClubOf("036");
    List<String> before = texts("SELECT id || sentence FROM story ORDER BY id");
    byte[] mark = "how far it had come".getBytes(StandardCharsets.UTF_8);
    Files.write(folder.highWaterMark(), mark);
    class Cut extends RuntimeException {
      private static final long serialVersionUID = 1L;
    }
    assertThrows(
        Cut.class,
        () ->
            CarryOver.run(
                folder,
                CLOCK.instant(),
                step -> {
                  if (step == cutBefore) {
                    throw new Cut();
                  }
                }));
    boolean done = cutBefore == CarryOver.Step.CLEAR;
    assertEquals(
        done, !Schema.isFromBefore(assertInstanceOf(Soundness.Sound.class, soundness()).schema()));
    assertEquals(
        before, texts("SELECT id || sentence FROM story ORDER BY id").subList(0, before.size()));
    assertEquals(
        done ? CarryOver.Outcome.DoneBefore.class : CarryOver.Outcome.Done.class,
        carry().getClass());
    assertFalse(Schema.isFromBefore(assertInstanceOf(Soundness.Sound.class, soundness()).schema()));
    assertArrayEquals(mark, Files.readAllBytes(folder.highWaterMark()));
  }

  @Test
  void pressedTwice_itSaysThatItIsDone_andChangesNothing() throws Exception {
    aClubOf("046");
    carry();
    byte[] file = Files.readAllBytes(folder.file());
    List<String> names = names();
    assertInstanceOf(CarryOver.Outcome.DoneBefore.class, carry());
    assertArrayEquals(file, Files.readAllBytes(folder.file()));
    assertEquals(names, names());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "DROP TRIGGER record_update_borrower; UPDATE borrower SET name = 'Somebody Else'",
        "DROP TRIGGER story_is_never_changed; UPDATE story SET sentence = 'Entered nobody.' WHERE id = 1",
        "DROP TRIGGER personal_value_is_only_erased; UPDATE personal SET value = '[null,\"x\"]' WHERE id = 1",
        "DROP TRIGGER story_is_never_deleted; DROP TRIGGER story_about_is_never_deleted; DELETE FROM story WHERE id = 0"
      })
  void aRecordThatIsNotWhole_isRefused_andStaysAsItIs(String tampering) throws Exception {
    aClubOf("046");
    for (String sql : tampering.split("; ")) {
      run(sql);
    }
    List<String> names = names().stream().filter(name -> !name.startsWith("ascham.db-")).toList();
    CarryOver.Outcome.Refused refused = assertInstanceOf(CarryOver.Outcome.Refused.class, carry());
    assertTrue(
        refused.why().startsWith("The record of the club’s file is not whole: "), refused.why());
    assertEquals(
        List.of("46"), texts("SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history"));
    assertTrue(names().containsAll(names));
    assertFalse(names().contains("ascham-before-1.0.0.db"), names()::toString);
  }

  /** As the README has an officer do it who lost phone and codes. */
  @Test
  void whatAnotherProgramChanged_whileTheTriggersWatched_isToldAsTheNextSaveWould()
      throws Exception {
    aClubOf("046");
    run("UPDATE borrower SET contact = 'elsewhere@example.org'");
    assertInstanceOf(CarryOver.Outcome.Done.class, carry());
    assertEquals(
        List.of("Changed outside the program."), texts("SELECT sentence FROM story WHERE id = 2"));
  }

  /** A migration of before gave every row there was a value, which no trigger saw. */
  @Test
  void whatCameWithAColumn_isNoTampering_butAnyOtherValueIs() throws Exception {
    aClubOf("033");
    BeforeMigrations.bringUpToDate(folder.file());
    run("UPDATE flyway_schema_history SET version = '046' WHERE version = '033'");
    String set = "UPDATE club SET weigh_limbs_days = ";
    run("DROP TRIGGER record_update_club");
    run(set + 100);
    assertInstanceOf(CarryOver.Outcome.Refused.class, carry());
    run(set + 365);
    assertInstanceOf(CarryOver.Outcome.Done.class, carry());
    assertEquals(List.of("365"), texts("SELECT weigh_limbs_days FROM club"));
  }

  @Test
  void whileAServerRuns_orWithoutAFile_itIsRefused() throws Exception {
    aClubOf("046");
    try (var held = InUse.take(folder).orElseThrow()) {
      assertTrue(
          assertInstanceOf(CarryOver.Outcome.Refused.class, carry())
              .why()
              .endsWith("stop it first."));
    }
    folder = new DataFolder(tmp.resolve("none"));
    assertTrue(
        assertInstanceOf(CarryOver.Outcome.Refused.class, carry())
            .why()
            .startsWith("There is no club’s file "));
  }

  @Test
  void aStart_onAFolderFromBefore_namesTheCommand() throws Exception {
    aClubOf("046");
    Backups backups = BackupsOf.folder(folder.path(), CLOCK);
    ClubsFile clubsFile = new ClubsFile(Schema.of("jdbc:sqlite:" + folder.file()).load(), backups);
    assertEquals(
        "Ascham does not start. This data folder is from before Ascham 1.0.0: carry it over once"
            + " with: java -jar quarkus-run.jar carry-over "
            + folder.path().toAbsolutePath(),
        assertThrows(NotStarting.class, () -> clubsFile.lookAt(folder)).getMessage());
    carry();
    clubsFile.lookAt(folder);
    assertEquals(Optional.empty(), clubsFile.migrate(), "it has every migration there is");
  }

  @Test
  void theCommand_saysWhatBecameOfIt_andABackupFromBefore_whatIsToBeDone() throws Exception {
    aClubOf("046");
    Backups.Backup made = BackupsOf.folder(folder.path(), CLOCK).make();
    Said done = command("carry-over", folder.path().toString());
    assertEquals(0, done.code(), done.words());
    assertTrue(
        done.words().contains("Its record is whole, 3 entries; newest seal: "), done.words());
    assertTrue(
        done.words().contains("is kept in " + folder.path().resolve("ascham-before-1.0.0.db")));
    Said again = command("carry-over", folder.path().toString());
    assertEquals(0, again.code());
    assertTrue(again.words().startsWith("It is done: "), again.words());
    Said back = command("restore", folder.backups().resolve(made.name().fileName()).toString());
    assertEquals(0, back.code());
    assertTrue(
        back.words()
            .contains(
                "It is from before Ascham 1.0.0: carry it over with: java -jar quarkus-run.jar carry-over "),
        back.words());
    assertEquals(0, command("carry-over", folder.path().toString()).code());
    assertTrue(names().contains("ascham-before-1.0.0-2.db"), names()::toString);
    Said none = command("carry-over", tmp.resolve("none").toString());
    assertEquals(1, none.code());
    assertTrue(none.words().endsWith("Nothing was changed.\n"), none.words());
  }

  private record Said(int code, String words) {}

  private Said command(String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int code =
        Ascham.command(folder, CLOCK, new PrintStream(out, true, StandardCharsets.UTF_8), words);
    return new Said(code, out.toString(StandardCharsets.UTF_8).replace("\r", ""));
  }

  @Test
  void everyMigrationOfBefore_isInTheListOfThem() throws Exception {
    Path before = Path.of(CarryOverTest.class.getResource("/db/before").toURI());
    try (Stream<Path> files = Files.list(before)) {
      assertEquals(
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".sql"))
              .sorted()
              .toList(),
          BeforeMigrations.inOrder());
    }
  }
}
