package club.ascham.askback;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fleet.Rack;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.store.Rows;
import club.ascham.store.StatementCount;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What is unsafe and in somebody's hands is seen wherever one looks at it. */
@QuarkusTest
class AskBackTest {
  @Inject Rack rack;
  @Inject Rows rows;
  @Inject ClubTime time;
  @Inject AskBack askBack;

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

  private static ValidatableResponse api(String who, String path) {
    return as(who).get(path).then().statusCode(200);
  }

  private LoanId lentToAJunior(Rack.Hung rig, String name) {
    LoanId loan = rack.lend(rig, name, time.today().plusDays(9));
    rows.change(
        "UPDATE borrower SET contact = '07700 900471', guardian = 'Mira Holt', age_band = 'UP_TO_12'"
            + " WHERE id = (SELECT borrower_id FROM loan WHERE id = ?1)",
        loan);
    return loan;
  }

  private boolean isAskedBack(LoanId loan) {
    return askBack.of(loan).isPresent();
  }

  @Test
  void recalledLimbsInAMembersHands_leaveTheirTraceEverywhere_untilTheyAreBack() {
    Rack.Hung rig = aRig();
    rack.called(rig.limbs(), "Alderfen", "Reedling", "AB-" + rig.limbs().value());
    LoanId loan = lentToAJunior(rig, "Wilhelmina Askback");
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/recall?serial=AB-" + rig.limbs().value());
    officer.get("/").then().body(not(containsString("Wilhelmina Askback")));
    officer
        .post(
            "/recall",
            Map.of(
                "serial",
                "AB-" + rig.limbs().value(),
                "item-" + rig.limbs().value(),
                "on",
                "why",
                "The maker’s notice: glue may let go."))
        .then()
        .statusCode(303);

    String why = "glue may let go";
    String home = officer.get("/").asString();
    assertTrue(home.indexOf("Ask back now") < home.indexOf("Goes out"), "it stands first");
    for (String said :
        List.of(
            "Wilhelmina Askback",
            "07700 900471",
            "parent or guardian: Mira Holt",
            rig.limbsCode(),
            rig.riserCode(),
            why,
            "href=\"/receive/" + loan.value() + "\"",
            "href=\"/loans/" + loan.value() + "\"",
            "href=\"/loans/" + loan.value() + "#lost\"")) {
      assertTrue(home.contains(said), said);
    }
    officer
        .get("/loans/" + loan.value())
        .then()
        .body(containsString("Ask it back now: do not shoot"), containsString(why));
    officer
        .get("/loans/" + loan.value() + "/slip")
        .then()
        .body(containsString("Do not shoot: bring it back"), containsString(why));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/").then().body(containsString("Wilhelmina Askback"), containsString("900471"));
    volunteer.get("/receive").then().body(containsString("Ask back now"), containsString(why));
    volunteer
        .get("/receive/" + loan.value())
        .then()
        .body(containsString("Lay it aside: not to be shot"), containsString(why));
    volunteer
        .get("/fleet/rows?list=ask-back")
        .then()
        .body(containsString("Wilhelmina Askback"), containsString(why));
    api("officer", "/api/ask-back")
        .body(
            "loans.find { it.loan == %d }.things[0].item".formatted(loan.value()),
            equalTo(rig.limbsCode()))
        .body(not(containsString("Wilhelmina")), not(containsString("900471")));
    api("officer", "/api/loans/" + loan.value())
        .body("askBack[0].item", equalTo(rig.limbsCode()))
        .body("askBack[0].because[0].matter", equalTo("withdrawn"))
        .body("contact", equalTo("07700 900471"))
        .body("guardian", equalTo("Mira Holt"));
    api("officer", "/api/fleet/rows?list=ask-back")
        .body("askBack.loan", hasItem((int) loan.value()));
    api("committee", "/api/ask-back").body(not(containsString("Wilhelmina")));

    officer.get("/receive/" + loan.value());
    for (ItemId part : rig.parts()) {
      long line =
          rows.number("SELECT id FROM loan_line WHERE loan_id = ?1 AND item_id = ?2", loan, part);
      officer.post("/receive/" + loan.value(), Map.of("back-" + line, "on")).then().statusCode(303);
    }
    officer.get("/").then().body(not(containsString("Wilhelmina Askback")));
    api("officer", "/api/ask-back").body("loans.loan", not(hasItem((int) loan.value())));
  }

  @Test
  void theCommittee_seesHowMany_andNoNames() {
    Rack.Hung rig = aRig();
    LoanId loan = lentToAJunior(rig, "Clarimond Hush");
    rack.withdraw(rig.limbs(), "A crack in the lower limb.");
    rack.withdraw(rig.riser(), "A split at the bush.");
    int things = Asked.things(askBack.now());
    Visitor committee = Visitor.signedInAs("committee");
    committee
        .get("/")
        .then()
        .body(containsString(things + " things are to be asked back"))
        .body(not(containsString("Clarimond")));
    committee.get("/fleet").then().body(containsString("to be asked back"));
    String rowsPage = committee.get("/fleet/rows?list=ask-back").asString();
    assertTrue(rowsPage.contains("A crack in the lower limb.") && rowsPage.contains("A split"));
    assertTrue(!rowsPage.contains("Clarimond") && !rowsPage.contains("900471"));
    String loanPage = committee.get("/loans/" + loan.value()).asString();
    assertTrue(loanPage.contains("do not shoot") && !loanPage.contains("Clarimond"));
    api("committee", "/api/loans/" + loan.value()).body(not(containsString("900471")));
    api("committee", "/api/fleet").body("askBack.count", equalTo(things));
    api("committee", "/api/fleet/rows?list=ask-back").body("count", equalTo(things));
  }

  @Test
  void anInspectionWhoseDayIsPast_isNotAskedBack_andOneThatFailedIs() {
    Rack.Hung rig = aRig();
    LoanId loan = lentToAJunior(rig, "Osric Vane");
    rack.neverInspected(rig.riser());
    assertEquals(false, isAskedBack(loan), "it stays in when it is back, and that is soon enough");
    rows.change(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result, found)
        VALUES (?1, 'RISER_INSPECTION', ?2, ?2, 1, 'FAILED', 'A line at the bush.')""",
        rig.riser(),
        time.now());
    assertTrue(isAskedBack(loan));
  }

  @Test
  void aDangerousReport_isAskedBack_andAHarmlessOneIsNot() {
    Rack.Hung rig = aRig();
    LoanId loan = lentToAJunior(rig, "Petronel Moss");
    report(rig, false);
    assertEquals(false, isAskedBack(loan));
    report(rig, true);
    assertTrue(isAskedBack(loan));
  }

  private void report(Rack.Hung rig, boolean dangerous) {
    rows.change(
        """
        INSERT INTO report (rig_id, told_at, happened_at, recorded_at, told_to, part_known, dangerous, words)
        VALUES (?1, 'BOW', ?2, ?2, 1, 1, ?3, 'It clicks when it is drawn.')""",
        rig.id(),
        time.now(),
        dangerous);
    rows.change(
        "INSERT INTO report_part (report_id, item_id) SELECT max(id), ?1 FROM report", rig.limbs());
  }

  @Test
  void readingsThatChange_areAskedBack_whereTheyKeepTheBowIn() {
    Rack.Hung rig = aRig();
    LoanId loan = lentToAJunior(rig, "Hesper Lyle");
    rows.change(
        """
        INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause)
        VALUES (?1, 'LIMB_INSPECTION', ?2, 1, 'Its readings change by more than readers differ.', 0, 'CHANGING')""",
        rig.limbs(),
        time.now());
    assertEquals(false, isAskedBack(loan));
    rows.change("UPDATE upkeep_task SET blocks = 1 WHERE item_id = ?1", rig.limbs());
    assertTrue(isAskedBack(loan));
  }

  @Test
  void aSessionsLeader_isNamed_andItsReturnPageSaysSo() {
    Rack.Hung rig = aRig();
    LoanId session = rack.lendToSession(rig, "Tancred Leader");
    rack.withdraw(rig.string(), "Two strands are cut.");
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/").then().body(containsString("Tancred Leader"), containsString("Two strands"));
    volunteer
        .get("/sessions/" + session.value())
        .then()
        .body(containsString("Lay it aside"), containsString("Two strands"));
  }

  @Test
  void aLateLoan_saysHowToReachTheBorrower_toThoseWhoLend() {
    LoanId loan = rack.lend(aRig(), "Late Larkin", time.today().minusDays(900));
    rows.change(
        "UPDATE borrower SET contact = '07700 900999' WHERE id = (SELECT borrower_id FROM loan WHERE id = ?1)",
        loan);
    Visitor.signedInAs("volunteer").get("/").then().body(containsString("07700 900999"));
    Visitor.signedInAs("officer").get("/").then().body(containsString("07700 900999"));
    Visitor.signedInAs("committee").get("/").then().body(not(containsString("07700 900999")));
  }

  @Test
  void thePages_needTheSameFewStatements_howeverMuchIsAskedBack() {
    Visitor officer = Visitor.signedInAs("officer");
    List<Rack.Hung> rigs = new ArrayList<>(List.of(unsafeLoan(0)));
    List<String> pages = List.of("/", "/receive", "/fleet", "/fleet/rows?list=ask-back");
    pages.forEach(officer::get);
    List<Long> few = pages.stream().map(page -> statements(officer, page)).toList();
    for (int i = 1; i < 40; i++) {
      rigs.add(unsafeLoan(i));
    }
    assertTrue(askBack.now().size() >= 40);
    List<Long> many = pages.stream().map(page -> statements(officer, page)).toList();
    rack.clear(rigs);
    assertEquals(few, many);
  }

  private Rack.Hung unsafeLoan(int number) {
    Rack.Hung rig = aRig();
    rack.lend(rig, "Someone " + number, time.today().plusDays(3));
    rack.withdraw(rig.limbs(), "Number " + number + ".");
    return rig;
  }

  private static long statements(Visitor visitor, String page) {
    long before = StatementCount.run();
    visitor.get(page).then().statusCode(200);
    return StatementCount.run() - before;
  }
}
