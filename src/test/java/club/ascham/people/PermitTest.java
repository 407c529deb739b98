package club.ascham.people;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * What takes the inspector's permit is refused by the use case itself without one, and the permit's
 * last day still counts. Asked through the API, where no page hides the button.
 */
@QuarkusTest
class PermitTest {
  @Inject ClubFixture fixture;
  @Inject Rows rows;
  @Inject ClubTime time;

  private static final String FINE =
      "{\"lookedAt\": \"Both limbs along a string.\", \"why\": \"They are straight as new.\"}";

  @AfterEach
  void noPermit() {
    permitUntil(null);
  }

  @Test
  void releasingAWithdrawal_isRefusedAfterThePermitsLastDay_andNotOnIt() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    int id =
        as("{\"item\": \"%s\", \"why\": \"Upper limb looks twisted.\"}"
                .formatted(bow.limbs().code()))
            .post("/api/withdrawals")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    String release = "/api/withdrawals/" + id + "/release";
    String decide = "/api/withdrawals/" + id + "/decide";
    String none = "{\"work\": \"none\", \"why\": \"It was the light, nothing else.\"}";
    permitUntil(time.today().minusDays(1));
    as(none).post(decide).then().statusCode(403);
    permitUntil(time.today());
    as(none).post(decide).then().statusCode(200);
    permitUntil(time.today().minusDays(1));
    as(FINE).post(release).then().statusCode(403);
    permitUntil(null);
    as(FINE).post(release).then().statusCode(403);
    permitUntil(time.today());
    as(FINE).post(release).then().statusCode(200);
  }

  @Test
  void signingALimbBoltInspection_isRefusedAfterThePermitsLastDay_andNotOnIt() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    permitUntil(time.today().minusDays(1));
    inspectBolts(bow).then().statusCode(403).body("detail", containsString("permit"));
    permitUntil(null);
    inspectBolts(bow).then().statusCode(403);
    permitUntil(time.today());
    inspectBolts(bow).then().statusCode(201).body("result", equalTo("passed"));
  }

  @Test
  void turningLimbBolts_isRefusedAfterThePermitsLastDay_andNotOnIt() {
    LaidBow bow = fixture.aBowJustReceived();
    int check =
        as("""
            {"rig": "%s", "allAsListed": true, "brace": "216 mm", "braceFrom": "grip-throat",
             "tillerUpper": "192 mm", "tillerLower": "184 mm",
             "answers": {"string": "fine", "limbs": "fine", "bolts": "fine"}}"""
                .formatted(bow.body().code()))
            .post("/api/checks")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    permitUntil(time.today().minusDays(1));
    turnBolts(check).then().statusCode(422).body("errors[0].message", containsString("permit"));
    permitUntil(null);
    turnBolts(check).then().statusCode(422);
    permitUntil(time.today());
    turnBolts(check).then().statusCode(201);
  }

  private static Response turnBolts(int check) {
    return as("{\"upperIn\": \"0.25\"}").post("/api/checks/" + check + "/adjustment");
  }

  private static Response inspectBolts(LaidBow bow) {
    return as("""
            {"item": "%s", "work": "bolt-inspection",
             "seen": {"turns": "fine", "alike": "fine", "thread": "fine", "lockingScrew": "fine",
                      "washer": "fine", "seat": "fine"},
             "upperTurnsOut": "2", "lowerTurnsOut": "2"}"""
            .formatted(bow.body().code()))
        .post("/api/inspections");
  }

  /** A volunteer's permit. */
  private void permitUntil(LocalDate day) {
    rows.change("UPDATE account SET permit_until = ?1 WHERE name = 'volunteer'", day);
  }

  private static RequestSpecification as(String body) {
    return sending("volunteer").body(body);
  }
}
