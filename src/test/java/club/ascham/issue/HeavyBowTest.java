package club.ascham.issue;

import static club.ascham.web.Program.sending;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A bow too heavy for its archer, by every door through which it could reach them. */
@QuarkusTest
class HeavyBowTest {
  private static final String WHY = "holds it easily at full draw for ten seconds";
  private static final String COACH = "Bo Tarn";

  @Inject ClubFixture fixture;
  @Inject ClubTime time;

  // A child of up to 12 who draws 24 in: about 10, 14 and 23 lb, with high ends of 11, 16 and 26.
  private LaidBow light() {
    return fixture.aBowReadyToGoOut(12);
  }

  private LaidBow aboveTheCeiling() {
    return fixture.aBowReadyToGoOut(18);
  }

  private LaidBow farTooHeavy() {
    return fixture.aBowReadyToGoOut(30);
  }

  @Test
  void lightEnough_asksForNothing() {
    issue(body(light())).statusCode(201).body("overrideCoach", nullValue());
  }

  @Test
  void aJuniorBeginner_isRefusedWhatIsFarTooHeavy_byCallAndPage_whateverTheReason() {
    LaidBow rig = farTooHeavy();
    issue(agreed(body(rig)))
        .statusCode(422)
        .body("errors.find { it.field == 'rig' }.message", containsString("nothing over 20 lb"));
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/issue");
    officer
        .post("/issue", form(agreed(body(rig))))
        .then()
        .statusCode(422)
        .body(containsString("nothing over 20 lb"));
    officer
        .get("/issue?hand=right&drawLength=24 in&ageBand=up-to-12&experience=beginner")
        .then()
        .body(containsString("too heavy for this archer, whatever the reason"));
    assertEquals(0, out(rig));
    given()
        .spec(sending("officer"))
        .body(
            Map.of(
                "hand",
                "right",
                "drawLength",
                "24 in",
                "ageBand",
                "up-to-12",
                "experience",
                "beginner"))
        .post("/api/fit")
        .then()
        .statusCode(200)
        .body("ceilingLb", equalTo(14.0f))
        .body("mostLb", equalTo(16.0f))
        .body("refusedAboveLb", equalTo(20.0f))
        .body("aimLb", equalTo(12.0f))
        .body("weightBasis", containsString("UK Scouts"))
        .body("unsuited.find { it.rig == " + rig.id().value() + " }.adviceOnly", equalTo(false));
  }

  @Test
  void aboveTheCeiling_asksForReasonAndCoach_byCall() {
    LaidBow rig = aboveTheCeiling();
    issue(body(rig))
        .statusCode(422)
        .body("errors.field", hasItem("overrideWhy"))
        .body("errors.field", hasItem("overrideCoach"));
    Map<String, Object> reasonAlone = body(rig);
    reasonAlone.put("overrideWhy", WHY);
    issue(reasonAlone)
        .statusCode(422)
        .body("errors.field", not(hasItem("overrideWhy")))
        .body(
            "errors.find { it.field == 'overrideCoach' }.message",
            containsString("14 lb is the most at the start of a course"));
    Map<String, Object> noName = agreed(body(rig));
    noName.put("overrideCoach", "?");
    issue(noName).statusCode(422).body("errors.field", hasItem("overrideCoach"));
    assertEquals(0, out(rig));
    int loan =
        issue(agreed(body(rig)))
            .statusCode(201)
            .body("overrideWhy", equalTo(WHY))
            .body("overrideCoach", equalTo(COACH))
            .body("advice", hasItem(containsString("14 lb is the most at the start of a course")))
            .extract()
            .path("id");
    Visitor officer = Visitor.signedInAs("officer");
    for (String page : List.of("/loans/" + loan, "/loans/" + loan + "/slip")) {
      officer
          .get(page)
          .then()
          .body(containsString("Advice speaks against this bow for this archer."))
          .body(containsString("14 lb is the most at the start of a course"));
    }
  }

  @Test
  void aboveTheCeiling_asksForReasonAndCoach_byPage_whichKeepsAndShowsThem() {
    LaidBow rig = aboveTheCeiling();
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get(
            "/issue?hand=right&drawLength=24 in&ageBand=up-to-12&experience=beginner&rig="
                + rig.id().value())
        .then()
        .body(containsString("name=\"overrideCoach\""))
        .body(containsString("<option value=\"officer\">"));
    officer
        .post("/issue", form(body(rig)))
        .then()
        .statusCode(422)
        .body(containsString("id=\"overrideWhy-error\""))
        .body(containsString("id=\"overrideCoach-error\""));
    officer.post("/issue", form(agreed(body(rig)))).then().statusCode(303);
    long loan = fixture.number("SELECT max(loan_id) FROM loan_line WHERE rig_id = ?1", rig.id());
    officer
        .get("/loans/" + loan)
        .then()
        .body(containsString("The coach who agreed"))
        .body(containsString(COACH));
    Visitor.signedInAs("committee").get("/loans/" + loan).then().body(not(containsString(COACH)));
    given()
        .spec(sending("committee"))
        .get("/api/loans/" + loan)
        .then()
        .body("overrideCoach", nullValue());
    given()
        .spec(sending("officer"))
        .get("/api/export/loans.csv")
        .then()
        .body(containsString(COACH));
  }

  @Test
  void aGrownUp_isHeldToTheLikeliestWeight_andNeverRefused() {
    LaidBow likely = fixture.aBowReadyToGoOut(20);
    Map<String, Object> adult = body(likely);
    adult.put("ageBand", "adult");
    adult.put("drawLength", "27 in");
    adult.remove("guardian");
    issue(adult).statusCode(201);
    LaidBow heavy = fixture.aBowReadyToGoOut(44);
    Map<String, Object> strong = new HashMap<>(adult);
    strong.put("rig", heavy.id().value());
    issue(strong).statusCode(422).body("errors.field", hasItem("overrideCoach"));
    issue(agreed(strong)).statusCode(201);
  }

  @Test
  void aLoan_goesOnByTheSameRule() {
    LaidBow rig = light();
    int loan = issue(body(rig)).statusCode(201).extract().path("id");
    // Its limbs turn out to be marked heavier than was typed in.
    fixture.change("UPDATE limbs SET marked_lb = 18 WHERE id = ?1", rig.limbs().id());
    Map<String, Object> on = new HashMap<>();
    on.put("dueOn", time.today().plusDays(60).toString());
    on.put("drawLength", "24 in");
    extend(loan, on).statusCode(422).body("errors.field", hasItem("overrideCoach"));
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/loans/" + loan);
    officer
        .post("/loans/" + loan + "/extend", form(on))
        .then()
        .statusCode(422)
        .body(containsString("id=\"overrideCoach-error\""));
    fixture.change("UPDATE limbs SET marked_lb = 30 WHERE id = ?1", rig.limbs().id());
    extend(loan, agreed(on))
        .statusCode(422)
        .body("errors.find { it.field == 'drawLength' }.message", containsString("can't go on"));
    fixture.change("UPDATE limbs SET marked_lb = 18 WHERE id = ?1", rig.limbs().id());
    extend(loan, agreed(on)).statusCode(200).body("overrideCoach", equalTo(COACH));
  }

  @Test
  void aGrownUpsLoan_goesOnWithWhatWasAgreedBefore_andNotWithoutIt() {
    LaidBow rig = fixture.aBowReadyToGoOut(26);
    Map<String, Object> adult = agreed(body(rig));
    adult.put("ageBand", "adult");
    adult.put("drawLength", "27 in");
    int loan = issue(adult).statusCode(201).extract().path("id");
    Map<String, Object> on = Map.of("dueOn", time.today().plusDays(60).toString());
    extend(loan, on).statusCode(200);
    fixture.change(
        "UPDATE loan SET override_why = NULL, override_coach = NULL WHERE id = ?1", loan);
    extend(loan, Map.of("dueOn", time.today().plusDays(70).toString()))
        .statusCode(422)
        .body("errors.field", hasItem("overrideWhy"))
        .body("errors.field", hasItem("overrideCoach"));
  }

  @Test
  void otherLimbsForABowThatIsOut_goByTheSameRule() {
    LaidBow rig = light();
    int loan = issue(body(rig)).statusCode(201).extract().path("id");
    LaidBow heavier = aboveTheCeiling();
    LaidBow heaviest = farTooHeavy();
    loose(heavier);
    loose(heaviest);
    parts(rig, heaviest, agreed(Map.of()))
        .statusCode(422)
        .body("errors.find { it.field == 'limbs' }.message", containsString("nothing over 20 lb"));
    parts(rig, heavier, Map.of())
        .statusCode(422)
        .body("errors.field", hasItem("overrideWhy"))
        .body("errors.field", hasItem("overrideCoach"));
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/rigs/" + rig.id().value() + "/change";
    officer.get(page + "?place=limbs");
    officer
        .post(
            page,
            Map.of(
                "place", "limbs",
                "body", rig.body().code(),
                "limbs", heavier.limbs().code(),
                "string", rig.string().code()))
        .then()
        .statusCode(422)
        .body(containsString("id=\"overrideCoach-error\""));
    parts(rig, heavier, agreed(Map.of())).statusCode(200);
    given()
        .spec(sending("officer"))
        .get("/api/loans/" + loan)
        .then()
        .body("overrideWhy", equalTo(WHY))
        .body("overrideCoach", equalTo(COACH));
  }

  @Test
  void anArcherOfASession_isABeginnerOfTheirAge_byPageAndCall() {
    LaidBow heavy = aboveTheCeiling();
    LaidBow heaviest = farTooHeavy();
    int session =
        given()
            .spec(sending("volunteer"))
            .body(
                Map.of(
                    "leader",
                    "Quenby",
                    "rigIds",
                    List.of(heavy.id().value(), heaviest.id().value())))
            .post("/api/sessions")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    Map<String, Object> child = new HashMap<>();
    child.put("rig", heavy.id().value());
    child.put("draw", "24 in");
    archer(session, child).statusCode(422).body("errors.field", hasItem("ageBand"));
    child.put("ageBand", "up-to-12");
    archer(session, child)
        .statusCode(422)
        .body("errors.field", hasItem("overrideWhy"))
        .body("errors.field", hasItem("overrideCoach"));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/sessions/" + session);
    volunteer
        .post("/sessions/" + session + "/archers", form(child))
        .then()
        .statusCode(422)
        .body(containsString("id=\"overrideCoach-error\""));
    archer(session, agreed(child)).statusCode(201);
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM session_archer WHERE loan_id = ?1 AND age_band = 'UP_TO_12'"
                + " AND override_why = ?2 AND override_coach = ?3",
            session,
            WHY,
            COACH));
    given()
        .spec(sending("volunteer"))
        .get("/api/sessions/" + session)
        .then()
        .body("archers[0].ageBand", equalTo("up-to-12"))
        .body("archers[0].overrideCoach", equalTo(COACH));
    volunteer
        .get("/sessions/" + session)
        .then()
        .body(containsString("<b>" + COACH + "</b> agreed"));
    Map<String, Object> refused = agreed(child);
    refused.put("rig", heaviest.id().value());
    archer(session, refused)
        .statusCode(422)
        .body("errors.find { it.field == 'rig' }.message", containsString("nothing over 20 lb"));
    refused.put("ageBand", "adult");
    archer(session, refused).statusCode(201);
  }

  private ValidatableResponse issue(Map<String, Object> body) {
    return given().spec(sending("officer")).body(body).post("/api/loans").then();
  }

  private ValidatableResponse extend(int loan, Map<String, Object> body) {
    return given()
        .spec(sending("officer"))
        .body(body)
        .post("/api/loans/" + loan + "/extend")
        .then();
  }

  private ValidatableResponse archer(int session, Map<String, Object> body) {
    return given()
        .spec(sending("volunteer"))
        .body(body)
        .post("/api/sessions/" + session + "/archers")
        .then();
  }

  private ValidatableResponse parts(LaidBow rig, LaidBow limbsOf, Map<String, Object> more) {
    Map<String, Object> body = new HashMap<>(more);
    body.put("body", rig.body().code());
    body.put("limbs", limbsOf.limbs().code());
    body.put("string", rig.string().code());
    return given()
        .spec(sending("officer"))
        .body(body)
        .put("/api/rigs/" + rig.id().value() + "/parts")
        .then();
  }

  /** Takes a rig apart, long ago, so that its limbs are free. */
  private void loose(LaidBow rig) {
    fixture.change(
        "UPDATE fitting SET until_at = '2026-02-02T10:00:00.000Z' WHERE rig_id = ?1", rig.id());
    fixture.change(
        "UPDATE rig SET dissolved_at = '2026-02-02T10:00:00.000Z' WHERE id = ?1", rig.id());
  }

  private long out(LaidBow rig) {
    return fixture.number("SELECT count(*) FROM loan_line WHERE rig_id = ?1", rig.id());
  }

  private static Map<String, Object> agreed(Map<String, Object> body) {
    Map<String, Object> agreed = new HashMap<>(body);
    agreed.put("overrideWhy", WHY);
    agreed.put("overrideCoach", COACH);
    return agreed;
  }

  private static Map<String, String> form(Map<String, Object> body) {
    Map<String, String> form = new HashMap<>();
    body.forEach((field, value) -> form.put(field, String.valueOf(value)));
    form.put("once-key", UUID.randomUUID().toString());
    return form;
  }

  private static Map<String, Object> body(LaidBow rig) {
    Map<String, Object> body = new HashMap<>();
    body.put("hand", "right");
    body.put("drawLength", "24 in");
    body.put("ageBand", "up-to-12");
    body.put("experience", "beginner");
    body.put("rig", rig.id().value());
    body.put("name", "Ivo " + UUID.randomUUID());
    body.put("contact", "07700 900333");
    body.put("guardian", "Tess Ant");
    body.put("termsAccepted", true);
    body.put("briefingGiven", true);
    return body;
  }
}
