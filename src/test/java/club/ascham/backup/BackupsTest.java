package club.ascham.backup;

import static club.ascham.web.Program.as;
import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.Settings;
import club.ascham.store.DataFolder;
import club.ascham.store.Rows;
import club.ascham.store.SqliteFile;
import club.ascham.story.SealedEntries;
import club.ascham.story.VerifyRecord;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@QuarkusTest
class BackupsTest {
  private static final Map<String, String> NOTHING = Map.of();

  @Inject Backups backups;
  @Inject TellBackup tellBackup;
  @Inject VerifyRecord verifyRecord;
  @Inject SealedEntries sealed;
  @Inject Settings settings;
  @Inject Rows rows;

  @AfterEach
  void theFolderIsThere() throws IOException {
    if (Files.isRegularFile(folder())) {
      Files.delete(folder());
    }
    backups.make();
  }

  private Path folder() {
    return new DataFolder(settings.dataDir()).backups();
  }

  private Backups.Backup made() {
    return backups.make();
  }

  @Test
  void aBackup_bearsTheRecordsNewestSeal_andHoldsWhatTheClubHolds() throws Exception {
    Backups.Backup backup = made();
    String seal = sealed.newest().orElseThrow();
    assertEquals(seal.substring(0, 12), backup.name().seal());
    Path file = backups.file(backup.name().fileName()).orElseThrow();
    Soundness.Sound sound = assertInstanceOf(Soundness.Sound.class, Soundness.ofAll(file));
    assertEquals(seal, sound.newestSeal());
    try (Connection copy = SqliteFile.open(file);
        Statement statement = copy.createStatement();
        ResultSet found = statement.executeQuery("SELECT count(*) FROM item")) {
      assertEquals(rows.number("SELECT count(*) FROM item"), found.getLong(1));
    }
  }

  @Test
  void aBackup_isOneFile_andNothingUnfinishedIsLeft() throws IOException {
    Backups.Backup backup = made();
    try (Stream<Path> files = Files.list(folder())) {
      List<String> names = files.map(file -> file.getFileName().toString()).toList();
      assertTrue(names.contains(backup.name().fileName()));
      assertEquals(List.of(), names.stream().filter(n -> BackupName.read(n).isEmpty()).toList());
    }
  }

  @Test
  void whatAPowerCutLeftOfATry_isGoneWithTheNext() throws IOException {
    made();
    Path left = Files.writeString(folder().resolve("ascham-1795640649000.part"), "half a page");
    made();
    assertTrue(Files.notExists(left));
  }

  @Test
  void peopleSave_whileABackupIsMade() throws Exception {
    Visitor officer = Visitor.signedInAs("officer");
    AtomicBoolean done = new AtomicBoolean();
    Thread maker =
        new Thread(
            () -> {
              for (int i = 0; i < 5; i++) {
                backups.make();
              }
              done.set(true);
            });
    long before = rows.number("SELECT count(*) FROM borrower");
    maker.start();
    int saved = 0;
    do {
      borrower("Ann Meanwhile " + saved).then().statusCode(201);
      saved++;
    } while (!done.get());
    maker.join();
    assertEquals(before + saved, rows.number("SELECT count(*) FROM borrower"));
    assertTrue(officer.get("/backups").statusCode() == 200);
    assertTrue(backups.worry().isEmpty());
  }

  private static Response borrower(String name) {
    return sending("officer")
        .body(Map.of("name", name, "contact", "ann@example.org", "ageBand", "adult"))
        .post("/api/borrowers");
  }

  @Test
  void anOfficer_makesOneByTheButton_andTakesItAlong(@TempDir Path desk) throws IOException {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/backups").then().statusCode(200);
    officer.post("/backups/make", NOTHING).then().statusCode(303);
    String page = officer.get("/backups").asString();
    Backups.Backup newest = backups.all().get(0);
    assertTrue(page.contains("it is sound"), page);
    assertTrue(page.contains(newest.name().shownSeal()), page);
    assertTrue(page.contains("/backups/" + newest.name().fileName()), page);
    byte[] bytes =
        officer
            .get("/backups/" + newest.name().fileName())
            .then()
            .statusCode(200)
            .header("Content-Disposition", containsString(newest.name().fileName()))
            .extract()
            .asByteArray();
    Path taken = Files.write(desk.resolve("taken.db"), bytes);
    assertInstanceOf(Soundness.Sound.class, Soundness.ofAll(taken));
  }

  @Test
  void aBackup_isToldInTheRecord_withWhoAskedForIt_afterItWasMade() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/backups");
    officer.post("/backups/make", NOTHING).then().statusCode(303);
    BackupName name = backups.all().get(0).name();
    assertEquals(
        List.of("officer: Made a backup, of the seal " + name.shownSeal() + "."), newestSentence());
    assertEquals(
        name.seal(),
        rows.texts("SELECT substr(hash, 1, 12) FROM story ORDER BY id DESC LIMIT 1 OFFSET 1")
            .get(0),
        "it holds everything but its own sentence");
    assertEquals(List.of(), verifyRecord.verify().faults());
  }

  @Test
  void theDailyBackup_isToldAsTheProgramsOwn_andOnlyWhereOneWasMade() throws IOException {
    try (Stream<Path> files = Files.list(folder())) {
      files.forEach(Snapshot::forget);
    }
    backups.makeIfDue().ifPresent(tellBackup::atNight);
    String seal = backups.all().get(0).name().shownSeal();
    List<String> told = newestSentence();
    assertEquals(List.of("Ascham: Made the daily backup, of the seal " + seal + "."), told);
    long entries = rows.number("SELECT count(*) FROM story");
    backups.makeIfDue().ifPresent(tellBackup::atNight);
    assertEquals(entries, rows.number("SELECT count(*) FROM story"), "it is not due twice");
  }

  @Test
  void aBackupBeforeAMigration_isToldWithItsName_onceTheRecordCanTakeIt() {
    Backups.Backup made = backups.makeBefore("V900");
    tellBackup.beforeMigration(made);
    assertEquals(
        List.of(
            "Ascham: Made a backup before the migration V900, of the seal "
                + made.name().shownSeal()
                + "."),
        newestSentence());
  }

  private List<String> newestSentence() {
    return rows.texts(
        "SELECT coalesce(a.name, 'Ascham') || ': ' || s.sentence FROM story s"
            + " LEFT JOIN account a ON a.id = s.account_id ORDER BY s.id DESC LIMIT 1");
  }

  @Test
  void thePage_saysWhichEntryOfTheRecordABackupEndsWith() {
    Backups.Backup backup = made();
    long entry = rows.number("SELECT max(id) FROM story");
    Visitor officer = Visitor.signedInAs("officer");
    assertTrue(officer.get("/backups").asString().contains("/record/" + entry), "entry " + entry);
    assertEquals(
        entry,
        as("officer")
            .get("/api/backups")
            .then()
            .statusCode(200)
            .body("worry", nullValue())
            .extract()
            .jsonPath()
            .getLong("items.find { it.file == '" + backup.name().fileName() + "' }.entry"));
  }

  @Test
  void aBackupThatCantBeWritten_isSaidInPlainWords_onThePageAndToOfficersAtHome()
      throws IOException {
    made();
    try (Stream<Path> files = Files.list(folder())) {
      files.forEach(Snapshot::forget);
    }
    Files.delete(folder());
    Files.writeString(folder(), "a file where the folder should be");
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/backups");
    officer
        .post("/backups/make", NOTHING)
        .then()
        .statusCode(503)
        .body(containsString("The folder for backups can’t be written"))
        .body(containsString("Let the server write into its data folder"));
    officer.get("/").then().statusCode(200).body(containsString("The last backup failed."));
    Visitor.signedInAs("volunteer")
        .get("/")
        .then()
        .statusCode(200)
        .body(not(containsString("The last backup failed.")));
    Files.delete(folder());
    officer.get("/backups");
    officer.post("/backups/make", NOTHING).then().statusCode(303);
    officer.get("/").then().body(not(containsString("The last backup failed.")));
  }

  @Test
  void aNameThatIsNoBackups_isNotFound_whateverLiesThere() throws IOException {
    made();
    Files.writeString(folder().resolve("notes.txt"), "not for the web");
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/backups/notes.txt").then().statusCode(404);
    officer.get("/backups/..%2Fascham.db").then().statusCode(404);
    officer.get("/backups/ascham-2001-01-01T00-00-00Z-000000000000.db").then().statusCode(404);
    Files.delete(folder().resolve("notes.txt"));
  }

  @Test
  void onlyOfficers_comeNear() {
    String file = made().name().fileName();
    for (String name : List.of("volunteer", "committee")) {
      Visitor other = Visitor.signedInAs(name);
      other.get("/");
      other.get("/backups").then().statusCode(403);
      other.get("/backups/" + file).then().statusCode(403);
      other.post("/backups/make", NOTHING).then().statusCode(403);
    }
  }
}
