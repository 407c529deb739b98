package club.ascham.check;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.lessThan;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A bow teaches how it answers, over HTTP from its first low brace to its page. */
@QuarkusTest
class LearningTest {
  private static final String EXPECTED = "verdict.expected.join(' ')";

  @Inject ClubFixture fixture;
  @Inject Rows rows;

  @Test
  void threeAdjustments_standInTheAdvice_andOnTheBowsPage() {
    LaidBow bow = aBowWhoseStringIsKnown();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rigs/" + bow.id().value()).then().body(containsString("Nothing yet: measure"));

    // 20 twists, then 28, 36 and 40: each second measurement begins the next adjustment.
    ValidatableResponse low = check(bow, "198 mm", 0);
    low.body(EXPECTED, containsString("No adjustment of this bow yet: from the string's geometry"));
    ValidatableResponse higher = check(bow, "200 mm", adjusted(low, 8));
    higher.body(EXPECTED, containsString("From 1 adjustment of this bow"));
    ValidatableResponse stillLow = check(bow, "202 mm", adjusted(higher, 8));
    ValidatableResponse last = check(bow, "202.5 mm", adjusted(stillLow, 4));
    last.body(EXPECTED, containsString("From 3 adjustments of this bow"))
        .body("verdict.basis.join(' ')", containsString("tried from 20 to 40 twists"))
        .body("verdict.basis.join(' ')", containsString("goes beyond the twists tried so far"));

    officer
        .get("/rigs/" + bow.id().value())
        .then()
        .statusCode(200)
        .body(containsString("A twist in raises brace by"), containsString("from 3 adjustments."));
    officer
        .get("/check/" + bow.id().value() + "/" + id(last))
        .then()
        .statusCode(200)
        .body(
            containsString("may be needed"),
            containsString("From 3 adjustments of this bow"),
            containsString("9 times in 10"));
  }

  @Test
  void boltsThatWereTurnedOut_standFurtherOutThanAtTheSetUp() {
    LaidBow bow = aBowWhoseStringIsKnown();
    fixture.mayTurnBolts("officer", true);
    // The maker allows 4 turns; the lower bolt stands at 3.75 and went out by a quarter.
    rows.change(
        "UPDATE set_up SET turns_upper = 2, turns_lower = 3.75 WHERE rig_id = ?1", bow.id());
    ValidatableResponse large = check(bow, "216 mm", 0, "195 mm", "184 mm", "officer");
    large.body("verdict.steps.find { it.key == 'lower-bolt' }.amount", equalTo(-0.25f));
    int adjustment =
        sending("officer")
            .body("{\"upperIn\": 0.25, \"lowerIn\": -0.25}")
            .post("/api/checks/" + id(large) + "/adjustment")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    check(bow, "216 mm", adjustment, "194 mm", "185 mm", "officer")
        .body("verdict.steps.key.contains('upper-bolt')", equalTo(true))
        .body("verdict.steps.key.contains('lower-bolt')", equalTo(false))
        .body(EXPECTED, containsString("From 1 adjustment of this bow"));
  }

  @Test
  @DisplayName(
      "68 in bow, 9 in for 8 1/2 to 8 3/4, tiller 3/8 in, split fingers: one pass for both")
  void nineInchesAndThreeEighths_areAdjustedInOnePass() {
    LaidBow bow = aBowWhoseStringIsKnown();
    fixture.mayTurnBolts("officer", true);
    rows.change(
        "UPDATE limbs SET brace_low = 21590000, brace_high = 22225000 WHERE id = ?1",
        bow.limbs().id());
    rows.change(
        "UPDATE set_up SET brace = 22000000, twists = 40, turns_upper = 2, turns_lower = 2"
            + " WHERE rig_id = ?1",
        bow.id());
    check(bow, "9 in", 0, "198.6 mm", "189.1 mm", "officer")
        .body(
            "verdict.steps.key",
            contains(
                "look-along",
                "string-off",
                "count-twists",
                "twists",
                "lock-loosened",
                "upper-bolt",
                "lower-bolt",
                "lock-tightened",
                "string-on",
                "loops",
                "string-line",
                "measure-again"))
        .body(
            "verdict.steps.find { it.key == 'twists' }.amount",
            allOf(lessThan(-9f), greaterThan(-25f)))
        .body("verdict.steps.find { it.key == 'upper-bolt' }.amount", equalTo(0.25f))
        .body("verdict.steps.find { it.key == 'lower-bolt' }.amount", equalTo(-0.25f))
        .body(EXPECTED, containsString("In all about 3/4 of a turn, both bolts together"));
  }

  @Test
  void nineInchesOnAStringAtItsFewestTwists_asksForAnother_withItsLength() {
    LaidBow bow = aBowWhoseStringIsKnown();
    rows.change(
        "UPDATE limbs SET brace_low = 21590000, brace_high = 22225000 WHERE id = ?1",
        bow.limbs().id());
    rows.change("UPDATE set_up SET brace = 22000000, twists = 10 WHERE rig_id = ?1", bow.id());
    check(bow, "9 in", 0)
        .body(
            "verdict.steps.find { it.key == 'other-string' }.words",
            containsString("made for a 68 in bow, untwisted about 1/2 in"));
  }

  /** A 65 in string of 14 strands with 20 twists, on a 68 in bow set up at brace 216 mm. */
  private LaidBow aBowWhoseStringIsKnown() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    rows.change(
        "UPDATE bowstring SET measured_length = 165100000, strands = 14, strand_diameter = 45000"
            + " WHERE id = ?1",
        bow.string().id());
    rows.change("UPDATE set_up SET twists = 20 WHERE rig_id = ?1", bow.id());
    return bow;
  }

  private int adjusted(ValidatableResponse check, int twists) {
    return sending("volunteer")
        .body("{\"twistsAdded\": " + twists + "}")
        .post("/api/checks/" + id(check) + "/adjustment")
        .then()
        .statusCode(201)
        .extract()
        .path("id");
  }

  private ValidatableResponse check(LaidBow bow, String brace, int adjustment) {
    double mm = brace.equals("9 in") ? 228.6 : Double.parseDouble(brace.replace(" mm", ""));
    double byBrace =
        mm - rows.number("SELECT max(brace) FROM set_up WHERE rig_id = ?1", bow.id()) / 1e5;
    return check(bow, brace, adjustment, 190 + byBrace + " mm", 186 + byBrace + " mm", "volunteer");
  }

  private ValidatableResponse check(
      LaidBow bow, String brace, int adjustment, String upper, String lower, String who) {
    Map<String, Object> body = new HashMap<>();
    body.put("rig", Long.toString(bow.id().value()));
    body.put("allAsListed", true);
    body.put("brace", brace);
    body.put("braceFrom", "grip-throat");
    body.put("tillerUpper", upper);
    body.put("tillerLower", lower);
    body.put("limbsSeated", true);
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    if (adjustment != 0) {
      body.put("adjustment", adjustment);
    }
    return sending(who)
        .body(body)
        .post("/api/checks")
        .then()
        .statusCode(201)
        .body("verdict.kind", equalTo("adjust"));
  }

  private static int id(ValidatableResponse check) {
    return check.extract().path("id");
  }
}
