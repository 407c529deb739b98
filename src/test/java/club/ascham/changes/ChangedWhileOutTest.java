package club.ascham.changes;

import static club.ascham.web.Program.sending;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A part changed, or a record corrected, while the bow is out: what an issue asks is asked. */
@QuarkusTest
class ChangedWhileOutTest {
  private static final Map<String, Object> AGREED =
      Map.of(
          "overrideWhy",
          "holds it easily at full draw for ten seconds",
          "overrideCoach",
          "Bo Tarn");

  @Inject ClubFixture fixture;

  private LaidBow rig;
  private int loan;

  @BeforeEach
  void aChildHasALightBow() {
    rig = fixture.aBowReadyToGoOut(12);
    loan = issued(rig, List.of());
  }

  @Test
  void aRiserForTheOtherHand_isRefused_whateverTheReason() {
    LaidBow left = loose(fixture.aBowReadyToGoOut("LEFT", 12));
    parts(left.body(), rig.limbs(), rig.string(), AGREED)
        .statusCode(422)
        .body("errors.message", hasItem(containsString("drawing with the left hand")));
  }

  @Test
  void arrowsTooLightForTheNewLimbs_areSaid_andNobodyOverridesThat() {
    Laid arrows = fixture.arrows(29);
    fixture.weigh(arrows, 70);
    LaidBow other = fixture.aBowReadyToGoOut(12);
    int second = issued(other, List.of(Map.of("code", arrows.code())));
    LaidBow stronger = loose(fixture.aBowReadyToGoOut(18));
    Map<String, Object> body = new HashMap<>(AGREED);
    body.put("body", other.body().code());
    body.put("limbs", stronger.limbs().code());
    body.put("string", other.string().code());
    given()
        .spec(sending("officer"))
        .body(body)
        .put("/api/rigs/" + other.id().value() + "/parts")
        .then()
        .statusCode(422)
        .body(
            "errors.message",
            hasItem(containsString("Its arrows are too light for this bow: " + arrows.code())));
    assertEquals(
        0,
        fixture.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND back_at IS NOT NULL", second));
  }

  @Test
  void whatSpeaksAgainstAPart_asksForAReason_whichStaysWithTheLoan() {
    LaidBow spare = loose(fixture.aBowReadyToGoOut(12));
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/upkeep/" + spare.limbs().code() + "/ask");
    officer
        .post(
            "/upkeep/" + spare.limbs().code() + "/ask",
            Map.of("work", "limb-inspection", "why", "a fine line was told of at the tip"))
        .then()
        .statusCode(303);
    parts(rig.body(), spare.limbs(), rig.string(), Map.of())
        .statusCode(422)
        .body("errors.field", equalTo(List.of("overrideWhy")))
        .body("errors.message", hasItem(containsString("a fine line was told of")));
    String why = "Looked at by daylight: only varnish.";
    parts(rig.body(), spare.limbs(), rig.string(), Map.of("overrideWhy", why)).statusCode(200);
    given()
        .spec(sending("officer"))
        .get("/api/loans/" + loan)
        .then()
        .body("overrideWhy", equalTo(why));
  }

  @Test
  void thePageAsksToConfirm_theBowStaysOnLoanAndInTheWorkshop_andTheNewSlipIsOffered() {
    LaidBow spare = loose(fixture.aBowReadyToGoOut(12));
    Visitor officer = Visitor.signedInAs("officer");
    String path = "/rigs/" + rig.id().value();
    officer.get(path).then().body(not(containsString("New slip")));
    officer.get(path + "/change?place=limbs");
    Map<String, Object> form = new HashMap<>();
    form.put("place", "limbs");
    form.put("body", rig.body().code());
    form.put("limbs", spare.limbs().code());
    form.put("string", rig.string().code());
    form.put("once-key", UUID.randomUUID().toString());
    officer
        .post(path + "/change", form)
        .then()
        .statusCode(422)
        .body(containsString("This bow is out with loan " + loan))
        .body(containsString("Yes, change it"))
        .body(containsString("value=\"" + spare.limbs().code() + "\""));
    assertEquals(1, out(rig.limbs()), "nothing was changed");
    form.put("confirmed", "on");
    officer.post(path + "/change", form).then().statusCode(303);
    assertEquals(0, out(rig.limbs()));
    assertEquals(1, out(spare.limbs()));
    given().spec(sending("officer")).get("/api" + path).then().body("state", equalTo("on-loan"));
    officer
        .get(path)
        .then()
        .body(containsString("give out a new slip once it is measured"))
        .body(containsString("href=\"" + path + "/set-up\""));
    given()
        .spec(sending("officer"))
        .get("/api/fleet/rows?list=rigs&state=on-loan")
        .then()
        .statusCode(200);
    officer.get("/loans/" + loan + "/slip").then().body(containsString("Do not shoot it"));

    given().spec(sending("officer")).post("/api" + path + "/set-ups").then().statusCode(200);
    given()
        .spec(sending("officer"))
        .body(
            Map.of(
                "stepsDone", "all",
                "brace", "216 mm",
                "braceFrom", "grip-throat",
                "tillerUpper", "190 mm",
                "tillerLower", "186 mm",
                "nocking", "4 mm",
                "screwsSeen", true))
        .put("/api" + path + "/set-ups/current")
        .then()
        .statusCode(200);
    given()
        .spec(sending("officer"))
        .body("{}")
        .post("/api" + path + "/set-ups/current/finish")
        .then()
        .statusCode(200);
    officer.get(path).then().body(containsString("href=\"/loans/" + loan + "/slip\">New slip"));
  }

  @Test
  void aRecordCorrectedWhileTheBowIsOut_asksToo_andFarTooHeavyIsRefused() {
    LaidBow strong = fixture.aBowReadyToGoOut(18);
    LaidBow farTooStrong = fixture.aBowReadyToGoOut(30);
    correct(farTooStrong.limbs(), AGREED)
        .statusCode(422)
        .body("errors.message", hasItem(containsString("nothing over 20 lb")));
    correct(strong.limbs(), Map.of())
        .statusCode(422)
        .body("errors.field", hasItem("overrideWhy"))
        .body("errors.field", hasItem("overrideCoach"));
    assertEquals(1, out(rig.limbs()), "nothing was changed");
    correct(strong.limbs(), AGREED).statusCode(200);
    assertEquals(1, out(strong.limbs()));
    given()
        .spec(sending("officer"))
        .get("/api/loans/" + loan)
        .then()
        .body("overrideCoach", equalTo("Bo Tarn"));
  }

  private ValidatableResponse correct(Laid found, Map<String, Object> more) {
    Map<String, Object> body = new HashMap<>(more);
    body.put("found", found.code());
    return given()
        .spec(sending("officer"))
        .body(body)
        .post("/api/rigs/" + rig.id().value() + "/corrections")
        .then();
  }

  private ValidatableResponse parts(Laid body, Laid limbs, Laid string, Map<String, Object> more) {
    Map<String, Object> wish = new HashMap<>(more);
    wish.put("body", body.code());
    wish.put("limbs", limbs.code());
    wish.put("string", string.code());
    return given()
        .spec(sending("officer"))
        .body(wish)
        .put("/api/rigs/" + rig.id().value() + "/parts")
        .then();
  }

  private static int issued(LaidBow rig, List<Map<String, Object>> items) {
    Map<String, Object> body = new HashMap<>();
    body.put("name", "Wren Tilling " + UUID.randomUUID());
    body.put("contact", "07700 900123");
    body.put("guardian", "Ada Tilling, 07700 900124");
    body.put("hand", "right");
    body.put("drawLength", "24 in");
    body.put("ageBand", "up-to-12");
    body.put("experience", "beginner");
    body.put("rig", rig.id().value());
    body.put("items", items);
    body.put("termsAccepted", true);
    body.put("briefingGiven", true);
    return given()
        .spec(sending("officer"))
        .body(body)
        .post("/api/loans")
        .then()
        .statusCode(201)
        .extract()
        .path("id");
  }

  private LaidBow loose(LaidBow parts) {
    fixture.change(
        "UPDATE fitting SET until_at = '2026-02-02T10:00:00.000Z' WHERE rig_id = ?1", parts.id());
    fixture.change(
        "UPDATE rig SET dissolved_at = '2026-02-02T10:00:00.000Z' WHERE id = ?1", parts.id());
    return parts;
  }

  private long out(Laid part) {
    return fixture.number(
        "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND item_id = ?2 AND back_at IS NULL",
        loan,
        part.id());
  }
}
