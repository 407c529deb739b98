package club.ascham.session;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.id.LoanId;
import club.ascham.loan.LoanLines;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What comes back of a session: bows, what went beside them by count, and what is on no list. */
@QuarkusTest
class SessionReturnTest {
  @Inject ClubFixture fixture;
  @Inject LoanLines lines;
  @Inject Rows rows;
  @Inject ClubTime time;

  private Visitor volunteer;

  @BeforeEach
  void signIn() {
    volunteer = Visitor.signedInAs("volunteer");
  }

  @Test
  void arrowsComeBackByCount_theSetHoldsThatMany_andWhatIsMissingStandsOnTheLoan() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid set = fixture.arrows(28);
    long session = session(rig);
    lines.lend(new LoanId(session), set.id(), null, time.now(), null);
    long line = line(session, set);
    volunteer
        .get("/sessions/" + session)
        .then()
        .body(containsString("Arrows back, of 6"))
        .body(containsString("name=\"count-" + line + "\""));

    back(session, Map.of("count-" + line, "7")).statusCode(422).body(containsString("value=\"7\""));
    assertEquals("ON_LOAN", state(rig), "nothing was changed");

    back(session, Map.of("count-" + line, "4")).statusCode(303);
    assertEquals(4, rows.number("SELECT arrow_count FROM kit_item WHERE id = ?1", set.id()));
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM loan_line WHERE id = ?1 AND outcome = 'BACK' AND back_count = 4"
                + " AND missing_count = 2 AND receipt_id IS NOT NULL",
            line));
    volunteer
        .get("/sessions/" + session)
        .then()
        .body(containsString("4 of 6 arrows " + set.code()));
  }

  @Test
  void whatIsNotBackYet_keepsTheSessionOpen_thoughEveryBowIs() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid set = fixture.arrows(28);
    long session = session(rig);
    lines.lend(new LoanId(session), set.id(), null, time.now(), null);
    long line = line(session, set);

    back(session, Map.of("out-line-" + line, "on")).statusCode(303);
    assertEquals("READY", state(rig));
    assertEquals(1, rows.number("SELECT back_at IS NULL FROM loan_line WHERE id = ?1", line));
    volunteer.get("/sessions").then().body(containsString("1 thing beside them out"));
    volunteer
        .get("/sessions/" + session)
        .then()
        .body(containsString("is everything back"))
        .body(containsString("out-line-" + line));

    back(session, Map.of("out-line-" + line, "on"))
        .statusCode(422)
        .body(containsString("there is nothing to save"));
    back(session, Map.of("damage-" + line, "x"))
        .statusCode(422)
        .body(containsString("What is wrong with it?"));
    back(session, Map.of("damage-" + line, "two nocks are split")).statusCode(303);
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL"
                + " AND why = 'Came back damaged: two nocks are split'",
            set.id()));
    volunteer
        .get("/sessions/" + session)
        .then()
        .body(containsString("back, but not whole"))
        .body(containsString("back, damaged"));
  }

  @Test
  void overTheApi_arrowsComeBackByCount_andEachRigSaysWhatBecameOfIt() {
    LaidBow fine = fixture.aBowReadyToGoOut(20);
    LaidBow noisy = fixture.aBowReadyToGoOut(20);
    Laid set = fixture.arrows(28);
    long session = session(fine, noisy);
    lines.lend(new LoanId(session), set.id(), null, time.now(), null);

    api(
            session,
            Map.of(
                "rigs",
                List.of(Map.of("rigId", fine.id().value())),
                "lines",
                List.of(Map.of("code", "K-0001-X"))))
        .statusCode(422);
    api(
            session,
            Map.of(
                "rigs",
                List.of(
                    Map.of("rigId", fine.id().value()),
                    Map.of("rigId", noisy.id().value(), "seen", "the nocking point slipped")),
                "lines",
                List.of(Map.of("code", set.code(), "count", 5))))
        .statusCode(200)
        .body("said", startsWith("1 back on the rack, 1 to be checked."))
        .body("said", containsString("5 of 6 arrows"))
        .body(
            "rigs.find { it.rigId == %d }.became".formatted(fine.id().value()),
            equalTo("back on the rack"))
        .body(
            "rigs.find { it.rigId == %d }.became".formatted(noisy.id().value()),
            equalTo("to be checked"))
        .body(
            "rigs.find { it.rigId == %d }.why".formatted(noisy.id().value()),
            containsString("the nocking point slipped"));
    assertEquals(5, rows.number("SELECT arrow_count FROM kit_item WHERE id = ?1", set.id()));
  }

  @Test
  void overTheApi_whatIsNotNamed_comesBackWithTheLastRig() {
    LaidBow first = fixture.aBowReadyToGoOut(20);
    LaidBow last = fixture.aBowReadyToGoOut(20);
    Laid set = fixture.arrows(28);
    long session = session(first, last);
    lines.lend(new LoanId(session), set.id(), null, time.now(), null);

    api(session, Map.of("rigs", List.of(Map.of("rigId", first.id().value())))).statusCode(200);
    assertEquals(
        1, rows.number("SELECT back_at IS NULL FROM loan_line WHERE id = ?1", line(session, set)));
    api(session, Map.of("rigs", List.of(Map.of("rigId", last.id().value())))).statusCode(200);
    assertEquals(
        0, rows.number("SELECT back_at IS NULL FROM loan_line WHERE id = ?1", line(session, set)));
  }

  @Test
  void aStrangersCode_isAskedAboutAsAtTheCheck_andPutRightStandsUntilTheCheck() {
    LaidBow out = fixture.aBowReadyToGoOut(20);
    LaidBow inTheRoom = fixture.aBowReadyToGoOut(20);
    long session = session(out);
    String code = "stranger-" + out.id().value();
    String answer = "strangerAnswer-" + out.id().value();

    back(session, Map.of(code, inTheRoom.string().code()))
        .statusCode(422)
        .body(containsString("belongs to the rig " + inTheRoom.body().code()))
        .body(containsString("Put it right"))
        .body(containsString("Withdraw both"))
        .body(containsString("Correct the record"));
    assertEquals("ON_LOAN", state(out));
    back(session, Map.of(code, out.string().code()))
        .statusCode(422)
        .body(containsString("is on the list: it belongs to this bow."));

    back(session, Map.of(code, inTheRoom.string().code(), answer, "put-right")).statusCode(303);
    assertEquals("TO_BE_CHECKED", state(out), "nobody puts it back by a look");
    assertEquals(0, looks(out));
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM report WHERE rig_id = ?1 AND answer IS NULL AND words LIKE ?2",
            out.id(),
            inTheRoom.string().code() + " is on it instead of " + out.string().code() + "%"));
    assertEquals("READY", state(inTheRoom));
  }

  @Test
  void withdrawBoth_takesBothOutOfUse() {
    LaidBow out = fixture.aBowReadyToGoOut(20);
    LaidBow inTheRoom = fixture.aBowReadyToGoOut(20);
    long session = session(out);
    back(
            session,
            Map.of(
                "stranger-" + out.id().value(),
                inTheRoom.limbs().code(),
                "strangerAnswer-" + out.id().value(),
                "withdraw-both"))
        .statusCode(303);
    assertEquals("WITHDRAWN", state(out));
    assertEquals("WITHDRAWN", state(inTheRoom));
    volunteer.get("/sessions/" + session).then().body(containsString("stays in"));
  }

  @Test
  void twoBowsOfOneSession_thatExchangedTheirStrings_areCorrectedOnceBothAreBack() {
    LaidBow one = fixture.aBowReadyToGoOut(20);
    LaidBow other = fixture.aBowReadyToGoOut(20);
    long session = session(one, other);
    Map<String, String> answers =
        Map.of(
            "stranger-" + one.id().value(),
            other.string().code(),
            "strangerAnswer-" + one.id().value(),
            "exchanged");

    Map<String, String> otherIsOut = new LinkedHashMap<>(answers);
    otherIsOut.put("out-" + other.id().value(), "on");
    back(session, otherIsOut).statusCode(422).body(containsString("Receive it first."));
    assertEquals("ON_LOAN", state(one), "nothing was changed");

    back(session, answers).statusCode(303);
    assertEquals("IN_THE_WORKSHOP", state(one));
    assertEquals("IN_THE_WORKSHOP", state(other));
    assertEquals(
        2,
        rows.number(
            "SELECT count(*) FROM fitting WHERE until_at IS NULL AND ((rig_id = ?1 AND item_id ="
                + " ?2) OR (rig_id = ?3 AND item_id = ?4))",
            one.id(),
            other.string().id(),
            other.id(),
            one.string().id()));
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL", session));
  }

  @Test
  void overTheApi_theSameQuestionIsAsked() {
    LaidBow out = fixture.aBowReadyToGoOut(20);
    LaidBow inTheRoom = fixture.aBowReadyToGoOut(20);
    long session = session(out);
    Map<String, Object> rig = new LinkedHashMap<>();
    rig.put("rigId", out.id().value());
    rig.put("stranger", inTheRoom.string().code());
    api(session, Map.of("rigs", List.of(rig)))
        .statusCode(422)
        .body(containsString("What is to be done about it?"));
    rig.put("strangerAnswer", "correct-record");
    api(session, Map.of("rigs", List.of(rig)))
        .statusCode(200)
        .body("rigs[0].became", equalTo("in the workshop"));
    assertEquals("IN_THE_WORKSHOP", state(inTheRoom), "it is without a string");
  }

  @Test
  void kitGoesOutBesideTheBows_byTheRulesOfAKit_andComesBackWithThem() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid set = fixture.arrows(28);
    Laid pool = fixture.aPoolOfArrows(28, 12);
    Laid tab = fixture.aKitItem("TAB", "RIGHT", "M");
    volunteer
        .get("/sessions/new")
        .then()
        .body(containsString("name=\"items." + set.code() + "\""))
        .body(containsString("data-many=\"Hand out # bows\""));
    Map<String, String> form = new LinkedHashMap<>();
    form.put("rig-" + rig.id().value(), "on");
    form.put("leader", "Quenby");
    form.put("items." + set.code(), set.code());
    form.put("items." + pool.code(), pool.code());
    form.put("moreItems", tab.code());
    lend(form)
        .statusCode(422)
        .body(containsString("How many arrows out of " + pool.code() + "?"))
        .body(containsString("value=\"" + set.code() + "\" checked"));
    assertEquals("READY", state(rig), "nothing went out");
    form.put("items." + pool.code() + ".count", "5");
    String page = lend(form).statusCode(303).extract().header("Location");
    long session = Long.parseLong(page.substring(page.lastIndexOf('/') + 1));
    assertEquals(
        3,
        rows.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND rig_id IS NULL AND back_at IS"
                + " NULL",
            session));
    assertEquals(
        5,
        rows.number(
            "SELECT arrow_count FROM loan_line WHERE loan_id = ?1 AND item_id = ?2",
            session,
            pool.id()));
    Map<String, String> again = new LinkedHashMap<>();
    again.put("rig-" + fixture.aBowReadyToGoOut(20).id().value(), "on");
    again.put("leader", "Quenby");
    again.put("moreItems", set.code());
    lend(again).statusCode(422).body(containsString("are out with loan " + session));

    back(session, Map.of("count-" + line(session, pool), "3")).statusCode(303);
    assertEquals(10, rows.number("SELECT arrow_count FROM kit_item WHERE id = ?1", pool.id()));
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL", session));
  }

  @Test
  void overTheApi_kitGoesOutToo_andWhatMayNotGo_keepsAllOfItIn() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid set = fixture.arrows(28);
    Laid stringer = fixture.aStringer(60, 70);
    fixture.withdraw(stringer, "crack in the lower limb");
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("leader", "Quenby");
    body.put("rigIds", List.of(rig.id().value()));
    body.put("items", List.of(Map.of("code", set.code()), Map.of("code", stringer.code())));
    sending("volunteer")
        .body(body)
        .post("/api/sessions")
        .then()
        .statusCode(422)
        .body(containsString("stays in"));
    assertEquals("READY", state(rig));
    body.put("items", List.of(Map.of("code", set.code())));
    sending("volunteer")
        .body(body)
        .post("/api/sessions")
        .then()
        .statusCode(201)
        .body("beside[0].code", equalTo(set.code()))
        .body("beside[0].arrows", equalTo(6))
        .body("beside[0].out", equalTo(true));
  }

  @Test
  void whatIsTickedFromLastTime_isSaid_andStandsFirst() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    long session = session(rig);
    back(session, Map.of()).statusCode(303);
    String page = volunteer.get("/sessions/new").asString();
    assertTrue(page.contains("Ticked already, as last time: <strong>" + rig.body().code()), page);
    int first = page.indexOf("type=\"checkbox\"");
    assertTrue(
        page.startsWith("type=\"checkbox\" id=\"rig-" + rig.id().value() + "\"", first),
        "it stands first");
    assertFalse(
        volunteer.get("/sessions/new?anew=yes").asString().contains(" checked"),
        "none is ticked for whoever begins anew");
  }

  private ValidatableResponse lend(Map<String, String> answers) {
    Map<String, String> form = new LinkedHashMap<>(answers);
    form.put("once-key", "set-" + System.nanoTime());
    volunteer.get("/sessions/new");
    return volunteer.post("/sessions/new", form).then();
  }

  private long session(LaidBow... rigs) {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("once-key", "set-" + System.nanoTime());
    form.put("leader", "Quenby");
    Arrays.stream(rigs).forEach(rig -> form.put("rig-" + rig.id().value(), "on"));
    volunteer.get("/sessions/new");
    String location =
        volunteer
            .post("/sessions/new", form)
            .then()
            .statusCode(303)
            .header("Location", not(equalTo(null)))
            .extract()
            .header("Location");
    return Long.parseLong(location.substring(location.lastIndexOf('/') + 1));
  }

  private ValidatableResponse back(long session, Map<String, String> answers) {
    Map<String, String> form = new LinkedHashMap<>(answers);
    form.put("once-key", "back-" + System.nanoTime());
    volunteer.get("/sessions/" + session);
    return volunteer.post("/sessions/" + session, form).then();
  }

  private static ValidatableResponse api(long session, Map<String, ?> body) {
    return sending("volunteer").body(body).post("/api/sessions/" + session + "/return").then();
  }

  private long line(long session, Laid item) {
    return rows.number(
        "SELECT id FROM loan_line WHERE loan_id = ?1 AND item_id = ?2", session, item.id());
  }

  private long looks(LaidBow rig) {
    return rows.number(
        "SELECT count(*) FROM bow_check WHERE rig_id = ?1 AND kind = 'LOOK'", rig.id());
  }

  private String state(LaidBow rig) {
    return rows.texts(
            "SELECT " + Standing.STATE_TODAY + " FROM rig_standing s WHERE s.rig_id = ?2",
            time.today(),
            rig.id())
        .get(0);
  }
}
