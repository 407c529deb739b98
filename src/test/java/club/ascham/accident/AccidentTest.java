package club.ascham.accident;

import static club.ascham.web.Program.as;
import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fleet.Rack;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.store.Rows;
import club.ascham.store.StatementCount;
import club.ascham.story.Seal;
import club.ascham.story.SealedEntries;
import club.ascham.story.VerifyRecord;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** After an accident: what was in hand is withdrawn, kept as it is, and told whole. */
@QuarkusTest
class AccidentTest {
  private final List<Rack.Hung> hung = new ArrayList<>();

  private Rack.Hung aRig() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    hung.add(rig);
    return rig;
  }

  @AfterEach
  void putAway() {
    rack.putAway(hung);
  }

  private static final String WORDS = "The lower limb broke at full draw; a cut on the forearm.";

  @Inject Rack rack;
  @Inject Rows rows;
  @Inject ClubTime time;
  @Inject SealedEntries sealed;
  @Inject VerifyRecord verifyRecord;

  private static Response post(String path, Map<String, ?> body) {
    return sending("officer").body(body).post(path);
  }

  private static ValidatableResponse get(String who, String path) {
    return as(who).get(path).then().statusCode(200);
  }

  private long told(Map<String, ?> body) {
    return post("/api/accidents", body).then().statusCode(201).extract().jsonPath().getLong("id");
  }

  private boolean isWithdrawn(ItemId item) {
    return rows.number(
            "SELECT count(*) FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL", item)
        == 1;
  }

  @Test
  void allThatWasInThatPersonsHands_isWithdrawn_byThePressOnTheLoansPage() {
    Rack.Hung rig = aRig();
    LoanId loan = rack.lend(rig, "Ismay Thorne", time.today().plusDays(9));
    rack.withdraw(rig.string(), "A strand is cut.");
    long before = rows.number("SELECT max(id) FROM withdrawal");
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/loans/" + loan.value())
        .then()
        .body(containsString("/accidents/new?loan=" + loan.value()));
    officer
        .get("/accidents/new?loan=" + loan.value())
        .then()
        .statusCode(200)
        .body(containsString(rig.limbsCode()), containsString("People first"));
    Map<String, String> form = new HashMap<>(Map.of("loan", "" + loan.value(), "words", "x"));
    officer.post("/accidents/new", form).then().statusCode(422).body(containsString("whole words"));
    form.put("words", WORDS);
    form.put("once-key", "accident-" + loan.value());
    String page =
        officer.post("/accidents/new", form).then().statusCode(303).extract().header("Location");
    assertEquals(
        page,
        officer.post("/accidents/new", form).header("Location"),
        "a second press is led to the first one’s accident");
    rig.parts().forEach(part -> assertTrue(isWithdrawn(part)));
    assertEquals(
        before,
        rows.number("SELECT max(id) FROM withdrawal WHERE item_id = ?1", rig.string()),
        "what was withdrawn before stays so");
    assertEquals(
        List.of("" + before),
        rows.texts(
            "SELECT k.withdrawal_id FROM accident_item k JOIN accident a ON a.id = k.accident_id"
                + " WHERE k.item_id = ?1 AND a.loan_id = ?2",
            rig.string(),
            loan));
    officer
        .get("/loans/" + loan.value())
        .then()
        .body(
            containsString("href=\"" + page.replaceAll("^https?://[^/]+", "")),
            containsString("do not shoot"));
    officer.get("/rigs/" + rig.id().value()).then().body(containsString("Kept as it is after"));
    officer.get("/").then().body(containsString("Ismay Thorne"), containsString("Ask back now"));
    assertEquals(List.of(), verifyRecord.verify().faults());
  }

  @Test
  void whatWasInHandThen_counts_andNotWhatIsNow() {
    Rack.Hung rig = aRig();
    LoanId loan = rack.lend(rig, "Marla Then", time.today().minusDays(2));
    rack.takeBack(loan);
    post("/api/accidents", Map.of("loan", loan.value(), "words", WORDS))
        .then()
        .statusCode(422)
        .body("errors[0].message", containsString("nothing that was in hand then"));
    String day = time.today().minusDays(2).toString();
    post("/api/accidents", Map.of("loan", loan.value(), "happenedOn", day, "words", WORDS))
        .then()
        .statusCode(422)
        .body("errors[0].field", equalTo("happenedTime"));
    post(
            "/api/accidents",
            Map.of(
                "loan",
                loan.value(),
                "happenedOn",
                time.today().plusDays(1).toString(),
                "happenedTime",
                "10:00",
                "words",
                WORDS))
        .then()
        .statusCode(422)
        .body("errors[0].field", equalTo("happenedOn"));
    long accident =
        told(
            Map.of(
                "rig",
                rig.id().value(),
                "happenedOn",
                day,
                "happenedTime",
                "11:15",
                "words",
                WORDS));
    get("officer", "/api/accidents/" + accident)
        .body("loan", equalTo((int) loan.value()))
        .body("who", equalTo("Marla Then"))
        .body("things.item", hasItems(rig.riserCode(), rig.limbsCode(), rig.stringCode()));
  }

  @Test
  void ofASession_theOneBowIsKept_andThePageAsksWhich() {
    Rack.Hung one = aRig();
    Rack.Hung other = aRig();
    LoanId session = rack.lendToSession(one, "Sidony Leader");
    for (ItemId part : other.parts()) {
      rows.change(
          "INSERT INTO loan_line (loan_id, item_id, rig_id, out_at) VALUES (?1, ?2, ?3, ?4)",
          session,
          part,
          other.id(),
          time.now().minus(1, ChronoUnit.HOURS));
    }
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/accidents/new?loan=" + session.value())
        .then()
        .body(
            containsString("Which bow?"), containsString("/accidents/new?rig=" + one.id().value()));
    post("/api/accidents", Map.of("loan", session.value(), "words", WORDS))
        .then()
        .statusCode(422)
        .body("errors[0].field", equalTo("rig"));
    told(Map.of("rig", one.id().value(), "words", WORDS));
    assertTrue(isWithdrawn(one.limbs()));
    assertTrue(!isWithdrawn(other.limbs()), "others go on shooting theirs");
  }

  @Test
  void arrowsOutOfAPool_areNoted_andThePoolIsNotWithdrawn() {
    Rack.Hung rig = aRig();
    LoanId loan = rack.lend(rig, "Arno Pool", time.today().plusDays(9));
    ItemId pool =
        new ItemId(
            rows.number("SELECT min(id) FROM kit_item WHERE pool = 1 AND arrow_count >= 12"));
    rows.change(
        "INSERT INTO loan_line (loan_id, item_id, out_at, arrow_count) VALUES (?1, ?2, ?3, 1)",
        loan,
        pool,
        time.now().minus(1, ChronoUnit.HOURS));
    long accident = told(Map.of("loan", loan.value(), "words", WORDS));
    assertTrue(!isWithdrawn(pool));
    get("officer", "/api/accidents/" + accident)
        .body("things.findAll { it.arrows == 1 }.size()", equalTo(1))
        .body("things.findAll { it.arrows == 1 }[0].withdrawal", nullValue());
  }

  @Test
  void theDocument_tellsTheWholePastOfEachThing_sealed_andWithoutNamesToOthers() {
    Rack.Hung rig = aRig();
    rack.takeBack(rack.lend(rig, "Earlier Emmet", time.today().minusDays(5)));
    rows.change(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, brace, brace_from,
               tiller_upper, tiller_lower, verdict)
        VALUES (?1, 'CHECK', ?2, ?2, 1, 1, 21500000, 'GRIP_THROAT', 19000000, 18600000, 'FIT')""",
        rig.id(),
        time.now().minus(3, ChronoUnit.HOURS));
    rows.change(
        "INSERT INTO verdict_line (check_id, place, kind, saying, said_of) SELECT max(id), 1,"
            + " 'REASON', 'AS_SAID', '[\"Fit to issue.\"]' FROM bow_check");
    rows.change(
        "INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result, found)"
            + " VALUES (?1, 'LIMB_INSPECTION', ?2, ?2, 1, 'PASSED', 'A scratch in the lacquer.')",
        rig.limbs(),
        time.now().minus(4, ChronoUnit.HOURS));
    rows.change(
        "INSERT INTO adjustment (rig_id, happened_at, recorded_at, done_by, twists_added) VALUES (?1, ?2, ?2, 1, 2)",
        rig.id(),
        time.now().minus(5, ChronoUnit.HOURS));
    long accident = told(Map.of("rig", rig.id().value(), "words", WORDS));
    String seal = sealed.newest().orElseThrow();
    get("officer", "/api/accidents/" + accident)
        .body("words", equalTo(WORDS))
        .body("seal", equalTo(seal))
        .body("things.size()", equalTo(3))
        .body(
            "things.find { it.kind == 'limbs' }.history.kind",
            hasItems(
                "fitted",
                "set up",
                "lent",
                "came back",
                "check",
                "inspected",
                "adjusted",
                "withdrawn"))
        .body("things.find { it.kind == 'limbs' }.history.who", hasItem("Earlier Emmet"))
        .body(
            "things.find { it.kind == 'limbs' }.record.sentence",
            hasItem("Accident " + accident + ": what was in hand is kept as it is."));
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/accidents/" + accident)
        .then()
        .statusCode(200)
        .body(containsString("<title>Accident " + accident))
        .body(containsString(WORDS), containsString("Earlier Emmet"))
        .body(containsString("record’s seal"), containsString(Seal.shortened(seal)))
        .body(containsString("Printed "), containsString("data-print"))
        .body(containsString("A scratch in the lacquer"), containsString("2 twists put in"))
        .body(containsString("Verdict fit: Fit to issue."));
    for (String name : List.of("volunteer", "committee")) {
      Visitor.signedInAs(name)
          .get("/accidents/" + accident)
          .then()
          .statusCode(200)
          .body(not(containsString("Emmet")), not(containsString("forearm")))
          .body(containsString("A scratch in the lacquer"));
      get(name, "/api/accidents/" + accident)
          .body(not(containsString("Emmet")), not(containsString("forearm")));
      get(name, "/api/accidents").body("items.id", hasItem((int) accident));
      Visitor visitor = Visitor.signedInAs(name);
      visitor.get("/me");
      visitor.post("/accidents/" + accident + "/end", Map.of("why", WORDS)).then().statusCode(403);
    }
    assertTrue(
        rows.texts("SELECT coalesce(why, '') FROM story").stream()
            .noneMatch(why -> why.contains("forearm")),
        "a story is read by everyone");
  }

  @Test
  void theDocument_needsTheSameFewStatements_howeverLongThePast() {
    Rack.Hung rig = aRig();
    long accident = told(Map.of("rig", rig.id().value(), "words", WORDS));
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/accidents/" + accident);
    long few = statements(officer, accident);
    for (int i = 0; i < 40; i++) {
      rack.check(rig, "WITHDRAW");
    }
    assertEquals(few, statements(officer, accident));
    assertTrue(few <= 20, few + " statements");
  }

  private static long statements(Visitor visitor, long accident) {
    long before = StatementCount.run();
    visitor.get("/accidents/" + accident).then().statusCode(200);
    return StatementCount.run() - before;
  }

  @Test
  void whoseThingsAreKept_isKeptByName_untilThatEnds() {
    Rack.Hung rig = aRig();
    LoanId loan = rack.lend(rig, "Nameless Nye", time.today().plusDays(9));
    long accident = told(Map.of("loan", loan.value(), "words", WORDS));
    rack.takeBack(loan);
    long borrower = rows.number("SELECT borrower_id FROM loan WHERE id = ?1", loan);
    post("/api/borrowers/" + borrower + "/erasure", Map.of())
        .then()
        .statusCode(409)
        .body("detail", containsString("end the keeping first"));
    post(
            "/api/accidents/" + accident + "/end",
            Map.of("why", "Nameless Nye and the expert saw it."))
        .then()
        .statusCode(200)
        .body("kept", equalTo(false));
    post("/api/borrowers/" + borrower + "/erasure", Map.of()).then().statusCode(200);
    assertEquals(
        List.of("[erased] and the expert saw it."),
        rows.texts("SELECT end_why FROM accident WHERE id = ?1", accident));
    assertEquals(List.of(), verifyRecord.verify().faults());
  }

  @Test
  void withoutALoanOrABow_thereIsNothingToTell() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/accidents/new").then().statusCode(404);
    officer.get("/accidents/new?rig=999999999").then().statusCode(404);
    post("/api/accidents", Map.of("words", WORDS))
        .then()
        .statusCode(422)
        .body("errors[0].field", equalTo("loan"));
    officer.get("/accidents/999999").then().statusCode(404);
    officer.get("/accidents").then().statusCode(200);
  }
}
