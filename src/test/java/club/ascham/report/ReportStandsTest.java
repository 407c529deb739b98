package club.ascham.report;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
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

  @Inject ClubFixture fixture;
  @Inject ReportBench told;
  @Inject Rows rows;
  @Inject ClubTime time;

  private long loansBefore;

  @BeforeEach
  void theOfficerHoldsThePermit_andTheVolunteerDoesNot() {
    loansBefore = told.newestLoan();
    fixture.mayTurnBolts("officer", true);
    fixture.mayTurnBolts("volunteer", false);
  }

  @AfterEach
  void asItWas() {
    told.takeBackAllSince(loansBefore);
    fixture.mayTurnBolts("volunteer", false);
  }

  @Test
  void aCrackToldAtReceiving_standsAfterTwoChecks_wherever_thatBowIsShown() {
    LaidBow bow = fixture.aBowLentTo("Ida Fenn");
    long loan = fixture.number("SELECT max(id) FROM loan");
    sending("volunteer")
        .body(
            Map.of(
                "loanId", loan, "signs", List.of("crack"), "part", "limbs", "words", "by the tip"))
        .post("/api/receipts")
        .then()
        .statusCode(201);

    told.check(bow, Map.of()).statusCode(201).body("verdict.kind", equalTo("adjust"));
    told.check(bow, Map.of())
        .statusCode(201)
        .body("verdict.kind", equalTo("adjust"))
        .body("verdict.reasons[0]", containsString(CRACK))
        .body("verdict.steps.key", hasItem("answer-told"))
        .body("verdict.steps.key", not(hasItem("string-on")));

    assertEquals(1, told.open(bow));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String check = "/check/" + bow.id().value();
    long last = fixture.number("SELECT max(id) FROM bow_check WHERE rig_id = ?1", bow.id());
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
    String line = volunteer.get("/check").asString();
    line = line.substring(line.indexOf("<li><span class=\"what\"><a href=\"" + check));
    line = line.substring(0, line.indexOf("</li>"));
    assertFalse(line.contains("adjust first"), line);
  }

  @Test
  void nothingIsPutBack_whileSomethingToldOfIt_isOpen() {
    LaidBow bow = fixture.aBowJustReceived();
    int fit = told.check(bow, Map.of()).body("verdict.kind", equalTo("fit")).extract().path("id");
    long report = told.tell(Map.of("rig", bow.body().code(), "signs", List.of("serving")));

    sending("volunteer")
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

    told.answer("volunteer", report, Map.of("answer", "nothing-there")).statusCode(200);
    sending("volunteer").body("{}").post("/api/checks/" + fit + "/release").then().statusCode(200);
    assertEquals("READY", fixture.state(bow));
  }

  @Test
  void ownWordsOnlyPrompt_onceAtTheField_andNothingTypedIsLost() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/reports/new?rig=" + bow.id().value());
    Map<String, Object> form = new HashMap<>();
    form.put("rig", bow.id().value());
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
    assertEquals(0, told.open(bow));
    form.put("notSo", "on");
    volunteer.post("/reports/new", form).then().statusCode(303);
    assertEquals("READY", fixture.state(bow), "no sign of danger was ticked: words decide nothing");
    assertEquals(1, told.open(bow));
  }

  @Test
  void atReceivingToo_andTheReceiptWaits() {
    fixture.aBowLentTo("Ida Fenn");
    long loan = fixture.number("SELECT max(id) FROM loan");
    sending("volunteer")
        .body(Map.of("loanId", loan, "words", "my brother dry fired it"))
        .post("/api/receipts")
        .then()
        .statusCode(422)
        .body("errors[0].field", equalTo("words"))
        .body("errors[0].suggestion", equalTo("loosed-without-arrow"));
    assertEquals(0, rows.number("SELECT count(*) FROM receipt WHERE loan_id = ?1", loan));
    sending("volunteer")
        .body(Map.of("loanId", loan, "words", "my brother dry fired it", "notSo", true))
        .post("/api/receipts")
        .then()
        .statusCode(201);
    assertEquals(
        List.of("SOMETHING_ELSE"),
        rows.texts(
            "SELECT s.sign FROM report_sign s JOIN report r ON r.id = s.report_id WHERE r.loan_id = ?1",
            loan),
        "the words are told all the same");
  }

  @Test
  void aLookAlone_putsNoBowBack_ofWhichSomethingIsOpen() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    int session =
        sending("volunteer")
            .body(Map.of("leader", "Ottoline", "rigIds", List.of(bow.id().value())))
            .post("/api/sessions")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    told.tell(Map.of("loan", session, "signs", List.of("serving"), "part", bow.string().code()));
    sending("volunteer")
        .body(Map.of("rigs", List.of(Map.of("rigId", bow.id().value()))))
        .post("/api/sessions/" + session + "/return")
        .then()
        .statusCode(200);
    assertEquals("TO_BE_CHECKED", fixture.state(bow));
    assertEquals(1, told.open(bow));
  }

  @Test
  void toldOfABowThatIsOut_itStandsWithItsLoan() {
    LaidBow bow = fixture.aBowLentTo("Ida Fenn");
    int loan = (int) fixture.number("SELECT max(id) FROM loan");
    long report = told.tell(Map.of("rig", bow.body().code(), "signs", List.of("creak")));
    sending("officer")
        .get("/api/reports/" + report)
        .then()
        .body("loan", equalTo(loan))
        .body("toldAt", equalTo("bow"));
    Visitor.signedInAs("officer")
        .get("/loans/" + loan)
        .then()
        .body(containsString("/reports/" + report));
    assertEquals("ON_LOAN", fixture.state(bow));
  }

  @Test
  void aThingBesideABow_isTheOnlyPart_andStaysInAsWell() {
    String stringer = told.stringer();
    long report = told.tell(Map.of("item", stringer, "signs", List.of("bang")));
    assertEquals(1, rows.number("SELECT part_known FROM report WHERE id = ?1", report));
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM item_blocked WHERE item_id = (SELECT id FROM item WHERE code ="
                + " ?1)",
            stringer.replace("-", "")));
    Visitor.signedInAs("officer").get("/reports/" + report).then().statusCode(200);
    told.answer(
            "officer",
            report,
            Map.of("answer", "nothing-there", "words", "Both limbs looked at: sound."))
        .statusCode(200);
  }

  @Test
  void aSecondPress_isLedToTheFirst_andOthersAreToldWhatIsWrong() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    Map<String, Object> body =
        Map.of(
            "rig",
            bow.body().code(),
            "signs",
            List.of("rest"),
            "onceKey",
            "told-" + System.nanoTime());
    assertEquals(told.tell(body), told.tell(body));
    assertEquals(1, told.open(bow));
    for (Map<String, Object> wrong :
        List.<Map<String, Object>>of(
            Map.of("signs", List.of("rest")),
            Map.of("rig", "999999", "signs", List.of("rest")),
            Map.of("loan", 999999, "signs", List.of("rest")),
            Map.of("item", "nonsense", "signs", List.of("rest")),
            Map.of("rig", bow.body().code()),
            Map.of("rig", bow.body().code(), "signs", List.of("rest"), "on", "2099-01-01"),
            Map.of("rig", bow.body().code(), "signs", List.of("rest"), "on", "2020-01-01"))) {
      sending("volunteer")
          .body(wrong)
          .post("/api/reports")
          .then()
          .statusCode(422)
          .contentType("application/problem+json");
    }
    assertEquals(1, told.open(bow));
    sending("committee").body(body).post("/api/reports").then().statusCode(403);
    sending("committee")
        .get("/api/reports?open=true&size=1")
        .then()
        .body("items.size()", equalTo(1));
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
}
