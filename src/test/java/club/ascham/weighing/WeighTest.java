package club.ascham.weighing;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class WeighTest {
  @Inject ClubFixture fixture;

  private Laid limbs;

  private long aRig() {
    limbs = fixture.limbs("MEDIUM", 22);
    return fixture.assembled(fixture.aRiser("RIGHT", 25), limbs, fixture.aString(68));
  }

  private static ValidatableResponse ask(String verb, String who, long rig, String body) {
    var request = as(who);
    if (body != null) {
      request = request.contentType("application/json").body(body.replace('\'', '"'));
    }
    return request.request(verb, "/api/rigs/" + rig + "/weight").then();
  }

  private long readings() {
    return fixture.number("SELECT count(*) FROM scale_reading WHERE item_id = ?1", limbs.id());
  }

  @Test
  void aReading_isKeptOnce_toldInTheStory_andMovesTheWeight() {
    long rig = aRig();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer
        .get("/rigs/" + rig)
        .then()
        .body(containsString("on the mark alone"))
        .body(containsString("<strong>22 lb</strong> at 28 in"));
    volunteer.get("/rigs/" + rig + "/weigh").then().statusCode(200);
    Map<String, String> form =
        Map.of("drawIn", "28", "forceLb", "24.5", "once-key", "weigh-" + rig);

    Response first = volunteer.post("/rigs/" + rig + "/weigh", form);
    volunteer.post("/rigs/" + rig + "/weigh", form).then().statusCode(303);

    first.then().statusCode(303);
    assertEquals(1, readings());
    volunteer
        .get("/rigs/" + rig)
        .then()
        .body(containsString("on the mark and one reading of the bow scale"))
        .body(containsString("<strong>24 lb</strong> at 28 in"))
        .body(containsString("Weighed: 24.5 lb at 28 in on the bow scale."))
        .body(containsString("24.5 lb at 28 in, on a 25 in riser"));
  }

  @Test
  void aReadingGoesWithTheLimbs_toAnotherRiser() {
    long rig = aRig();
    ask("POST", "officer", rig, "{'drawIn': 28, 'forceLb': 25}")
        .statusCode(201)
        .body("readings", equalTo(1))
        .body("weighed[0].riserIn", equalTo(25));
    fixture.change(
        "UPDATE fitting SET until_at = '2026-02-02T10:00:00.000Z' WHERE rig_id = ?1", rig);
    fixture.change("UPDATE rig SET dissolved_at = '2026-02-02T10:00:00.000Z' WHERE id = ?1", rig);
    long other = fixture.assembled(fixture.aRiser("LEFT", 23), limbs, fixture.aString(66));

    ask("GET", "committee", other, null)
        .statusCode(200)
        .body("readings", equalTo(1))
        .body("weighed", hasSize(1))
        .body("basis", containsString("One reading on the bow scale counts"));
  }

  @Test
  void whatNoSuchBowPulls_isAskedBackAtItsField_andNothingIsKept() {
    long rig = aRig();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rigs/" + rig + "/weigh");
    officer
        .post("/rigs/" + rig + "/weigh", Map.of("drawIn", "28", "forceLb", "60"))
        .then()
        .statusCode(422)
        .body(containsString("About 22 lb is reckoned at that draw"))
        .body(containsString("value=\"60\""));
    officer
        .post("/rigs/" + rig + "/weigh", Map.of("drawIn", "700", "forceLb", ""))
        .then()
        .statusCode(422)
        .body(containsString("What the scale showed, please."));
    ask("POST", "officer", rig, "{'drawIn': 28, 'forceLb': 5}")
        .statusCode(422)
        .body("errors.field", hasItem("forceLb"));
    ask("POST", "officer", rig, "{}").statusCode(422).body("errors.field", hasItem("drawIn"));
    assertEquals(0, readings());
  }

  @Test
  void twoPoundsLost_askForALookAtTheLimbs_whichSpeaksAgainstThem_untilTheyWereLookedAt() {
    long rig = aRig();
    ask("POST", "officer", rig, "{'drawIn': 28, 'forceLb': 23}").statusCode(201);
    ask("POST", "officer", rig, "{'drawIn': 28, 'forceLb': 21.5}").statusCode(201);
    assertEquals(0, asked());
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/rigs/" + rig + "/weigh");
    volunteer
        .post(
            "/rigs/" + rig + "/weigh",
            Map.of("drawIn", "28", "forceLb", "21", "once-key", "lost-" + rig))
        .then()
        .statusCode(303);
    assertEquals(1, asked());
    as("officer")
        .get("/api/concerns?rig=" + rig)
        .then()
        .statusCode(200)
        .body("concerns.find { it.matter == 'asked' }.weight", equalTo("speaks-against"))
        .body(
            "concerns.find { it.matter == 'asked' }.said",
            containsString("at least 2.0 lb lost since it showed 23 lb at 28 in"));
    volunteer.get("/rigs/" + rig).then().body(containsString("limb inspection asked for"));
    lookedAt();
    assertEquals(0, asked());
    // What they weighed when they were looked at is theirs now.
    ask("POST", "officer", rig, "{'drawIn': 28, 'forceLb': 20.5}").statusCode(201);
    assertEquals(0, asked());
    ask("POST", "officer", rig, "{'drawIn': 28, 'forceLb': 19}").statusCode(201);
    assertEquals(1, asked());
  }

  @Test
  void farUnderItsMark_atTheFirstReading_asksToo() {
    long rig = aRig();
    ask("POST", "officer", rig, "{'drawIn': 28, 'forceLb': 17}").statusCode(201);
    assertEquals(1, asked());
  }

  @Test
  void limbsLongOffTheScale_areListed_byPageAndCall_untilWeighed() {
    long rig = aRig();
    fixture.change(
        "UPDATE item SET registered_on = '2020-01-01', bought_on = '2020-01-01' WHERE id = ?1",
        limbs.id());
    toWeigh().body("find { it.code == '" + limbs.code() + "' }.rig", equalTo((int) rig));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer
        .get("/upkeep")
        .then()
        .body(containsString("To the bow scale"))
        .body(containsString("href=\"/rigs/" + rig + "/weigh\""));
    volunteer.get("/rigs/" + rig).then().body(containsString("is due on the bow scale"));
    ask("POST", "officer", rig, "{'drawIn': 28, 'forceLb': 22}").statusCode(201);
    toWeigh().body("code", not(hasItem(limbs.code())));
  }

  private static ValidatableResponse toWeigh() {
    return as("committee").get("/api/upkeep/to-weigh").then().statusCode(200);
  }

  private long asked() {
    return fixture.number(
        "SELECT count(*) FROM upkeep_task WHERE item_id = ?1 AND work = 'LIMB_INSPECTION' AND cause ="
            + " 'WEIGHED' AND blocks = 0 AND closed_by_record IS NULL",
        limbs.id());
  }

  private void lookedAt() {
    fixture.change(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)
        SELECT ?1, 'LIMB_INSPECTION', max(opened_at), max(opened_at), 1, 'PASSED'
          FROM upkeep_task WHERE item_id = ?1""",
        limbs.id());
    fixture.change(
        "UPDATE upkeep_task SET closed_by_record = (SELECT max(id) FROM upkeep_record) WHERE item_id ="
            + " ?1",
        limbs.id());
  }

  @Test
  void theCommittee_seesTheWeight_andWeighsNothing() {
    long rig = aRig();
    ask("GET", "committee", rig, null)
        .statusCode(200)
        .body("curve.find { it.drawIn == 28 }.onFingersLb", equalTo(22.0f))
        .body("curve.find { it.drawIn == 28 }.storedFtLb", not(equalTo(0.0f)));
    ask("POST", "committee", rig, "{'drawIn': 28, 'forceLb': 22}").statusCode(403);
    String page = Visitor.signedInAs("committee").get("/rigs/" + rig).asString();
    assertTrue(page.contains("Force against draw") && !page.contains("Weigh it"));
    assertEquals(0, readings());
  }
}
