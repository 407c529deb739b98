package club.ascham.rig;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.store.StatementCount;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class RigPagesTest {
  private static final Pattern VERSION = Pattern.compile("name=\"version\" value=\"(\\d+)\"");
  private static final Pattern STEP = Pattern.compile("name=\"step\" value=\"([a-z-]+)\"");

  @Inject ClubFixture fixture;

  @BeforeEach
  void holdsThePermit() {
    fixture.mayTurnBolts("officer", true);
  }

  private static String hidden(Pattern field, Response page) {
    Matcher matcher = field.matcher(page.asString());
    assertTrue(matcher.find(), "the page has " + field);
    return matcher.group(1);
  }

  private long aRig() {
    return fixture.assembled(
        fixture.aRiser("RIGHT", 25), fixture.limbs("MEDIUM", 22), fixture.aString(68));
  }

  @Test
  void assembling_offersFirstWhatFitsAndSaysWhyTheOthersDoNot() {
    Visitor officer = Visitor.signedInAs("officer");
    Laid riser = fixture.aRiser("RIGHT", 25);
    Laid fits = fixture.limbs("MEDIUM", 22);
    Laid other = fixture.screwInLimbs("Thatch", 66);

    String page = officer.get("/rigs/new?body=" + riser.code()).asString();

    int offered = page.indexOf("body=" + riser.code() + "&amp;limbs=" + fits.code());
    int others = page.indexOf("not free: why");
    assertTrue(offered > 0 && offered < others, "limbs that fit are offered");
    assertTrue(page.indexOf(other.code()) > others, "limbs that do not are shown after");
    assertTrue(page.contains("these are screw-in limbs"));
  }

  @Test
  void whatIsReady_isOfferedForIssue_toThoseWhoIssue() {
    String rig =
        "/rigs/"
            + fixture.number(
                "SELECT min(rig_id) FROM rig_standing WHERE state_if_inspected = 'READY'");
    Visitor.signedInAs("officer").get(rig).then().body(containsString("Issue it"));
    Visitor.signedInAs("volunteer").get(rig).then().body(not(containsString("Issue it")));
  }

  @Test
  void assembling_fromBodyToPress_leadsToTheRig() {
    Visitor officer = Visitor.signedInAs("officer");
    Laid riser = fixture.aRiser("LEFT", 25);
    Laid limbs = fixture.limbs("MEDIUM", 22);
    Laid string = fixture.aString(68);
    Map<String, String> form =
        Map.of(
            "body",
            riser.code(),
            "limbs",
            limbs.code(),
            "string",
            string.code(),
            "style",
            "split-finger",
            "level",
            "beginner",
            "once-key",
            "assemble-" + riser.code());
    officer
        .get(
            "/rigs/new?body="
                + riser.code()
                + "&limbs="
                + limbs.code()
                + "&string="
                + string.code())
        .then()
        .body(containsString("left-handed · 68 in · 22 lb"));

    Response first = officer.post("/rigs/new", form);
    Response second = officer.post("/rigs/new", form);

    first.then().statusCode(303);
    assertEquals(first.header("Location"), second.header("Location"));
    assertEquals(1, fixture.number("SELECT count(*) FROM fitting WHERE item_id = ?1", riser.id()));
    officer
        .get("/rigs/" + first.header("Location").replaceAll(".*/", ""))
        .then()
        .statusCode(200)
        .body(containsString("A left-handed recurve bow of 68 in, strung, seen from the side"))
        .body(containsString("in the workshop"));
  }

  @Test
  void aMisfit_isRefusedOnTheSamePageWithWhatWasChosen() {
    Visitor officer = Visitor.signedInAs("officer");
    Laid riser = fixture.aRiser("RIGHT", 25);
    Laid limbs = fixture.limbs("MEDIUM", 22);
    officer.get("/rigs/new");

    officer
        .post(
            "/rigs/new",
            Map.of(
                "body", riser.code(),
                "limbs", limbs.code(),
                "string", fixture.aString(62).code()))
        .then()
        .statusCode(422)
        .body(containsString("Choose a string labelled 68 in"))
        .body(containsString(riser.code()));
  }

  @Test
  void theSheet_leadsStepByStepToAReadyRig() {
    Visitor officer = Visitor.signedInAs("officer");
    long rig = aRig();
    String path = "/rigs/" + rig + "/set-up";
    officer.get(path).then().body(containsString("Begin the set-up"));
    officer.post(path + "/begin", Map.of()).then().statusCode(303);

    for (int step = 0; step < 13; step++) {
      Response page = officer.get(path);
      Map<String, String> form = new HashMap<>();
      form.put("step", hidden(STEP, page));
      form.put("version", hidden(VERSION, page));
      form.put("once-key", rig + "-" + step);
      switch (form.get("step")) {
        case "tiller" -> {
          form.put("tillerUpper", "7 1/2");
          form.put("tillerLower", "7 3/8");
        }
        case "brace-again" -> {
          form.put("brace", "8 1/2");
          form.put("braceFrom", "grip-throat");
        }
        case "bolts-held" -> form.put("screwsSeen", "on");
        case "nocking-point" -> form.put("nocking", "1/8");
        default -> {}
      }
      officer.post(path + "/step", form).then().statusCode(303);
    }
    Response last = officer.get(path);
    last.then().body(containsString("Finish: the figures hold"));
    officer
        .post(path + "/finish", Map.of("version", hidden(VERSION, last)))
        .then()
        .statusCode(303)
        .header("Location", endsWith("/rigs/" + rig));
    officer
        .get("/rigs/" + rig)
        .then()
        .body(containsString("8 1/2 in · 216 mm"))
        .body(containsString("class=\"state ready"));
  }

  @Test
  void aStepWithoutItsFigure_orWithASlipOfUnit_keepsWhatWasTyped() {
    Visitor officer = Visitor.signedInAs("officer");
    Laid bow = fixture.aOnePieceBow(48);
    long rig = fixture.assembled(bow, fixture.aString(48));
    String path = "/rigs/" + rig + "/set-up";
    officer.get(path);
    officer.post(path + "/begin", Map.of());
    for (String step : new String[] {"loops", "string-on", "string-line"}) {
      officer.post(path + "/step", Map.of("step", step)).then().statusCode(303);
    }

    officer
        .post(path + "/step", Map.of("step", "brace", "braceFrom", "grip-throat"))
        .then()
        .statusCode(422)
        .body(containsString("What does the brace height measure?"));
    officer
        .post(path + "/step", Map.of("step", "brace", "brace", "160", "braceFrom", "grip-throat"))
        .then()
        .statusCode(422)
        .body(containsString("value=\"160\""))
        .body(containsString("name=\"take-brace\" value=\"160 mm\""));
    officer
        .post(
            path + "/step",
            Map.of("step", "brace", "brace", "160", "take-brace", "160 mm", "braceFrom", "button"))
        .then()
        .statusCode(303);
    assertEquals(16_000_000, fixture.number("SELECT brace FROM set_up WHERE rig_id = ?1", rig));
  }

  @Test
  void aStaleStep_isRefused() {
    Visitor officer = Visitor.signedInAs("officer");
    long rig = aRig();
    String path = "/rigs/" + rig + "/set-up";
    officer.get(path);
    officer.post(path + "/begin", Map.of());
    String version = hidden(VERSION, officer.get(path));
    officer
        .post(path + "/step", Map.of("step", "limbs", "version", version))
        .then()
        .statusCode(303);

    officer
        .post(path + "/step", Map.of("step", "limbs", "version", version))
        .then()
        .statusCode(422)
        .body(containsString("Someone else changed this rig"));
  }

  @Test
  void aSetUpBegunByMistake_isGivenUpWhileNothingWasDone() {
    Visitor officer = Visitor.signedInAs("officer");
    long rig = aRig();
    fixture.setUp(rig);
    String path = "/rigs/" + rig + "/set-up";
    officer.get(path);
    officer.post(path + "/begin", Map.of());
    officer.get("/rigs/" + rig).then().body(containsString("state in-the-workshop"));

    officer.post(path + "/give-up", Map.of()).then().statusCode(303);

    officer.get("/rigs/" + rig).then().body(containsString("state ready"));
  }

  @Test
  void thePaperSheet_isEnteredAtOnce() {
    Visitor officer = Visitor.signedInAs("officer");
    long rig = aRig();
    String path = "/rigs/" + rig + "/set-up";
    officer.get(path);
    officer.post(path + "/begin", Map.of());
    Map<String, String> figures = new HashMap<>();
    figures.put("brace", "215 mm");
    figures.put("braceFrom", "grip-throat");
    figures.put("tillerUpper", "190 mm");
    figures.put("tillerLower", "186 mm");
    figures.put("nocking", "4 mm");
    figures.put("screwsSeen", "on");
    officer
        .post(path + "/paper", figures)
        .then()
        .statusCode(422)
        .body(containsString("Tick it if every step was done"));

    figures.put("everyStep", "on");
    officer.post(path + "/paper", figures).then().statusCode(303);

    officer.get(path).then().body(containsString("Finish: the figures hold"));
  }

  @Test
  void theGauge_answersWhatIsTyped() {
    Visitor officer = Visitor.signedInAs("officer");
    long rig = aRig();

    officer
        .get("/rigs/" + rig + "/gauge?quantity=brace&value=8 1/2&unit=in")
        .then()
        .statusCode(200)
        .body(containsString("is-fine"))
        .body(not(containsString("<html")));
    officer
        .get("/rigs/" + rig + "/gauge?quantity=tiller&tillerUpper=200&value=186&unit=mm")
        .then()
        .body(containsString("is-stop"));
    officer.get("/rigs/" + rig + "/gauge?quantity=brace&value=8 a&unit=in").then().statusCode(204);
  }

  @Test
  void aSpareString_isKeptWithTheRigAndAMisfitIsNot() {
    Visitor officer = Visitor.signedInAs("officer");
    long rig = aRig();
    Laid spare = fixture.aString(68);
    String path = "/rigs/" + rig + "/change";
    officer.get(path);

    officer.post(path + "/keep", Map.of("item", spare.code())).then().statusCode(303);
    officer
        .post(path + "/keep", Map.of("item", fixture.aString(62).code()))
        .then()
        .statusCode(422)
        .body(containsString("Choose a string labelled 68 in"));
    officer
        .post(path + "/keep", Map.of("item", fixture.aStringer(48, 62).code()))
        .then()
        .statusCode(422);
    officer
        .post(path + "/keep", Map.of("item", fixture.aStringer(60, 70).code()))
        .then()
        .statusCode(303);
    officer.get("/rigs/" + rig).then().body(containsString(spare.code()));
    officer.post(path + "/let-go", Map.of("item", spare.code())).then().statusCode(303);
    assertEquals(1, fixture.number("SELECT count(*) FROM kept_with WHERE rig_id = ?1", rig));
  }

  @Test
  void aChangeDatedTooEarly_saysSoAtItsField_andKeepsTheDay() {
    Visitor officer = Visitor.signedInAs("officer");
    Laid riser = fixture.aRiser("RIGHT", 25);
    Laid limbs = fixture.limbs("MEDIUM", 22);
    Laid old = fixture.aString(68);
    Laid fresh = fixture.aString(68);
    long rig = fixture.assembled(riser, limbs, old);
    String path = "/rigs/" + rig + "/change";
    officer.get(path + "?place=string").then().body(containsString("Done on an earlier day"));
    Map<String, String> form =
        new HashMap<>(
            Map.of(
                "place", "string",
                "body", riser.code(),
                "limbs", limbs.code(),
                "take-string", fresh.code(),
                "on", "2026-01-01"));
    officer
        .post(path, form)
        .then()
        .statusCode(422)
        .body(containsString("id=\"on-error\">Parts of the bow were changed on"))
        .body(containsString("value=\"2026-01-01\""));
    form.put("on", "2026-02-01");
    officer.post(path, form).then().statusCode(303);
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE item_id = ?1 AND from_at LIKE '2026-02-01T%'",
            fresh.id()));
  }

  @Test
  void theTrend_isDrawnBesideTheTableOfChecks_onceThereAreTwo() {
    Visitor officer = Visitor.signedInAs("officer");
    long rig = aRig();
    fixture.setUp(rig);
    measured(rig, "2026-02-01T19:00:00.000Z", 21600000);
    officer.get("/rigs/" + rig).then().body(not(containsString("trend-plate")));
    measured(rig, "2026-03-01T19:00:00.000Z", 21100000);
    officer
        .get("/rigs/" + rig)
        .then()
        .body(containsString("trend-plate"))
        .body(containsString("2 checks: brace from 216 mm to 211 mm"))
        .body(containsString("Checks of this rig"));
  }

  private void measured(long rig, String at, int brace) {
    fixture.change(
        "INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed,"
            + " brace, brace_from, tiller_upper, tiller_lower, verdict) VALUES (?1,"
            + " 'CHECK', ?2, ?2, 1, 1, ?3, 'GRIP_THROAT', 19000000, 18600000, 'FIT')",
        rig,
        at,
        brace);
  }

  @Test
  void aRigTakenApart_keepsItsStoryAtItsAddress() {
    Visitor officer = Visitor.signedInAs("officer");
    Laid riser = fixture.aRiser("RIGHT", 25);
    long rig = fixture.assembled(riser, fixture.limbs("MEDIUM", 22), fixture.aString(68));
    Response asked = officer.get("/rigs/" + rig + "/dissolve");

    officer
        .post("/rigs/" + rig + "/dissolve", Map.of("version", hidden(VERSION, asked)))
        .then()
        .statusCode(303);

    officer
        .get("/rigs/" + rig)
        .then()
        .statusCode(200)
        .body(containsString("A rig taken apart"))
        .body(containsString(riser.code()));
  }

  @Test
  void theCommittee_looksAndDoesNotTouch() {
    Visitor committee = Visitor.signedInAs("committee");
    long rig = aRig();

    committee.get("/rigs/" + rig).then().statusCode(200).body(not(containsString("Take it apart")));
    committee.get("/rigs").then().statusCode(200).body(not(containsString("Assemble a rig")));
    committee.get("/rigs/" + rig + "/sheet").then().statusCode(200);
    committee.get("/rigs/new").then().statusCode(403);
    committee.post("/rigs/new", Map.of()).then().statusCode(403);
    committee.post("/rigs/" + rig + "/change", Map.of()).then().statusCode(403);
    committee.post("/rigs/" + rig + "/dissolve", Map.of()).then().statusCode(403);
    committee.post("/rigs/" + rig + "/set-up/begin", Map.of()).then().statusCode(403);
  }

  @Test
  void aWithdrawnRig_saysWhichPartAndWhy() {
    Laid limbs = fixture.limbs("MEDIUM", 22);
    long rig = fixture.assembled(fixture.aRiser("RIGHT", 25), limbs, fixture.aString(68));
    fixture.withdraw(limbs, "crack in the lower limb");
    Visitor.signedInAs("officer")
        .get("/rigs/" + rig)
        .then()
        .body(containsString(limbs.code() + " is withdrawn: crack in the lower limb."))
        .body(containsString("Since Sun 3 May 2026."))
        .body(containsString("/release"));
  }

  @Test
  void aRigChangedWhileOnLoan_offersItsSetUp_andTheCommitteeReadsNoNames() {
    Laid riser = fixture.aRiser("RIGHT", 25);
    Laid limbs = fixture.limbs("MEDIUM", 22);
    Laid another = fixture.aString(68);
    long rig = fixture.assembled(riser, limbs, fixture.aString(68));
    fixture.setUp(rig);
    fixture.lend(rig);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rigs/" + rig).then().body(not(containsString("/set-up\"")));
    officer
        .post(
            "/rigs/" + rig + "/change",
            Map.of(
                "body",
                riser.code(),
                "limbs",
                limbs.code(),
                "string",
                another.code(),
                "place",
                "string",
                "once-key",
                "change-" + rig))
        .then()
        .statusCode(422)
        .body(containsString("This bow is out with loan"))
        .body(containsString("Yes, change it"));
    officer
        .post(
            "/rigs/" + rig + "/change",
            Map.of(
                "body",
                riser.code(),
                "limbs",
                limbs.code(),
                "string",
                another.code(),
                "confirmed",
                "on",
                "once-key",
                "changed-" + rig))
        .then()
        .statusCode(303);
    officer.get("/").then().body(containsString("on loan"));
    officer
        .get("/rigs/" + rig)
        .then()
        .body(containsString("href=\"/rigs/" + rig + "/set-up\""))
        .body(containsString("Ada Finch"));
    Visitor.signedInAs("committee")
        .get("/rigs/" + rig)
        .then()
        .body(not(containsString("Ada Finch")))
        .body(containsString("Loan "));
  }

  @Test
  void aRigThatNeverWas_isNotFound() {
    Visitor.signedInAs("officer")
        .get("/rigs/999999")
        .then()
        .statusCode(404)
        .body(containsString("There is no rig 999999."));
  }

  @Test
  void aScriptInAQuery_isShownAsText() {
    Visitor.signedInAs("officer")
        .get("/rigs?bowLength=<script>alert(1)</script>")
        .then()
        .statusCode(200)
        .body(not(containsString("<script>alert")))
        .body(containsString("A whole number from 40 to 80"));
  }

  @Test
  void theList_needsTheSameStatementsHoweverManyRigs() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rigs");
    long before = StatementCount.run();
    officer.get("/rigs");
    long few = StatementCount.run() - before;
    for (int i = 0; i < 5; i++) {
      aRig();
    }
    before = StatementCount.run();
    officer.get("/rigs").then().statusCode(equalTo(200));

    assertEquals(few, StatementCount.run() - before);
  }
}
