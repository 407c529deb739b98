package club.ascham.rig;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

@QuarkusTest
class RigApiTest {
  private static final Map<String, Object> EVERYTHING =
      Map.of(
          "stepsDone", "all",
          "brace", "8 1/2 in",
          "braceFrom", "grip-throat",
          "tillerUpper", "190 mm",
          "tillerLower", "186 mm",
          "nocking", "4 mm",
          "screwsSeen", true);

  @Inject ClubFixture fixture;

  private static ValidatableResponse assemble(Laid body, Laid limbs, Laid string) {
    return assemble(
        limbs == null
            ? Map.of("body", body.code(), "string", string.code())
            : Map.of("body", body.code(), "limbs", limbs.code(), "string", string.code()));
  }

  private static ValidatableResponse assemble(Map<String, ?> body) {
    return sending("officer").body(body).post("/api/rigs").then();
  }

  private static int id(ValidatableResponse assembled) {
    return assembled.statusCode(201).extract().path("id");
  }

  private int aNewRig() {
    return id(
        assemble(fixture.aRiser("RIGHT", 25), fixture.limbs("MEDIUM", 22), fixture.aString(68)));
  }

  @Test
  void partsThatFit_becomeARigThatWaitsInTheWorkshop() {
    Laid riser = fixture.aRiser("LEFT", 25);

    assemble(riser, fixture.limbs("SHORT", 20), fixture.aString(66))
        .statusCode(201)
        .header("Location", containsString("/api/rigs/"))
        .body("name", equalTo(riser.code()))
        .body("state", equalTo("in-the-workshop"))
        .body("bowLengthIn", equalTo(66))
        .body("parts.place", contains("body", "limbs", "string"))
        .body("setUp", nullValue())
        .body("targets.brace.inner.low", equalTo("203.2 mm"))
        .body("targets.brace.basis", containsString("table in force"));
  }

  @Test
  void aOnePieceBow_needsItsStringAlone() {
    Laid bow = fixture.aOnePieceBow(54);

    assemble(bow, null, fixture.aString(54)).statusCode(201);
    assemble(fixture.aOnePieceBow(54), fixture.limbs("SHORT", 20), fixture.aString(54))
        .statusCode(422)
        .body("errors.field", contains("limbs"))
        .body("errors.message", hasItem(containsString("one-piece bow")));
  }

  @Test
  void misfits_areRefusedAtTheirFieldWithReasonAndRemedy() {
    assemble(fixture.aScrewInRiser("Thatch"), fixture.limbs("MEDIUM", 22), fixture.aString(68))
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors.field", hasItem("limbs"))
        .body("errors[0].message", containsString("screw-in limbs"));
    assemble(
            fixture.aScrewInRiser("Thatch"), fixture.screwInLimbs("Sedge", 66), fixture.aString(66))
        .statusCode(422)
        .body("errors.field", contains("limbs"));
    assemble(fixture.aRiser("RIGHT", 25), fixture.limbs("MEDIUM", 22), fixture.aString(66))
        .statusCode(422)
        .body("errors.field", contains("string"))
        .body("errors[0].message", containsString("Choose a string labelled 68 in"));
    assemble(fixture.aRiser("RIGHT", 25), fixture.limbs("MEDIUM", 22), fixture.aString(68, "HMPE"))
        .statusCode(422)
        .body("errors[0].message", containsString("polyester"));
  }

  @Test
  void partsThatAreNotFree_areRefusedWithWhatWouldMakeItPossible() {
    Laid fitted = fixture.limbs("MEDIUM", 22);
    Laid elsewhere = fixture.aRiser("RIGHT", 25);
    id(assemble(elsewhere, fitted, fixture.aString(68)));
    Laid withdrawn = fixture.aString(68);
    fixture.withdraw(withdrawn, "Serving cut through.");

    assemble(fixture.aRiser("RIGHT", 25), fitted, withdrawn)
        .statusCode(422)
        .body("errors.field", contains("limbs", "string"))
        .body(
            "errors[0].message",
            equalTo(
                fitted.code()
                    + " is fitted to the rig of "
                    + elsewhere.code()
                    + ". Take it off there first, or choose another."))
        .body(
            "errors[1].message",
            equalTo(
                withdrawn.code()
                    + " is withdrawn since 3 May 2026: Serving cut through. It can be fitted once"
                    + " someone with the permit has released it."));
  }

  @Test
  void whatIsMissingOrMistyped_isNamed() {
    assemble(Map.of("body", "R-0101-X"))
        .statusCode(422)
        .body("errors.field", contains("body", "string"));
    assemble(fixture.aRiser("RIGHT", 25), null, fixture.aString(68))
        .statusCode(422)
        .body("errors.field", contains("limbs"));
    Laid string = fixture.aString(68);
    assemble(string, fixture.limbs("MEDIUM", 22), string)
        .statusCode(422)
        .body("errors[0].message", containsString("is a string. Choose a riser"));
    assemble(Map.of("body", "R-0101-E", "string", "S-0247-K", "colour", "red")).statusCode(400);
  }

  @Test
  void theSameFormTwice_makesOneRig() {
    Map<String, String> body =
        Map.of(
            "body", fixture.aOnePieceBow(48).code(),
            "string", fixture.aString(48).code(),
            "onceKey", "api-twice");

    assertEquals(id(assemble(body)), id(assemble(body)));
  }

  @Test
  void twoPeopleAssemblingOneRiserAtOnce_getOneSuccessAndOneClearRefusal() throws Exception {
    Laid riser = fixture.aRiser("RIGHT", 25);
    List<Map<String, String>> wishes =
        List.of(
            Map.of(
                "body", riser.code(),
                "limbs", fixture.limbs("MEDIUM", 22).code(),
                "string", fixture.aString(68).code()),
            Map.of(
                "body", riser.code(),
                "limbs", fixture.limbs("MEDIUM", 24).code(),
                "string", fixture.aString(68).code()));
    CountDownLatch together = new CountDownLatch(1);
    ExecutorService two = Executors.newFixedThreadPool(2);
    try {
      List<Future<ValidatableResponse>> answers =
          wishes.stream()
              .map(
                  wish ->
                      two.submit(
                          (Callable<ValidatableResponse>)
                              () -> {
                                together.await();
                                return assemble(wish);
                              }))
              .toList();
      together.countDown();
      List<ValidatableResponse> ended = List.of(answers.get(0).get(), answers.get(1).get());
      List<Integer> codes =
          ended.stream().map(answer -> answer.extract().statusCode()).sorted().toList();

      assertEquals(List.of(201, 422), codes);
      ended.stream()
          .filter(answer -> answer.extract().statusCode() == 422)
          .forEach(
              answer ->
                  answer
                      .body("errors.field", contains("body"))
                      .body("errors[0].message", containsString("is fitted to the rig of")));
    } finally {
      two.shutdown();
    }
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE item_id = ?1 AND until_at IS NULL", riser.id()));
  }

  @Test
  void aSetUpWorkedThrough_makesTheRigReady() {
    int rig = aNewRig();
    sending("officer")
        .post("/api/rigs/{id}/set-ups", rig)
        .then()
        .statusCode(200)
        .body("openSetUp.stepsToDo", hasSize(13));

    sending("officer")
        .body(EVERYTHING)
        .put("/api/rigs/{id}/set-ups/current", rig)
        .then()
        .statusCode(200)
        .body("openSetUp.stepsToDo", hasSize(0))
        .body("openSetUp.figures.tiller", equalTo("4 mm"));
    sending("officer")
        .body("{}")
        .post("/api/rigs/{id}/set-ups/current/finish", rig)
        .then()
        .statusCode(200)
        .body("state", equalTo("ready"))
        .body("setUp.brace", equalTo("215.9 mm"))
        .body("setUp.braceFrom", equalTo("grip-throat"))
        .body("setUp.twists", nullValue())
        .body("openSetUp", nullValue());
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM set_up WHERE rig_id = ?1 AND brace_typed = '8 1/2 in'", rig));
  }

  @Test
  void anIncompleteSetUp_isNotFinished() {
    int rig = aNewRig();
    sending("officer").post("/api/rigs/{id}/set-ups", rig).then().statusCode(200);
    sending("officer")
        .body(Map.of("stepsDone", "limbs, loops", "brace", "216", "braceFrom", "button"))
        .put("/api/rigs/{id}/set-ups/current", rig)
        .then()
        .statusCode(422)
        .body("errors.suggestion", contains("216 mm"));
    sending("officer")
        .body(Map.of("stepsDone", "limbs, loops", "brace", "216 mm", "braceFrom", "button"))
        .put("/api/rigs/{id}/set-ups/current", rig)
        .then()
        .statusCode(200)
        .body("openSetUp.stepsDone", contains("limbs", "loops"));

    sending("officer")
        .body("{}")
        .post("/api/rigs/{id}/set-ups/current/finish", rig)
        .then()
        .statusCode(422)
        .body("errors.message", hasItem(containsString("both tiller distances")))
        .body("errors.message", hasItem(containsString("Not done yet: String on")));
    sending("officer").get("/api/rigs/{id}", rig).then().body("state", equalTo("in-the-workshop"));
  }

  @Test
  void aStepOutOfItsOrder_isRefused() {
    int rig = aNewRig();
    sending("officer").post("/api/rigs/{id}/set-ups", rig).then().statusCode(200);

    sending("officer")
        .body(Map.of("stepsDone", "brace"))
        .put("/api/rigs/{id}/set-ups/current", rig)
        .then()
        .statusCode(422)
        .body("errors[0].message", containsString("The right limb up"));
  }

  @Test
  void aVolunteerWithoutThePermit_neitherAssemblesNorSetsTiller() {
    Map<String, String> parts =
        Map.of("body", fixture.aOnePieceBow(48).code(), "string", fixture.aString(48).code());
    sending("volunteer")
        .body(parts)
        .post("/api/rigs")
        .then()
        .statusCode(422)
        .body("errors[0].message", containsString("permit"));
    int rig = aNewRig();
    sending("volunteer").post("/api/rigs/{id}/set-ups", rig).then().statusCode(200);

    sending("volunteer")
        .body(EVERYTHING)
        .put("/api/rigs/{id}/set-ups/current", rig)
        .then()
        .statusCode(422)
        .body(
            "errors[0].message", containsString("\"Tiller\" is for someone who holds the permit"));
  }

  @Test
  void theCommittee_readsAndChangesNothing() {
    int rig = aNewRig();

    sending("committee").get("/api/rigs/{id}", rig).then().statusCode(200);
    sending("committee").get("/api/rigs").then().statusCode(200);
    sending("committee").body(EVERYTHING).post("/api/rigs").then().statusCode(403);
    sending("committee").body("{}").put("/api/rigs/{id}/parts", rig).then().statusCode(403);
    sending("committee").post("/api/rigs/{id}/set-ups", rig).then().statusCode(403);
    sending("committee")
        .body("{}")
        .put("/api/rigs/{id}/set-ups/current", rig)
        .then()
        .statusCode(403);
    sending("committee")
        .body("{}")
        .post("/api/rigs/{id}/set-ups/current/finish", rig)
        .then()
        .statusCode(403);
    sending("committee").body("{}").post("/api/rigs/{id}/dissolve", rig).then().statusCode(403);
  }

  @Test
  void anotherString_waitsForANewSetUp_andAnOpenOneBeginsAgain() {
    Laid riser = fixture.aRiser("RIGHT", 25);
    Laid limbs = fixture.limbs("MEDIUM", 22);
    Laid old = fixture.aString(68);
    Laid fresh = fixture.aString(68);
    int rig = id(assemble(riser, limbs, old));
    sending("officer").post("/api/rigs/{id}/set-ups", rig).then().statusCode(200);
    sending("officer")
        .body(EVERYTHING)
        .put("/api/rigs/{id}/set-ups/current", rig)
        .then()
        .statusCode(200);

    sending("volunteer")
        .body(Map.of("body", riser.code(), "limbs", limbs.code(), "string", fresh.code()))
        .put("/api/rigs/{id}/parts", rig)
        .then()
        .statusCode(200)
        .body("parts.code", contains(riser.code(), limbs.code(), fresh.code()))
        .body("openSetUp.stepsDone", hasSize(0))
        .body("openSetUp.figures.brace", nullValue());
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE item_id = ?1 AND until_at IS NOT NULL", old.id()));
  }

  private record Parts(Laid riser, Laid limbs, Laid string) {
    Map<String, Object> with(Laid other, String on) {
      return Map.of("body", riser.code(), "limbs", limbs.code(), "string", other.code(), "on", on);
    }
  }

  private Parts partsOfA68InchBow() {
    return new Parts(fixture.aRiser("RIGHT", 25), fixture.limbs("MEDIUM", 22), fixture.aString(68));
  }

  private static ValidatableResponse change(long rig, Map<String, Object> parts) {
    return sending("officer").body(parts).put("/api/rigs/{id}/parts", rig).then();
  }

  @Test
  void aChangeTypedInLate_happenedOnItsDay() {
    Parts parts = partsOfA68InchBow();
    Laid fresh = fixture.aString(68);
    long rig = fixture.assembled(parts.riser(), parts.limbs(), parts.string());
    fixture.setUp(rig);

    change(rig, parts.with(fresh, "2099-01-01"))
        .statusCode(422)
        .body("errors.field", contains("on"))
        .body("errors.message", contains("That day is still to come."));
    change(rig, parts.with(fresh, "2026-03-03"))
        .statusCode(200)
        .body("state", equalTo("in-the-workshop"));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting o JOIN fitting n ON n.from_at = o.until_at"
                + " WHERE o.item_id = ?1 AND n.item_id = ?2 AND n.from_at LIKE '2026-03-03T%'",
            parts.string().id(), fresh.id()));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM bowstring WHERE id = ?1 AND first_used = '2026-03-03'",
            fresh.id()));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM story s JOIN story_about a ON a.story_id = s.id"
                + " WHERE a.item_id = ?1 AND s.happened_at LIKE '2026-03-03T%'",
            fresh.id()));
  }

  @Test
  void aChange_isNotDatedBeforeWhatIsKnownOfTheBow() {
    Parts parts = partsOfA68InchBow();
    Laid fresh = fixture.aString(68);
    long rig = fixture.assembled(parts.riser(), parts.limbs(), parts.string());
    refusedOn(rig, parts.with(fresh, "2026-01-01"), "Parts of the bow were changed on");
    fixture.setUp(rig);
    refusedOn(rig, parts.with(fresh, "2026-01-01"), "The bow was set up on Fri 2 Jan 2026.");
    fixture.change(
        "INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed,"
            + " verdict) VALUES (?1, 'LOOK', '2026-03-10T22:30:00.000Z',"
            + " '2026-03-10T22:30:00.000Z', 1, 1, 'FIT')",
        rig);
    refusedOn(rig, parts.with(fresh, "2026-03-09"), "The bow was checked on Tue 10 Mar 2026.");
    long loan = fixture.lend(rig);
    fixture.change(
        "UPDATE loan_line SET out_at = '2026-04-01T17:00:00.000Z' WHERE loan_id = ?1", loan);
    refusedOn(rig, parts.with(fresh, "2026-03-31"), "The bow was lent on Wed 1 Apr 2026.");
    fixture.change(
        "UPDATE loan_line SET back_at = '2026-04-08T22:00:00.000Z', outcome = 'BACK'"
            + " WHERE loan_id = ?1",
        loan);
    refusedOn(rig, parts.with(fresh, "2026-04-07"), "The bow was received on Wed 8 Apr 2026.");
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE item_id = ?1 AND until_at IS NULL",
            parts.string().id()));

    change(rig, parts.with(fresh, "2026-04-08")).statusCode(200);
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE item_id = ?1 AND from_at ="
                + " '2026-04-08T22:00:00.001Z'",
            fresh.id()),
        "the evening it was received, just after");
  }

  @Test
  void aChange_isNotDatedBeforeTheNewPartWasFree() {
    Parts parts = partsOfA68InchBow();
    Laid fresh = fixture.aString(68);
    long rig = fixture.assembled(parts.riser(), parts.limbs(), parts.string());
    Parts elsewhere = partsOfA68InchBow();
    long other = fixture.assembled(elsewhere.riser(), elsewhere.limbs(), fresh);
    fixture.change("UPDATE item SET bought_on = '2026-01-10' WHERE id = ?1", fresh.id());
    fixture.change(
        "UPDATE fitting SET until_at = '2026-04-01T10:00:00.000Z' WHERE rig_id = ?1 AND item_id ="
            + " ?2",
        other,
        fresh.id());
    refusedOn(
        rig,
        parts.with(fresh, "2026-03-20"),
        "What goes on was still fitted to another rig on Wed 1 Apr 2026.");
    fixture.change(
        "UPDATE fitting SET from_at = '2025-01-01T10:00:00.000Z', until_at ="
            + " '2025-02-01T10:00:00.000Z' WHERE rig_id = ?1 AND item_id = ?2",
        other,
        fresh.id());
    refusedOn(
        rig, parts.with(fresh, "2026-01-09"), "What goes on was only bought on Sat 10 Jan 2026.");
    change(rig, parts.with(fresh, "2026-03-20")).statusCode(200);
  }

  private static void refusedOn(long rig, Map<String, Object> parts, String message) {
    change(rig, parts)
        .statusCode(422)
        .body("errors.field", contains("on"))
        .body("errors.message", contains(containsString(message)));
  }

  @Test
  void aRigAssembledOnAnEarlierDay_isOneSinceThen() {
    Parts parts = partsOfA68InchBow();
    fixture.change("UPDATE item SET bought_on = '2026-02-01' WHERE id = ?1", parts.string().id());
    assemble(parts.with(parts.string(), "2026-01-31"))
        .statusCode(422)
        .body("errors.field", contains("on"));
    int rig = id(assemble(parts.with(parts.string(), "2026-02-03")));
    assertEquals(
        4,
        fixture.number(
            "SELECT (SELECT count(*) FROM rig WHERE id = ?1 AND assembled_at LIKE '2026-02-03T%')"
                + " + (SELECT count(*) FROM fitting WHERE rig_id = ?1 AND from_at LIKE"
                + " '2026-02-03T%')",
            rig));
  }

  // ---- correcting the record

  private static ValidatableResponse correct(long rig, Map<String, Object> found) {
    return sending("volunteer").body(found).post("/api/rigs/{id}/corrections", rig).then();
  }

  @Test
  void aStringThatIsOnAnotherBow_isPutThereInTheRecord_andBothBowsTellIt() {
    Parts here = partsOfA68InchBow();
    Parts there = partsOfA68InchBow();
    long rig = fixture.assembled(here.riser(), here.limbs(), here.string());
    long other = fixture.assembled(there.riser(), there.limbs(), there.string());
    fixture.setUp(rig);
    fixture.setUp(other);

    correct(rig, Map.of("found", there.string().code()))
        .statusCode(200)
        .body("state", equalTo("in-the-workshop"))
        .body(
            "parts.code",
            contains(here.riser().code(), here.limbs().code(), there.string().code()));
    sending("officer")
        .get("/api/rigs/{id}", other)
        .then()
        .body("parts.code", contains(there.riser().code(), there.limbs().code()))
        .body("state", equalTo("in-the-workshop"));
    assertEquals(
        0,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE item_id = ?1 AND until_at IS NULL",
            here.string().id()));
    assertEquals(
        2,
        fixture.number(
            "SELECT count(DISTINCT a.rig_id) FROM story s JOIN story_about a ON a.story_id = s.id"
                + " WHERE a.rig_id IN (?1, ?2) AND s.sentence LIKE 'Record corrected: %'",
            rig, other));
  }

  @Test
  void twoStringsThatWereExchanged_areExchangedInTheRecord() {
    Parts here = partsOfA68InchBow();
    Parts there = partsOfA68InchBow();
    long rig = fixture.assembled(here.riser(), here.limbs(), here.string());
    long other = fixture.assembled(there.riser(), there.limbs(), there.string());

    correct(rig, Map.of("found", there.string().code(), "exchanged", true)).statusCode(200);

    sending("officer")
        .get("/api/rigs/{id}", other)
        .then()
        .body("parts.code", hasItem(here.string().code()));
  }

  @Test
  void theRecord_isNotCorrectedIntoWhatCannotBe() {
    Parts here = partsOfA68InchBow();
    long rig = fixture.assembled(here.riser(), here.limbs(), here.string());

    Parts lent = partsOfA68InchBow();
    long out = fixture.assembled(lent.riser(), lent.limbs(), lent.string());
    fixture.setUp(out);
    fixture.lend(out);
    correct(rig, Map.of("found", lent.string().code()))
        .statusCode(422)
        .body("errors.message", hasItem(containsString("Receive it first.")));

    Laid withdrawn = fixture.aString(68);
    fixture.withdraw(withdrawn, "frayed");
    correct(rig, Map.of("found", withdrawn.code()))
        .statusCode(422)
        .body("errors.message", hasItem(containsString("is withdrawn since")));

    correct(rig, Map.of("found", fixture.aString(62).code()))
        .statusCode(422)
        .body("errors.message", hasItem(containsString("Put it right, or withdraw both.")));
    correct(rig, Map.of("found", fixture.aString(68).code(), "exchanged", true))
        .statusCode(422)
        .body("errors.field", contains("exchanged"));
    correct(rig, Map.of("found", here.string().code())).statusCode(422);
    correct(rig, Map.of("found", fixture.aRiser("RIGHT", 25).code()))
        .statusCode(422)
        .body("errors.message", hasItem(containsString("A rig goes by its riser")));

    Parts there = partsOfA68InchBow();
    fixture.assembled(there.riser(), there.limbs(), there.string());
    correct(rig, Map.of("found", there.limbs().code()))
        .statusCode(422)
        .body("errors.message", hasItem(containsString("permit for limb")));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE item_id = ?1 AND rig_id = ?2 AND until_at IS NULL",
            here.string().id(),
            rig));
  }

  @Test
  void changingAPartDuringALoan_keepsTheLoan() {
    Laid riser = fixture.aRiser("RIGHT", 25);
    Laid limbs = fixture.limbs("MEDIUM", 22);
    Laid old = fixture.aString(68);
    Laid fresh = fixture.aString(68);
    long rig = fixture.assembled(riser, limbs, old);
    fixture.setUp(rig);
    long loan = fixture.lend(rig);

    sending("officer")
        .body(Map.of("body", riser.code(), "limbs", limbs.code(), "string", fresh.code()))
        .put("/api/rigs/{id}/parts", rig)
        .then()
        .statusCode(200)
        .body("loanId", equalTo((int) loan))
        .body("state", equalTo("on-loan"));

    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND item_id = ?2 AND outcome ="
                + " 'CHANGED'",
            loan,
            old.id()));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND item_id = ?2 AND back_at IS"
                + " NULL",
            loan,
            fresh.id()));
    sending("officer")
        .body("{}")
        .post("/api/rigs/{id}/dissolve", rig)
        .then()
        .statusCode(422)
        .body("errors[0].message", equalTo("This rig is on loan. Receive it first."));
  }

  @Test
  void aStaleForm_isRefusedAndChangesNothing() {
    Laid riser = fixture.aRiser("RIGHT", 25);
    Laid limbs = fixture.limbs("MEDIUM", 22);
    int rig = id(assemble(riser, limbs, fixture.aString(68)));
    int seen = sending("officer").get("/api/rigs/{id}", rig).then().extract().path("version");
    Laid first = fixture.aString(68);
    Laid second = fixture.aString(68);
    Map<String, Object> parts =
        Map.of("body", riser.code(), "limbs", limbs.code(), "version", seen);

    sending("officer")
        .body(with(parts, first))
        .put("/api/rigs/{id}/parts", rig)
        .then()
        .statusCode(200);
    sending("officer")
        .body(with(parts, second))
        .put("/api/rigs/{id}/parts", rig)
        .then()
        .statusCode(409)
        .body("detail", containsString("Someone else changed this rig"));
    sending("officer").get("/api/rigs/{id}", rig).then().body("parts.code", hasItem(first.code()));
  }

  private static Map<String, Object> with(Map<String, Object> parts, Laid string) {
    Map<String, Object> all = new HashMap<>(parts);
    all.put("string", string.code());
    return all;
  }

  @Test
  void aRigTakenApart_isGoneAndItsPartsAreLoose() {
    Laid riser = fixture.aRiser("RIGHT", 25);
    int rig = id(assemble(riser, fixture.limbs("MEDIUM", 22), fixture.aString(68)));

    sending("officer").body("{}").post("/api/rigs/{id}/dissolve", rig).then().statusCode(204);

    sending("officer").get("/api/rigs/{id}", rig).then().statusCode(404);
    sending("officer")
        .body("{}")
        .post("/api/rigs/{id}/dissolve", rig)
        .then()
        .statusCode(422)
        .body("errors[0].message", containsString("taken apart already"));
    assemble(riser, fixture.limbs("LONG", 22), fixture.aString(70)).statusCode(201);
  }

  @Test
  void theList_isPagedAndFiltered() {
    aNewRig();

    sending("officer")
        .queryParam("size", 3)
        .get("/api/rigs")
        .then()
        .statusCode(200)
        .body("items", hasSize(3))
        .body("size", equalTo(3))
        .body("total", notNullValue());
    sending("officer")
        .queryParam("state", "in-the-workshop")
        .queryParam("bowLength", 68)
        .queryParam("size", 200)
        .get("/api/rigs")
        .then()
        .body("items.state", everyItem(equalTo("in-the-workshop")))
        .body("items.bowLengthIn", everyItem(equalTo(68)));
    sending("officer")
        .queryParam("state", "tired")
        .get("/api/rigs")
        .then()
        .statusCode(422)
        .body("errors.field", contains("state"));
  }
}
