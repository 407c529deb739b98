package club.ascham.check;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A check of a bow that a danger stands against: string off, and one press that comes next. */
@QuarkusTest
class LeftUnstrungTest {
  private static final String WHY = "Layers parting at the lower limb.";
  private static final String OFF =
      "If it is strung: take the string off with the stringer, and leave it off.";
  private static final List<String> STRINGS_IT =
      List.of(
          "Put the string on",
          "Before anything is drawn",
          "easure again",
          "easure brace and both",
          "twists (",
          "Put back:");

  @Inject ClubFixture fixture;
  @Inject Rows rows;

  @BeforeEach
  void permits() {
    fixture.mayTurnBolts("officer", true);
    fixture.mayTurnBolts("volunteer", false);
  }

  @AfterEach
  void noPermit() {
    fixture.mayTurnBolts("volunteer", false);
  }

  private LaidBow withdrawn() {
    LaidBow bow = fixture.aBowJustReceived();
    withdraw(bow);
    return bow;
  }

  private long withdraw(LaidBow bow) {
    rows.change(
        """
        INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why)
        VALUES (?1, ?2, ?2, 1, ?3)""",
        bow.limbs().id(),
        "2026-01-20T20:00:00.000Z",
        WHY);
    return rows.number("SELECT max(id) FROM withdrawal");
  }

  private static ValidatableResponse check(LaidBow bow, Map<String, Object> measured) {
    Map<String, Object> body = new HashMap<>(measured);
    body.put("rig", Long.toString(bow.id().value()));
    body.put("allAsListed", true);
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    return sending("volunteer").body(body).post("/api/checks").then();
  }

  private static Map<String, Object> brace(int mm) {
    Map<String, Object> body = CheckForms.braced(new HashMap<>(), mm);
    body.put("braceFrom", "grip-throat");
    return body;
  }

  private String verdictPage(String who, LaidBow bow) {
    String page =
        Visitor.signedInAs(who).get(bow.checkPage() + "/" + fixture.lastCheck(bow)).asString();
    return page.substring(page.indexOf("<main"));
  }

  private static void leadsNowhereNearAString(String page) {
    assertTrue(page.contains("Leave it unstrung"), page);
    assertTrue(page.contains(OFF), page);
    assertFalse(page.contains("Likeliest"), "what stands against it is the cause: " + page);
    int gauges = page.indexOf("class=\"gauges\"");
    assertTrue(gauges < 0 || page.indexOf(OFF) < gauges, "string off comes first: " + page);
    STRINGS_IT.forEach(words -> assertFalse(page.contains(words), words + " in " + page));
  }

  /** Buttons that are not quiet. */
  private static long presses(String page) {
    String main = page.substring(0, page.indexOf("</main>"));
    return Pattern.compile("class=\"button( big)?\"").matcher(main).results().count();
  }

  @Test
  void readingsFine_orOff_theStringComesOff_andNothingStringsIt_forEitherHand() {
    for (int mm : List.of(216, 199, 190)) {
      LaidBow bow = withdrawn();
      check(bow, brace(mm))
          .statusCode(201)
          .body("kind", equalTo("check"))
          .body("verdict.kind", equalTo("adjust"))
          .body("verdict.steps.key", contains("string-off", "to-workshop", "release"))
          .body("verdict.reasons", hasItem(containsString(WHY)));
      String volunteer = verdictPage("volunteer", bow);
      leadsNowhereNearAString(volunteer);
      assertEquals(1, presses(volunteer), "one next press in " + volunteer);
      assertTrue(volunteer.contains("Send to the workshop</button>"), volunteer);
      String officer = verdictPage("officer", bow);
      leadsNowhereNearAString(officer);
      long withdrawal = rows.number("SELECT max(id) FROM withdrawal");
      assertTrue(
          officer.contains(
              "<a class=\"button big\" href=\"/withdrawals/" + withdrawal + "/release\">See to "),
          officer);
      assertFalse(officer.contains("Send to the workshop"), officer);
      assertEquals(1, presses(officer), "one next press in " + officer);
    }
  }

  @Test
  void aVolunteerSendsItToTheWorkshop_unstrung_andItsSheetWaitsForTheRelease() {
    LaidBow bow = withdrawn();
    check(bow, brace(216)).statusCode(201);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = bow.checkPage() + "/" + fixture.lastCheck(bow);
    volunteer.get(page);
    volunteer.post(page + "/workshop", Map.of()).then().statusCode(303);
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM set_up WHERE rig_id = ?1 AND finished_at IS NULL", bow.id()));
    volunteer
        .get(page)
        .then()
        .body(
            containsString("It is in the workshop. Its string stays off."),
            not(containsString("Send to the workshop")));
    volunteer
        .get("/rigs/" + bow.id().value() + "/set-up")
        .then()
        .body(containsString("Leave it unstrung"), not(containsString("Stand on the cord")));
  }

  @Test
  void withoutReadings_itIsSavedAsALook_byPageAndProgram_andFindsNothingFit() {
    LaidBow bow = withdrawn();
    check(bow, Map.of())
        .statusCode(201)
        .body("kind", equalTo("look"))
        .body("verdict.kind", equalTo("adjust"))
        .body("verdict.reasons", hasItem(containsString("it finds nothing fit")));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String form = volunteer.get(bow.checkPage() + "?anew=yes").asString();
    assertTrue(form.contains("it is saved as a look, which finds nothing fit"), form);
    volunteer
        .post(
            bow.checkPage(),
            Map.of("allAsListed", "on", "string", "fine", "limbs", "fine", "bolts", "fine"))
        .then()
        .statusCode(303);
    assertEquals(2, fixture.checks(bow));
    String page = verdictPage("volunteer", bow);
    leadsNowhereNearAString(page);
    assertTrue(page.contains("This was a look, without readings: it finds nothing fit."), page);
    assertEquals(
        0,
        fixture.number(
            "SELECT count(*) FROM bow_check WHERE rig_id = ?1 AND verdict = 'FIT'", bow.id()));
    volunteer
        .post(bow.checkPage(), Map.of("allAsListed", "on"))
        .then()
        .statusCode(422)
        .body(
            containsString("Look at the limbs and say what you saw"),
            not(containsString("Measure the brace height")));
  }

  @Test
  void onceReleased_theLookIsWorthNoPutBack_andAFullCheckIsDue() {
    LaidBow bow = withdrawn();
    check(bow, Map.of()).statusCode(201);
    long look = fixture.lastCheck(bow);
    rows.change(
        """
        UPDATE withdrawal SET released_at = ?2, released_by = 1, release_why = 'sound', looked_at = 'all of it',
               looked_by = 1, decided_at = ?2, decided_by = 1, no_work_why = 'a scratch and no crack'
         WHERE item_id = ?1""",
        bow.limbs().id(),
        "2026-01-21T20:00:00.000Z");
    assertEquals("TO_BE_CHECKED", fixture.state(bow));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer
        .get(bow.checkPage() + "/" + look)
        .then()
        .body(containsString("Check it anew"), not(containsString("Put back:")));
    volunteer.get("/check").then().body(containsString("a full check is due"));
    volunteer.get(bow.checkPage()).then().body(containsString("Save the check"));
  }

  @Test
  void adviceGivenBeforeTheDangerWasKnown_isNotShownAnyMore() {
    LaidBow bow = fixture.aBowJustReceived();
    check(bow, brace(199)).statusCode(201).body("verdict.steps.key", hasItem("string-on"));
    withdraw(bow);
    leadsNowhereNearAString(verdictPage("volunteer", bow));
    long newest = fixture.lastCheck(bow);
    check(bow, Map.of()).statusCode(201);
    String before = Visitor.signedInAs("volunteer").get(bow.checkPage() + "/" + newest).asString();
    STRINGS_IT.forEach(words -> assertFalse(before.contains(words), words + " in " + before));
    LaidBow fit = fixture.aBowJustReceived();
    check(fit, brace(216)).statusCode(201).body("verdict.kind", equalTo("fit"));
    withdraw(fit);
    leadsNowhereNearAString(verdictPage("volunteer", fit));
  }
}
