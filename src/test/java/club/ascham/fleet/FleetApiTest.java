package club.ascham.fleet;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.time.ClubTime;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class FleetApiTest {
  @Inject Rack rack;
  @Inject ClubTime time;

  @Test
  void everyFigure_hasTheAddressOfExactlyItsRows() throws Exception {
    rack.lend(rack.readyRig("LEFT", 20), "Nora Wick", time.today().minusDays(2));
    rack.readyRig("RIGHT", 24);
    Map<String, Integer> figures = new HashMap<>();
    collect(new ObjectMapper().readTree(as("committee").get("/api/fleet").asString()), figures);
    assertTrue(figures.size() > 15, figures.keySet().toString());
    figures.forEach(
        (address, count) -> {
          var rows = as("committee").get(address).then().statusCode(200).extract().jsonPath();
          int listed = 0;
          for (String list : new String[] {"rigs", "loans", "work", "withdrawals", "askBack"}) {
            listed += rows.getList(list) == null ? 0 : rows.getList(list).size();
          }
          assertEquals(count, rows.getInt("count"), address);
          assertEquals(count, listed, address);
        });
  }

  @Test
  void aRigInTheRows_saysWhatItIsAndWhenItComes() {
    Rack.Hung rig = rack.readyRig("LEFT", 20);
    var loan = rack.lend(rig, "Nell Wick", time.today().plusDays(2));
    as("volunteer")
        .get("/api/fleet/rows?list=rigs&state=on-loan&hand=left")
        .then()
        .statusCode(200)
        .body("rigs.find { it.code == '%s' }.bowLengthIn".formatted(rig.riserCode()), equalTo(68))
        .body(
            "rigs.find { it.code == '%s' }.loan".formatted(rig.riserCode()),
            equalTo((int) loan.value()))
        .body(
            "rigs.find { it.code == '%s' }.because".formatted(rig.riserCode()),
            equalTo("back-by-then"));
  }

  @Test
  void whoHasWhat_isNotForTheCommittee() {
    rack.lend(rack.readyRig("LEFT", 20), "Noel Wick", time.today().minusDays(2));
    String late = "/api/fleet/rows?list=loans-overdue";
    as("volunteer").get(late).then().body("loans.who", hasItem("Noel Wick"));
    as("committee")
        .get(late)
        .then()
        .body("count", greaterThan(0))
        .body(not(containsString("Noel Wick")));
  }

  @Test
  void anUnknownList_isAProblemInJson() {
    as("officer")
        .get("/api/fleet/rows?list=swords")
        .then()
        .statusCode(404)
        .contentType("application/problem+json");
  }

  @Test
  void theDescription_hasExamplesThatAreTrueToTheShape() throws Exception {
    String description = given().accept("application/json").get("/q/openapi").asString();
    JsonNode paths = new ObjectMapper().readTree(description).get("paths");
    for (String path : new String[] {"/api/fleet", "/api/fleet/rows"}) {
      JsonNode examples =
          paths.at(
              "/"
                  + path.replace("/", "~1")
                  + "/get/responses/200/content/application~1json/examples");
      assertEquals(1, examples.size(), path);
    }
    JsonNode example = new ObjectMapper().readTree(FleetJson.EXAMPLE);
    JsonNode real = new ObjectMapper().readTree(as("officer").get("/api/fleet").asString());
    assertEquals(names(real), names(example));
    assertEquals(names(real.get("course")), names(example.get("course")));
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static void collect(JsonNode node, Map<String, Integer> figures) {
    if (node.has("rows")) {
      figures.put(node.get("rows").asText(), node.get("count").asInt());
    }
    node.forEach(child -> collect(child, figures));
  }

  private static RequestSpecification as(String name) {
    return given().urlEncodingEnabled(false).auth().preemptive().basic(name, "demo-fleet");
  }
}
