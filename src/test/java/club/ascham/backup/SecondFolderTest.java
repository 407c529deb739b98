package club.ascham.backup;

import static club.ascham.web.Program.sending;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A club that set a second folder, as its officers see it. */
@QuarkusTest
@TestProfile(SecondFolderTest.WithASecondFolder.class)
class SecondFolderTest {
  private static final Map<String, String> NOTHING = Map.of();
  private static final Path FOLDER =
      Path.of("target", "test-data", "second-folder").toAbsolutePath();

  /** The folder is there when a test makes it. */
  public static class WithASecondFolder implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("ascham.backup-copy-dir", FOLDER.toString());
    }
  }

  @BeforeEach
  void pluggedIn() throws IOException {
    Files.createDirectories(FOLDER);
  }

  @AfterEach
  void pulledOut() throws IOException {
    if (Files.isDirectory(FOLDER)) {
      try (Stream<Path> files = Files.list(FOLDER)) {
        files.forEach(Snapshot::forget);
      }
      Files.delete(FOLDER);
    }
  }

  private static Visitor pressed() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/backups");
    officer.post("/backups/make", NOTHING).then().statusCode(303);
    return officer;
  }

  @Test
  void pluggedIn_thePageAndTheApi_sayWhereCopiesGo() {
    pressed()
        .get("/backups")
        .then()
        .body(containsString("A copy of each goes into"))
        .body(containsString(FOLDER.toString()))
        .body(containsString("That folder is on the same disk as the club’s file"))
        .body(not(containsString("take one elsewhere now and then")));
    sending("officer")
        .get("/api/backups")
        .then()
        .body("worry", nullValue())
        .body("copies.there", equalTo(true))
        .body("copies.newest", not(nullValue()));
    given()
        .get("/q/health/well")
        .then()
        .statusCode(200)
        .body("checks.find { it.name == 'copies of backups' }.data.asked", equalTo(true))
        .body(not(containsString(FOLDER.toString())));
  }

  @Test
  void pulledOut_thePressStillMakesItsBackup_andWhatFailedIsTold() throws IOException {
    pulledOut();
    Visitor officer = pressed();
    officer.get("/backups").then().body(containsString("its disk is not there now"));
    officer
        .get("/")
        .then()
        .body(containsString("The second folder for backups is not there: plug in or mount"));
    sending("officer").get("/api/server").then().body("items.about", equalTo(List.of("copies")));
    given()
        .get("/q/health/well")
        .then()
        .statusCode(503)
        .body("checks.find { it.name == 'copies of backups' }.status", equalTo("DOWN"))
        .body("checks.find { it.name == 'backups' }.status", equalTo("UP"));
    given().get("/q/health/ready").then().statusCode(200);
  }

  @Test
  void atErasing_thePressSaysHowLongTheCopiesHoldThem() throws IOException {
    Visitor officer = pressed();
    int borrower =
        sending("officer")
            .body(Map.of("name", "Wren Erased", "contact", "wren@example.org", "ageBand", "adult"))
            .post("/api/borrowers")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    officer
        .get("/borrowers/" + borrower + "/erase")
        .then()
        .statusCode(200)
        .body(containsString("The last of the copies in the second folder goes on"));
    pulledOut();
    officer
        .get("/borrowers/" + borrower + "/erase")
        .then()
        .body(containsString("The second folder’s disk is not there now"));
  }
}
