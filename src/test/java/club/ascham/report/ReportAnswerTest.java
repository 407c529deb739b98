package club.ascham.report;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Who may answer a report, where, and what follows. */
@QuarkusTest
class ReportAnswerTest {
  private static final String CRACK = "a crack, or a line that may be one";

  @Inject ClubFixture fixture;
  @Inject ReportBench told;
  @Inject Concerns concerns;
  @Inject Rows rows;
  @Inject ClubTime time;

  @BeforeEach
  void theOfficerHoldsThePermit_andTheVolunteerDoesNot() {
    fixture.mayTurnBolts("officer", true);
    fixture.mayTurnBolts("volunteer", false);
  }

  @AfterEach
  void asItWas() {
    fixture.mayTurnBolts("volunteer", false);
  }

  @Test
  void whatIsAnsweredAtACheck_isNoLongerOpen_andTheBowIsFit() {
    LaidBow bow = fixture.aBowJustReceived();
    long report = told.tell(Map.of("rig", bow.body().code(), "signs", List.of("came-back-strung")));
    long other =
        told.tell(Map.of("rig", bow.body().code(), "signs", List.of("serving"), "part", "string"));

    told.check(bow, Map.of("reports", Map.of("" + report, Map.of("answer", "nothing-there"))))
        .body("verdict.kind", equalTo("adjust"));
    assertEquals(1, told.open(bow), "what was not answered stays open");
    told.check(
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
    assertEquals(0, told.open(bow));
    assertEquals(true, concerns.of(bow.id()).has(Matter.WATCHED));
    sending("committee")
        .get("/api/reports/" + other)
        .then()
        .body("open", equalTo(false))
        .body("answer.answer", equalTo("watch"))
        .body("answer.by", equalTo("volunteer"))
        .body("answer.check", equalTo((int) fixture.number("SELECT max(id) FROM bow_check")));
  }

  @Test
  void aPartThatIsStopped_isWithdrawn_withTheReportsWords_andTheReportIsClosed() {
    LaidBow bow = fixture.aBowJustReceived();
    long report =
        told.tell(
            Map.of(
                "rig",
                bow.body().code(),
                "signs",
                List.of("crack"),
                "words",
                "by the tip",
                "part",
                "limbs"));
    fixture.mayTurnBolts("volunteer", true);
    told.check(
            bow,
            Map.of(
                "reports",
                Map.of(
                    "" + report, Map.of("answer", "stop", "words", "It opens when it is bent."))))
        .body("verdict.kind", equalTo("withdraw"));
    assertEquals("WITHDRAWN", fixture.state(bow));
    assertEquals(0, told.open(bow));
    assertEquals(
        "Reported: " + CRACK + "; “by the tip”. Seen: It opens when it is bent.",
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
  void whatIsOutStill_wasLookedAtByNobody() {
    LaidBow bow = fixture.aBowLentTo("Orla Quill");
    long report =
        told.tell(Map.of("rig", bow.body().code(), "signs", List.of("crack"), "part", "limbs"));
    Map<String, Object> nothing =
        Map.of("answer", "nothing-there", "words", "Both limbs looked at: sound.");
    told.answer("officer", report, nothing).statusCode(409);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/reports/" + report);
    officer
        .post(
            "/reports/" + report + "/answer",
            Map.of("answer", "nothing-there", "words", "Looked at both limbs."))
        .then()
        .body(containsString("receive it first"));
    assertEquals(1, told.open(bow));
    told.answer(
            "officer",
            report,
            Map.of("answer", "stop", "part", "limbs", "words", "He sent a picture of the crack."))
        .statusCode(200);
    assertEquals("WITHDRAWN", fixture.state(bow));
  }

  @Test
  void aDangerousOne_isForThePermitHolder_atEachDoor_andTheCheckStillSaves() {
    LaidBow bow = fixture.aBowJustReceived();
    long report =
        told.tell(Map.of("rig", bow.body().code(), "signs", List.of("creak"), "part", "limbs"));
    Map<String, Object> nothing =
        Map.of("answer", "nothing-there", "words", "Both limbs looked at: sound.");

    told.answer("volunteer", report, nothing).statusCode(403);
    told.answer("committee", report, nothing).statusCode(403);
    told.check(bow, Map.of("reports", Map.of("" + report, nothing)))
        .statusCode(422)
        .body("errors[0].field", equalTo("report-" + report));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer
        .get("/reports/" + report)
        .then()
        .body(containsString("For the permit holder"))
        .body(not(containsString("name=\"answer\"")));
    volunteer
        .get("/check/" + bow.id().value())
        .then()
        .body(containsString("For the permit holder"))
        .body(not(containsString("name=\"report-" + report + "\"")));
    volunteer.get("/upkeep/" + bow.limbs().code() + "/limb-inspection");
    volunteer
        .post(
            "/upkeep/" + bow.limbs().code() + "/limb-inspection",
            told.inspected(
                bow,
                Map.of(
                    "report-" + report,
                    "nothing-there",
                    "report-" + report + "-words",
                    "Both limbs looked at: sound.")))
        .then()
        .statusCode(422)
        .body(containsString("holds the club"));
    sending("volunteer")
        .body(Map.of("rig", bow.body().code(), "allAsListed", true))
        .post("/api/checks")
        .then()
        .statusCode(201)
        .body("verdict.kind", equalTo("adjust"));
    told.check(bow, Map.of()).statusCode(201).body("verdict.kind", equalTo("adjust"));
    assertEquals(1, told.open(bow));

    told.answer("officer", report, Map.of("answer", "nothing-there")).statusCode(422);
    told.answer("officer", report, nothing).statusCode(200).body("open", equalTo(false));
    told.answer("officer", report, nothing).statusCode(409);
    assertEquals("TO_BE_CHECKED", fixture.state(bow), "the inspection is still to be done");
  }

  @Test
  void anInspection_answersToo_andThenTheBowIsFreeAgain() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    long report =
        told.tell(Map.of("rig", bow.body().code(), "signs", List.of("creak"), "part", "limbs"));
    assertEquals("TO_BE_CHECKED", fixture.state(bow));
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/upkeep/" + bow.limbs().code() + "/limb-inspection";
    officer.get(page).then().body(containsString("name=\"report-" + report + "\""));
    officer
        .post(
            page,
            told.inspected(
                bow,
                Map.of(
                    "report-" + report,
                    "nothing-there",
                    "report-" + report + "-words",
                    "Both limbs looked at: sound.")))
        .then()
        .statusCode(303);
    assertEquals(0, told.open(bow));
    assertEquals("READY", fixture.state(bow), "looked at, inspected, and nothing was received");
    officer
        .get("/reports/" + report)
        .then()
        .body(containsString("an inspection"))
        .body(containsString("sound"));
  }

  @Test
  void aCorrection_doesNotReopen_andTellsNothingTwice() {
    LaidBow bow = fixture.aBowJustReceived();
    told.check(bow, Map.of("cameBackStrung", true)).body("verdict.kind", equalTo("adjust"));
    long report = rows.number("SELECT max(id) FROM report WHERE rig_id = ?1", bow.id());
    told.answer("volunteer", report, Map.of("answer", "nothing-there")).statusCode(200);
    told.check(
            bow,
            Map.of(
                "cameBackStrung",
                true,
                "corrects",
                fixture.number("SELECT max(id) FROM bow_check"),
                "correctionWhy",
                "brace was misread"))
        .body("verdict.kind", equalTo("fit"));
    assertEquals(0, told.open(bow));
    assertEquals(1, rows.number("SELECT count(*) FROM report WHERE rig_id = ?1", bow.id()));
  }

  @Test
  void toldAndLookedAt_atTheSameCheck_isOneBreath() {
    LaidBow bow = fixture.aBowJustReceived();
    told.check(
            bow,
            Map.of(
                "cameBackStrung",
                true,
                "reports",
                Map.of("new", Map.of("answer", "nothing-there"))))
        .body("verdict.kind", equalTo("fit"))
        .body("verdict.notes[0]", containsString("came back strung"));
    assertEquals(0, told.open(bow));
    assertEquals(1, rows.number("SELECT count(*) FROM report WHERE rig_id = ?1", bow.id()));
  }
}
