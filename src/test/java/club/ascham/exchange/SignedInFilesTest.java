package club.ascham.exchange;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.store.Stored;
import club.ascham.time.Ago;
import club.ascham.time.ClubTime;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What only a holder of the permit signs, a file signs for nobody else. */
@QuarkusTest
class SignedInFilesTest {
  @Inject ClubFixture fixture;
  @Inject Rows rows;
  @Inject ClubTime time;

  private LaidBow bow;
  private long before;

  @BeforeEach
  void aBowWhoseBoltsFailed() {
    fixture.mayTurnBolts("officer", true);
    bow = fixture.aBowReadyToGoOut();
    rows.change(
        "INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result, found)"
            + " VALUES (?1, 'BOLT_INSPECTION', ?2, ?2, 1, 'FAILED', 'The lower bolt turns without end.')",
        bow.body().id(),
        Ago.days(time, 2));
    before = records();
  }

  @AfterEach
  void asItWas() {
    fixture.mayTurnBolts("officer", false);
  }

  @Test
  void aPassWithoutThePermit_isRefusedAtWhoSigned_andUnblocksNothing() {
    take(row("bolt-inspection", time.now(), "volunteer", "passed"))
        .statusCode(422)
        .body("errors.size()", equalTo(1))
        .body("errors[0].field", containsString("line 2"))
        .body("errors[0].field", containsString("by"))
        .body("errors[0].message", containsString("permit for limb bolts"));
    take(row("bolt-inspection", Ago.days(time, 1), "volunteer", "passed")).statusCode(422);
    assertEquals(before, records());
    assertTrue(isBlocked());
  }

  @Test
  void withThePermit_itIsTakenIn_andOtherWorkAnyoneSigns() {
    take(row("bolt-inspection", time.now(), "officer", "passed")).statusCode(200);
    take(row("riser-inspection", time.now(), "volunteer", "passed")).statusCode(200);
    assertEquals(before + 2, records());
  }

  @Test
  void aPermitThatEndedBeforeThatDay_signsNothing() {
    rows.change(
        "UPDATE account SET permit_until = ?1 WHERE name = 'officer'", time.today().minusDays(5));
    take(row("bolt-inspection", time.now(), "officer", "passed")).statusCode(422);
    assertEquals(before, records());
  }

  @Test
  void whatLiesBeforeTheNewestRecord_isHistory_whereverItStandsInTheFile() {
    take(row("bolt-inspection", Ago.days(time, 400), "volunteer", "passed")).statusCode(200);
    take(row("bolt-inspection", Ago.days(time, 1), "volunteer", "passed")
            + row("bolt-inspection", time.now(), "officer", "passed"))
        .statusCode(200);
    assertEquals(before + 3, records());
  }

  private long records() {
    return rows.number("SELECT count(*) FROM upkeep_record WHERE item_id = ?1", bow.body().id());
  }

  private boolean isBlocked() {
    return rows.number(
            "SELECT count(*) FROM item_blocked WHERE item_id = ?1 AND blocked_from < ?2",
            bow.body().id(),
            time.today())
        > 0;
  }

  private String row(String work, Instant at, String by, String result) {
    String moment = Stored.moment(at);
    return ",%s,%s,%s,%s,%s,%s,ok,,,\n"
        .formatted(bow.body().code(), work, moment, moment, by, result);
  }

  private static ValidatableResponse take(String lines) {
    return as("officer")
        .contentType("text/csv")
        .body(
            "number,item,work,happenedAt,recordedAt,by,result,found,measured,partsUsed,replacedBy\n"
                + lines)
        .post("/api/import")
        .then();
  }
}
