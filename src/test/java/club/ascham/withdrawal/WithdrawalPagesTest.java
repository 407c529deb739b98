package club.ascham.withdrawal;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Rows;
import club.ascham.web.Program;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class WithdrawalPagesTest {
  private static final String RELEASE =
      "{\"lookedAt\": \"Both limbs from butt to tip.\", \"why\": \"A scratch in the lacquer only.\"}";

  @Inject ClubFixture fixture;
  @Inject Rows rows;

  private LaidBow bow;

  @BeforeEach
  void aBowOnTheBench() {
    bow = fixture.aBowReadyToGoOut();
    fixture.mayTurnBolts("officer", true);
    fixture.mayTurnBolts("volunteer", false);
  }

  private long open() {
    return fixture.number(
        "SELECT coalesce(max(id), 0) FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL",
        bow.limbs().id());
  }

  /** The newest stands last, behind all that other tests left out of use. */
  private String lastPage() {
    long open = fixture.number("SELECT count(*) FROM withdrawal WHERE released_at IS NULL");
    return "/withdrawals?page=" + (1 + (open - 1) / 40);
  }

  private void withdraw(Visitor visitor) {
    String page = "/items/" + bow.limbs().code() + "/withdraw";
    visitor.get(page).then().statusCode(200);
    visitor
        .post(page, Map.of("why", "a line across the lower limb", "work", "limb-inspection"))
        .then()
        .statusCode(303);
  }

  private void passed(LaidBow of) {
    as(
            "volunteer",
            """
            {"item": "%s", "work": "limb-inspection", "seen": {"surface": "fine", "lines": "fine",
             "tips": "fine", "twist": "fine", "track": "fine", "butts": "fine", "pair": "fine"}}"""
                .formatted(of.limbs().code()))
        .post("/api/inspections")
        .then()
        .statusCode(201);
  }

  private static Map<String, String> release(String lookedBy) {
    return Map.of(
        "lookedAt",
        "Both limbs from butt to tip.",
        "lookedBy",
        lookedBy,
        "why",
        "A scratch in the lacquer only.");
  }

  @Test
  void aVolunteerWithdraws_andOnlySomeoneWithThePermitReleases_onceItIsPassed_sayingWhatWasSeen() {
    Visitor volunteer = Visitor.signedInAs("volunteer");
    withdraw(volunteer);
    assertEquals("WITHDRAWN", fixture.state(bow));
    volunteer.get(lastPage()).then().body(containsString("a line across the lower limb"));

    long id = open();
    String release = "/withdrawals/" + id + "/release";
    volunteer.get(release).then().body(containsString("Ask the officer"));
    volunteer.post(release, release("")).then().statusCode(422);
    assertEquals("WITHDRAWN", fixture.state(bow));

    Visitor officer = Visitor.signedInAs("officer");
    String sheet = "/upkeep/" + bow.limbs().code() + "/limb-inspection";
    officer.get(release).then().body(containsString(sheet), not(containsString("Release it")));
    officer
        .post(release, release(""))
        .then()
        .statusCode(422)
        .body(containsString("is not done yet"), containsString(sheet))
        .body(containsString("A scratch in the lacquer only."));
    assertEquals("WITHDRAWN", fixture.state(bow));

    passed(bow);
    officer
        .get(release)
        .then()
        .body(containsString("Release it"), containsString("value=\"officer\""));
    officer
        .post(release, Map.of("lookedBy", "Q"))
        .then()
        .statusCode(422)
        .body(containsString("lookedAt-error"), containsString("why-error"))
        .body(containsString("lookedBy-error"));
    officer.post(release, release("Dunstan Orme, the coach")).then().statusCode(303);
    officer
        .get("/withdrawals?show=released")
        .then()
        .body(containsString("A scratch in the lacquer only."))
        .body(containsString("Dunstan Orme, the coach looked at: Both limbs from butt to tip."));
    assertEquals("READY", fixture.state(bow));
  }

  @Test
  void whatFailed_isNotReleased_untilItIsPassed() {
    withdraw(Visitor.signedInAs("officer"));
    passed(bow);
    as(
            "volunteer",
            """
            {"item": "%s", "work": "limb-inspection", "words": "A crack after all.",
             "seen": {"surface": "stop", "lines": "fine", "tips": "fine", "twist": "fine",
              "track": "fine", "butts": "fine", "pair": "fine"}}"""
                .formatted(bow.limbs().code()))
        .post("/api/inspections")
        .then()
        .statusCode(201)
        .body("result", equalTo("failed"));
    long id = open();
    as("officer", RELEASE)
        .post("/api/withdrawals/" + id + "/release")
        .then()
        .statusCode(409)
        .body("detail", containsString("newest limb inspection was not passed"))
        .body("detail", containsString("/upkeep/" + bow.limbs().code() + "/limb-inspection"));
    passed(bow);
    as("officer", RELEASE).post("/api/withdrawals/" + id + "/release").then().statusCode(200);
    assertEquals("READY", fixture.state(bow));
  }

  @Test
  void whatIsToBeDecided_isDecidedFirst_byThePermitHolder_byPage() {
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/items/" + bow.limbs().code() + "/withdraw";
    officer.get(page);
    officer.post(page, Map.of("why", "Something creaks in it.")).then().statusCode(303);
    long id = open();
    String decide = "/withdrawals/" + id + "/decide";
    officer.get(lastPage()).then().body(containsString(decide));
    officer
        .get("/withdrawals/" + id + "/release")
        .then()
        .body(containsString("not decided yet"), containsString(decide));

    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get(decide).then().body(containsString("Ask the officer"));
    volunteer.post(decide, Map.of("work", "limb-inspection")).then().statusCode(422);

    officer.get(decide).then().statusCode(200);
    officer.post(decide, Map.of()).then().statusCode(422).body(containsString("work-error"));
    officer
        .post(decide, Map.of("work", "bolt-inspection"))
        .then()
        .statusCode(422)
        .body(containsString("work-error"));
    officer
        .post(decide, Map.of("work", "none", "why", "x"))
        .then()
        .statusCode(422)
        .body(containsString("why-error"), containsString(">x</textarea>"));
    assertEquals(0, asked());
    officer.post(decide, Map.of("work", "limb-inspection")).then().statusCode(303);
    assertEquals(1, asked());
    officer.get(decide).then().body(containsString("decided already"));
    officer.post(decide, Map.of("work", "limb-inspection")).then().statusCode(422);
    officer.post("/withdrawals/" + id + "/release", release("")).then().statusCode(422);
    passed(bow);
    officer.post("/withdrawals/" + id + "/release", release("")).then().statusCode(303);
    assertEquals("READY", fixture.state(bow));
  }

  private long asked() {
    return fixture.number(
        """
        SELECT count(*) FROM upkeep_task
         WHERE item_id = ?1 AND work = 'LIMB_INSPECTION' AND blocks = 1 AND closed_by_record IS NULL""",
        bow.limbs().id());
  }

  @Test
  void whereNoInspectionFits_thatIsDecidedWithItsReason_overTheApi() {
    int id =
        as(
                "officer",
                "{\"item\": \"%s\", \"why\": \"The maker writes of this batch.\"}"
                    .formatted(bow.limbs().code()))
            .post("/api/withdrawals")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    String at = "/api/withdrawals/" + id;
    as("officer", RELEASE)
        .post(at + "/release")
        .then()
        .statusCode(409)
        .body("detail", containsString("/withdrawals/" + id + "/decide"));
    String none = "{\"work\": \"none\", \"why\": \"The letter names another batch.\"}";
    as("volunteer", none).post(at + "/decide").then().statusCode(403);
    as("officer", "{}").post(at + "/decide").then().statusCode(422);
    as("officer", none)
        .post(at + "/decide")
        .then()
        .statusCode(200)
        .body("noWorkWhy", equalTo("The letter names another batch."))
        .body("decidedBy", equalTo("officer"));
    as("officer", none).post(at + "/decide").then().statusCode(409);
    as("officer", RELEASE)
        .post(at + "/release")
        .then()
        .statusCode(200)
        .body("lookedAt", equalTo("Both limbs from butt to tip."))
        .body("lookedBy", equalTo("officer"));
    assertEquals("READY", fixture.state(bow));
  }

  @Test
  void theDatabaseItself_refusesAReleaseThatNobodyDecidedOrLookedAt() {
    as(
            "officer",
            "{\"item\": \"%s\", \"why\": \"Something creaks in it.\"}"
                .formatted(bow.limbs().code()))
        .post("/api/withdrawals");
    long id = open();
    refuses("released-before-decided", "", id);
    refuses(
        "released-before-looked-at",
        ", no_work_why = 'only dust', decided_by = 1, decided_at = happened_at",
        id);
    String looked = ", looked_at = 'all of it', looked_by = 1";
    refuses("released-before-passed", looked + ", work = 'LIMB_INSPECTION'", id);
    rows.change(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)
        VALUES (?1, 'LIMB_INSPECTION', '2026-01-02T12:00:00.000Z', '2026-01-02T12:00:00.000Z', 1, 'PASSED'),
               (?1, 'BOLT_INSPECTION', '9998-01-02T12:00:00.000Z', '2026-01-02T12:00:00.000Z', 1, 'FAILED')""",
        bow.limbs().id());
    refuses(
        "released-though-failed",
        looked + ", no_work_why = 'only dust', decided_by = 1, decided_at = happened_at",
        id);
    assertEquals(id, open());
    rows.change("DELETE FROM upkeep_record WHERE happened_at LIKE '9998%'");
  }

  private void refuses(String rule, String more, long id) {
    DatabaseRefusal refusal =
        assertThrows(
            DatabaseRefusal.class,
            () -> {
              try {
                rows.change(
                    "UPDATE withdrawal SET released_at = happened_at, released_by = 1, release_why = 'so'"
                        + more
                        + " WHERE id = ?1",
                    id);
              } catch (RuntimeException failure) {
                throw DatabaseRefusal.in(failure).map(RuntimeException.class::cast).orElse(failure);
              }
            });
    assertEquals(rule, refusal.rule());
  }

  @Test
  void withoutAReason_nothingIsWithdrawn_andTheChoiceIsKept() {
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = "/items/" + bow.limbs().code() + "/withdraw";
    volunteer.get(page);
    volunteer
        .post(page, Map.of("work", "limb-inspection"))
        .then()
        .statusCode(422)
        .body(containsString("value=\"limb-inspection\" selected"));
    assertEquals(0, open());
  }

  @Test
  void committee_mayNeitherWithdrawNorRelease() {
    Visitor committee = Visitor.signedInAs("committee");
    committee.get("/withdrawals").then().statusCode(200).body(not(containsString("Release…")));
    committee
        .post("/items/" + bow.limbs().code() + "/withdraw", Map.of("why", "A line across it."))
        .then()
        .statusCode(403);
  }

  @Test
  void theApi_withdraws_refusesASecondTime_andReleasesForThePermitHolderAlone() {
    String body =
        "{\"item\": \"%s\", \"why\": \"Upper limb looks twisted.\", \"work\": \"limb-inspection\"}"
            .formatted(bow.limbs().code());
    int id =
        as("volunteer", body)
            .post("/api/withdrawals")
            .then()
            .statusCode(201)
            .body("item", equalTo(bow.limbs().code()))
            .extract()
            .path("id");
    as("volunteer", body).post("/api/withdrawals").then().statusCode(409);
    String release = "/api/withdrawals/" + id + "/release";
    passed(bow);
    as("volunteer", RELEASE).post(release).then().statusCode(403);
    as("officer", "{}").post(release).then().statusCode(422);
    as("officer", RELEASE)
        .post(release)
        .then()
        .statusCode(200)
        .body("releasedBy", equalTo("officer"));
    Program.as("committee")
        .get("/api/withdrawals?open=false&item=" + bow.limbs().code())
        .then()
        .body("total", equalTo(1));
  }

  @Test
  void aCallSentAgainWithItsKey_isAnsweredAsTheFirst_evenAfterTheRelease() {
    String body =
        "{\"item\": \"%s\", \"why\": \"Upper limb looks twisted.\", \"onceKey\": \"again-%s\"}"
            .formatted(bow.limbs().code(), bow.limbs().code());
    int id = as("officer", body).post("/api/withdrawals").then().extract().path("id");
    as("officer", body).post("/api/withdrawals").then().statusCode(201).body("id", equalTo(id));
    as("officer", "{\"work\": \"none\", \"why\": \"It was the light, nothing else.\"}")
        .post("/api/withdrawals/" + id + "/decide");
    as("officer", RELEASE).post("/api/withdrawals/" + id + "/release").then().statusCode(200);

    as("officer", body).post("/api/withdrawals").then().statusCode(201).body("id", equalTo(id));
    assertEquals(0, open());
  }

  private static RequestSpecification as(String name, String body) {
    return sending(name).body(body);
  }
}
