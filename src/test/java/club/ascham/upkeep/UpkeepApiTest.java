package club.ascham.upkeep;

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

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class UpkeepApiTest {
  @Inject Shelf shelf;

  @Test
  void dueWork_isListedByStatus_andPaged() {
    Shelf.Put riser = shelf.aRiser();
    shelf.passAll(riser, 200);
    as("committee")
        .get("/api/upkeep?status=overdue&kind=riser&size=200")
        .then()
        .statusCode(200)
        .body("items.code", hasItem(riser.code()))
        .body("items.status", everyItem(equalTo("overdue")))
        .body("items.kind", everyItem(equalTo("riser")))
        .body("total", greaterThan(0));
    as("committee")
        .get("/api/upkeep?size=3&page=2")
        .then()
        .statusCode(200)
        .body("items", hasSize(3))
        .body("page", equalTo(2))
        .body("size", equalTo(3));
    as("committee")
        .get("/api/upkeep?status=sometime&size=900")
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors.field", hasItems("status", "size"));
  }

  @Test
  void anInspection_isSignedByItsKeys() {
    Shelf.Put riser = shelf.aRiser();
    as("officer")
        .get("/api/inspections/lists/" + riser.code() + "/bolt-inspection")
        .then()
        .statusCode(200)
        .body("signedBy", equalTo("permit-holder"))
        .body("looks.key", hasItems("turns", "lockingScrew", "washer", "seat"));
    Map<String, Object> body = bolts(riser);
    as("officer")
        .body(body)
        .post("/api/inspections")
        .then()
        .statusCode(201)
        .header("Location", containsString("/api/inspections/"))
        .body("result", equalTo("passed"))
        .body("measured", equalTo("upper 2 turns out"))
        .body("by", equalTo("officer"));
    as("committee").get("/api/inspections").then().statusCode(200).body("total", greaterThan(0));
  }

  @Test
  void aSecondSend_withTheSameKey_keepsNothingMore() {
    Shelf.Put riser = shelf.aRiser();
    Map<String, Object> body = bolts(riser);
    body.put("onceKey", "api-" + riser.code());
    int first = as("officer").body(body).post("/api/inspections").then().extract().path("id");
    as("officer")
        .body(body)
        .post("/api/inspections")
        .then()
        .statusCode(201)
        .body("id", equalTo(first));
  }

  @Test
  void faults_areNamedByField() {
    Shelf.Put riser = shelf.aRiser();
    as("officer")
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
    as("officer")
        .body(Map.of("item", "R-0101-X", "work", "string-replacement"))
        .post("/api/inspections")
        .then()
        .statusCode(422)
        .body("errors.field", hasItem("item"));
  }

  @Test
  void whoMayNot_isRefused() {
    Shelf.Put riser = shelf.aRiser();
    as("volunteer")
        .body(bolts(riser))
        .post("/api/inspections")
        .then()
        .statusCode(403)
        .contentType("application/problem+json")
        .body("detail", containsString("permit"));
    for (String route : new String[] {"inspections", "replacements", "recalls"}) {
      as("committee").body(Map.of()).post("/api/" + route).then().statusCode(403);
    }
    as("volunteer").body(Map.of()).post("/api/recalls").then().statusCode(403);
    assertEquals("READY", shelf.state(riser));
  }

  @Test
  void aString_isReplaced_orTheReasonGiven() {
    Shelf.ReadyRig rig = shelf.aReadyRig();
    Shelf.Put fresh = shelf.aString(68);
    Map<String, Object> body =
        Map.of("item", rig.string().code(), "newString", fresh.code(), "oldString", "scrapped");
    as("volunteer")
        .body(body)
        .post("/api/replacements")
        .then()
        .statusCode(201)
        .body("result", equalTo("replaced"))
        .body("replacedBy", equalTo(fresh.code()));
    assertEquals("IN_THE_WORKSHOP", shelf.rigState(rig.id()));
    as("volunteer")
        .body(body)
        .post("/api/replacements")
        .then()
        .statusCode(409)
        .body("detail", containsString("retired"));
    as("volunteer")
        .body(Map.of("item", rig.riser().code()))
        .post("/api/replacements")
        .then()
        .statusCode(422)
        .body("errors.field", hasItems("item", "newString", "oldString"));
    as("committee").get("/api/replacements").then().statusCode(200).body("total", greaterThan(0));
  }

  @Test
  void aRecall_isTraced_andWithdrawn() {
    Shelf.ReadyRig rig = shelf.aReadyRig();
    String batch = "AP-" + System.nanoTime();
    shelf.name(rig.string(), "Twinerow", batch);
    shelf.lend(rig, "Nell Whitlow");
    as("officer")
        .get("/api/recalls?batch=" + batch)
        .then()
        .statusCode(200)
        .body("items", hasSize(1))
        .body("items[0].state", equalTo("on-loan"))
        .body("items[0].holders[0].until", nullValue())
        .body("items[0].holders[0].borrowerId", notNullValue())
        .body("items[0].rigs", hasItem(rig.riser().code()));
    as("committee")
        .get("/api/recalls?batch=" + batch)
        .then()
        .statusCode(200)
        .body("items[0].holders", nullValue());
    as("officer").get("/api/recalls").then().statusCode(422).body("errors.field", hasItem("maker"));
    as("officer")
        .body(Map.of("batch", batch, "why", "The maker’s notice of 3 May."))
        .post("/api/recalls")
        .then()
        .statusCode(200)
        .body("withdrawn", equalTo(1))
        .body("out", equalTo(1));
    assertEquals("WITHDRAWN", shelf.state(rig.string()));
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
    as("officer").get("/api/upkeep?size=5").then().body("items.size()", lessThanOrEqualTo(5));
  }

  private static Map<String, Object> bolts(Shelf.Put riser) {
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

  private static RequestSpecification as(String name) {
    return given().auth().preemptive().basic(name, "demo-fleet").contentType(ContentType.JSON);
  }
}
