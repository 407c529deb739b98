package club.ascham.store;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.Settings;
import club.ascham.story.VerifyRecord;
import club.ascham.time.TestClock;
import club.ascham.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What the file, the disk and the clock can do to people at work: said in words, nothing lost. */
@QuarkusTest
class FaultsTest {
  private static final int CONNECTIONS = 16;
  private static final int NO_LIMIT = 1_073_741_823;

  @Inject DataSource source;
  @Inject Rows rows;
  @Inject VerifyRecord verifyRecord;
  @Inject Settings settings;

  @TestHTTPResource("/")
  URI address;

  @AfterEach
  void allIsWellAgain() throws SQLException {
    onEachConnection("PRAGMA max_page_count=" + NO_LIMIT);
    onEachConnection("PRAGMA query_only=OFF");
    enter("All Is Well").then().statusCode(201);
    assertEquals(List.of("ok"), rows.texts("PRAGMA integrity_check"));
    assertEquals(List.of(), verifyRecord.verify().faults());
  }

  /** These settings belong to a connection, and the pool has several. */
  private void onEachConnection(String pragma) throws SQLException {
    List<Connection> all = new ArrayList<>();
    try {
      for (int i = 0; i < CONNECTIONS; i++) {
        Connection connection = source.getConnection();
        all.add(connection);
        try (Statement statement = connection.createStatement()) {
          statement.execute(pragma);
        }
      }
    } finally {
      for (Connection connection : all) {
        connection.close();
      }
    }
  }

  private static Response enter(String name) {
    return sending("officer")
        .body(Map.of("name", name, "contact", "someone@example.org", "ageBand", "adult"))
        .post("/api/borrowers");
  }

  private long borrowers(String name) {
    return rows.number("SELECT count(*) FROM borrower WHERE name = ?1", name);
  }

  @Test
  void aFullDisk_isSaidWith507_andWhatWasAcknowledgedIsThere() throws SQLException {
    onEachConnection("PRAGMA max_page_count=1");
    int saved = 0;
    Response answer;
    while ((answer = enter("Full " + saved)).statusCode() == 201) {
      saved++;
      assertTrue(saved < 1_000, "the file never was full");
    }
    answer
        .then()
        .statusCode(507)
        .contentType("application/problem+json")
        .body("title", containsString("The disk is full"))
        .body("detail", containsString("Make room"));
    for (int i = 0; i < saved; i++) {
      assertEquals(1, borrowers("Full " + i));
    }
    assertEquals(0, borrowers("Full " + saved), "what was refused is not there");
    String csv =
        "name,contact,ageBand,memberNo,guardian,number\n"
            + "Ann Other,x@example.org,adult,,,\n".repeat(400);
    sending("officer").contentType("text/csv").body(csv).post("/api/import").then().statusCode(507);
    assertEquals(0, borrowers("Ann Other"), "all or nothing");
  }

  @Test
  void onAPage_theTroubleIsSaidInWords() throws SQLException {
    Visitor officer = Visitor.signedInAs("officer");
    long id = enter("Pages Before").then().statusCode(201).extract().jsonPath().getLong("id");
    officer.get("/borrowers/" + id).then().statusCode(200);
    onEachConnection("PRAGMA query_only=ON");
    officer
        .post(
            "/borrowers/" + id,
            Map.of(
                "name", "Pages After",
                "contact", "someone@example.org",
                "ageBand", "adult",
                "version", "0"))
        .then()
        .statusCode(503)
        .contentType("text/html")
        .body(containsString("can be read but not written"))
        .body(not(containsString("SQLITE")));
    assertEquals(0, borrowers("Pages After"));
    assertEquals(1, borrowers("Pages Before"));
  }

  @Test
  void aFileThatCanOnlyBeRead_isSaidWith503_andPagesStillShowIt() throws SQLException {
    onEachConnection("PRAGMA query_only=ON");
    enter("Read Only")
        .then()
        .statusCode(503)
        .body("detail", containsString("can be read but not written"));
    sending("officer").get("/api/rigs").then().statusCode(200);
    assertEquals(0, borrowers("Read Only"));
  }

  /** A session is a row: nobody new comes in, and those who are in may look. */
  @Test
  void signingIn_whereNothingCanBeWritten_saysWhy_andWhoIsInGoesOn() throws SQLException {
    Visitor officer = Visitor.signedInAs("officer");
    onEachConnection("PRAGMA query_only=ON");
    Visitor newcomer = Visitor.unknown();
    newcomer.get("/sign-in");
    newcomer
        .post("/sign-in", Map.of("name", "officer", "password", "demo-fleet"))
        .then()
        .statusCode(503)
        .contentType("text/html")
        .body(containsString("can be read but not written"));
    officer.get("/rigs").then().statusCode(200);
  }

  @Test
  void aFileThatAnotherProgramHolds_isSaidWith503_andWhenToTryAgain() throws SQLException {
    try (Connection other = SqliteFile.open(new DataFolder(settings.dataDir()).file());
        Statement statement = other.createStatement()) {
      statement.execute("BEGIN IMMEDIATE");
      enter("Locked Out")
          .then()
          .statusCode(503)
          .header("Retry-After", "5")
          .body("detail", containsString("Another program holds the club’s file"));
      sending("officer").get("/api/rigs").then().statusCode(200);
      statement.execute("ROLLBACK");
    }
    assertEquals(0, borrowers("Locked Out"));
    enter("Locked Out").then().statusCode(201);
  }

  @Test
  void theClockSetBack_refusesNothing_andIsSaidToOfficers() {
    long rig = readyRig();
    long session = lend(rig);
    long lastEntry = rows.number("SELECT max(id) FROM story");
    Clock back =
        Clock.fixed(TestClock.running().instant().minus(Duration.ofDays(400)), ZoneOffset.UTC);
    QuarkusMock.installMockForType(back, Clock.class);
    sending("officer")
        .body(Map.of("rigs", List.of(Map.of("rigId", rig))))
        .post("/api/sessions/" + session + "/return")
        .then()
        .statusCode(200);
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL", session));
    enter("Saved In The Past").then().statusCode(201);
    assertTrue(rows.number("SELECT max(id) FROM story") > lastEntry, "told after what was told");
    assertEquals(
        Stored.moment(back.instant()).substring(0, 19),
        rows.texts("SELECT recorded_at FROM story ORDER BY id DESC LIMIT 1")
            .get(0)
            .substring(0, 19),
        "recorded as the clock said");
    assertEquals(List.of(), verifyRecord.verify().faults());
    Visitor.signedInAs("officer")
        .get("/")
        .then()
        .statusCode(200)
        .body(containsString("The server’s clock says"));
    Visitor.signedInAs("officer")
        .get("/record")
        .then()
        .statusCode(200)
        .body(containsString("The server’s clock says"));
    sending("officer").get("/api/rigs").then().statusCode(200);
  }

  private long readyRig() {
    return sending("officer")
        .get("/api/rigs?state=ready&size=200")
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getLong("items[0].id");
  }

  private static long lend(long rig) {
    return sending("officer")
        .body(Map.of("leader", "Ottoline", "rigIds", List.of(rig)))
        .post("/api/sessions")
        .then()
        .statusCode(201)
        .extract()
        .jsonPath()
        .getLong("id");
  }

  @Test
  void anUploadCutHalfWay_changesNothing_andTheServerGoesOn() throws IOException {
    String csv =
        "number,name,contact,memberNo,ageBand,guardian\n"
            + ",Cut Half,cut@example.org,,adult,\n".repeat(50);
    long entries = rows.number("SELECT max(id) FROM story");
    try (Socket socket = new Socket(address.getHost(), address.getPort())) {
      String key =
          Base64.getEncoder().encodeToString("officer:demo-fleet".getBytes(StandardCharsets.UTF_8));
      String head =
          "POST /api/import HTTP/1.1\r\nHost: "
              + address.getHost()
              + "\r\nAuthorization: Basic "
              + key
              + "\r\nContent-Type: text/csv\r\nContent-Length: "
              + csv.length()
              + "\r\n\r\n";
      socket
          .getOutputStream()
          .write((head + csv.substring(0, csv.length() / 2)).getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().flush();
    }
    // The next save waits its turn behind whatever the cut one may have begun.
    enter("After The Cut").then().statusCode(201);
    assertEquals(0, borrowers("Cut Half"));
    assertEquals(entries + 1, rows.number("SELECT max(id) FROM story"));
  }

  @Test
  void aFileThatEndsInTheMiddleOfALine_is422_andChangesNothing() {
    String csv =
        "number,name,contact,memberNo,ageBand,guardian\n"
            + ",Cut Line,cut@example.org,,adult,\n"
            + ",Cut Line,\"cut@exa";
    sending("officer").contentType("text/csv").body(csv).post("/api/import").then().statusCode(422);
    assertEquals(0, borrowers("Cut Line"));
  }

  @Test
  void aFormWhoseFileEndsInTheMiddle_isRefused() throws IOException {
    String body =
        "--here\r\nContent-Disposition: form-data; name=\"files\"; filename=\"b.csv\"\r\n\r\nnumber,na";
    try (Socket socket = new Socket(address.getHost(), address.getPort())) {
      socket
          .getOutputStream()
          .write(
              ("POST /exchange/try HTTP/1.1\r\nHost: "
                      + address.getHost()
                      + "\r\nConnection: close\r\nContent-Type: multipart/form-data; boundary=here"
                      + "\r\nContent-Length: "
                      + body.length()
                      + "\r\n\r\n"
                      + body)
                  .getBytes(StandardCharsets.UTF_8));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(answer.matches("(?s)HTTP/1.1 (3|4)\\d\\d .*"), answer);
    }
  }
}
