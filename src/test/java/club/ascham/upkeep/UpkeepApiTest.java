package club.ascham.upkeep;

import static club.ascham.web.Program.sending;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.lessThanOrEqualTo;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class UpkeepApiTest {
  @Inject ClubFixture fixture;

  @Test
  void dueWork_isListedByStatus_andPaged() {
    Laid riser = fixture.aRightHandedRiser();
    fixture.inspected(riser, 200);
    sending("committee")
        .get("/api/upkeep?status=overdue&kind=riser&size=200")
        .then()
        .statusCode(200)
        .body("items.code", hasItem(riser.code()))
        .body("items.status", everyItem(equalTo("overdue")))
        .body("items.kind", everyItem(equalTo("riser")))
        .body("total", greaterThan(0));
    sending("committee")
        .get("/api/upkeep?size=3&page=2")
        .then()
        .statusCode(200)
        .body("items", hasSize(3))
        .body("page", equalTo(2))
        .body("size", equalTo(3));
    sending("committee")
        .get("/api/upkeep?status=sometime&size=900")
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors.field", hasItems("status", "size"));
  }

  @Test
  void anInspection_isSignedByItsKeys() {
    Laid riser = fixture.aRightHandedRiser();
    sending("officer")
        .get("/api/inspections/lists/" + riser.code() + "/bolt-inspection")
        .then()
        .statusCode(200)
        .body("signedBy", equalTo("permit-holder"))
        .body("looks.key", hasItems("turns", "lockingScrew", "washer", "seat"));
    Map<String, Object> body = bolts(riser);
    sending("officer")
        .body(body)
        .post("/api/inspections")
        .then()
        .statusCode(201)
        .header("Location", containsString("/api/inspections/"))
        .body("result", equalTo("passed"))
        .body("measured", equalTo("upper 2 turns out"))
        .body("by", equalTo("officer"));
    sending("committee")
        .get("/api/inspections")
        .then()
        .statusCode(200)
        .body("total", greaterThan(0));
  }

  @Test
  void aSecondSend_withTheSameKey_keepsNothingMore() {
    Laid riser = fixture.aRightHandedRiser();
    Map<String, Object> body = bolts(riser);
    body.put("onceKey", "api-" + riser.code());
    int first = sending("officer").body(body).post("/api/inspections").then().extract().path("id");
    sending("officer")
        .body(body)
        .post("/api/inspections")
        .then()
        .statusCode(201)
        .body("id", equalTo(first));
  }

  @Test
  void faults_areNamedByField() {
    Laid riser = fixture.aRightHandedRiser();
    sending("officer")
        .body(
            Map.of(
                "item",
                riser.code(),
                "work",
                "bolt-inspection",
                "seen",
                Map.of("turns", "great"),
                "lowerTurnsOut",
                "many"))
        .post("/api/inspections")
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors.field", hasItems("turns", "alike", "washer", "lowerTurnsOut"));
    sending("officer")
        .body(Map.of("item", "R-0101-X", "work", "string-replacement"))
        .post("/api/inspections")
        .then()
        .statusCode(422)
        .body("errors.field", hasItem("item"));
  }

  @Test
  void whoMayNot_isRefused() {
    Laid riser = fixture.aRightHandedRiser();
    sending("volunteer")
        .body(bolts(riser))
        .post("/api/inspections")
        .then()
        .statusCode(403)
        .contentType("application/problem+json")
        .body("detail", containsString("permit"));
    for (String route : new String[] {"inspections", "replacements", "recalls"}) {
      sending("committee").body(Map.of()).post("/api/" + route).then().statusCode(403);
    }
    sending("volunteer").body(Map.of()).post("/api/recalls").then().statusCode(403);
    assertEquals("READY", fixture.state(riser));
  }

  @Test
  void aString_isReplaced_orTheReasonGiven() {
    LaidBow rig = fixture.aBowReadyToGoOut();
    Laid fresh = fixture.aString(68);
    Map<String, Object> body =
        Map.of("item", rig.string().code(), "newString", fresh.code(), "oldString", "scrapped");
    sending("volunteer")
        .body(body)
        .post("/api/replacements")
        .then()
        .statusCode(201)
        .body("result", equalTo("replaced"))
        .body("replacedBy", equalTo(fresh.code()));
    assertEquals("IN_THE_WORKSHOP", fixture.state(rig.id()));
    sending("volunteer")
        .body(body)
        .post("/api/replacements")
        .then()
        .statusCode(409)
        .body("detail", containsString("retired"));
    sending("volunteer")
        .body(Map.of("item", rig.body().code()))
        .post("/api/replacements")
        .then()
        .statusCode(422)
        .body("errors.field", hasItems("item", "newString", "oldString"));
    sending("committee")
        .get("/api/replacements")
        .then()
        .statusCode(200)
        .body("total", greaterThan(0));
  }

  @Test
  void aRecall_isTraced_andWithdrawn() {
    LaidBow rig = fixture.aBowReadyToGoOut();
    String batch = "AP-" + System.nanoTime();
    fixture.isOfMaker(rig.string(), "Twinerow", batch);
    fixture.lend(rig, "Nell Whitlow");
    sending("officer")
        .get("/api/recalls?batch=" + batch)
        .then()
        .statusCode(200)
        .body("items", hasSize(1))
        .body("items[0].state", equalTo("on-loan"))
        .body("items[0].holders[0].until", nullValue())
        .body("items[0].holders[0].borrowerId", notNullValue())
        .body("items[0].rigs", hasItem(rig.body().code()));
    sending("committee")
        .get("/api/recalls?batch=" + batch)
        .then()
        .statusCode(200)
        .body("items[0].holders", nullValue());
    sending("officer")
        .get("/api/recalls")
        .then()
        .statusCode(422)
        .body("errors.field", hasItem("maker"));
    sending("officer")
        .body(Map.of("batch", batch, "why", "The maker’s notice of 3 May."))
        .post("/api/recalls")
        .then()
        .statusCode(200)
        .body("withdrawn", equalTo(1))
        .body("out", equalTo(1));
    assertEquals("WITHDRAWN", fixture.state(rig.string()));
  }

  @Test
  void theRoutes_areDescribedWithExamples() {
    String description =
        given().get("/q/openapi?format=json").then().statusCode(200).extract().asString();
    for (String route :
        new String[] {"/api/upkeep", "/api/inspections", "/api/replacements", "/api/recalls"}) {
      assertEquals(true, description.contains("\"" + route + "\""), route);
    }
    assertEquals(true, description.contains("Upper locking screw was loose"));
  }

  @Test
  void aPage_isNeverLongerThanAsked() {
    sending("officer").get("/api/upkeep?size=5").then().body("items.size()", lessThanOrEqualTo(5));
  }

  private static Map<String, Object> bolts(Laid riser) {
    Map<String, String> seen = new HashMap<>();
    for (String look :
        new String[] {"turns", "alike", "thread", "lockingScrew", "washer", "seat"}) {
      seen.put(look, "fine");
    }
    Map<String, Object> body = new HashMap<>();
    body.put("item", riser.code());
    body.put("work", "bolt-inspection");
    body.put("seen", seen);
    body.put("upperTurnsOut", "2");
    return body;
  }
}
