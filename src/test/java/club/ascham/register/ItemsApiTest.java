package club.ascham.register;

import static club.ascham.web.Program.as;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.store.Rows;
import club.ascham.store.StatementCount;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class ItemsApiTest {
  private static final String A_STRING =
      "{\"forBowIn\": 68, \"material\": \"hmpe\", \"strands\": 16, \"measuredLength\": \"1647 mm\","
          + " \"maker\": \"Marlwick\", \"price\": \"16.50\"}";

  @Inject Rows rows;

  @ParameterizedTest
  @CsvSource({"risers,R", "limbs,L", "bows,B", "strings,S", "stringers,T", "kit-items,"})
  void aList_isPaged_andEachItemAnswersUnderItsCode(String list, String letter) {
    JsonPath page =
        as("committee")
            .get("/api/" + list + "?size=2&page=2")
            .then()
            .statusCode(200)
            .body("page", equalTo(2))
            .body("size", equalTo(2))
            .body("total", greaterThan(4))
            .body("items.size()", equalTo(2))
            .body("items.state", everyItem(notNullValue()))
            .extract()
            .jsonPath();
    String code = page.getString("items[0].code");
    if (letter != null) {
      assertEquals(letter, code.substring(0, 1));
    }
    as("volunteer")
        .get("/api/" + list + "/" + code)
        .then()
        .statusCode(200)
        .body("code", equalTo(code))
        .body("price", nullValue());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "risers | {\"build\": \"screw-in\", \"hand\": \"left\", \"lengthIn\": 24, \"limbModel\":"
            + " \"Thatch\"} | build | screw-in",
        "limbs | {\"build\": \"adjustable\", \"size\": \"long\", \"markedLb\": 22.5,"
            + " \"limbFitting\": \"ILF\", \"braceLow\": \"8 1/2 in\", \"braceHigh\": \"9 in\"} |"
            + " braceLow | 215.9 mm",
        "bows | {\"bowLengthIn\": 54, \"markedLb\": 12, \"markedAtIn\": 24} | hmpeTips | unknown",
        "strings | {\"forBowIn\": 68, \"material\": \"polyester\", \"strandDiameter\": \"0.5 mm\"}"
            + " | strandDiameter | 0.5 mm",
        "stringers | {\"stringerKind\": \"tip-and-saddle\", \"bowFromIn\": 60, \"bowToIn\": 70} |"
            + " stringerKind | tip-and-saddle",
        "kit-items | {\"kind\": \"arrows\", \"arrowLength\": \"26 in\", \"arrowCount\": 36,"
            + " \"pool\": true, \"arrowMassGr\": 217.5} | arrowLength | 660.4 mm",
      })
  void whatIsAdded_isReadBack_andPutsItselfInItsOwnPlace(
      String list, String body, String field, String value) {
    ValidatableResponse added =
        sends("officer", body)
            .post("/api/" + list)
            .then()
            .statusCode(201)
            .header("Location", containsString("/api/" + list + "/"))
            .body(field, equalTo(value))
            .body("version", equalTo(0))
            .body("state", notNullValue());
    String code = added.extract().path("code");
    String asRead = as("officer").get("/api/" + list + "/" + code).asString();
    sends("officer", asRead)
        .put("/api/" + list + "/" + code)
        .then()
        .statusCode(200)
        .body("version", equalTo(0))
        .body(field, equalTo(value));
  }

  @Test
  void aFaultyBody_namesEachWrongField_andChangesNothing() {
    long before = rows.number("SELECT count(*) FROM item");
    sends(
            "officer",
            "{\"forBowIn\": \"sixty-eight\", \"measuredLength\": \"68 in\", \"colour\": \"red\","
                + " \"strands\": [12], \"twists\": null}")
        .post("/api/strings")
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("status", equalTo(422))
        .body("errors.field", hasItems("forBowIn", "material", "colour", "strands"));
    sends("officer", "{\"forBowIn\": 68, \"material\": \"hmpe\", \"measuredLength\": \"8.75\"}")
        .post("/api/strings")
        .then()
        .statusCode(422)
        .body("errors.field", hasItem("measuredLength"));
    assertEquals(before, rows.number("SELECT count(*) FROM item"));
  }

  @Test
  void aBodyThatIsNoJson_isRefusedAsSuch() {
    sends("officer", "{\"forBowIn\": ").post("/api/strings").then().statusCode(400);
    sends("officer", "[1, 2]").post("/api/strings").then().statusCode(400);
  }

  @Test
  void twelveMoreLikeOne_haveTheirOwnCodes_butNotItsOwnMeasurements() {
    String code = sends("officer", A_STRING).post("/api/strings").then().extract().path("code");
    sends("officer", "{\"copies\": 12, \"batch\": \"M08\"}")
        .post("/api/strings/" + code + "/like-this")
        .then()
        .statusCode(201)
        .body("items.size()", equalTo(12))
        .body("items.batch", everyItem(equalTo("M08")))
        .body("items.material", everyItem(equalTo("hmpe")))
        .body("items.measuredLength", everyItem(nullValue()));
    sends("officer", "{\"copies\": 51}")
        .post("/api/strings/" + code + "/like-this")
        .then()
        .statusCode(422)
        .body("errors.field", hasItem("copies"));
  }

  @Test
  void aStaleChange_isRefused() {
    String code = sends("officer", A_STRING).post("/api/strings").then().extract().path("code");
    String theirs = A_STRING.replace("16.50", "17.50").replaceFirst("\\{", "{\"version\": 0,");
    sends("officer", theirs)
        .put("/api/strings/" + code)
        .then()
        .statusCode(200)
        .body("version", equalTo(1));
    sends("officer", theirs)
        .put("/api/strings/" + code)
        .then()
        .statusCode(409)
        .contentType("application/problem+json")
        .body("title", equalTo("Someone saved first"));
    sends("officer", A_STRING)
        .put("/api/strings/" + code)
        .then()
        .statusCode(422)
        .body("errors.field", hasItem("version"));
  }

  @Test
  void anItem_isRetired_leavesTheList_andIsFoundAgain() {
    String code = sends("officer", A_STRING).post("/api/strings").then().extract().path("code");
    sends("officer", "{\"why\": \"stolen\"}")
        .post("/api/strings/" + code + "/retire")
        .then()
        .statusCode(422)
        .body("errors.field", hasItem("why"));
    sends("officer", "{\"why\": \"lost\", \"note\": \"gone since May\"}")
        .post("/api/strings/" + code + "/retire")
        .then()
        .statusCode(200)
        .body("state", equalTo("retired"))
        .body("retiredWhy", equalTo("lost"));
    as("officer").get("/api/strings?words=" + code).then().body("total", equalTo(0));
    as("officer").get("/api/strings?state=any&words=" + code).then().body("total", equalTo(1));
    sends("officer", "{\"why\": \"lost\"}")
        .post("/api/strings/" + code + "/retire")
        .then()
        .statusCode(409);
    for (String none : List.of("{}", "{\"why\": \"x\"}")) {
      sends("officer", none)
          .post("/api/strings/" + code + "/found")
          .then()
          .statusCode(422)
          .body("errors.field", hasItem("why"));
    }
    String behind = "{\"why\": \"It lay behind the nets.\"}";
    sends("officer", behind)
        .post("/api/strings/" + code + "/found")
        .then()
        .statusCode(200)
        .body("code", equalTo(code))
        .body("retiredWhy", nullValue())
        .body("standsAgainst.what", equalTo(List.of("String replacement")))
        .body(
            "standsAgainst[0].endsWith",
            equalTo("until it is replaced, or looked over and kept on"));
    sends("officer", behind).post("/api/strings/" + code + "/found").then().statusCode(409);
  }

  @Test
  void anItem_doesNotLeaveBeforeItCame() {
    String code = sends("officer", A_STRING).post("/api/strings").then().extract().path("code");
    sends("officer", "{\"why\": \"sold\", \"on\": \"2026-01-15\"}")
        .post("/api/strings/" + code + "/retire")
        .then()
        .statusCode(422)
        .body("errors.field", hasItem("on"));
    as("officer").get("/api/strings/" + code).then().body("retiredOn", nullValue());
  }

  @Test
  void aFittedPart_isNotRetired() {
    String bare =
        rows.texts(
                """
                SELECT i.code FROM item i JOIN fitting f ON f.item_id = i.id AND f.until_at IS NULL
                 WHERE i.kind = 'RISER' LIMIT 1\
                """)
            .get(0);
    sends("officer", "{\"why\": \"sold\"}")
        .post("/api/risers/" + bare + "/retire")
        .then()
        .statusCode(409)
        .body("title", equalTo("Still fitted"));
  }

  @Test
  void anUnknownCode_aMistypedOne_andOneOfAnotherList_areNotFound() {
    as("officer").get("/api/risers/R-0000-X").then().statusCode(404);
    as("officer")
        .get("/api/risers/R-0101-F")
        .then()
        .statusCode(404)
        .contentType("application/problem+json")
        .body("detail", containsString("nobody's code"));
    as("officer")
        .get("/api/strings/R-0101-E")
        .then()
        .statusCode(404)
        .body("detail", containsString("/api/risers/R-0101-E"));
    as("officer").get("/api/strings?colour=red").then().statusCode(422);
  }

  @ParameterizedTest
  @ValueSource(strings = {"volunteer", "committee"})
  void nobodyButTheOfficer_changesAnything(String who) {
    sends(who, A_STRING).post("/api/strings").then().statusCode(403);
    sends(who, A_STRING).put("/api/strings/S-0201-B").then().statusCode(403);
    sends(who, "{\"why\": \"sold\"}").post("/api/strings/S-0201-B/retire").then().statusCode(403);
    sends(who, "{\"copies\": 2}").post("/api/strings/S-0201-B/like-this").then().statusCode(403);
  }

  @Test
  void aList_needsTheSameFewStatements_howeverManyItShows() {
    assertEquals(statements("/api/strings?size=1"), statements("/api/strings?size=60"));
  }

  @Test
  void theDescription_showsEachListWithItsFieldsAndAnExample() {
    String described = given().accept("application/json").get("/q/openapi?format=json").asString();
    JsonPath api = new JsonPath(described);
    for (Map.Entry<String, String> list :
        Map.of(
                "risers", "limbFitting",
                "limbs", "markedLb",
                "bows", "bowLengthIn",
                "strings", "forBowIn",
                "stringers", "stringerKind",
                "kit-items", "arrowLength")
            .entrySet()) {
      Map<String, Object> post =
          api.getMap(
              "paths.'/api/" + list.getKey() + "'.post.requestBody.content.'application/json'");
      assertEquals(true, post.containsKey("examples"), list.getKey());
    }
    Map<String, Object> string = api.getMap("components.schemas.StringJson.properties");
    assertEquals(true, string.containsKey("forBowIn"), string.toString());
    assertEquals(true, string.containsKey("maker"), string.toString());
  }

  private long statements(String path) {
    as("officer").get(path).then().statusCode(200);
    long before = StatementCount.run();
    as("officer").get(path).then().statusCode(200);
    return StatementCount.run() - before;
  }

  private static RequestSpecification sends(String who, String body) {
    return as(who).contentType("application/json").body(body);
  }
}
