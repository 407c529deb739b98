package club.ascham.check;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class ChecksApiTest {
  @Inject ClubFixture fixture;

  private static Map<String, Object> fine(LaidBow bow) {
    Map<String, Object> body = new HashMap<>();
    body.put("rig", bow.body().code());
    body.put("allAsListed", true);
    CheckForms.braced(body, 216);
    body.put("braceFrom", "grip-throat");
    body.put("tillerUpper", "190 mm");
    body.put("tillerLower", "186 mm");
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    return body;
  }

  private static ValidatableResponse check(String name, Map<String, Object> body) {
    return sending(name).body(body).post("/api/checks").then();
  }

  @Test
  void aCheck_isJudgedAtOnce_andReleasedByItsOwnCall() {
    LaidBow bow = fixture.aBowJustReceived();
    int id =
        check("volunteer", fine(bow))
            .statusCode(201)
            .header("Location", containsString("/api/checks/"))
            .body("verdict.kind", equalTo("fit"))
            .body("rig", equalTo((int) bow.id().value()))
            .body("brace", equalTo("216 mm"))
            .body("signs.size()", equalTo(3))
            .extract()
            .path("id");
    sending("volunteer")
        .body("{}")
        .post("/api/checks/" + id + "/release")
        .then()
        .statusCode(200)
        .body("state", equalTo("ready"));
    sending("volunteer").body("{}").post("/api/checks/" + id + "/release").then().statusCode(409);
    sending("committee")
        .get("/api/checks?size=1&rig=" + bow.id().value())
        .then()
        .statusCode(200)
        .body("total", equalTo(1))
        .body("items[0].verdict", equalTo("fit"));
    sending("committee").get("/api/checks/" + id).then().body("releasedBy", equalTo("volunteer"));
  }

  @Test
  void adjustFirst_hasItsStepsInTheSafeOrder_andTheSecondMeasurementNamesTheAdjustment() {
    LaidBow bow = fixture.aBowJustReceived();
    Map<String, Object> low = fine(bow);
    CheckForms.braced(low, 198);
    int id =
        check("volunteer", low)
            .statusCode(201)
            .body("verdict.kind", equalTo("adjust"))
            .body("verdict.steps[0].key", equalTo("look-along"))
            .body("verdict.steps.find { it.key == 'twists' }.amount", greaterThan(0f))
            .body("verdict.steps[-1].key", equalTo("measure-again"))
            .body("verdict.basis.size()", greaterThan(2))
            .extract()
            .path("id");
    int adjustment =
        sending("volunteer")
            .body("{\"twistsAdded\": 30}")
            .post("/api/checks/" + id + "/adjustment")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    Map<String, Object> after = fine(bow);
    after.put("adjustment", adjustment);
    check("volunteer", after).statusCode(201).body("verdict.kind", equalTo("fit"));
    check("volunteer", after).statusCode(422).body("errors[0].field", equalTo("adjustment"));
  }

  @Test
  void braceThatFellAlthoughTwistsWentIn_isLookedAtFirst() {
    LaidBow bow = fixture.aBowJustReceived();
    Map<String, Object> low = fine(bow);
    CheckForms.braced(low, 200);
    int id = check("volunteer", low).extract().path("id");
    int adjustment =
        sending("volunteer")
            .body("{\"twistsAdded\": 10}")
            .post("/api/checks/" + id + "/adjustment")
            .then()
            .extract()
            .path("id");
    Map<String, Object> lower = fine(bow);
    CheckForms.braced(lower, 195);
    lower.put("adjustment", adjustment);
    lower.put("limbsSeated", true);
    check("volunteer", lower)
        .statusCode(201)
        .body("verdict.reasons[0]", startsWith("Brace moved the wrong way"));
  }

  @Test
  void eachWrongField_isNamed_withWhatWasProbablyMeant() {
    LaidBow bow = fixture.aBowJustReceived();
    Map<String, Object> body = fine(bow);
    body.put("brace", "8.75 mm");
    body.put("answers", Map.of("string", "good"));
    check("volunteer", body)
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors.field", hasItem("brace"))
        .body("errors.find { it.field == 'brace' }.suggestion", equalTo("8.75 in"))
        .body("errors.field", hasItem("string"));
    body.put("rig", "999999");
    check("volunteer", body).statusCode(422).body("errors[0].field", equalTo("rig"));
  }

  @Test
  void committee_isRefused() {
    LaidBow bow = fixture.aBowJustReceived();
    check("committee", fine(bow)).statusCode(403);
    sending("committee").get("/api/checks/99999999").then().statusCode(404);
  }

  @Test
  void aKnownSign_weighsWhatTheTradeSays_howeverItWasAnswered() {
    LaidBow bow = fixture.aBowJustReceived();
    Map<String, Object> body = fine(bow);
    body.put("signs", List.of("string-strand-broken"));
    check("volunteer", body)
        .statusCode(201)
        .body("verdict.kind", equalTo("withdraw"))
        .body("verdict.work.size()", greaterThan(0));
  }
}
