package club.ascham.server;

import static club.ascham.web.Program.sending;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.Settings;
import club.ascham.backup.Backups;
import club.ascham.store.DataFolder;
import club.ascham.store.FileTrouble;
import club.ascham.store.Rows;
import club.ascham.store.SameFile;
import club.ascham.story.HighWater;
import club.ascham.story.HighWaterMark;
import club.ascham.story.RecordEnd;
import club.ascham.story.VerifyRecord;
import club.ascham.time.ClubTime;
import club.ascham.time.TestElapsed;
import club.ascham.web.FormOnPage;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What fails while nobody looks, as officers, other programs and nobody else are told of it. */
@QuarkusTest
class WorriesTest {
  private static final Map<String, String> NOTHING = Map.of();
  private static final long AHEAD = 1_000_000;

  @Inject TestDisk disk;
  @Inject TestElapsed elapsed;
  @Inject ClockWatch clock;
  @Inject HealthMonitor lookout;
  @Inject HighWater highWater;
  @Inject Backups backups;
  @Inject VerifyRecord verifyRecord;
  @Inject Settings settings;
  @Inject ClubTime time;
  @Inject Rows rows;

  @AfterEach
  void allIsWell() {
    disk.has(TestDisk.PLENTY);
    clock.read();
    highWater.allRead();
  }

  /** An answer of those checks alone that some address asks. */
  private static JsonPath check(String path, String name) {
    Response answer = given().get(path);
    List<Map<String, Object>> found =
        answer.jsonPath().getList("checks.findAll { it.name == '" + name + "' }");
    assertEquals(1, found.size(), answer.asString());
    return JsonPath.from(answer.asString())
        .setRootPath("checks.find { it.name == '" + name + "' }.");
  }

  private static String newestSentence(Rows rows) {
    return rows.texts("SELECT sentence FROM story ORDER BY id DESC LIMIT 1").get(0);
  }

  /** Opens the club's file again, beside a mark that knew more. */
  private void lose() throws IOException {
    DataFolder folder = new DataFolder(settings.dataDir());
    long last = rows.number("SELECT max(id) FROM story");
    new HighWaterMark(new RecordEnd(last + AHEAD, "f".repeat(64), time.now()), null, List.of())
        .write(folder.highWaterMark());
    highWater.opens(folder, null);
  }

  @Test
  void whereAllIsWell_nothingIsSaid() {
    Visitor.signedInAs("officer").get("/").then().body(not(containsString("The server")));
    assertEquals(
        List.of(),
        sending("officer").get("/api/server").then().statusCode(200).extract().path("items"));
    given().get("/q/health/well").then().statusCode(200).body("status", equalTo("UP"));
  }

  @Test
  void aLoss_isTold_untilAnOfficerHasReadIt_whichTheRecordTells() throws IOException {
    lose();
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/")
        .then()
        .statusCode(200)
        .body(containsString("The club’s file was opened on "))
        .body(containsString("action=\"/server/read/record\""));
    assertEquals(503, given().get("/q/health/well").statusCode());
    assertEquals("DOWN", check("/q/health/well", "the record").getString("status"));
    given().get("/q/health/ready").then().statusCode(200);
    lookout.look();

    officer.post("/server/read/record", NOTHING).then().statusCode(303);
    officer
        .get("/")
        .then()
        .body(containsString("Noted in the record that you have read it."))
        .body(not(containsString("The club’s file was opened")));
    assertTrue(
        newestSentence(rows).startsWith("Read that the club’s file was opened on "),
        newestSentence(rows));
    assertEquals(List.of(), verifyRecord.verify().faults());
    assertEquals("UP", check("/q/health/well", "the record").getString("status"));
    assertTrue(
        !Files.readString(new DataFolder(settings.dataDir()).highWaterMark()).contains("lost "),
        "nor at the next start");
  }

  @Test
  void aFileThatIsGone_isToldFirst_asReadinessTellsIt() {
    Visitor officer = Visitor.signedInAs("officer");
    QuarkusMock.installMockForType(
        new SameFile() {
          @Override
          public Optional<FileTrouble> trouble() {
            return Optional.of(
                FileTrouble.another("it is gone from its folder", "Nothing was changed."));
          }
        },
        SameFile.class);
    given().get("/q/health/ready").then().statusCode(503);
    sending("officer")
        .get("/api/server")
        .then()
        .statusCode(200)
        .body("items[0].about", equalTo("file"))
        .body("items[0].said", containsString("Stop the server"))
        .body("items[0].said", containsString("What was found: it is gone from its folder."))
        .body("items[0].readable", equalTo(false));
    officer.get("/").then().body(containsString("nothing can be saved"));
  }

  @Test
  void aMarkFromBeforeAnImportOrAnErasing_missesNothing() {
    int borrower =
        sending("officer")
            .body(Map.of("name", "Wren Erased", "contact", "w@example.org", "ageBand", "adult"))
            .post("/api/borrowers")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    highWater.follow();
    sending("officer")
        .body(Map.of())
        .post("/api/borrowers/" + borrower + "/erasure")
        .then()
        .statusCode(200);
    sending("officer")
        .contentType("text/csv")
        .body(
            "number,name,contact,memberNo,ageBand,guardian\n"
                + "987654,Ann Imported,ann@example.org,,adult,\n")
        .post("/api/import")
        .then()
        .statusCode(200);
    highWater.opens(new DataFolder(settings.dataDir()), null);
    assertEquals(List.of(), highWater.unread());
  }

  @Test
  void readTwice_itIsToldOnce() throws IOException {
    lose();
    Visitor officer = Visitor.signedInAs("officer");
    Map<String, String> form =
        FormOnPage.on(officer.get("/").asString(), "/server/read/record").orElseThrow();
    assertTrue(form.containsKey("once-key"), form.toString());
    officer.post("/server/read/record", form).then().statusCode(303);
    long entries = rows.number("SELECT count(*) FROM story");
    officer.post("/server/read/record", form).then().statusCode(303);
    officer.get("/").then().body(not(containsString("It was read before.")));
    officer.post("/server/read/record", NOTHING).then().statusCode(303);
    officer.get("/").then().body(containsString("It was read before."));
    assertEquals(entries, rows.number("SELECT count(*) FROM story"));
  }

  @Test
  void byTheApi_itIsReadAsByThePage() throws IOException {
    lose();
    sending("officer")
        .get("/api/server")
        .then()
        .statusCode(200)
        .body("items.about", equalTo(List.of("record")))
        .body("items.readable", equalTo(List.of(true)));
    sending("officer")
        .post("/api/server/read/record")
        .then()
        .statusCode(200)
        .body("items", equalTo(List.of()));
    assertTrue(newestSentence(rows).startsWith("Read that the club’s file"), newestSentence(rows));
    sending("officer").post("/api/server/read/weather").then().statusCode(404);
  }

  @Test
  void theMark_isItsOwnersAlone() throws IOException {
    highWater.follow();
    Path mark = new DataFolder(settings.dataDir()).highWaterMark();
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(mark)));
  }

  @Test
  void aDiskNearlyFull_isTold_andIsNoReasonToCallTheServerDown() {
    disk.has(new Disk.Room(312_000_000, 16_000_000_000L));
    Visitor.signedInAs("officer")
        .get("/")
        .then()
        .body(
            containsString(
                "The server’s disk is nearly full: 312.0 MB of 16.0 GB are free. Make room, or soon"
                    + " nothing can be saved."));
    given().get("/q/health/ready").then().statusCode(200);
    given().get("/q/health/well").then().statusCode(200);
    JsonPath answer = check("/q/health/well", "the disk");
    assertEquals("UP", answer.getString("status"));
    assertEquals(312, answer.getInt("data.freeMB"));
    assertTrue(answer.getBoolean("data.nearlyFull"));
  }

  /** A disk that does not answer must not hold up the thread that serves everyone. */
  @Test
  void theHealthAddress_asksDisks_whereItHoldsUpNobody() {
    given().get("/q/health/well").then().statusCode(200);
    assertTrue(disk.askedBy().startsWith("executor-thread"), disk.askedBy());
  }

  @Test
  void aClockThatJumped_isTold_untilItIsRead() {
    elapsed.goesOnBy(Duration.ofMinutes(-125));
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/")
        .then()
        .body(containsString("The server’s clock was set forward by 2 h 5 min while it ran"))
        .body(containsString("action=\"/server/read/clock\""));
    given().get("/q/health/ready").then().statusCode(200);
    JsonPath answer = check("/q/health/well", "the clock");
    assertEquals("UP", answer.getString("status"));
    assertEquals(2 * 3600 + 5 * 60, answer.getInt("data.jumpedSeconds"), 5);
    officer.post("/server/read/clock", NOTHING).then().statusCode(303);
    assertTrue(
        newestSentence(rows)
            .startsWith("Read that the server’s clock was set forward by 2 h 5 min, seen on "),
        newestSentence(rows));
    officer.get("/").then().body(not(containsString("clock was set forward")));
  }

  @Test
  void aBackupThatFailed_isDown_andTheServerIsReadyAllTheSame() throws IOException {
    Path folder = new DataFolder(settings.dataDir()).backups();
    Path aside = folder.resolveSibling("aside");
    Files.createDirectories(folder);
    Files.move(folder, aside);
    Files.writeString(folder, "a file where the folder should be");
    try {
      assertThrows(FileTrouble.class, backups::make);
      JsonPath answer = check("/q/health/well", "backups");
      assertEquals("DOWN", answer.getString("status"));
      assertTrue(answer.getString("data.why").startsWith("The last backup failed."));
      given().get("/q/health/ready").then().statusCode(200);
      Visitor.signedInAs("officer").get("/").then().body(containsString("The last backup failed."));
    } finally {
      Files.delete(folder);
      Files.move(aside, folder);
      backups.make();
    }
    assertEquals("UP", check("/q/health/well", "backups").getString("status"));
  }

  @Test
  void onlyOfficers_areTold() throws IOException {
    lose();
    disk.has(new Disk.Room(1, 2));
    for (String name : List.of("volunteer", "committee")) {
      Visitor.signedInAs(name)
          .get("/")
          .then()
          .body(not(containsString("nearly full")))
          .body(not(containsString("The club’s file was opened")));
      sending(name).get("/api/server").then().statusCode(403);
      sending(name).post("/api/server/read/record").then().statusCode(403);
    }
    sending("officer").get("/api/server").then().body("items.about", hasItem("disk"));
  }

  @Test
  void whatTheHealthAddressSays_namesNoFolder() throws IOException {
    lose();
    String said = given().get("/q/health").asString() + given().get("/q/health/well").asString();
    assertTrue(said.contains("the club's file") && said.contains("the disk"), said);
    assertTrue(!said.contains(settings.dataDir().toAbsolutePath().toString()), said);
  }
}
