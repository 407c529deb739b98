package club.ascham.recall;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.store.StatementCount;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class RecallPagesTest {
  @Inject ClubFixture fixture;
  @Inject Concerns concerns;
  @Inject ClubTime time;

  @Test
  void aBatch_isTracedToRoomRigAndBorrower_andWithdrawnInOnePress() {
    LaidBow lent = fixture.aBowReadyToGoOut();
    Laid spare = fixture.aString(68);
    Laid other = fixture.aString(68);
    String batch = "QX-" + System.nanoTime();
    fixture.isOfMaker(lent.string(), "Twinerow", batch + "-a");
    fixture.isOfMaker(spare, "twinerow", batch + "-b");
    fixture.isOfMaker(other, "Twinerow", "other");
    fixture.lend(lent, "Odette Farrow");

    Visitor officer = Visitor.signedInAs("officer");
    String page = "/recall?maker=TWINEROW&batch=" + batch.toLowerCase();
    officer
        .get(page)
        .then()
        .statusCode(200)
        .body(containsString("2 items"))
        .body(containsString("with Odette Farrow"))
        .body(containsString(spare.code()))
        .body(containsString(lent.body().code()))
        .body(not(containsString(other.code())));

    Map<String, String> form =
        Map.of(
            "maker",
            "Twinerow",
            "batch",
            batch,
            lent.string().field(),
            "on",
            spare.field(),
            "on",
            "why",
            "Maker's notice: serving slips.",
            "once-key",
            "recall-" + batch);
    officer.post("/recall", form).then().statusCode(303);
    assertEquals("WITHDRAWN", fixture.state(spare));
    assertEquals("WITHDRAWN", fixture.state(lent.id()), "withdrawn wherever it is");
    assertEquals("READY", fixture.state(other));
    officer.post("/recall", form).then().statusCode(303);
    assertEquals(
        1, fixture.number("SELECT count(*) FROM withdrawal WHERE item_id = ?1", spare.id()));
    officer
        .get(page)
        .then()
        .body(
            containsString("serving slips"),
            containsString("name=\"" + spare.field() + "\" value=\"on\">"));
  }

  @Test
  void theSerialOfOneLimb_findsThePair() {
    LaidBow rig = fixture.aBowReadyToGoOut();
    fixture.change("UPDATE limbs SET serial_lower = 'ZZ771-L' WHERE id = ?1", rig.limbs().id());
    Visitor.signedInAs("volunteer")
        .get("/recall?serial=zz771")
        .then()
        .statusCode(200)
        .body(containsString("One item"), containsString(rig.limbs().code()));
  }

  @Test
  void onlyAnOfficerWithdraws_andTheCommitteeSeesNoNames() {
    LaidBow rig = fixture.aBowReadyToGoOut();
    String batch = "NN-" + System.nanoTime();
    fixture.isOfMaker(rig.string(), "Twinerow", batch);
    fixture.lend(rig, "Percival Quill");
    Map<String, String> form = Map.of("batch", batch, "why", "The maker's notice of May.");

    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/recall?batch=" + batch).then().body(containsString("Percival Quill"));
    volunteer.post("/recall", form).then().statusCode(403);
    Visitor committee = Visitor.signedInAs("committee");
    committee
        .get("/recall?batch=" + batch)
        .then()
        .statusCode(200)
        .body(containsString("1 borrower"), not(containsString("Percival Quill")));
    committee.post("/recall", form).then().statusCode(403);
    assertEquals("ON_LOAN", fixture.state(rig.string()));
  }

  @Test
  void onlyWhatIsTicked_isWithdrawn_andAllIsTickedToStartWith() {
    String batch = "TK-" + System.nanoTime();
    Laid one = fixture.aString(68);
    Laid other = fixture.aString(68);
    Laid gone = fixture.aString(68);
    List.of(one, other, gone).forEach(string -> fixture.isOfMaker(string, "Twinerow", batch));
    fixture.change(
        "UPDATE item SET retired_on = '2026-01-02', retired_why = 'SCRAPPED' WHERE id = ?1",
        gone.id());
    Visitor officer = Visitor.signedInAs("officer");
    String page = officer.get("/recall?batch=" + batch).asString();
    assertTrue(page.contains("name=\"" + one.field() + "\" value=\"on\" checked"), page);
    assertTrue(page.contains("name=\"" + other.field() + "\" value=\"on\" checked"));
    assertTrue(
        page.contains("name=\"" + gone.field() + "\" value=\"on\" checked"),
        "found again, it would be as unsafe");
    officer
        .post("/recall", Map.of("batch", batch, "why", "Maker's notice of May."))
        .then()
        .statusCode(422)
        .body(containsString("Tick at least one"));
    officer
        .post(
            "/recall", Map.of("batch", batch, "why", "Maker's notice of May.", other.field(), "on"))
        .then()
        .statusCode(303);
    assertEquals("READY", fixture.state(one));
    assertEquals("WITHDRAWN", fixture.state(other));
  }

  @Test
  void whatWasWithdrawnBefore_isReachedToo_andStaysInWhenThatIsReleased() {
    fixture.mayTurnBolts("officer", true);
    String batch = "WB-" + System.nanoTime();
    Laid string = fixture.aString(68);
    fixture.isOfMaker(string, "Twinerow", batch);
    String why = "Maker's notice of 3 May: the serving slips.";
    assertEquals(
        201,
        api("/api/withdrawals", Map.of("item", string.code(), "why", "A strand looks furred."))
            .statusCode());
    Visitor officer = Visitor.signedInAs("officer");
    String page = officer.get("/recall?batch=" + batch).asString();
    assertTrue(page.contains("name=\"" + string.field() + "\" value=\"on\" checked"), page);
    officer
        .post("/recall", Map.of("batch", batch, "why", why, string.field(), "on"))
        .then()
        .statusCode(303);
    officer.get("/recall?batch=" + batch).then().body(containsString("Recalled: Maker"));
    recall(Map.of("batch", batch, "why", why))
        .then()
        .statusCode(200)
        .body("withdrawn", equalTo(0))
        .body("besides", equalTo(0));

    long withdrawal =
        fixture.number("SELECT max(id) FROM withdrawal WHERE item_id = ?1", string.id());
    api(
            "/api/withdrawals/" + withdrawal + "/decide",
            Map.of("work", "none", "why", "The strand was whole after all."))
        .then()
        .statusCode(200);
    api(
            "/api/withdrawals/" + withdrawal + "/release",
            Map.of(
                "lookedAt", "Every strand and both servings.", "why", "Nothing is furred on it."))
        .then()
        .statusCode(200);
    assertTrue(concerns.of(string.id()).blocks(), "the recall stands");
    assertTrue(concerns.of(string.id()).keptIn().contains("the serving slips"));
    long report =
        fixture.number("SELECT max(report_id) FROM report_part WHERE item_id = ?1", string.id());
    api(
            "/api/reports/" + report + "/answer",
            Map.of("answer", "nothing-there", "words", "The maker says it is of another batch."))
        .then()
        .statusCode(200);
    assertFalse(concerns.of(string.id()).blocks());
  }

  @Test
  void whatIsRetired_isRecalledToo_forTheDayItIsFoundAgain() {
    String batch = "RG-" + System.nanoTime();
    Laid gone = fixture.aString(68);
    fixture.isOfMaker(gone, "Twinerow", batch);
    fixture.change(
        "UPDATE item SET retired_on = ?2, retired_why = 'LOST' WHERE id = ?1",
        gone.id(),
        time.today());
    recall(Map.of("batch", batch, "why", "Maker's notice of May."))
        .then()
        .statusCode(200)
        .body("withdrawn", equalTo(1));
    api("/api/strings/" + gone.code() + "/found", Map.of("why", "It lay behind the rack."))
        .then()
        .statusCode(200);
    assertTrue(
        concerns.of(gone.id()).all().stream().anyMatch(one -> one.said().contains("Recalled: ")));
    assertTrue(concerns.of(gone.id()).has(Matter.WITHDRAWN));
  }

  @Test
  void overTheApi_aListOfItemsIsWithdrawn_andACodeTheRecallDoesNotNameIsRefused() {
    String batch = "AP-" + System.nanoTime();
    Laid one = fixture.aString(68);
    Laid other = fixture.aString(68);
    Laid stranger = fixture.aString(68);
    List.of(one, other).forEach(string -> fixture.isOfMaker(string, "Twinerow", batch));
    recall(
            Map.of(
                "batch", batch, "items", List.of(stranger.code()), "why", "Maker's notice of May."))
        .then()
        .statusCode(422)
        .body("errors[0].field", equalTo("items.0"));
    recall(Map.of("batch", batch, "items", List.of(), "why", "Maker's notice of May."))
        .then()
        .statusCode(422);
    assertEquals("READY", fixture.state(stranger));
    recall(Map.of("batch", batch, "items", List.of(one.code()), "why", "Maker's notice of May."))
        .then()
        .statusCode(200)
        .body("withdrawn", equalTo(1));
    assertEquals("WITHDRAWN", fixture.state(one));
    assertEquals("READY", fixture.state(other));
    recall(Map.of("batch", batch, "why", "Maker's notice of May."))
        .then()
        .body("withdrawn", equalTo(1));
    assertEquals("WITHDRAWN", fixture.state(other), "without a list, all that is left");
  }

  private static Response recall(Map<String, ?> body) {
    return api("/api/recalls", body);
  }

  private static Response api(String path, Map<String, ?> body) {
    return sending("officer").body(body).post(path);
  }

  @Test
  void whomToCall_isAFileForOfficersAlone_inWhichNothingIsAFormula() {
    LaidBow rig = fixture.aBowReadyToGoOut();
    String batch = "CS-" + System.nanoTime();
    fixture.isOfMaker(rig.string(), "Twinerow", batch);
    long loan = fixture.lend(rig, "=HYPERLINK(\"x\"),\nOdo \"Quick\"");
    fixture.change(
        "UPDATE borrower SET contact = '+44 7700 900123', guardian = '@Mira, of \"Holt\"', age_band = 'UP_TO_12'"
            + " WHERE id = (SELECT borrower_id FROM loan WHERE id = ?1)",
        loan);
    String file = "/recall/holders.csv?batch=" + batch;
    for (String name : List.of("volunteer", "committee")) {
      Visitor.signedInAs(name).get(file).then().statusCode(403);
      Visitor.signedInAs(name)
          .get("/recall?batch=" + batch)
          .then()
          .body(not(containsString("900123")), not(containsString("holders.csv")));
    }
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/recall?batch=" + batch)
        .then()
        .body(containsString("900123"), containsString("/recall/holders.csv?batch=" + batch));
    String csv =
        officer
            .get(file)
            .then()
            .statusCode(200)
            .header("Content-Disposition", containsString("recall-holders.csv"))
            .extract()
            .asString();
    assertEquals(
        "item,maker,model,batch,rig then,loan,kind,who,contact,guardian,from,until,has it now\r\n"
            + "%s,Twinerow,Heron,%s,%s,%d,kit,\"'=HYPERLINK(\"\"x\"\"),\nOdo \"\"Quick\"\"\",'+44 7700 900123,\"'@Mira, of \"\"Holt\"\"\",%s,,yes\r\n"
                .formatted(
                    rig.string().code(),
                    batch,
                    rig.body().code(),
                    loan,
                    time.dayOf(time.now().minus(Duration.ofDays(1)))),
        csv);
    officer.get("/recall/holders.csv").then().statusCode(303);
    fixture.change(
        "UPDATE borrower SET name = 'Odo' WHERE id = (SELECT borrower_id FROM loan WHERE id = ?1)",
        loan);
  }

  @Test
  void withoutAReason_orWithoutAnythingNamed_nothingIsWithdrawn() {
    String batch = "WR-" + System.nanoTime();
    fixture.isOfMaker(fixture.aString(68), "Twinerow", batch);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/recall").then().statusCode(200).body(containsString("Give at least one"));
    officer.post("/recall", Map.of("why", "all of it")).then().statusCode(422);
    officer
        .post("/recall", Map.of("batch", batch))
        .then()
        .statusCode(422)
        .body(containsString("It stands on every one of them"));
  }

  @Test
  void aTrace_needsTheSameFewStatements_howeverMuchItFinds() {
    String batch = "SC-" + System.nanoTime();
    fixture.isOfMaker(fixture.aString(68), "Twinerow", batch);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/recall?batch=" + batch);
    long few = statements(officer, "/recall?batch=" + batch);
    for (int i = 0; i < 5; i++) {
      fixture.isOfMaker(fixture.aString(68), "Twinerow", batch);
    }
    assertEquals(few, statements(officer, "/recall?batch=" + batch));
  }

  private static long statements(Visitor visitor, String page) {
    long before = StatementCount.run();
    visitor.get(page).then().statusCode(200);
    return StatementCount.run() - before;
  }
}
