package club.ascham.check;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Rows;
import club.ascham.store.StatementCount;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class CheckPagesTest {
  @Inject ClubFixture fixture;
  @Inject Rows rows;

  /** All as listed, all fine, measured as it was set up. */
  private static Map<String, Object> fine(LaidBow bow) {
    Map<String, Object> form = new HashMap<>();
    form.put("allAsListed", "on");
    form.put("brace", "216 mm");
    form.put("braceFrom", "grip-throat");
    form.put("tillerUpper", "190 mm");
    form.put("tillerLower", "186 mm");
    form.put("string", "fine");
    form.put("limbs", "fine");
    form.put("bolts", "fine");
    return form;
  }

  private static Map<String, Object> with(Map<String, Object> form, String field, Object value) {
    form.put(field, value);
    return form;
  }

  private Response save(Visitor visitor, LaidBow bow, Map<String, Object> form) {
    visitor.get(bow.checkPage() + "?anew=yes");
    return visitor.post(bow.checkPage(), form);
  }

  private String verdict(LaidBow bow) {
    return bow.checkPage() + "/" + fixture.lastCheck(bow);
  }

  @Test
  void aBowLookedAtLongAgo_andBackFromALoan_isNotSaidToBeLookedOver() {
    LaidBow bow = fixture.aBowJustReceived();
    rows.change(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict)
        VALUES (?1, 'LOOK', '2026-01-20T20:00:00.000Z', '2026-01-20T20:00:00.000Z', 1, 1, 'FIT')\
        """,
        bow.id());
    String page = Visitor.signedInAs("volunteer").get("/check").asString();
    String line = page.substring(page.indexOf(bow.body().code()));
    line = line.substring(0, line.indexOf("</li>"));
    assertTrue(!line.contains("looked over"), line);
  }

  @Test
  void aFitBow_isReady_onlyAfterThePersonsOwnPress() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/check").then().body(containsString(bow.body().code()));

    save(volunteer, bow, fine(bow)).then().statusCode(303);
    volunteer
        .get(verdict(bow))
        .then()
        .statusCode(200)
        .body(containsString("Fit to issue"))
        .body(containsString("Put back: ready"));
    assertEquals("TO_BE_CHECKED", fixture.state(bow));

    volunteer.post(verdict(bow) + "/put-back", Map.of()).then().statusCode(303);
    assertEquals("READY", fixture.state(bow));
    volunteer.get("/check").then().body(not(containsString("href=\"" + bow.checkPage() + "\"")));
  }

  @Test
  void aBowWhoseVerdictWaits_opensAtItsVerdict_andIsCheckedAnewOnRequest() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    save(volunteer, bow, fine(bow)).then().statusCode(303);
    volunteer
        .get(bow.checkPage())
        .then()
        .statusCode(303)
        .header("Location", endsWith(verdict(bow)));
    volunteer.get(bow.checkPage() + "?anew=yes").then().statusCode(200);
  }

  @Test
  void braceTooLow_isAdjusted_measuredAgain_andThePairIsKept() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    save(volunteer, bow, CheckForms.braced(fine(bow), 198)).then().statusCode(303);
    long first = fixture.lastCheck(bow);
    volunteer
        .get(verdict(bow))
        .then()
        .body(containsString("Adjust first"))
        .body(containsString("Take the string off with the stringer."))
        .body(containsString("Put in about"));
    assertEquals("TO_BE_CHECKED", fixture.state(bow));

    String second =
        volunteer
            .post(verdict(bow) + "/adjusted", Map.of("twistsAdded", "30"))
            .then()
            .statusCode(303)
            .extract()
            .header("Location");
    volunteer.get(second.substring(second.indexOf("/check"))).then().statusCode(200);
    long adjustment = fixture.number("SELECT max(id) FROM adjustment");
    volunteer
        .post(bow.checkPage(), with(with(fine(bow), "adjustment", adjustment), "limbsSeated", "on"))
        .then()
        .statusCode(303);

    volunteer
        .get(verdict(bow))
        .then()
        .body(containsString("Fit to issue"))
        .body(containsString("twists put in: 30"));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM adjustment WHERE check_id = ?1 AND after_id = ?2 AND twists_added"
                + " = 30",
            first,
            fixture.lastCheck(bow)));
  }

  @Test
  void tillerOff_isForTheWorkshop_whereThePersonHasNoPermit() {
    LaidBow bow = fixture.aBowJustReceived();
    fixture.mayTurnBolts("volunteer", false);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    save(volunteer, bow, with(with(fine(bow), "tillerUpper", "192 mm"), "tillerLower", "184 mm"))
        .then()
        .statusCode(303);
    volunteer.get(verdict(bow)).then().body(containsString("Send to the workshop"));
    volunteer
        .post(verdict(bow) + "/adjusted", Map.of("upperIn", "0.25"))
        .then()
        .statusCode(422)
        .body(containsString("permit"));

    volunteer.post(verdict(bow) + "/workshop", Map.of()).then().statusCode(303);
    assertEquals("IN_THE_WORKSHOP", fixture.state(bow));
  }

  @Test
  void aStop_withdrawsThePart_asksForItsInspection_andBlocksIssue() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    Map<String, Object> form = fine(bow);
    form.remove("brace");
    form.remove("tillerUpper");
    form.remove("tillerLower");
    form.put("limbs", "stop");
    form.put("signs", List.of("limbs-crack-across"));
    save(volunteer, bow, form).then().statusCode(303);

    volunteer
        .get(verdict(bow))
        .then()
        .body(containsString("Withdraw"))
        .body(containsString("A crack across a limb"))
        .body(not(containsString("Put back: ready")));
    assertEquals("WITHDRAWN", fixture.state(bow));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL",
            bow.limbs().id()));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM upkeep_task WHERE item_id = ?1 AND work = 'LIMB_INSPECTION' AND"
                + " blocks = 1",
            bow.limbs().id()));
    DatabaseRefusal refusal =
        assertThrows(
            DatabaseRefusal.class,
            () ->
                rows.change(
                    """
                    INSERT INTO loan_line (loan_id, item_id, rig_id, out_at)
                    VALUES ((SELECT max(id) FROM loan), ?1, ?2, '2026-11-01T10:00:00.000Z')\
                    """,
                    bow.body().id(),
                    bow.id()));
    assertEquals("lent-rig-has-a-withdrawn-part", refusal.rule());
  }

  @Test
  void aDryLooseToldAtTheReceipt_withdrawsStringLimbsAndRiser_howeverFineItLooks() {
    LaidBow bow = fixture.aBowJustReceived(true, false);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/check").then().body(containsString("a dry loose or a fall was reported"));
    save(volunteer, bow, fine(bow)).then().statusCode(303);
    assertEquals("WITHDRAWN", fixture.state(bow));
    assertEquals(
        3,
        fixture.number(
            "SELECT count(*) FROM withdrawal WHERE check_id = ?1", fixture.lastCheck(bow)));
    assertEquals(
        3,
        fixture.number(
            """
            SELECT count(*) FROM upkeep_task WHERE blocks = 1 AND closed_by_record IS NULL
               AND ((item_id = ?1 AND work IN ('BOLT_INSPECTION', 'RISER_INSPECTION'))
                 OR (item_id = ?2 AND work = 'LIMB_INSPECTION'))\
            """,
            bow.body().id(),
            bow.limbs().id()));
  }

  @Test
  void aSlipOfUnit_isAskedBackWithAButton_andNothingIsKept() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    Map<String, Object> millimetres = with(fine(bow), "brace", "8.75");
    millimetres.put("brace-unit", "mm");
    save(volunteer, bow, millimetres)
        .then()
        .statusCode(422)
        .body(containsString("name=\"take-brace\""))
        .body(containsString("8.75 in"))
        .body(containsString("value=\"190 mm\""));
    Map<String, Object> inches = with(fine(bow), "tillerUpper", "190");
    inches.put("tillerUpper-unit", "in");
    save(volunteer, bow, inches)
        .then()
        .statusCode(422)
        .body(containsString("name=\"take-tillerUpper\" value=\"190 mm\""));
    assertEquals(0, fixture.checks(bow));

    inches.put("take-tillerUpper", "190 mm");
    save(volunteer, bow, inches).then().statusCode(303);
    assertEquals(1, fixture.checks(bow));
  }

  @Test
  void anUnreadableLength_saysSoAtItsField_andAScriptTagStaysText() {
    LaidBow bow = fixture.aBowJustReceived();
    save(Visitor.signedInAs("volunteer"), bow, with(fine(bow), "brace", "<script>x</script>"))
        .then()
        .statusCode(422)
        .body(containsString("brace-error"))
        .body(not(containsString("<script>x")));
    assertEquals(0, fixture.checks(bow));
  }

  @Test
  void aMissingAnswer_keepsWhatWasTyped_andKeepsNoCheck() {
    LaidBow bow = fixture.aBowJustReceived();
    Map<String, Object> form = fine(bow);
    form.remove("limbs");
    save(Visitor.signedInAs("volunteer"), bow, form)
        .then()
        .statusCode(422)
        .body(containsString("Look at the limbs and say what you saw"))
        .body(containsString("value=\"216 mm\""))
        .body(containsString("name=\"bolts\" value=\"fine\" checked"));
    assertEquals(0, fixture.checks(bow));
  }

  @Test
  void anEmptyForm_isAskedEverythingAtOnce() {
    LaidBow bow = fixture.aBowJustReceived();
    save(Visitor.signedInAs("volunteer"), bow, new HashMap<>(Map.of("braceFrom", "grip-throat")))
        .then()
        .statusCode(422)
        .body(containsString("Are these parts on it?"))
        .body(containsString("Measure the brace height"))
        .body(containsString("Measure the lower tiller distance"))
        .body(containsString("Look at the limb bolts"));
  }

  @Test
  void aNoteWithoutAWord_isAskedWhat() {
    LaidBow bow = fixture.aBowJustReceived();
    save(Visitor.signedInAs("volunteer"), bow, with(fine(bow), "string", "note"))
        .then()
        .statusCode(422)
        .body(containsString("What did you see?"));
  }

  @Test
  void theSamePressTwice_isOneCheck() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    Map<String, Object> form = with(fine(bow), "once-key", "check-twice-" + bow.id().value());
    String first = save(volunteer, bow, form).then().statusCode(303).extract().header("Location");
    volunteer
        .post(bow.checkPage(), form)
        .then()
        .statusCode(303)
        .header("Location", endsWith(first.substring(first.indexOf("/check"))));
    assertEquals(1, fixture.checks(bow));
  }

  @Test
  void twoVolunteersOnOneBow_theSecondIsTold_andMayAddTheirs() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor one = Visitor.signedInAs("volunteer");
    Visitor other = Visitor.signedInAs("officer");
    save(one, bow, with(fine(bow), "lastCheck", "0")).then().statusCode(303);

    save(other, bow, with(fine(bow), "lastCheck", "0"))
        .then()
        .statusCode(422)
        .body(containsString("volunteer checked this bow while you did: fit to issue"))
        .body(containsString("value=\"216 mm\""));
    assertEquals(1, fixture.checks(bow));
    save(other, bow, with(fine(bow), "lastCheck", fixture.lastCheck(bow))).then().statusCode(303);
    assertEquals(2, fixture.checks(bow));
  }

  @Test
  void aFormMadeBeforeThePartsChanged_isRefused() {
    LaidBow bow = fixture.aBowJustReceived();
    save(Visitor.signedInAs("volunteer"), bow, with(fine(bow), "version", "7"))
        .then()
        .statusCode(422)
        .body(containsString("The parts of this bow were changed"));
  }

  @Test
  void aStrangersCode_saysWhereItBelongsAndWhoHasIt_thenBothAreWithdrawnOnRequest() {
    LaidBow bow = fixture.aBowJustReceived();
    LaidBow other = fixture.aBowLentTo("Robin Ashdown");
    Visitor volunteer = Visitor.signedInAs("volunteer");
    Map<String, Object> form = fine(bow);
    form.remove("allAsListed");
    form.put("parts", List.of("body", "string"));
    form.put("stranger", other.limbs().code());
    save(volunteer, bow, form)
        .then()
        .statusCode(422)
        .body(containsString("belongs to the rig " + other.body().code()))
        .body(containsString("on loan to Robin Ashdown"))
        .body(containsString("Put it right"))
        .body(containsString("Correct the record"));
    assertEquals(0, fixture.checks(bow));

    save(volunteer, bow, with(form, "strangerAnswer", "withdraw-both")).then().statusCode(303);
    assertEquals(
        2,
        fixture.number(
            "SELECT count(*) FROM withdrawal WHERE item_id IN (?1, ?2) AND released_at IS NULL",
            bow.limbs().id(),
            other.limbs().id()));
  }

  @Test
  void aStrangerThatIsToStay_correctsTheRecordInOnePress_whateverElseIsAnswered() {
    LaidBow bow = fixture.aBowJustReceived();
    LaidBow other = fixture.aBowReadyToGoOut();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    Map<String, Object> form = new HashMap<>();
    form.put("stranger", other.string().code());
    form.put("strangerAnswer", "exchanged");
    save(volunteer, bow, form)
        .then()
        .statusCode(303)
        .header("Location", endsWith("/rigs/" + bow.id().value()));
    for (LaidBow each : List.of(bow, other)) {
      assertEquals("IN_THE_WORKSHOP", fixture.state(each));
      volunteer
          .get("/rigs/" + each.id().value())
          .then()
          .body(containsString("Record corrected: " + other.string().code() + " is on rig"));
    }
    assertEquals(
        2,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE until_at IS NULL AND ((rig_id = ?1 AND item_id ="
                + " ?2) OR (rig_id = ?3 AND item_id = ?4))",
            bow.id(),
            other.string().id(),
            other.id(),
            bow.string().id()));
    assertEquals(0, fixture.checks(bow));
  }

  @Test
  void aStrangerThatIsOutOnLoan_isNotTakenOffInTheRecord_andWhatWasTypedStays() {
    LaidBow bow = fixture.aBowJustReceived();
    LaidBow other = fixture.aBowLentTo("Robin Ashdown");
    Map<String, Object> form = fine(bow);
    form.remove("allAsListed");
    form.put("parts", List.of("body", "limbs"));
    form.put("stranger", other.string().code());
    form.put("strangerAnswer", "correct-record");
    save(Visitor.signedInAs("volunteer"), bow, form)
        .then()
        .statusCode(422)
        .body(containsString("Receive it first."))
        .body(containsString("value=\"correct-record\" checked"))
        .body(containsString("value=\"216 mm\""));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE until_at IS NULL AND rig_id = ?1 AND item_id = ?2",
            other.id(),
            other.string().id()));
  }

  @Test
  void aStrangerToBePutRight_isAnAdjustment_withoutAnyReading() {
    LaidBow bow = fixture.aBowJustReceived();
    LaidBow other = fixture.aBowReadyToGoOut();
    Map<String, Object> form = new HashMap<>();
    form.put("parts", List.of("body", "limbs"));
    form.put("stranger", other.string().code());
    form.put("strangerAnswer", "put-right");
    Visitor volunteer = Visitor.signedInAs("volunteer");
    save(volunteer, bow, form).then().statusCode(303);
    volunteer
        .get(verdict(bow))
        .then()
        .body(
            containsString(other.string().code() + " is on it instead of " + bow.string().code()));
    Visitor.signedInAs("volunteer")
        .get("/rigs/" + bow.id().value())
        .then()
        .body(containsString(">not measured<"))
        .body(not(containsString(">looked over<")));
  }

  @Test
  void aCorrection_isANewCheckThatSaysWhy_andTheOldOneStays() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    save(volunteer, bow, CheckForms.braced(fine(bow), 198)).then().statusCode(303);
    long first = fixture.lastCheck(bow);
    volunteer
        .get(bow.checkPage() + "?corrects=" + first)
        .then()
        .body(containsString("value=\"198 mm\""));
    Map<String, Object> form = with(fine(bow), "corrects", first);
    volunteer
        .post(bow.checkPage(), form)
        .then()
        .statusCode(422)
        .body(containsString("What was wrong"));
    volunteer
        .post(bow.checkPage(), with(form, "correctionWhy", "I typed 198 for 216 by mistake"))
        .then()
        .statusCode(303);

    assertEquals(2, fixture.checks(bow));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM bow_check WHERE id = ?1 AND verdict = 'ADJUST' AND brace ="
                + " 19800000",
            first));
    volunteer
        .get(bow.checkPage() + "/" + first)
        .then()
        .body(containsString("This check was corrected"))
        .body(not(containsString("I have done this")));
    volunteer.post(bow.checkPage() + "/" + first + "/put-back", Map.of()).then().statusCode(422);
  }

  @Test
  void aBowThatWentOutSince_isNotPutBackOnAnOldCheck() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    save(volunteer, bow, fine(bow)).then().statusCode(303);
    long first = fixture.lastCheck(bow);
    save(volunteer, bow, CheckForms.braced(fine(bow), 198)).then().statusCode(303);
    volunteer.get(bow.checkPage() + "/" + first);
    volunteer
        .post(bow.checkPage() + "/" + first + "/put-back", Map.of())
        .then()
        .statusCode(422)
        .body(containsString("The last check counts"));
    assertEquals("TO_BE_CHECKED", fixture.state(bow));
  }

  @Test
  void committee_looksAndChangesNothing() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor committee = Visitor.signedInAs("committee");
    committee.get("/check").then().statusCode(200).body(not(containsString("Another bow")));
    committee.post(bow.checkPage(), fine(bow)).then().statusCode(403);
    assertEquals(0, fixture.checks(bow));
  }

  @Test
  void theGauge_showsBandAndSetUpFigure_onceAReadingIsTyped() {
    LaidBow bow = fixture.aBowJustReceived();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer
        .get(bow.checkPage())
        .then()
        .body(not(containsString("216 mm")))
        .body(not(containsString("name=\"string\" value=\"fine\" checked")));
    volunteer
        .get(bow.checkPage() + "/gauge?quantity=brace&value=210&unit=mm")
        .then()
        .statusCode(200)
        .body(containsString("210 mm"))
        .body(containsString("set up at"));
    volunteer
        .get(bow.checkPage() + "/gauge?quantity=tillerLower&value=186&unit=mm&tillerUpper=190mm")
        .then()
        .body(containsString("Tiller"))
        .body(containsString("+4 mm"));
    volunteer.get(bow.checkPage() + "/gauge?quantity=brace&value=8&unit=mm").then().statusCode(204);
  }

  @Test
  void anyPartsCode_opensItsBow_andAWrongOneSaysSo() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer
        .get("/check/find?code=" + bow.string().code())
        .then()
        .statusCode(303)
        .header("Location", endsWith(bow.checkPage()));
    String code = bow.string().code();
    char last = code.charAt(code.length() - 1);
    volunteer
        .get("/check/find?code=" + code.substring(0, code.length() - 1) + (last == '2' ? '3' : '2'))
        .then()
        .statusCode(422)
        .body(containsString("nobody&#39;s code"));
    volunteer.get("/check/99999999").then().statusCode(404);
  }

  @Test
  void thePagesStatements_stayTheSame_howeverManyWait() {
    Visitor volunteer = Visitor.signedInAs("volunteer");
    fixture.aBowJustReceived();
    volunteer.get("/check");
    long before = StatementCount.run();
    volunteer.get("/check");
    long few = StatementCount.run() - before;
    for (int i = 0; i < 5; i++) {
      fixture.aBowJustReceived();
    }
    before = StatementCount.run();
    volunteer.get("/check");
    long many = StatementCount.run() - before;
    assertEquals(few, many);
    assertTrue(few <= 12, "statements: " + few);
  }
}
