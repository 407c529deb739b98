package club.ascham.check;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a check asks back before it judges, and one cause where it has judged. */
@QuarkusTest
class AskedBackTest {
  private static final String TICK = "I measured each of the three: it is so";

  @Inject ClubFixture fixture;

  private static Map<String, Object> form(String brace, String upper, String lower) {
    Map<String, Object> form = new HashMap<>();
    form.put("allAsListed", "on");
    form.put("string", "fine");
    form.put("limbs", "fine");
    form.put("bolts", "fine");
    form.put("brace", brace + " mm");
    form.put("braceFrom", "grip-throat");
    form.put("tillerUpper", upper + " mm");
    form.put("tillerLower", lower + " mm");
    return form;
  }

  private static ValidatableResponse check(
      LaidBow bow, String brace, String upper, String lower, Map<String, Object> more) {
    Map<String, Object> body = new HashMap<>(more);
    body.put("rig", Long.toString(bow.id().value()));
    body.put("allAsListed", true);
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    body.put("brace", brace + " mm");
    body.put("braceFrom", "grip-throat");
    body.put("tillerUpper", upper + " mm");
    body.put("tillerLower", lower + " mm");
    return sending("volunteer").body(body).post("/api/checks").then();
  }

  private String lastPage(LaidBow bow) {
    return Visitor.signedInAs("volunteer")
        .get(bow.checkPage() + "/" + fixture.lastCheck(bow))
        .asString();
  }

  @Test
  void braceTypedTwice_isAskedBackAtATick_byPageAndProgram_andWithdrawsNothing() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    assertFalse(volunteer.get(bow.checkPage()).asString().contains(TICK), "before anybody asked");
    Map<String, Object> form = form("216", "216", "186");
    volunteer
        .post(bow.checkPage(), form)
        .then()
        .statusCode(422)
        .body(
            containsString("Brace and the upper tiller distance are nearly the same."),
            containsString(TICK));
    check(bow, "216", "216", "186", Map.of())
        .statusCode(422)
        .body("errors.field", hasItem("measuredEach"));
    assertEquals(0, fixture.checks(bow));
    assertEquals("TO_BE_CHECKED", fixture.state(bow));

    form.put("measuredEach", "on");
    volunteer.post(bow.checkPage(), form).then().statusCode(303);
    assertEquals("WITHDRAWN", fixture.state(bow), "measured so, a limb is out of its place");
    check(fixture.aBowJustReceived(), "216", "216", "186", Map.of("measuredEach", true))
        .statusCode(201)
        .body("verdict.kind", equalTo("withdraw"));
  }

  @Test
  void measuredAgainAfterALook_withoutTheTick_saysAtTheTickWhatIsMissing() {
    LaidBow bow = fixture.aBowJustReceived();
    check(bow, "190", "164", "160", Map.of()).statusCode(201);
    long looked = fixture.lastCheck(bow);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get(bow.checkPage() + "?looked=" + looked).then().statusCode(200);
    Map<String, Object> form = form("190", "164", "160");
    form.put("looked", looked);
    volunteer
        .post(bow.checkPage(), form)
        .then()
        .statusCode(422)
        .body(containsString("id=\"limbsSeated-error\""), containsString("this is not ticked"));
    check(bow, "190", "164", "160", Map.of("looked", looked))
        .statusCode(422)
        .body("errors.field", hasItem("limbsSeated"));
    assertEquals(1, fixture.checks(bow));
    form.put("limbsSeated", "on");
    volunteer.post(bow.checkPage(), form).then().statusCode(303);
    assertTrue(
        lastPage(bow).contains("I have done this: measure again")
            || lastPage(bow).contains("Fit another string"),
        "another verdict than to look");
  }

  @Test
  void aTillerThatJumps_isOneCause_onTheVerdictAndOnTheBow() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    check(bow, "216", "190", "186", Map.of()).statusCode(201);
    check(bow, "216", "198.4", "186", Map.of()).statusCode(201);
    String verdict = lastPage(bow);
    assertTrue(verdict.contains("sooner a limb out of its seat than a bolt"), verdict);
    assertTrue(verdict.contains("Its last check says what to look at first."), verdict);
    assertFalse(verdict.contains("Likeliest"), verdict);
    String page = Visitor.signedInAs("volunteer").get("/rigs/" + bow.id().value()).asString();
    assertTrue(page.contains("Its last check says what to look at first."), page);
    assertFalse(page.contains("Likeliest"), page);
  }

  @Test
  void aFitBowWhoseReadingsChange_ownsToIt_inItsHeadline() {
    LaidBow bow = fixture.aBowJustReceived();
    check(bow, "216", "190", "186", Map.of()).statusCode(201);
    assertTrue(lastPage(bow).contains("Fit to issue</h2>"), "one that does not change");
    check(bow, "209", "183", "179", Map.of()).statusCode(201).body("verdict.kind", equalTo("fit"));
    String page = lastPage(bow);
    assertTrue(page.contains("Fit to issue, but its readings change"), page);
    assertFalse(page.contains("where they should be"), page);
    assertTrue(page.contains("Likeliest the string stretches."), page);
  }

  @Test
  void aBraceThatDroppedAlone_isSaidToHaveDropped() {
    LaidBow bow = fixture.aBowJustReceived();
    check(bow, "201", "190", "186", Map.of())
        .statusCode(201)
        .body(
            "verdict.reasons",
            hasItem(
                containsString(
                    "Brace fell by about 9/16 in · 15 mm, and the tiller distances did")))
        .body("verdict.reasons", not(hasItem(containsString("have moved by"))));
  }
}
