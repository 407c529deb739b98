package club.ascham.worksheet;

import static org.hamcrest.Matchers.containsString;
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
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class ReplacementPagesTest {
  @Inject ClubFixture fixture;
  @Inject ClubTime time;

  @Test
  void aNewString_takesThePlaceOfTheOld_andTheRigWaitsForItsSetUp() {
    LaidBow rig = fixture.aBowSetUp(15);
    Laid fresh = fixture.aString(68);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get(page(rig)).then().statusCode(200).body(containsString(fresh.code()));
    volunteer.post(page(rig), form(fresh, "scrapped")).then().statusCode(303);

    assertEquals("IN_THE_WORKSHOP", fixture.state(rig.id()));
    assertEquals("IN_THE_WORKSHOP", fixture.state(fresh));
    assertEquals("RETIRED", fixture.state(rig.string()));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM bowstring WHERE id = ?1 AND first_used IS NOT NULL", fresh.id()));
    assertEquals(
        fresh.id().value(),
        fixture.number(
            "SELECT replaced_by FROM upkeep_record WHERE item_id = ?1 AND result = 'REPLACED'",
            rig.string().id()));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting o JOIN fitting n ON n.from_at = o.until_at WHERE"
                + " o.item_id = ?1 AND n.item_id = ?2",
            rig.string().id(),
            fresh.id()),
        "the new one is fitted the moment the old one comes off");
  }

  @Test
  void aStringReplacedOnAnEarlierDay_isKeptUnderThatDay_butNotBeforeTheBowWasSetUp() {
    LaidBow rig = fixture.aBowSetUp(15);
    Laid fresh = fixture.aString(68);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(page(rig));
    Map<String, String> form = form(fresh, "scrapped");
    form.put("on", time.today().minusDays(17).toString());
    officer
        .post(page(rig), form)
        .then()
        .statusCode(422)
        .body(containsString("Give that day or a later one."))
        .body(containsString("value=\"" + form.get("on") + "\""));
    assertEquals("READY", fixture.state(rig.id()));

    String day = time.today().minusDays(4).toString();
    form.put("on", day);
    officer.post(page(rig), form).then().statusCode(303);
    assertEquals("IN_THE_WORKSHOP", fixture.state(rig.id()));
    assertEquals("RETIRED", fixture.state(rig.string()));
    assertEquals(
        1,
        fixture.number(
            """
            SELECT count(*) FROM item o JOIN upkeep_record u ON u.item_id = o.id
              JOIN bowstring n ON n.id = u.replaced_by
             WHERE o.id = ?1 AND o.retired_on = ?2 AND n.first_used = ?2
               AND substr(u.happened_at, 1, 10) = ?2\
            """,
            rig.string().id(),
            day));
  }

  @Test
  void aKeptString_becomesASpare_andASetUpBegunBefore_beginsAgain() {
    LaidBow rig = fixture.aBowSetUp(15);
    fixture.change(
        "INSERT INTO set_up (rig_id, begun_at, begun_by, steps_done, brace) VALUES (?1,"
            + " '2026-01-05T10:00:00.000Z', 1, 'LIMBS', 21500000)",
        rig.id());
    Laid fresh = fixture.aString(68);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(page(rig));
    officer.post(page(rig), form(fresh, "kept")).then().statusCode(303);
    assertEquals("READY", fixture.state(rig.string()));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM set_up WHERE rig_id = ?1 AND finished_at IS NULL AND brace IS"
                + " NULL AND steps_done = ''",
            rig.id()));
  }

  @Test
  void aStringForAnotherBow_isNotOffered_andNotTaken() {
    LaidBow rig = fixture.aBowSetUp(15);
    fixture.aString(68);
    Laid tooShort = fixture.aString(66);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(page(rig)).then().body(not(containsString(tooShort.code())));
    officer
        .post(page(rig), form(tooShort, "kept"))
        .then()
        .statusCode(422)
        .body(containsString("no ready string that fits this rig"));
    assertEquals("READY", fixture.state(rig.id()));
  }

  @Test
  void aStringThatBreaksOnLoan_isReplaced_andTheLoanGoesOn() {
    LaidBow rig = fixture.aBowSetUp(15);
    Laid fresh = fixture.aString(68);
    long loan = fixture.lend(rig, "Tilda Marsh");
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(page(rig)).then().statusCode(200).body(containsString("stays on its"));
    officer.post(page(rig), form(fresh, "scrapped")).then().statusCode(303);
    assertEquals("ON_LOAN", fixture.state(rig.id()));
    assertEquals("ON_LOAN", fixture.state(fresh));
    assertEquals("RETIRED", fixture.state(rig.string()));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND item_id = ?2 AND outcome ="
                + " 'CHANGED'",
            loan,
            rig.string().id()));
  }

  @Test
  void aSecondPress_changesNothingMore() {
    LaidBow rig = fixture.aBowSetUp(15);
    Laid fresh = fixture.aString(68);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(page(rig));
    Map<String, String> form = form(fresh, "kept");
    form.put("once-key", "string-" + fresh.code());
    String first = officer.post(page(rig), form).header("Location");
    assertEquals(first, officer.post(page(rig), form).header("Location"));
    assertEquals(
        1,
        fixture.number("SELECT count(*) FROM upkeep_record WHERE item_id = ?1", rig.string().id()));
  }

  @Test
  void nothingChosen_isAskedFor() {
    LaidBow rig = fixture.aBowSetUp(15);
    fixture.aString(68);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(page(rig));
    officer
        .post(page(rig), Map.of("words", "Serving gone"))
        .then()
        .statusCode(422)
        .body(containsString("Which string takes its place?"))
        .body(containsString("scrapped, or kept?"))
        .body(containsString("Serving gone"));
  }

  @Test
  void thePage_needsTheSameFewStatements_howeverManySparesThereAre() {
    LaidBow rig = fixture.aBowSetUp(15);
    fixture.aString(68);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(page(rig));
    long few = statements(officer, page(rig));
    for (int i = 0; i < 9; i++) {
      fixture.aString(68);
    }
    assertEquals(few, statements(officer, page(rig)));
    assertTrue(few <= 20, "statements: " + few);
  }

  private static long statements(Visitor visitor, String page) {
    long before = StatementCount.run();
    visitor.get(page).then().statusCode(200);
    return StatementCount.run() - before;
  }

  private static String page(LaidBow rig) {
    return "/upkeep/" + rig.string().code() + "/string-replacement";
  }

  private static Map<String, String> form(Laid fresh, String old) {
    Map<String, String> form = new HashMap<>();
    form.put("newString", fresh.code());
    form.put("oldString", old);
    form.put("words", "Due by its age.");
    return form;
  }
}
