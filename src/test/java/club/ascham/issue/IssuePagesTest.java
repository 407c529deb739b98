package club.ascham.issue;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class IssuePagesTest {
  private static final String PERSON =
      "/issue?hand=right&dominantEye=right&drawLength=27 in&ageBand=adult&experience=beginner";

  @Inject ClubFixture fixture;
  @Inject ClubTime time;

  @Test
  void page_asksAboutThePersonFirst() {
    Visitor.signedInAs("officer")
        .get("/issue")
        .then()
        .statusCode(200)
        .body(containsString("Which hand draws the string?"))
        .body(not(containsString("Shortest safe arrow")));
  }

  @Test
  void answers_showWhatSuits_andTheReadyRigs() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Visitor.signedInAs("officer")
        .get(PERSON)
        .then()
        .statusCode(200)
        .body(containsString("Shortest safe arrow"))
        .body(containsString("29 in · 737 mm"))
        .body(containsString("rig=" + rig.id().value()));
  }

  @Test
  void answerMissing_standsAtItsField_andTheOthersAreKept() {
    Visitor.signedInAs("officer")
        .get("/issue?hand=left&drawLength=&ageBand=adult&experience=improver")
        .then()
        .statusCode(422)
        .body(containsString("Measure the draw with a long arrow"))
        .body(containsString("value=\"left\" checked"))
        .body(containsString("value=\"improver\" checked"));
  }

  @Test
  void rigChosen_suggestsWhatGoesWithIt() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid stringer = fixture.aStringer(66, 68);
    Visitor.signedInAs("officer")
        .get(PERSON + "&rig=" + rig.id().value())
        .then()
        .statusCode(200)
        .body(containsString(stringer.code()))
        .body(containsString("name=\"termsAccepted\""));
  }

  @Test
  void theFirstRigThatSuits_isLaidOut_andAnotherIsOnePressAway() {
    fixture.aBowReadyToGoOut(20);
    fixture.aBowReadyToGoOut(20);
    Visitor.signedInAs("officer")
        .get(PERSON)
        .then()
        .statusCode(200)
        .body(containsString("aria-label=\"Choose "))
        .body(containsString("name=\"rig\" value="))
        .body(containsString(">Issue R-"));
  }

  @Test
  void dueBack_isFourSixOrEightWeeks_andNobodyIsBriefedUnasked() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    String page = Visitor.signedInAs("officer").get(PERSON + "&rig=" + rig.id().value()).asString();
    for (int weeks : new int[] {4, 6, 8}) {
      assertTrue(page.contains("name=\"dueWeeks\" value=\"" + weeks + "\""), page);
      assertTrue(page.contains(ClubTime.said(time.today().plusWeeks(weeks))));
    }
    assertTrue(page.contains("value=\"4\" checked"), "what the club usually does");
    assertTrue(page.contains("id=\"briefingGiven\" name=\"briefingGiven\" value=\"on\"><span>"));
    Map<String, String> form = form(rig);
    form.put("dueWeeks", "6");
    long loan = loanOf(officerAt(rig).post("/issue", form));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM loan WHERE id = ?1 AND due_on = ?2",
            loan,
            time.today().plusWeeks(6)));
  }

  @Test
  void whoBorrowedBefore_isNotAskedTheSameAgain() {
    long old = fixture.lend(fixture.aBowReadyToGoOut(20), "Wynn Ant", "2026-02-01", "2026-03-01");
    long borrower = fixture.number("SELECT borrower_id FROM loan WHERE id = ?1", old);
    Visitor.signedInAs("officer")
        .get("/issue?borrower=" + borrower)
        .then()
        .statusCode(200)
        .body(containsString("name=\"hand\" value=\"right\" checked"))
        .body(containsString("name=\"ageBand\" value=\"adult\" checked"))
        .body(containsString("value=\"711.2 mm\""));
  }

  @Test
  void kit_isIssued_withEachPartALineOfItsOwn() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid arrows = fixture.arrows(29);
    Laid pool = fixture.aPoolOfArrows(30, 20);
    Laid tab = fixture.aKitItem("TAB", "RIGHT", "M");
    Visitor officer = officerAt(rig);
    Map<String, String> form = form(rig);
    form.put("items.arrows", arrows.code());
    form.put("items.tab", tab.code());
    form.put("items.pool", pool.code());
    form.put("items.pool.count", "5");
    form.put("deposit", "20.00");
    form.put("depositHow", "cash");
    Response issued = officer.post("/issue", form);
    assertEquals(303, issued.statusCode(), issued.asString());
    long loan = loanOf(issued);
    assertEquals(6, lines(loan));
    assertEquals(
        5,
        fixture.number(
            "SELECT arrow_count FROM loan_line WHERE loan_id = ?1 AND item_id = ?2",
            loan,
            pool.id()));
    assertEquals(
        3,
        fixture.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND rig_id = ?2", loan, rig.id()));
    assertEquals(2000, fixture.number("SELECT deposit_minor FROM loan WHERE id = ?1", loan));
    assertEquals(
        0,
        fixture.number(
            "SELECT count(*) FROM story WHERE loan_id = ?1 AND sentence LIKE '%Harker%'", loan),
        "a story names no borrower");
    officer
        .get("/loans/" + loan)
        .then()
        .statusCode(200)
        .body(containsString("Nell Harker"))
        .body(containsString(tab.code()));
    officer
        .get("/loans/" + loan + "/slip")
        .then()
        .statusCode(200)
        .body(containsString("8 1/2 in · 216 mm"))
        .body(containsString("Never loose without an arrow"));
  }

  @ParameterizedTest(name = "{0}={1}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "name||A name, please",
        "contact||One way to reach them",
        "contact|k|how are they reached",
        "termsAccepted||accepts the terms",
        "briefingGiven||before it was shown",
        "dueWeeks|99|dueWeeks-error",
        "dueOn|2026-01-01|before it is issued",
        "issuedOn|2099-01-01|still to come",
        "deposit|lots|amount",
        "items.tab|K-0000-0|nobody",
        "drawLength|8 in|draw length",
        "ageBand|up-to-12|parent or guardian"
      })
  void wrongAnswer_keepsWhatWasTyped_andChangesNothing(String field, String value, String says) {
    LaidBow rig = fixture.aBowReadyToGoOut(14);
    Map<String, String> form = form(rig);
    form.put("memberNo", "M-77");
    form.put(field, value == null ? "" : value);
    long before = fixture.number("SELECT count(*) FROM loan");
    Visitor officer = officerAt(rig);
    Response refused = officer.post("/issue", form);
    assertEquals(422, refused.statusCode());
    assertTrue(refused.asString().contains(says), says);
    if (!field.equals("drawLength")) {
      assertTrue(refused.asString().contains("value=\"M-77\""), "what was typed is kept");
    }
    assertEquals(before, fixture.number("SELECT count(*) FROM loan"));
  }

  @Test
  void arrowsTooShort_areRefused_whoeverAsks() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid arrows = fixture.arrows(28);
    Map<String, String> form = form(rig);
    form.put("items.arrows", arrows.code());
    form.put("overrideWhy", "they are all we have");
    refused(rig, form, "Too short: " + arrows.code());
  }

  @Test
  void arrowsTooLightForTheBow_areRefused_whoeverAsks() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid arrows = fixture.arrows(29);
    fixture.weigh(arrows, 60);
    Map<String, String> form = form(rig);
    form.put("items.arrows", arrows.code());
    form.put("overrideWhy", "they are all we have");
    refused(rig, form, "Too light: " + arrows.code() + " is 60 gr an arrow, where up to ");
    fixture.weigh(arrows, 300);
    Response issued = officerAt(rig).post("/issue", form);
    assertEquals(303, issued.statusCode());
  }

  @Test
  void arrowsChosen_showGrainsToThePound_andWhatIsNotKnownIsSaid() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid arrows = fixture.arrows(29);
    fixture.keepWith(arrows, rig.id());
    String page = PERSON + "&rig=" + rig.id().value();
    String unweighed = "The mass of " + arrows.code() + " is not recorded";
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(page).then().body(containsString(unweighed));
    fixture.weigh(arrows, 300);
    officer
        .get(page)
        .then()
        .body(containsString(arrows.code() + ": 300 gr, which is "))
        .body(containsString("International Bowhunting Organization"))
        .body(not(containsString(unweighed)));
    fixture.weigh(arrows, 60);
    officer.get(page).then().body(not(containsString(arrows.code())));
  }

  @Test
  void arrowsOfUnknownMass_goOut_withACalmWord() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Laid arrows = fixture.arrows(29);
    Map<String, String> form = form(rig);
    form.put("items.arrows", arrows.code());
    Visitor officer = officerAt(rig);
    long loan = loanOf(officer.post("/issue", form));
    officer
        .get("/loans/" + loan)
        .then()
        .body(containsString("The mass of " + arrows.code() + " is not recorded"));
  }

  @Test
  void bowTooHeavy_needsAReason_whichIsKept() {
    LaidBow rig = fixture.aBowReadyToGoOut(44);
    Map<String, String> form = form(rig);
    refused(rig, form, "To give it all the same, say why");
    form.put("overrideWhy", "has shot 40 lb for years");
    refused(rig, form, "Which coach agreed to this weight?");
    form.put("overrideCoach", "Bo Tarn");
    Response issued = officerAt(rig).post("/issue", form);
    assertEquals(303, issued.statusCode());
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM loan WHERE id = ?1 AND override_why = 'has shot 40 lb for years'"
                + " AND override_coach = 'Bo Tarn'",
            loanOf(issued)));
  }

  @Test
  void missingReason_isAskedForInTheSameRoundAsAMissingName() {
    LaidBow rig = fixture.aBowReadyToGoOut(44);
    Map<String, String> form = form(rig);
    form.put("name", "");
    refused(rig, form, "A name, please");
    refused(rig, form, "To give it all the same, say why");
  }

  @Test
  void rigOfTheOtherHand_isRefused_evenWithAReason() {
    LaidBow rig = fixture.aBowReadyToGoOut("LEFT", 20);
    Map<String, String> form = form(rig);
    form.put("overrideWhy", "no other is left");
    refused(rig, form, "drawing with the left hand");
  }

  @Test
  void rigWithAWithdrawnPart_isRefused() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    fixture.withdraw(rig.limbs(), "crack in the lower limb");
    refused(rig, form(rig), "is withdrawn");
  }

  @Test
  void rigThatCameBack_isToBeCheckedFirst() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    fixture.allBack(fixture.lend(rig, "Hal Bure", "2026-02-01", "2026-03-01"), "2026-03-01");
    refused(rig, form(rig), "Until it is checked and put back.");
  }

  @Test
  void doubleSubmit_makesOneLoan() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Visitor officer = officerAt(rig);
    Map<String, String> form = form(rig);
    long first = loanOf(officer.post("/issue", form));
    long second = loanOf(officer.post("/issue", form));
    assertEquals(first, second);
    assertEquals(
        1, fixture.number("SELECT count(*) FROM loan_line WHERE item_id = ?1", rig.body().id()));
  }

  @Test
  void twoBrowsersAtOnce_oneSuccessAndOneClearRefusal() throws Exception {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Visitor one = officerAt(rig);
    Visitor other = officerAt(rig);
    ExecutorService both = Executors.newFixedThreadPool(2);
    try {
      Future<Response> first = both.submit(() -> one.post("/issue", form(rig)));
      Future<Response> second = both.submit(() -> other.post("/issue", form(rig)));
      List<Response> answers = List.of(first.get(), second.get());
      assertEquals(1, answers.stream().filter(a -> a.statusCode() == 303).count());
      Response refusal =
          answers.stream().filter(a -> a.statusCode() == 422).findFirst().orElseThrow();
      assertTrue(refusal.asString().contains("is on loan"));
    } finally {
      both.shutdown();
    }
    assertEquals(3, fixture.number("SELECT count(*) FROM loan_line WHERE rig_id = ?1", rig.id()));
  }

  @Test
  void scriptInAName_isShownAsText() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Map<String, String> form = form(rig);
    form.put("name", "<script>alert(1)</script>");
    Visitor officer = officerAt(rig);
    long loan = loanOf(officer.post("/issue", form));
    long borrower = fixture.number("SELECT borrower_id FROM loan WHERE id = ?1", loan);
    for (String page :
        List.of("/loans/" + loan, "/loans/" + loan + "/slip", "/loans?borrower=" + borrower)) {
      officer
          .get(page)
          .then()
          .statusCode(200)
          .body(containsString("&lt;script&gt;alert(1)&lt;/script&gt;"))
          .body(not(containsString("<script>alert")));
    }
  }

  @Test
  void junior_borrowsWithAGuardian_andTheSamePersonIsKeptOnce() {
    LaidBow rig = fixture.aBowReadyToGoOut(14);
    Map<String, String> form = form(rig);
    form.put("ageBand", "from-13-to-14");
    form.put("drawLength", "24 in");
    form.put("name", "Junia Thurne");
    refused(rig, form, "parent or guardian");
    form.put("guardian", "Tess Thurne");
    long loan = loanOf(officerAt(rig).post("/issue", form));
    fixture.allBack(loan, time.today().plusDays(1).toString());

    LaidBow other = fixture.aBowReadyToGoOut(14);
    form.put("rig", Long.toString(other.id().value()));
    form.put("once-key", UUID.randomUUID().toString());
    assertEquals(303, officerAt(other).post("/issue", form).statusCode());
    assertEquals(1, fixture.number("SELECT count(*) FROM borrower WHERE name = 'Junia Thurne'"));
  }

  @Test
  void someoneWhoBorrowedBefore_isFound_andNeedsNoName() {
    LaidBow before = fixture.aBowReadyToGoOut(20);
    long old = fixture.lend(before, "Wilma Ant", "2026-02-01", "2026-03-01");
    long borrower = fixture.number("SELECT borrower_id FROM loan WHERE id = ?1", old);
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get(PERSON + "&rig=" + rig.id().value() + "&who=wilma")
        .then()
        .body(containsString("borrower=" + borrower));
    officer
        .get(PERSON + "&rig=" + rig.id().value() + "&borrower=" + borrower)
        .then()
        .body(containsString("Wilma Ant"))
        .body(containsString("has 1 open loan already"));
    Map<String, String> form = form(rig);
    form.put("borrower", Long.toString(borrower));
    form.remove("name");
    form.remove("contact");
    long loan = loanOf(officer.post("/issue", form));
    assertEquals(borrower, fixture.number("SELECT borrower_id FROM loan WHERE id = ?1", loan));
  }

  @Test
  void issueOfAnEarlierDay_isRefusedBeforeTheRigWasReady() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Map<String, String> form = form(rig);
    form.put("issuedOn", "2026-01-01");
    form.put("dueOn", "2026-02-01");
    refused(rig, form, "was not ready yet");
    form.put("issuedOn", time.today().minusDays(2).toString());
    form.put("dueOn", time.today().plusDays(20).toString());
    assertEquals(303, officerAt(rig).post("/issue", form).statusCode());
  }

  @ParameterizedTest
  @CsvSource({"committee", "volunteer"})
  void othersThanOfficers_doNotIssue(String name) {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    Visitor visitor = Visitor.signedInAs(name);
    visitor.get("/issue").then().statusCode(403);
    visitor.get("/");
    visitor.post("/issue", form(rig)).then().statusCode(403);
  }

  @Test
  void rigThatDoesNotExist_isSaidToBeGone() {
    Visitor.signedInAs("officer")
        .get(PERSON + "&rig=999999")
        .then()
        .statusCode(200)
        .body(containsString("There is no such rig"));
  }

  private void refused(LaidBow rig, Map<String, String> form, String says) {
    Response refused = officerAt(rig).post("/issue", form);
    assertEquals(422, refused.statusCode(), refused.asString());
    assertTrue(refused.asString().contains(says), refused.asString());
  }

  private static Visitor officerAt(LaidBow rig) {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get(PERSON + "&rig=" + rig.id().value()).then().statusCode(200);
    return officer;
  }

  private static Map<String, String> form(LaidBow rig) {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("hand", "right");
    form.put("dominantEye", "right");
    form.put("drawLength", "27 in");
    form.put("ageBand", "adult");
    form.put("experience", "beginner");
    form.put("rig", Long.toString(rig.id().value()));
    form.put("name", "Nell Harker");
    form.put("contact", "07700 900417");
    form.put("termsAccepted", "on");
    form.put("briefingGiven", "on");
    form.put("once-key", UUID.randomUUID().toString());
    return form;
  }

  private static long loanOf(Response issued) {
    assertEquals(303, issued.statusCode(), issued.asString());
    String path = issued.header("Location");
    return Long.parseLong(path.substring(path.lastIndexOf('/') + 1));
  }

  private int lines(long loan) {
    return (int) fixture.number("SELECT count(*) FROM loan_line WHERE loan_id = ?1", loan);
  }
}
