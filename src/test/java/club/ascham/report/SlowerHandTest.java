package club.ascham.report;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.fleet.Rack;
import club.ascham.id.LoanId;
import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Two hands at one bow: what the slower one saw is kept, or shown as not kept. */
@QuarkusTest
class SlowerHandTest {
  @Inject ClubFixture fixture;
  @Inject ReportBench told;
  @Inject Rack rack;
  @Inject Rows rows;

  private static Map<String, Object> form(Map<String, ?> more) {
    Map<String, Object> form = new HashMap<>();
    form.put("allAsListed", "on");
    form.put("brace", "216 mm");
    form.put("braceFrom", "grip-throat");
    form.put("tillerUpper", "190 mm");
    form.put("tillerLower", "186 mm");
    form.put("string", "fine");
    form.put("limbs", "fine");
    form.put("bolts", "fine");
    form.putAll(more);
    return form;
  }

  @Test
  void atReceiving_whatIsToldOfWhatCameBackMeanwhile_isKept() {
    LaidBow bow = fixture.aBowLentTo("Ada Slow");
    long loan = told.newestLoan();
    Visitor slow = Visitor.signedInAs("volunteer");
    slow.get("/receive/" + loan).then().statusCode(200);
    Visitor quick = Visitor.signedInAs("officer");
    quick.get("/receive/" + loan);
    Map<String, Object> all = new HashMap<>();
    rows.texts("SELECT id FROM loan_line WHERE loan_id = ?1", loan)
        .forEach(line -> all.put("back-" + line, "on"));
    quick.post("/receive/" + loan, all).then().statusCode(303);
    all.put("signs", "crack");
    all.put("words", "A line across the lower limb.");
    all.put("once-key", "slow-" + loan);
    slow.post("/receive/" + loan, all).then().statusCode(303);
    slow.post("/receive/" + loan, all).then().statusCode(303);
    slow.get("/loans/" + loan).then().body(containsString("A line across the lower limb"));
    assertEquals(1, told.open(bow));
    assertEquals("TO_BE_CHECKED", fixture.state(bow));
  }

  @Test
  void atReceiving_whatWasDamaged_isToldToo() {
    LaidBow bow = fixture.aBowLentTo("Ada Slower");
    long loan = told.newestLoan();
    Visitor slow = Visitor.signedInAs("volunteer");
    slow.get("/receive/" + loan);
    Visitor quick = Visitor.signedInAs("officer");
    quick.get("/receive/" + loan);
    Map<String, Object> all = new HashMap<>();
    rows.texts("SELECT id FROM loan_line WHERE loan_id = ?1", loan)
        .forEach(line -> all.put("back-" + line, "on"));
    quick.post("/receive/" + loan, all).then().statusCode(303);
    long limbs =
        rows.number(
            "SELECT id FROM loan_line WHERE loan_id = ?1 AND item_id = ?2", loan, bow.limbs().id());
    all.put("damage-" + limbs, "the lower tip is parting");
    slow.post("/receive/" + loan, all).then().statusCode(303);
    slow.get("/loans/" + loan)
        .then()
        .body(containsString(bow.limbs().code() + " damaged: the lower tip is parting"));
    assertEquals(1, told.open(bow));
  }

  @Test
  void atASessionsReturn_whatIsToldOfABowThatCameBackMeanwhile_isKept() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    LoanId loan = rack.lendToSession(rig, "Olwen");
    String page = "/sessions/" + loan.value();
    Visitor slow = Visitor.signedInAs("volunteer");
    slow.get(page).then().statusCode(200);
    Visitor quick = Visitor.signedInAs("officer");
    quick.get(page);
    quick.post(page, Map.of()).then().statusCode(303);
    slow.post(page, Map.of("signs-" + rig.id().value(), "strand")).then().statusCode(303);
    slow.get(page).then().body(containsString("a strand of the string is cut or broken"));
    assertEquals(
        1,
        rows.number(
            """
            SELECT count(DISTINCT r.id) FROM report r JOIN report_part p ON p.report_id = r.id
              JOIN fitting f ON f.item_id = p.item_id AND f.until_at IS NULL
             WHERE f.rig_id = ?1 AND r.answer IS NULL""",
            rig.id()));
  }

  @Test
  void anAnswerToWhatWasAnsweredMeanwhile_isNotDropped_atTheCheckAndOnTheReportsPage() {
    LaidBow bow = fixture.aBowJustReceived();
    long report =
        told.tell(Map.of("rig", bow.body().code(), "signs", List.of("serving"), "part", "string"));
    Visitor slow = Visitor.signedInAs("volunteer");
    slow.get("/check/" + bow.id().value() + "?anew=yes").then().statusCode(200);
    told.answer("officer", report, Map.of("answer", "nothing-there")).statusCode(200);
    long checks = rows.number("SELECT count(*) FROM bow_check WHERE rig_id = ?1", bow.id());
    String words = "Two strands are cut through under the serving.";
    slow.post(
            "/check/" + bow.id().value(),
            form(
                Map.of(
                    "report-" + report, "stop",
                    "report-" + report + "-part", "string",
                    "report-" + report + "-words", words)))
        .then()
        .statusCode(422)
        .body(containsString("is not kept"), containsString(words));
    assertEquals(checks, rows.number("SELECT count(*) FROM bow_check WHERE rig_id = ?1", bow.id()));
    slow.get("/reports/" + report);
    slow.post(
            "/reports/" + report + "/answer",
            Map.of("answer", "stop", "part", "string", "words", words))
        .then()
        .body(containsString("Yours is not kept"), containsString(words));
  }

  @Test
  void atReceiving_ofThingsWithoutABow_itIsKeptToo() {
    LaidBow bow = fixture.aBowLentTo("Ada Slower");
    long loan = told.newestLoan();
    rows.change("UPDATE loan_line SET rig_id = NULL WHERE loan_id = ?1", loan);
    Map<String, Object> all = new HashMap<>();
    rows.texts("SELECT id FROM loan_line WHERE loan_id = ?1", loan)
        .forEach(line -> all.put("back-" + line, "on"));
    Visitor quick = Visitor.signedInAs("officer");
    quick.get("/receive/" + loan);
    quick.post("/receive/" + loan, all).then().statusCode(303);
    Visitor slow = Visitor.signedInAs("volunteer");
    slow.get("/receive/" + loan);
    all.put("signs", "crack");
    slow.post("/receive/" + loan, all).then().statusCode(303);
    assertTrue(told.open(bow) >= 1, "told of each thing");
  }

  @Test
  void aSecondPressOfACheckThatAnswers_getsTheFirstOnesResult() {
    LaidBow bow = fixture.aBowJustReceived();
    long report =
        told.tell(Map.of("rig", bow.body().code(), "signs", List.of("serving"), "part", "string"));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/check/" + bow.id().value() + "?anew=yes");
    Map<String, Object> form =
        form(Map.of("report-" + report, "nothing-there", "once-key", "twice-" + report));
    String first =
        volunteer
            .post("/check/" + bow.id().value(), form)
            .then()
            .statusCode(303)
            .extract()
            .header("Location");
    volunteer
        .post("/check/" + bow.id().value(), form)
        .then()
        .statusCode(303)
        .header("Location", equalTo(first));
    assertEquals(0, told.open(bow));
  }

  @Test
  void aProgramMaySayThatItsWordsOnlyReadSo() {
    LaidBow bow = fixture.aBowJustReceived();
    Map<String, Object> note =
        Map.of(
            "words",
            Map.of("limbs", "It snapped against the rack."),
            "answers",
            Map.of("string", "fine", "limbs", "note", "bolts", "fine"));
    check(bow, note).then().statusCode(422).body("errors.field", hasItem("limbsWords"));
    Map<String, Object> notSo = new HashMap<>(note);
    notSo.put("notSo", true);
    check(bow, notSo).then().statusCode(201);
  }

  private static Response check(LaidBow bow, Map<String, Object> more) {
    Map<String, Object> body = new HashMap<>();
    body.put("rig", bow.body().code());
    body.put("allAsListed", true);
    body.put("brace", "216 mm");
    body.put("braceFrom", "grip-throat");
    body.put("tillerUpper", "190 mm");
    body.put("tillerLower", "186 mm");
    body.putAll(more);
    return sending("volunteer").body(body).post("/api/checks");
  }

  @Test
  void whoTellsOfAFall_andMayNotAnswerIt_savesItAllTheSame() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    fixture.mayTurnBolts("volunteer", false);
    volunteer.get("/check/" + bow.id().value() + "?anew=yes");
    volunteer
        .post(
            "/check/" + bow.id().value(),
            form(
                Map.of(
                    "dryLooseOrFall", "on",
                    "report-new", "nothing-there",
                    "report-new-words", "Knocked over on the grass only.")))
        .then()
        .statusCode(303);
    assertEquals(1, told.open(bow), "it stands until the permit holder answers");
    assertEquals("WITHDRAWN", fixture.state(bow));
  }

  @Test
  void aNoteThatReadsLikeADanger_isAskedAbout_once() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/check/" + bow.id().value() + "?anew=yes");
    Map<String, Object> note =
        form(Map.of("limbs", "note", "limbsWords", "small crack at the upper tip"));
    volunteer
        .post("/check/" + bow.id().value(), note)
        .then()
        .statusCode(422)
        .body(containsString("You wrote “crack”"), containsString("it only reads so"));
    note.put("notSo", "on");
    volunteer.post("/check/" + bow.id().value(), note).then().statusCode(303);
  }

  @Test
  void aStopWithoutItsWords_isAskedForThem_andForNoReadings() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/check/" + bow.id().value() + "?anew=yes");
    volunteer
        .post("/check/" + bow.id().value(), Map.of("allAsListed", "on", "limbs", "stop"))
        .then()
        .statusCode(422)
        .body(containsString("What did you see?"), not(containsString("Measure the brace height")));
  }

  @Test
  void aFitCheckOfABowThatStaysIn_isHeadedByWhatKeepsItIn() {
    LaidBow bow = fixture.aBowJustReceived();
    rows.change(
        """
        INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause)
        VALUES (?1, 'LIMB_INSPECTION', ?2, 1, 'It fell over.', 1, 'ASKED')""",
        bow.limbs().id(),
        "2026-01-20T20:00:00.000Z");
    told.check(bow, Map.of()).statusCode(201).body("verdict.kind", equalTo("fit"));
    long check = rows.number("SELECT max(id) FROM bow_check WHERE rig_id = ?1", bow.id());
    Visitor.signedInAs("volunteer")
        .get("/check/" + bow.id().value() + "/" + check)
        .then()
        .body(
            containsString("Readings fine; stays in: "),
            not(containsString("Fit to issue")),
            not(containsString("Put back: ready")));
  }
}
