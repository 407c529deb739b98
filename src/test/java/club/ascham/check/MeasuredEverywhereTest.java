package club.ascham.check;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** One reading by page, by call and by file: the same rule, but for what history may bring. */
@QuarkusTest
class MeasuredEverywhereTest {
  private static final String SHORT = "100 mm";
  private static final String NOT_NOW =
      "“100 mm” can't be right for the tiller distance, which lies from 120 mm";
  private static final String AT = "2026-03-02T09:00:00.000Z";

  @Inject ClubFixture fixture;

  private static RequestSpecification officer() {
    return as("officer");
  }

  private static Map<String, Object> readings(String from, String upper) {
    Map<String, Object> readings = new HashMap<>();
    readings.put("allAsListed", "on");
    readings.put("brace", "216 mm");
    if (!from.isEmpty()) {
      readings.put("braceFrom", from);
    }
    readings.put("tillerUpper", upper);
    readings.put("tillerLower", "186 mm");
    return readings;
  }

  private static ValidatableResponse byPage(LaidBow bow, String from, String upper) {
    Map<String, Object> form = readings(from, upper);
    form.putAll(Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get(bow.checkPage());
    return volunteer.post(bow.checkPage(), form).then();
  }

  private static ValidatableResponse byCall(LaidBow bow, String from, String upper) {
    Map<String, Object> body = readings(from, upper);
    body.put("allAsListed", true);
    body.put("rig", Long.toString(bow.id().value()));
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    return officer().contentType("application/json").body(body).post("/api/checks").then();
  }

  private static ValidatableResponse byFile(LaidBow bow, String from, String upper) {
    String row =
        "number,rig,kind,happenedAt,recordedAt,by,setUp,allAsListed,brace,braceTyped,braceFrom,"
            + "tillerUpper,upperTyped,tillerLower,lowerTyped,dryLooseOrFall,cameBackStrung,"
            + "verdict,corrects,correctionWhy,releasedAt,releasedBy\n,%s,check,%s,%s,officer,,yes,"
            + "216 mm,,%s,%s,,186 mm,,no,no,adjust,,,,\n";
    return officer()
        .contentType("text/csv")
        .body(row.formatted(bow.id().value(), AT, AT, from, upper).getBytes(StandardCharsets.UTF_8))
        .post("/api/import")
        .then();
  }

  @Test
  void aDistanceNoBowHasNow_isAskedBackByPageAndCall_andKeptOfHistory() {
    LaidBow bow = fixture.aBowJustReceived();
    byPage(bow, "grip-throat", SHORT)
        .statusCode(422)
        .body(containsString("id=\"tillerUpper-error\""), containsString("which lies from 120 mm"));
    byCall(bow, "grip-throat", SHORT)
        .statusCode(422)
        .body("errors.find { it.field == 'tillerUpper' }.message", containsString(NOT_NOW));
    assertEquals(0, fixture.checks(bow));

    byFile(bow, "grip-throat", "79 mm").statusCode(422);
    byFile(bow, "grip-throat", SHORT).statusCode(200).body("lists[0].added", equalTo(1));
    long check = fixture.lastCheck(bow);
    officer().get("/api/checks/" + check).then().body("tillerUpper", equalTo(SHORT));
    assertTrue(
        Visitor.signedInAs("volunteer")
            .get(bow.checkPage() + "/" + check)
            .then()
            .statusCode(200)
            .extract()
            .asString()
            .contains(SHORT));
  }

  @Test
  void braceWithoutItsPoint_isAskedBackByAllThree() {
    LaidBow bow = fixture.aBowJustReceived();
    byPage(bow, "", "190 mm").statusCode(422).body(containsString("From where was it measured?"));
    byCall(bow, "", "190 mm")
        .statusCode(422)
        .body(
            "errors.find { it.field == 'braceFrom' }.message",
            equalTo("From where was it measured?"));
    byFile(bow, "", "190 mm")
        .statusCode(422)
        .body("errors[0].field", containsString("braceFrom"))
        .body("errors[0].message", containsString("from where was that measured?"));
    assertEquals(0, fixture.checks(bow));
  }

  @Test
  void theDescriptionOfTheApi_saysWhatEachIs_andItsBounds() {
    RestAssured.given()
        .get("/q/openapi?format=json")
        .then()
        .body(
            "components.schemas.CheckBody.properties.tillerUpper.description",
            equalTo(
                "Upper tiller distance: from the string, square, to the base of the upper limb."
                    + " A length from 120 mm (4 3/4 in) to 300 mm (11 13/16 in)."))
        .body(
            "components.schemas.AdjustmentBody.properties.twistsAdded.description",
            equalTo("Twists put in; taken out is negative. From -100 to 100, in whole ones."))
        .body(
            "components.schemas.findAll { it.value.properties?.brace?.description?.startsWith('Brace height') }.keySet()",
            hasItem("EntryBody"));
  }
}
