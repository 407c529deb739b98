package club.ascham.demo;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import org.junit.jupiter.api.Test;

/** The demo's string book carries a life, and a proposal that an officer may take over. */
@QuarkusTest
class DemoLifeTest {
  @Test
  void theLifeOfStrings_isSeen_withItsBandAndAProposal() {
    Visitor.signedInAs("committee")
        .get("/upkeep/life")
        .then()
        .statusCode(200)
        .body(containsString("They wear out: the older, the likelier to fail."));
    Visitor.signedInAs("officer")
        .get("/upkeep/life/string")
        .then()
        .statusCode(200)
        .body(containsString("Half last "))
        .body(containsString("id=\"reach-table\""))
        .body(containsString("days instead of 730 would cost "))
        .body(containsString("9 times in 10"))
        .body(containsString("<button class=\"button\">Replace after "));
    Visitor.signedInAs("committee")
        .get("/upkeep/life/string")
        .then()
        .body(containsString("days instead of 730 would cost "))
        .body(not(containsString("<button class=\"button\">Replace after ")));
  }

  /** The one bow that failed was the oldest by far. */
  @Test
  void whereACurveRestsOnFew_thatIsSaid_andMarked() {
    Visitor.signedInAs("committee")
        .get("/upkeep/life/bow")
        .then()
        .body(containsString("on fewer than 5 parts: one that fails moves the curve far."))
        .body(containsString("<tr data-few>"))
        .body(containsString("<small>few</small>"));
  }

  @Test
  void theLifeOfStrings_isToldInJson_byMaterial() {
    JsonPath told =
        as("committee")
            .get("/api/lives/string")
            .then()
            .statusCode(200)
            .body("refusal", nullValue())
            .body("groups.name", hasItems("HMPE", "polyester"))
            .body("groups.life.median.low", everyItem(greaterThan(0f)))
            .body("survival.few", everyItem(notNullValue()))
            .extract()
            .jsonPath();
    assertTrue(told.getDouble("together.shape.low") > 1, "wears out, 9 times in 10");
    assertTrue(told.getInt("groups.sum { it.failed }") >= 15);
    int proposed = told.getInt("rules.find { it.everyDays == 730 }.shortenTo");
    assertTrue(proposed > 100 && proposed < 700, proposed + " days");
  }
}
