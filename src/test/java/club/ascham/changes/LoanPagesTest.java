package club.ascham.changes;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.store.StatementCount;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class LoanPagesTest {
  @Inject ClubFixture fixture;
  @Inject ClubTime time;

  @Test
  void list_showsWhoIsLate() {
    fixture.lend(fixture.aBowReadyToGoOut(20), "Lou Waveney", "2026-02-01", "2026-02-05");
    Visitor.signedInAs("volunteer")
        .look("/loans", Map.of("q", "waveney"))
        .then()
        .statusCode(200)
        .body(containsString("Lou Waveney"))
        .body(containsString("class=\"late\""));
  }

  @Test
  void committee_readsLoansWithoutNames_andChangesNothing() {
    long loan =
        fixture.lend(fixture.aBowReadyToGoOut(20), "Mae Waveney", "2026-02-01", "2026-02-05");
    Visitor committee = Visitor.signedInAs("committee");
    committee
        .look("/loans", Map.of("show", "overdue", "q", "waveney"))
        .then()
        .statusCode(200)
        .body(containsString("Loan " + loan))
        .body(not(containsString("Mae Waveney")));
    committee
        .get("/loans/" + loan)
        .then()
        .statusCode(200)
        .body(not(containsString("Mae Waveney")))
        .body(not(containsString("07700 900001")));
    committee.get("/loans/" + loan + "/slip").then().statusCode(403);
    committee.get("/borrowers").then().statusCode(403);
    committee.get("/");
    for (String change : List.of("extend", "items", "lost")) {
      committee.post("/loans/" + loan + "/" + change, Map.of()).then().statusCode(403);
    }
  }

  @Test
  void loan_isExtendedFromItsPage_andAStaleFormIsRefused() {
    long loan =
        fixture.lend(fixture.aBowReadyToGoOut(20), "Ned Waveney", "2026-02-01", "2026-02-05");
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/loans/" + loan)
        .then()
        .body(containsString("name=\"version\" value=\"0\""))
        .body(containsString("name=\"dueWeeks\" value=\"4\""))
        .body(containsString("name=\"dueWeeks\" value=\"8\""));
    String due = time.today().plusDays(30).toString();
    Map<String, String> form = new HashMap<>(Map.of("dueOn", due, "version", "0"));
    assertEquals(303, officer.post("/loans/" + loan + "/extend", form).statusCode());
    form.put("dueOn", time.today().plusDays(60).toString());
    Response stale = officer.post("/loans/" + loan + "/extend", form);
    assertEquals(422, stale.statusCode());
    assertTrue(stale.asString().contains("Someone changed this loan meanwhile"));
    assertTrue(stale.asString().contains(form.get("dueOn")), "what was typed is kept");
  }

  @Test
  void wrongCode_standsAtItsField() {
    long loan =
        fixture.lend(fixture.aBowReadyToGoOut(20), "Ora Waveney", "2026-02-01", "2026-02-05");
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/loans/" + loan);
    Response refused = officer.post("/loans/" + loan + "/items", Map.of("item", "K-0000-0"));
    assertEquals(422, refused.statusCode());
    assertTrue(refused.asString().contains("id=\"item-error\""));
    assertTrue(refused.asString().contains("value=\"K-0000-0\""));
  }

  @Test
  void nothingTicked_isNotLost() {
    long loan =
        fixture.lend(fixture.aBowReadyToGoOut(20), "Pip Waveney", "2026-02-01", "2026-02-05");
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/loans/" + loan);
    Response refused =
        officer.post("/loans/" + loan + "/lost", Map.of("words", "fell into the river"));
    assertEquals(422, refused.statusCode());
    assertTrue(refused.asString().contains("Tick what is lost"));
    assertTrue(refused.asString().contains("fell into the river"));
  }

  @Test
  void borrowersPage_showsWhatTheyHave_andIsCorrected() {
    long loan =
        fixture.lend(fixture.aBowReadyToGoOut(20), "Ros Waveney", "2026-02-01", "2026-02-05");
    long borrower = fixture.number("SELECT borrower_id FROM loan WHERE id = ?1", loan);
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/borrowers/" + borrower)
        .then()
        .statusCode(200)
        .body(containsString("Loan " + loan));
    officer
        .look("/borrowers", Map.of("q", "ros wav"))
        .then()
        .body(containsString("/borrowers/" + borrower), not(containsString("q=ros")));
    officer
        .look("/loans", Map.of("q", "waveney", "show", "all"))
        .then()
        .body(containsString("Ros Waveney"), not(containsString("q=waveney")));
    Map<String, String> form =
        new HashMap<>(
            Map.of(
                "name", "Ros Waveney",
                "contact", "",
                "ageBand", "adult",
                "memberNo", "W-5",
                "version", "0"));
    Response refused = officer.post("/borrowers/" + borrower, form);
    assertEquals(422, refused.statusCode());
    assertTrue(refused.asString().contains("value=\"W-5\""));
    form.put("contact", "ros@example.org");
    assertEquals(303, officer.post("/borrowers/" + borrower, form).statusCode());
    Response stale = officer.post("/borrowers/" + borrower, form);
    assertEquals(422, stale.statusCode());
    assertTrue(stale.asString().contains("Someone saved first"));
  }

  @Test
  void addressOfNothing_isNotFound() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/loans/999999").then().statusCode(404);
    officer.get("/loans/999999/slip").then().statusCode(404);
    officer.get("/borrowers/999999").then().statusCode(404);
  }

  @Test
  void statements_areAsManyHoweverMuchTheClubLends() {
    String issue =
        "/issue?hand=right&drawLength=27 in&ageBand=adult&experience=beginner&rig="
            + fixture.aBowReadyToGoOut(20).id().value();
    long loan =
        fixture.lend(fixture.aBowReadyToGoOut(20), "Sid Waveney", "2026-02-01", "2026-02-05");
    Visitor officer = Visitor.signedInAs("officer");
    List<String> pages = List.of(issue, "/loans", "/loans/" + loan, "/borrowers");
    pages.forEach(officer::get);
    List<Long> before = pages.stream().map(page -> statements(officer, page)).toList();
    for (int i = 0; i < 5; i++) {
      fixture.aBowReadyToGoOut(20);
      fixture.arrows(29);
      fixture.lend(fixture.aBowReadyToGoOut(20), "Tam Waveney", "2026-02-01", "2026-02-05");
    }
    assertEquals(before, pages.stream().map(page -> statements(officer, page)).toList());
  }

  private static long statements(Visitor officer, String page) {
    long before = StatementCount.run();
    officer.get(page).then().statusCode(200);
    return StatementCount.run() - before;
  }
}
