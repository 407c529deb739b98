package club.ascham.worksheet;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.store.StatementCount;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class InspectionPagesTest {
  @Inject ClubFixture fixture;
  @Inject ClubTime time;

  @Test
  void anOverdueSafetyInspection_keepsItsRigIn_untilItIsSigned() {
    LaidBow rig = fixture.aBowReadyToGoOut();
    assertEquals("READY", fixture.state(rig.id()));
    fixture.inspected(rig.body(), 181);
    assertEquals("TO_BE_CHECKED", fixture.state(rig.id()));
    assertEquals("TO_BE_CHECKED", fixture.state(rig.body()));

    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/upkeep").then().statusCode(200).body(containsString(rig.body().code()));
    String page = "/upkeep/" + rig.body().code() + "/bolt-inspection";
    officer.get(page).then().statusCode(200).body(containsString("1 day late"));
    Response signed = officer.post(page, bolts("fine"));
    signed.then().statusCode(303).header("Location", matchesPattern(".*/upkeep/records/\\d+"));
    officer
        .get(path(signed))
        .then()
        .statusCode(200)
        .body(containsString("passed"))
        .body(containsString("upper 2 turns out, lower 2 1/4 turns out"))
        .body(containsString("due in 6 months"));
    assertEquals("READY", fixture.state(rig.id()));
  }

  @Test
  void whatIsRetired_isNotInspected_norAskedFor() {
    Laid stringer = fixture.aStringer();
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/upkeep/" + stringer.code() + "/stringer-inspection";
    officer.get(page).then().statusCode(200).body(containsString("Sign the inspection"));
    fixture.change(
        "UPDATE item SET retired_on = registered_on, retired_why = 'SCRAPPED' WHERE id = ?1",
        stringer.id());
    long records = fixture.number("SELECT count(*) FROM upkeep_record");
    Map<String, String> fine =
        Map.of("cord", "fine", "stitching", "fine", "saddle", "fine", "fit", "fine");
    officer
        .post(page, fine)
        .then()
        .statusCode(422)
        .body(containsString("is retired: there is nothing to inspect"));
    officer
        .post(
            "/upkeep/" + stringer.code() + "/ask",
            Map.of("work", "stringer-inspection", "why", "It fell off the rack."))
        .then()
        .statusCode(422)
        .body(containsString("is retired"));
    assertEquals(records, fixture.number("SELECT count(*) FROM upkeep_record"));
    assertEquals(
        0, fixture.number("SELECT count(*) FROM upkeep_task WHERE item_id = ?1", stringer.id()));
  }

  @Test
  void oneStop_withdrawsTheItem_andSaysWhyInItsStory() {
    LaidBow rig = fixture.aBowReadyToGoOut();
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/upkeep/" + rig.body().code() + "/bolt-inspection";
    officer.get(page);
    Map<String, String> form = bolts("fine");
    form.put("washer", "stop");
    form.put("words", "Upper washer split.");
    form.put("partsUsed", "none in stock");
    officer.post(page, form).then().statusCode(303);
    assertEquals("WITHDRAWN", fixture.state(rig.id()));
    assertEquals(
        "Not as it should be: washers. Upper washer split.",
        fixture.text("SELECT why FROM withdrawal WHERE item_id = ?1", rig.body().id()));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM story s JOIN story_about a ON a.story_id = s.id WHERE a.item_id ="
                + " ?1 AND s.sentence = 'Limb-bolt inspection: not passed.'",
            rig.body().id()));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM upkeep_task WHERE item_id = ?1 AND work = 'BOLT_INSPECTION' AND"
                + " blocks = 1 AND closed_by_record IS NULL",
            rig.body().id()),
        "it waits for the same inspection again");
    assertEquals(
        "none in stock",
        fixture.text(
            "SELECT parts_used FROM upkeep_record WHERE item_id = ?1 AND result = 'FAILED'",
            rig.body().id()));
  }

  @Test
  void aSecondPress_isLedToTheFirstOnesRecord_andKeepsNothing() {
    Laid stringer = fixture.aStringer();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = "/upkeep/" + stringer.code() + "/stringer-inspection";
    volunteer.get(page);
    Map<String, String> form = stringer();
    form.put("once-key", "twice-" + stringer.code());
    String first = path(volunteer.post(page, form));
    assertEquals(first, path(volunteer.post(page, form)));
    assertEquals(
        2,
        fixture.number("SELECT count(*) FROM upkeep_record WHERE item_id = ?1", stringer.id()),
        "the one from before and the new one");
  }

  @Test
  void missingAnswers_areAskedFor_andWhatWasTypedStays() {
    Laid stringer = fixture.aStringer();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = "/upkeep/" + stringer.code() + "/stringer-inspection";
    volunteer.get(page);
    volunteer
        .post(page, Map.of("cord", "note", "partsUsed", "a new <b>knot</b>", "on", "2099-01-01"))
        .then()
        .statusCode(422)
        .body(containsString("Fine, note or stop?"))
        .body(containsString("That day is still to come."))
        .body(containsString("a new &lt;b&gt;knot&lt;/b&gt;"))
        .body(containsString("value=\"note\" checked"));
    assertEquals(
        1, fixture.number("SELECT count(*) FROM upkeep_record WHERE item_id = ?1", stringer.id()));
  }

  @Test
  void paperTypedInLate_mayLieBeforeWhatIsKnown_butNotBeforeTheClubHadIt() {
    Laid stringer = fixture.aStringer();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = "/upkeep/" + stringer.code() + "/stringer-inspection";
    volunteer.get(page);
    Map<String, String> form = stringer();
    form.put("on", time.today().minusDays(31).toString());
    volunteer
        .post(page, form)
        .then()
        .statusCode(422)
        .body(containsString("It only came on the register on"))
        .body(containsString("enter on its page when it was bought"));
    fixture.change(
        "UPDATE item SET bought_on = ?2 WHERE id = ?1", stringer.id(), time.today().minusDays(60));
    form.put("on", time.today().minusDays(62).toString());
    volunteer
        .post(page, form)
        .then()
        .statusCode(422)
        .body(containsString("It was only bought on"))
        .body(containsString("value=\"" + form.get("on") + "\""));
    assertEquals(
        1, fixture.number("SELECT count(*) FROM upkeep_record WHERE item_id = ?1", stringer.id()));

    form.put("on", time.today().minusDays(31).toString());
    volunteer.post(page, form).then().statusCode(303);
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM work_due WHERE item_id = ?1 AND work = 'STRINGER_INSPECTION'"
                + " AND due_on > ?2",
            stringer.id(),
            time.today().plusDays(340)),
        "the next one is still planned from the later inspection, 20 days ago");
  }

  @Test
  void aNote_needsItsWords() {
    Laid stringer = fixture.aStringer();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = "/upkeep/" + stringer.code() + "/stringer-inspection";
    volunteer.get(page);
    Map<String, String> form = stringer();
    form.put("fit", "note");
    volunteer.post(page, form).then().statusCode(422).body(containsString("A few words."));
  }

  @Test
  void turnsBeyondTheMakersLimit_withdraw_whateverWasAnswered() {
    Laid riser = fixture.aRightHandedRiser();
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/upkeep/" + riser.code() + "/bolt-inspection";
    officer.get(page);
    Map<String, String> form = bolts("fine");
    form.put("upperTurnsOut", "4½");
    officer.post(page, form).then().statusCode(303);
    assertEquals("WITHDRAWN", fixture.state(riser));
  }

  @Test
  void withoutThePermit_limbBoltsAreNotSigned_butSentToTheOfficer() {
    LaidBow rig = fixture.aBowReadyToGoOut();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = "/upkeep/" + rig.body().code() + "/bolt-inspection";
    volunteer
        .get(page)
        .then()
        .statusCode(200)
        .body(containsString("Send to the officer"))
        .body(not(containsString("Sign the inspection")));
    volunteer.post(page, bolts("fine")).then().statusCode(403).body(containsString("permit"));
    assertEquals(
        0,
        fixture.number(
            "SELECT count(*) FROM upkeep_record WHERE item_id = ?1 AND done_by = 2",
            rig.body().id()));

    volunteer.get(page);
    volunteer
        .post(
            "/upkeep/" + rig.body().code() + "/ask",
            Map.of("work", "bolt-inspection", "blocks", "on", "why", "A locking screw rattles."))
        .then()
        .statusCode(303);
    assertEquals("TO_BE_CHECKED", fixture.state(rig.id()), "what was asked for blocks at once");
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/upkeep").then().body(containsString("A locking screw rattles."));
    officer.get(page);
    officer.post(page, bolts("fine")).then().statusCode(303);
    assertEquals("READY", fixture.state(rig.id()), "the inspection closes what was asked for");
  }

  @Test
  void askingTwice_addsTheReason() {
    Laid stringer = fixture.aStringer();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = "/upkeep/" + stringer.code() + "/ask";
    volunteer.get(page).then().statusCode(200);
    volunteer
        .post(page, Map.of("work", "stringer-inspection"))
        .then()
        .statusCode(422)
        .body(containsString("What happened, or what was seen?"));
    volunteer
        .post(page, Map.of("work", "stringer-inspection", "why", "Left in the rain."))
        .then()
        .statusCode(303);
    volunteer
        .post(
            page,
            Map.of(
                "work", "stringer-inspection", "why", "A dog chewed on its cord.", "blocks", "on"))
        .then()
        .statusCode(303);
    assertEquals(
        "Left in the rain. A dog chewed on its cord.",
        fixture.text(
            "SELECT why FROM upkeep_task WHERE item_id = ?1 AND blocks = 1", stringer.id()));
  }

  @Test
  void theCommittee_readsThePlan_andChangesNothing() {
    Laid riser = fixture.aRightHandedRiser();
    Visitor committee = Visitor.signedInAs("committee");
    committee.get("/upkeep").then().statusCode(200).body(not(containsString(">Inspect<")));
    committee
        .post("/upkeep/" + riser.code() + "/riser-inspection", Map.of())
        .then()
        .statusCode(403);
    committee.post("/upkeep/" + riser.code() + "/ask", Map.of()).then().statusCode(403);
  }

  @Test
  void whatDoesNotExist_isNotFound() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/upkeep/R-9998-X/bolt-inspection").then().statusCode(404);
    officer.get("/upkeep/nonsense/bolt-inspection").then().statusCode(404);
    officer
        .get("/upkeep/" + fixture.aStringer().code() + "/bolt-inspection")
        .then()
        .statusCode(404);
    officer.get("/upkeep/records/999999999").then().statusCode(404);
    officer.get("/upkeep/records/x").then().statusCode(404);
  }

  @Test
  void thePlan_isNarrowedByTheAddress() {
    Laid riser = fixture.aRightHandedRiser();
    fixture.inspected(riser, 400);
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/upkeep?kind=riser&work=riser-inspection")
        .then()
        .body(containsString(riser.code()));
    officer.get("/upkeep?kind=string").then().body(not(containsString(riser.code())));
    officer.get("/upkeep?work=nonsense&page=x").then().statusCode(200);
  }

  @Test
  void thePlan_needsTheSameFewStatements_howeverMuchIsDue() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/upkeep");
    long few = statements(officer, "/upkeep");
    for (int i = 0; i < 7; i++) {
      fixture.inspected(fixture.aStringer(), 400);
    }
    assertEquals(few, statements(officer, "/upkeep"));
    assertTrue(few <= 5, "statements: " + few);
  }

  private static long statements(Visitor visitor, String page) {
    long before = StatementCount.run();
    visitor.get(page).then().statusCode(200);
    return StatementCount.run() - before;
  }

  private static Map<String, String> bolts(String all) {
    Map<String, String> form = new HashMap<>();
    for (String look :
        new String[] {"turns", "alike", "thread", "lockingScrew", "washer", "seat"}) {
      form.put(look, all);
    }
    form.put("upperTurnsOut", "2");
    form.put("lowerTurnsOut", "2 1/4");
    return form;
  }

  private static Map<String, String> stringer() {
    Map<String, String> form = new HashMap<>();
    for (String look : new String[] {"cord", "stitching", "saddle", "fit"}) {
      form.put(look, "fine");
    }
    return form;
  }

  private static String path(Response answer) {
    return URI.create(answer.header("Location")).getPath();
  }
}
