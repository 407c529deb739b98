package club.ascham.report;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import club.ascham.check.CheckBench;
import club.ascham.check.CheckBench.Bow;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A report stands until someone answers it. */
@QuarkusTest
class ReportStandsTest {
  private static final String CRACK = "a crack, or a line that may be one";

  @Inject CheckBench bench;
  @Inject Concerns concerns;
  @Inject Rows rows;
  @Inject ClubTime time;

  @BeforeEach
  void theOfficerHoldsThePermit_andTheVolunteerDoesNot() {
    bench.mayTurnBolts("officer", true);
    bench.mayTurnBolts("volunteer", false);
  }

  @AfterEach
  void asItWas() {
    bench.mayTurnBolts("volunteer", false);
  }

  @Test
  void aCrackToldAtReceiving_standsAfterTwoChecks_wherever_thatBowIsShown() {
    Bow bow = bench.lent("Ida Quill");
    long loan = bench.number("SELECT max(id) FROM loan");
    api("volunteer")
        .body(
            Map.of(
                "loanId", loan, "signs", List.of("crack"), "part", "limbs", "words", "by the tip"))
        .post("/api/receipts")
        .then()
        .statusCode(201);

    check(bow, Map.of()).statusCode(201).body("verdict.kind", equalTo("adjust"));
    check(bow, Map.of())
        .statusCode(201)
        .body("verdict.kind", equalTo("adjust"))
        .body("verdict.reasons[0]", containsString(CRACK))
        .body("verdict.steps.key", hasItem("answer-told"))
        .body("verdict.steps.key", not(hasItem("string-on")));

    assertEquals(1, open(bow));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String check = "/check/" + bow.rig().value();
    long last = bench.number("SELECT max(id) FROM bow_check WHERE rig_id = ?1", bow.rig());
    for (String page :
        List.of("/check", check + "?anew=yes", check + "/" + last, "/loans/" + loan, "/reports")) {
      volunteer
          .get(page)
          .then()
          .statusCode(200)
          .body(containsString(CRACK))
          .body(containsString("“by the tip”"));
    }
    volunteer
        .get(check + "/" + last)
        .then()
        .body(containsString("Answer what was told first"))
        .body(not(containsString("measure again")))
        .body(not(containsString("Put back: ready")));
  }

  @Test
  void nothingIsPutBack_whileSomethingToldOfIt_isOpen() {
    Bow bow = bench.received();
    int fit = check(bow, Map.of()).body("verdict.kind", equalTo("fit")).extract().path("id");
    long report = tell(Map.of("rig", bow.body().code(), "signs", List.of("serving")));

    api("volunteer")
        .body("{}")
        .post("/api/checks/" + fit + "/release")
        .then()
        .statusCode(409)
        .body("detail", containsString("the string is furred"));
    DatabaseRefusal refusal =
        assertThrows(
            DatabaseRefusal.class,
            () ->
                rows.change(
                    "UPDATE bow_check SET released_at = ?2, released_by = 1 WHERE id = ?1",
                    fit,
                    time.now()));
    assertEquals("released-bow-has-an-open-report", refusal.rule());

    answer("volunteer", report, Map.of("answer", "nothing-there")).statusCode(200);
    api("volunteer").body("{}").post("/api/checks/" + fit + "/release").then().statusCode(200);
    assertEquals("READY", bench.state(bow));
  }

  @Test
  void whatIsAnsweredAtACheck_isNoLongerOpen_andTheBowIsFit() {
    Bow bow = bench.received();
    long report = tell(Map.of("rig", bow.body().code(), "signs", List.of("came-back-strung")));
    long other =
        tell(Map.of("rig", bow.body().code(), "signs", List.of("serving"), "part", "string"));

    check(bow, Map.of("reports", Map.of("" + report, Map.of("answer", "nothing-there"))))
        .body("verdict.kind", equalTo("adjust"));
    assertEquals(1, open(bow), "what was not answered stays open");
    check(
            bow,
            Map.of(
                "reports",
                Map.of(
                    "" + other,
                    Map.of(
                        "answer",
                        "watch",
                        "words",
                        "one strand rough",
                        "until",
                        time.today().plusDays(30).toString()))))
        .body("verdict.kind", equalTo("fit"));
    assertEquals(0, open(bow));
    assertEquals(true, concerns.of(bow.rig()).has(Matter.WATCHED));
    api("committee")
        .get("/api/reports/" + other)
        .then()
        .body("open", equalTo(false))
        .body("answer.answer", equalTo("watch"))
        .body("answer.by", equalTo("volunteer"))
        .body("answer.check", equalTo((int) bench.number("SELECT max(id) FROM bow_check")));
  }

  @Test
  void aPartThatIsStopped_isWithdrawn_withTheReportsWords_andTheReportIsClosed() {
    Bow bow = bench.received();
    long report =
        tell(
            Map.of(
                "rig",
                bow.body().code(),
                "signs",
                List.of("crack"),
                "words",
                "by the tip",
                "part",
                "limbs"));
    bench.mayTurnBolts("volunteer", true);
    check(
            bow,
            Map.of("reports", Map.of("" + report, Map.of("answer", "stop", "words", "it opens"))))
        .body("verdict.kind", equalTo("withdraw"));
    assertEquals("WITHDRAWN", bench.state(bow));
    assertEquals(0, open(bow));
    assertEquals(
        "Reported: " + CRACK + "; “by the tip”. Seen: it opens",
        rows.texts(
                "SELECT why FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL",
                bow.limbs().id())
            .get(0));
    DatabaseRefusal refusal =
        assertThrows(
            DatabaseRefusal.class,
            () ->
                rows.change(
                    "UPDATE report SET answer = NULL, answered_at = NULL, answered_by = NULL WHERE"
                        + " id = ?1",
                    report));
    assertEquals("report-is-answered", refusal.rule());
  }

  @Test
  void aDangerousOne_isForThePermitHolder_atEachDoor_andTheCheckStillSaves() {
    Bow bow = bench.received();
    long report =
        tell(Map.of("rig", bow.body().code(), "signs", List.of("creak"), "part", "limbs"));
    Map<String, Object> nothing = Map.of("answer", "nothing-there", "words", "sound");

    answer("volunteer", report, nothing).statusCode(403);
    answer("committee", report, nothing).statusCode(403);
    check(bow, Map.of("reports", Map.of("" + report, nothing)))
        .statusCode(422)
        .body("errors[0].field", equalTo("report-" + report));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer
        .get("/reports/" + report)
        .then()
        .body(containsString("For the permit holder"))
        .body(not(containsString("name=\"answer\"")));
    volunteer
        .get("/check/" + bow.rig().value())
        .then()
        .body(containsString("For the permit holder"))
        .body(not(containsString("name=\"report-" + report + "\"")));
    volunteer.get("/upkeep/" + bow.limbs().code() + "/limb-inspection");
    volunteer
        .post(
            "/upkeep/" + bow.limbs().code() + "/limb-inspection",
            inspected(bow, Map.of("report-" + report, "nothing-there", "report-" + report + "-words", "sound")))
        .then()
        .statusCode(422)
        .body(containsString("holds the club"));
    check(bow, Map.of()).statusCode(201).body("verdict.kind", equalTo("adjust"));
    assertEquals(1, open(bow));

    answer("officer", report, Map.of("answer", "nothing-there")).statusCode(422);
    answer("officer", report, nothing).statusCode(200).body("open", equalTo(false));
    answer("officer", report, nothing).statusCode(409);
    assertEquals("TO_BE_CHECKED", bench.state(bow), "the inspection is still to be done");
  }

  @Test
  void anInspection_answersToo_andThenTheBowIsFreeAgain() {
    Bow bow = bench.ready();
    long report =
        tell(Map.of("rig", bow.body().code(), "signs", List.of("creak"), "part", "limbs"));
    assertEquals("TO_BE_CHECKED", bench.state(bow));
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/upkeep/" + bow.limbs().code() + "/limb-inspection";
    officer.get(page).then().body(containsString("name=\"report-" + report + "\""));
    officer
        .post(
            page,
            inspected(
                bow,
                Map.of(
                    "report-" + report, "nothing-there", "report-" + report + "-words", "sound")))
        .then()
        .statusCode(303);
    assertEquals(0, open(bow));
    assertEquals("READY", bench.state(bow), "looked at, inspected, and nothing was received");
    officer
        .get("/reports/" + report)
        .then()
        .body(containsString("an inspection"))
        .body(containsString("sound"));
  }

  @Test
  void aCorrection_doesNotReopen_andTellsNothingTwice() {
    Bow bow = bench.received();
    check(bow, Map.of("cameBackStrung", true)).body("verdict.kind", equalTo("adjust"));
    long report = rows.number("SELECT max(id) FROM report WHERE rig_id = ?1", bow.rig());
    answer("volunteer", report, Map.of("answer", "nothing-there")).statusCode(200);
    check(
            bow,
            Map.of(
                "cameBackStrung",
                true,
                "corrects",
                bench.number("SELECT max(id) FROM bow_check"),
                "correctionWhy",
                "brace was misread"))
        .body("verdict.kind", equalTo("fit"));
    assertEquals(0, open(bow));
    assertEquals(1, rows.number("SELECT count(*) FROM report WHERE rig_id = ?1", bow.rig()));
  }

  @Test
  void toldAndLookedAt_atTheSameCheck_isOneBreath() {
    Bow bow = bench.received();
    check(
            bow,
            Map.of("cameBackStrung", true, "reports", Map.of("new", Map.of("answer", "nothing-there"))))
        .body("verdict.kind", equalTo("fit"))
        .body("verdict.notes[0]", containsString("came back strung"));
    assertEquals(0, open(bow));
    assertEquals(1, rows.number("SELECT count(*) FROM report WHERE rig_id = ?1", bow.rig()));
  }

  @Test
  void ownWordsOnlyPrompt_onceAtTheField_andNothingTypedIsLost() {
    Bow bow = bench.ready();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/reports/new?rig=" + bow.rig().value());
    Map<String, Object> form = new HashMap<>();
    form.put("rig", bow.rig().value());
    form.put("signs", "rest");
    form.put("words", "I heard a crack <b>there</b>");
    volunteer
        .post("/reports/new", form)
        .then()
        .statusCode(422)
        .body(containsString("You wrote “crack”: was one seen or heard?"))
        .body(containsString("I heard a crack &lt;b&gt;there&lt;/b&gt;"))
        .body(containsString("value=\"rest\" checked"))
        .body(containsString("name=\"notSo\""));
    assertEquals(0, open(bow));
    form.put("notSo", "on");
    volunteer.post("/reports/new", form).then().statusCode(303);
    assertEquals("READY", bench.state(bow), "no sign of danger was ticked: words decide nothing");
    assertEquals(1, open(bow));
  }

  @Test
  void atReceivingToo_andTheReceiptWaits() {
    bench.lent("Ida Quill");
    long loan = bench.number("SELECT max(id) FROM loan");
    api("volunteer")
        .body(Map.of("loanId", loan, "words", "my brother dry fired it"))
        .post("/api/receipts")
        .then()
        .statusCode(422)
        .body("errors[0].field", equalTo("words"))
        .body("errors[0].suggestion", equalTo("loosed-without-arrow"));
    assertEquals(0, rows.number("SELECT count(*) FROM receipt WHERE loan_id = ?1", loan));
    api("volunteer")
        .body(Map.of("loanId", loan, "words", "my brother dry fired it", "notSo", true))
        .post("/api/receipts")
        .then()
        .statusCode(201);
    assertEquals(0, rows.number("SELECT count(*) FROM report WHERE loan_id = ?1", loan));
  }

  @Test
  void aLookAlone_putsNoBowBack_ofWhichSomethingIsOpen() {
    Bow bow = bench.ready();
    int session =
        api("volunteer")
            .body(Map.of("leader", "Ottoline", "rigIds", List.of(bow.rig().value())))
            .post("/api/sessions")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    tell(Map.of("loan", session, "signs", List.of("serving"), "part", bow.string().code()));
    api("volunteer")
        .body(Map.of("rigs", List.of(Map.of("rigId", bow.rig().value()))))
        .post("/api/sessions/" + session + "/return")
        .then()
        .statusCode(200);
    assertEquals("TO_BE_CHECKED", bench.state(bow));
    assertEquals(1, open(bow));
  }

  @Test
  void aThingBesideABow_isTheOnlyPart_andStaysInAsWell() {
    String stringer =
        rows.texts(
                """
                SELECT i.code FROM item i WHERE i.kind = 'STRINGER' AND i.retired_on IS NULL
                   AND NOT EXISTS (SELECT 1 FROM loan_line x WHERE x.item_id = i.id AND x.back_at IS NULL)
                   AND NOT EXISTS (SELECT 1 FROM item_blocked b WHERE b.item_id = i.id) LIMIT 1""")
            .get(0);
    long report = tell(Map.of("item", stringer, "signs", List.of("bang")));
    assertEquals(1, rows.number("SELECT part_known FROM report WHERE id = ?1", report));
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM item_blocked WHERE item_id = (SELECT id FROM item WHERE code ="
                + " ?1)",
            stringer));
    Visitor.signedInAs("officer").get("/reports/" + report).then().statusCode(200);
    answer("officer", report, Map.of("answer", "nothing-there", "words", "sound")).statusCode(200);
  }

  @Test
  void aSecondPress_isLedToTheFirst_andOthersAreToldWhatIsWrong() {
    Bow bow = bench.ready();
    Map<String, Object> body =
        Map.of(
            "rig",
            bow.body().code(),
            "signs",
            List.of("rest"),
            "onceKey",
            "told-" + System.nanoTime());
    assertEquals(tell(body), tell(body));
    assertEquals(1, open(bow));
    for (Map<String, Object> wrong :
        List.<Map<String, Object>>of(
            Map.of("signs", List.of("rest")),
            Map.of("rig", "999999", "signs", List.of("rest")),
            Map.of("loan", 999999, "signs", List.of("rest")),
            Map.of("item", "nonsense", "signs", List.of("rest")),
            Map.of("rig", bow.body().code()),
            Map.of("rig", bow.body().code(), "signs", List.of("rest"), "on", "2099-01-01"),
            Map.of("rig", bow.body().code(), "signs", List.of("rest"), "on", "2020-01-01"))) {
      api("volunteer")
          .body(wrong)
          .post("/api/reports")
          .then()
          .statusCode(422)
          .contentType("application/problem+json");
    }
    assertEquals(1, open(bow));
    api("committee").body(body).post("/api/reports").then().statusCode(403);
    api("committee").get("/api/reports?open=true&size=1").then().body("items.size()", equalTo(1));
    Visitor.signedInAs("volunteer").get("/reports/new").then().statusCode(404);
  }

  @Test
  void aDangerousReportFromAFile_keepsItIn_asOneThatWasTold() {
    assertEquals(
        1,
        rows.number(
            """
            SELECT count(*) FROM report r JOIN report_part p ON p.report_id = r.id JOIN item_blocked b ON b.item_id = p.item_id
             WHERE r.dangerous = 1 AND r.answer IS NULL AND r.id = 1"""),
        "the demo club's own came from its files");
  }

  private ValidatableResponse check(Bow bow, Map<String, Object> more) {
    Map<String, Object> body = new HashMap<>(more);
    body.put("rig", bow.body().code());
    body.put("allAsListed", true);
    body.put("brace", "216 mm");
    body.put("braceFrom", "grip-throat");
    body.put("tillerUpper", "190 mm");
    body.put("tillerLower", "186 mm");
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    return api("volunteer").body(body).post("/api/checks").then();
  }

  private Map<String, Object> inspected(Bow bow, Map<String, Object> more) {
    Map<String, Object> form = new HashMap<>(more);
    List<String> looks =
        api("volunteer")
            .get("/api/inspections/lists/" + bow.limbs().code() + "/limb-inspection")
            .then()
            .extract()
            .path("looks.key");
    looks.forEach(look -> form.put(look, "fine"));
    return form;
  }

  private long tell(Map<String, Object> body) {
    int id =
        api("volunteer")
            .body(body)
            .post("/api/reports")
            .then()
            .statusCode(201)
            .body("open", equalTo(true))
            .extract()
            .path("id");
    return id;
  }

  private ValidatableResponse answer(
      String who, long report, Map<String, Object> body) {
    return api(who).body(body).post("/api/reports/" + report + "/answer").then();
  }

  private long open(Bow bow) {
    return rows.number(
        """
        SELECT count(DISTINCT r.id) FROM report r JOIN report_part p ON p.report_id = r.id
          JOIN fitting f ON f.item_id = p.item_id AND f.until_at IS NULL
         WHERE f.rig_id = ?1 AND r.answer IS NULL""",
        bow.rig());
  }

  private static RequestSpecification api(String who) {
    return given().auth().preemptive().basic(who, "demo-fleet").contentType("application/json");
  }
}
