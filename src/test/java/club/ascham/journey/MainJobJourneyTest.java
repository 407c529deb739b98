package club.ascham.journey;

import static club.ascham.web.Program.sending;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.store.Rows;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The main job, by three people at a real browser, with the inputs it takes. */
@QuarkusTest
@Order(1)
class MainJobJourneyTest {
  private static final int ISSUE_AT_MOST = 12;
  private static final int RECEIVE_AT_MOST = 3;
  private static final int CHECK_AT_MOST = 10;
  private static final int IN_A_ROW = 10;

  @TestHTTPResource String address;
  @Inject Rows rows;
  @Inject ClubFixture fixture;

  /** What the set-up in force measured. */
  record Figures(Length brace, Length upper, Length lower) {}

  @ParameterizedTest(name = "script {0}")
  @CsvSource({"true", "false"})
  void aBeginnersKit_goesOut_comesBack_isChecked_andIsReadyAgain(boolean script) {
    long loan = issue(script);
    long rig =
        rows.number("SELECT rig_id FROM loan_line WHERE loan_id = ?1 AND rig_id IS NOT NULL", loan);
    receive(script, loan);
    check(script, rig);
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM rig_standing WHERE rig_id = ?1 AND state_if_inspected = 'READY'",
            rig));
  }

  private long issue(boolean script) {
    // Others may have taken every bow of the demo that suits.
    fixture.aBowReadyToGoOut();
    String name = "Wren Tillage " + System.nanoTime();
    try (Person officer = at(1280, ColorScheme.LIGHT, script).signIn("officer").open("/")) {
      officer.countFromHere();
      Page page = officer.page();
      officer.press(page.locator("main a[href='/issue']").first());
      officer.choose(page.locator("input[name=hand][value=right]"));
      officer.choose(page.locator("input[name=dominantEye][value=right]"));
      officer.fill(page.locator("#drawLength"), "27 in");
      officer.choose(page.locator("input[name=ageBand][value=adult]"));
      officer.press(page.locator("main form[method=get] button.button").first());
      officer.fill(page.locator("#name"), name);
      officer.fill(page.locator("#contact"), "wren@example.org");
      officer.choose(page.locator("input[name=dueWeeks][value='6']"));
      assertFalse(
          page.locator("input[name=briefingGiven]").isChecked(), "nobody is briefed unasked");
      officer.choose(page.locator("input[name=termsAccepted]"));
      officer.choose(page.locator("input[name=briefingGiven]"));
      officer.keep("main-job-issue");
      officer.press(page.locator("button:text-matches('^Issue ')"));
      assertTrue(page.url().contains("/loans/"), "issued: " + officer.words());
      assertTrue(officer.inputs() <= ISSUE_AT_MOST, officer.inputs() + " inputs to issue a kit");
      long loan = Long.parseLong(page.url().replaceAll(".*/loans/(\\d+).*", "$1"));
      assertEquals(List.of(), lackingAfter(loan));
      return loan;
    }
  }

  /** What an officer would have to come back for: nothing of it is left to a second visit. */
  private List<String> lackingAfter(long loan) {
    return rows.texts(
        """
        SELECT 'no briefing' FROM loan WHERE id = ?1 AND (briefed_at IS NULL OR briefed_by <> issued_by)
        UNION ALL SELECT 'not six weeks' FROM loan WHERE id = ?1
            AND julianday(due_on) - julianday(date(issued_at)) NOT BETWEEN 41 AND 43
        UNION ALL SELECT 'a deposit nobody took' FROM loan JOIN club
            WHERE loan.id = ?1 AND loan.deposit_minor <> club.deposit_minor
        UNION ALL SELECT 'no ' || k.kind FROM (SELECT 'ARROWS' AS kind UNION SELECT 'STRINGER' UNION SELECT 'TAB'
            UNION SELECT 'BRACER') k WHERE NOT EXISTS (SELECT 1 FROM loan_line x JOIN item i ON i.id = x.item_id
              WHERE x.loan_id = ?1 AND i.kind = k.kind)""",
        loan);
  }

  private void receive(boolean script, long loan) {
    try (Person volunteer =
        at(360, ColorScheme.DARK, script).signIn("volunteer").open("/receive")) {
      volunteer.countFromHere();
      volunteer.press(volunteer.page().locator("a.button[href='/receive/" + loan + "']"));
      volunteer.keep("main-job-receive");
      volunteer.press(
          volunteer.page().locator("button:has-text('Receive what is ticked')").first());
      assertTrue(volunteer.sees("all back"), volunteer.words());
      assertTrue(volunteer.inputs() <= RECEIVE_AT_MOST, volunteer.inputs() + " inputs to receive");
    }
  }

  private void check(boolean script, long rig) {
    Figures set =
        rows.one(
                Figures.class,
                """
                SELECT u.brace, u.tiller_upper AS upper, u.tiller_lower AS lower
                  FROM rig_parts p JOIN set_up u ON u.id = p.set_up_id WHERE p.rig_id = ?1""",
                rig)
            .orElseThrow();
    try (Person volunteer = at(360, ColorScheme.LIGHT, script).signIn("volunteer").open("/check")) {
      volunteer.countFromHere();
      Page page = volunteer.page();
      volunteer.press(page.locator("a.button[href='/check/" + rig + "']"));
      volunteer.choose(page.locator("input[name=allAsListed]"));
      page.locator("main .stack > .look")
          .all()
          .forEach(look -> volunteer.choose(look.locator("input[type=radio][value=fine]")));
      volunteer.fill(page.locator("#brace"), LengthText.exact(set.brace()));
      volunteer.fill(page.locator("#tillerUpper"), LengthText.exact(set.upper()));
      volunteer.fill(page.locator("#tillerLower"), LengthText.exact(set.lower()));
      volunteer.press("Save the check");
      assertTrue(volunteer.sees("Put back: ready"), volunteer.words());
      volunteer.keep("main-job-verdict");
      volunteer.press("Put back: ready");
      assertTrue(volunteer.inputs() <= CHECK_AT_MOST, volunteer.inputs() + " inputs to check");
    }
  }

  @Test
  void tenKitsInARow_areReceivedWithoutGoingHome() {
    List<Integer> loans = tenKitsIssued();
    try (Person volunteer = at(360, ColorScheme.LIGHT, true).signIn("volunteer").open("/receive")) {
      for (int loan : loans) {
        volunteer.countFromHere();
        volunteer.press(volunteer.page().locator("a.button[href='/receive/" + loan + "']"));
        volunteer.press(
            volunteer.page().locator("button:has-text('Receive what is ticked')").first());
        assertTrue(volunteer.sees("all back"), volunteer.words());
        assertTrue(
            volunteer.inputs() <= RECEIVE_AT_MOST, volunteer.inputs() + " inputs to receive");
        assertTrue(volunteer.page().url().contains("/receive"), "the queue stands there again");
        assertEquals(
            0,
            rows.number(
                "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL", loan),
            "loan " + loan + " is back");
      }
      volunteer.keep("main-job-ten-received");
    }
  }

  /** Over the API, so that the ten receipts are what takes the time. */
  private static List<Integer> tenKitsIssued() {
    Map<String, Object> archer =
        Map.of(
            "hand", "right", "drawLength", "27 in", "ageBand", "adult", "experience", "beginner");
    JsonPath fit = sending("officer").body(archer).post("/api/fit").jsonPath();
    List<Integer> rigs = new ArrayList<>(fit.<Integer>getList("rigs.rig"));
    rigs.addAll(fit.getList("unsuited.findAll { it.adviceOnly }.rig"));
    List<Integer> loans = new ArrayList<>();
    for (int rig : rigs.subList(0, IN_A_ROW)) {
      Map<String, Object> kit = new HashMap<>(archer);
      kit.put("rig", rig);
      kit.put("name", "Sedge Loam " + rig);
      kit.put("contact", "07700 900" + rig);
      kit.put("overrideWhy", "An evening of many.");
      kit.put("overrideCoach", "Bo Tarn");
      kit.put("termsAccepted", true);
      kit.put("briefingGiven", true);
      loans.add(
          sending("officer")
              .body(kit)
              .post("/api/loans")
              .then()
              .statusCode(201)
              .extract()
              .<Integer>path("id"));
    }
    return loans;
  }

  @Test
  void everyPage_isCalmLightAndAccessible() throws InterruptedException {
    long rig =
        rows.number("SELECT min(rig_id) FROM rig_standing WHERE state_if_inspected = 'READY'");
    long loan = rows.number("SELECT max(loan_id) FROM loan_line WHERE back_at IS NULL");
    String code =
        rows.texts("SELECT min(code) FROM item WHERE kind = 'STRING' AND retired_on IS NULL")
            .get(0);
    List<String> pages =
        List.of(
            "/",
            "/issue",
            "/issue?hand=right&drawLength=27&ageBand=adult&experience=beginner",
            "/loans",
            "/loans/" + loan,
            "/receive",
            "/check",
            "/check/" + rig,
            "/rigs",
            "/rigs/" + rig,
            "/rigs/new",
            "/register",
            "/items/" + code,
            "/sessions",
            "/sessions/new",
            "/upkeep",
            "/fleet",
            "/rules",
            "/people",
            "/me",
            "/recall",
            "/exchange",
            "/withdrawals");
    SideBySide.walk(
        (width, theme) -> {
          try (Person officer = at(width, theme, true).signIn("officer")) {
            for (String path : pages) {
              officer
                  .open(path)
                  .lookCarefully(
                      path.replaceAll("\\?.*", "-fit").replaceAll("[^a-z-]+", "_")
                          + "-"
                          + width
                          + "-"
                          + theme.name().toLowerCase());
            }
          }
        });
  }

  private Person at(int width, ColorScheme theme, boolean script) {
    return Person.at(address, width, theme, script);
  }
}
