package club.ascham.start;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.backup.Backups;
import club.ascham.backup.BackupsOf;
import club.ascham.store.DataFolder;
import club.ascham.store.Schema;
import club.ascham.store.SqliteFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is looked at before the club's file is opened, on files that are wrong in some way. */
class ClubsFileTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T21:04:09Z"), ZoneOffset.UTC);

  @TempDir Path tmp;
  private DataFolder folder;
  private Backups backups;

  @BeforeEach
  void aClub() throws SQLException, IOException {
    folder = new DataFolder(Files.createDirectory(tmp.resolve("data")));
    backups = BackupsOf.folder(folder.path(), CLOCK);
    migrations("classpath:db/migration").migrate();
    run("PRAGMA journal_mode=WAL");
    run("INSERT INTO account (name, password_hash, role) VALUES ('officer', 'x', 'OFFICER')");
  }

  private Flyway migrations(String... locations) {
    return Schema.of("jdbc:sqlite:" + folder.file() + "?foreign_keys=true")
        .locations(locations)
        .load();
  }

  private void run(String sql) throws SQLException {
    try (Connection connection = SqliteFile.open(folder.file());
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private static long number(Path file, String sql) throws SQLException {
    try (Connection connection = SqliteFile.open(file);
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(sql)) {
      return found.next() ? found.getLong(1) : 0;
    }
  }

  private ClubsFile clubsFile(String... locations) {
    return new ClubsFile(migrations(locations), backups);
  }

  private String refused() {
    ClubsFile clubsFile = clubsFile("classpath:db/migration");
    return assertThrows(NotStarting.class, () -> clubsFile.lookAt(folder)).getMessage();
  }

  private void damage() throws IOException {
    try (RandomAccessFile bytes = new RandomAccessFile(folder.file().toFile(), "rw")) {
      for (long page = 1; page * 4096 < bytes.length(); page++) {
        bytes.seek(page * 4096);
        bytes.write("scribbled on".getBytes(StandardCharsets.US_ASCII));
      }
    }
  }

  @Test
  void aSoundFile_isOpened() {
    assertDoesNotThrow(() -> clubsFile("classpath:db/migration").lookAt(folder));
  }

  @Test
  void aNewFolder_isOpened() throws IOException {
    Files.delete(folder.file());
    assertDoesNotThrow(() -> clubsFile("classpath:db/migration").lookAt(folder));
  }

  @Test
  void aFileThatIsGone_isNoNewClub_whereAnythingOfItIsLeft() throws IOException {
    Backups.Backup made = backups.make();
    Files.delete(folder.file());
    String said = refused();
    assertTrue(said.contains("holds backups, but the club's file"), said);
    assertTrue(
        said.endsWith(
            "restore " + folder.backups().resolve(made.name().fileName()).toAbsolutePath()),
        said);
    assertFalse(Files.exists(folder.file()), "nothing was made in its place");
    Files.createFile(folder.file());
    assertTrue(refused().contains("is gone or empty"), "cut to nothing, likewise");
  }

  @Test
  void aKeyAMarkOrALogOfWritesAlone_isWhatIsLeftOfAClub() throws IOException {
    Files.delete(folder.file());
    Files.writeString(folder.highWaterMark(), "mark");
    assertTrue(refused().contains("the mark of how far its record had come, but"));
    Files.delete(folder.highWaterMark());
    Files.writeString(folder.secondStepKey(), "key");
    assertTrue(refused().contains("the key of the second steps"));
    Files.writeString(folder.writeAheadLog(), "log");
    assertTrue(refused().contains("the file's log of writes and the key of the second steps"));
  }

  @Test
  void aDamagedFile_isRefused_namingTheBackupToBringBack_andLeftAsItIs() throws IOException {
    Backups.Backup made = backups.make();
    damage();
    byte[] before = Files.readAllBytes(folder.file());
    String said = refused();
    assertTrue(said.contains("is damaged"), said);
    assertTrue(
        said.endsWith(
            "java -jar quarkus-run.jar restore "
                + folder.backups().resolve(made.name().fileName()).toAbsolutePath()),
        said);
    Assertions.assertArrayEquals(before, Files.readAllBytes(folder.file()));
  }

  @Test
  void aDamagedBackup_isNotTheOneThatIsNamed() throws IOException {
    Backups.Backup made = backups.make();
    Path newest = folder.backups().resolve(made.name().fileName());
    Files.write(newest, Arrays.copyOf(Files.readAllBytes(newest), 20_000));
    damage();
    String said = refused();
    assertTrue(said.contains("There is no sound backup in the data folder"), said);
  }

  @Test
  void aFileOfNoDatabase_isRefused() throws IOException {
    Files.writeString(folder.file(), "the attic was damp ".repeat(500));
    assertTrue(refused().contains("is damaged"));
  }

  /** SQLite writes no file whose header asks for a newer way of writing: as read-only as can be. */
  @Test
  void aFileThatCanOnlyBeRead_isRefused() throws IOException {
    try (RandomAccessFile bytes = new RandomAccessFile(folder.file().toFile(), "rw")) {
      bytes.seek(18);
      bytes.write(3);
    }
    String said = refused();
    assertTrue(said.contains("can be read but not written"), said);
  }

  @Test
  void aFileThatAnotherProgramHolds_isRefused() throws SQLException {
    try (Connection other = SqliteFile.open(folder.file());
        Statement statement = other.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      String said = refused();
      assertTrue(said.contains("Another program holds the club's file"), said);
      statement.execute("ROLLBACK");
    }
  }

  @Test
  void aRestoreThatWasCutOff_isRefused_sinceAnEmptyClubWouldHideTheLoss() throws IOException {
    Files.move(folder.file(), folder.restoring());
    assertTrue(refused().contains("A restore ended half-way: run it again"));
  }

  private Path oneMoreMigration(String sql) throws IOException {
    Path more = Files.createDirectories(tmp.resolve("more"));
    Files.writeString(more.resolve("V900__more.sql"), sql);
    return more;
  }

  @Test
  void beforeAMigration_aBackupIsMade_ofTheFileAsItWas() throws Exception {
    Path more = oneMoreMigration("ALTER TABLE account ADD COLUMN nickname TEXT;");
    Backups.Backup told =
        clubsFile("classpath:db/migration", "filesystem:" + more).migrate().orElseThrow();
    List<Backups.Backup> made = backups.all();
    assertEquals(List.of(told), made);
    assertEquals("V900", made.get(0).name().before());
    Path backup = folder.backups().resolve(made.get(0).name().fileName());
    String column = "SELECT count(*) FROM pragma_table_info('account') WHERE name = 'nickname'";
    assertEquals(0, number(backup, column));
    assertEquals(1, number(folder.file(), column));
  }

  @Test
  void withoutABackup_nothingIsMigrated() throws Exception {
    Files.writeString(folder.backups(), "a file where the folder should be");
    Path more = oneMoreMigration("ALTER TABLE account ADD COLUMN nickname TEXT;");
    ClubsFile clubsFile = clubsFile("classpath:db/migration", "filesystem:" + more);
    String said = assertThrows(NotStarting.class, clubsFile::migrate).getMessage();
    assertTrue(said.contains("(V900), and no backup could be made before"), said);
    assertEquals(
        0,
        number(
            folder.file(),
            "SELECT count(*) FROM pragma_table_info('account') WHERE name = 'nickname'"));
  }

  @Test
  void whereNothingIsToBeMigrated_noBackupIsMade() {
    clubsFile("classpath:db/migration").migrate();
    assertEquals(List.of(), backups.all());
  }

  @Test
  void ofANewFile_noBackupIsMade() throws IOException {
    Files.delete(folder.file());
    clubsFile("classpath:db/migration").migrate();
    assertEquals(List.of(), backups.all());
  }

  @Test
  void aFileOfANewerProgram_isRefused() throws Exception {
    Path more = oneMoreMigration("ALTER TABLE account ADD COLUMN nickname TEXT;");
    clubsFile("classpath:db/migration", "filesystem:" + more).migrate();
    ClubsFile older = clubsFile("classpath:db/migration");
    String said = assertThrows(NotStarting.class, older::migrate).getMessage();
    assertTrue(said.contains("written by a newer Ascham (schema 900)"), said);
  }

  @Test
  void theCommand_saysHowItIsMeant_andRestores() throws Exception {
    assertEquals(2, command().code());
    assertEquals(2, command("restore").code());
    assertEquals(2, command("restroe", "x").code());
    Said missing = command("restore", tmp.resolve("none.db").toString());
    assertEquals(1, missing.code());
    assertTrue(missing.words().endsWith("Nothing was changed.\n"), missing.words());
    Backups.Backup made = backups.make();
    Said done = command("restore", folder.backups().resolve(made.name().fileName()).toString());
    assertEquals(0, done.code(), done.words());
    assertTrue(done.words().contains("What was there before is kept in "), done.words());
  }

  private record Said(int code, String words) {}

  private Said command(String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int code =
        Ascham.command(folder, CLOCK, new PrintStream(out, true, StandardCharsets.UTF_8), words);
    return new Said(code, out.toString(StandardCharsets.UTF_8).replace("\r", ""));
  }
}
