package club.ascham.rules;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.mechanics.TwistLimits;
import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class RulesPagesTest {
  @Inject Rows rows;
  @Inject Club club;

  private ClubRules before;

  @BeforeEach
  void remember() {
    club.forget();
    before = club.rules();
  }

  @AfterEach
  void putBack() {
    rows.change(
        "UPDATE club SET name = ?1, brace_table = ?2, full_check_every_looks = ?3, loan_days = ?4,"
            + " deposit_minor = ?5, sessions_a_week = ?6, shots_a_session = ?7, fewest_twists = ?8,"
            + " most_twists = ?9, twists_source = ?10, telephone = ?11, mail = ?12, terms = ?13,"
            + " brace_may_move = ?14, brace_may_move_source = ?15",
        before.name(),
        before.braceTable(),
        before.fullCheckEveryLooks(),
        before.loanDays(),
        before.depositMinor(),
        before.sessionsAWeek(),
        before.shotsASession(),
        before.fewestTwists(),
        before.mostTwists(),
        before.twistsSource(),
        before.telephone(),
        before.mail(),
        before.terms(),
        before.braceMayMove(),
        before.braceMayMoveSource());
    club.forget();
  }

  @Test
  void theClubsRules_areChanged_andWhoDidStandsBeside() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/club").then().statusCode(200);
    Map<String, String> form = form(before.version());
    form.put("loanDays", "35");
    form.put("braceTable", "french-club");
    officer.post("/rules/club", form).then().statusCode(303);
    officer
        .get("/rules")
        .then()
        .body(
            containsString("35 days"),
            containsString("changed by officer"),
            containsString("Bazancourt"));
    assertEquals(35, club.rules().loanDays());
  }

  @Test
  void theTwistsAStringMayHold_areTheClubs_forPageBenchAndApiAlike() {
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/rules")
        .then()
        .body(containsString("10 to 60"), containsString("Archers de Douai"));
    officer.get("/rules/club");
    Map<String, String> form = form(before.version());
    form.put("fewestTwists", "30");
    form.put("mostTwists", "45");
    form.put("twistsSource", "Our stringmaker says so.");
    officer.post("/rules/club", form).then().statusCode(303);
    officer
        .get("/rules")
        .then()
        .body(containsString("30 to 45"), containsString("Our stringmaker says so."));
    assertEquals(new TwistLimits(30, 45), club.rules().twistLimits());
    sending("volunteer")
        .body(
            "{\"bowLengthIn\":68,\"stringLengthMm\":1651,\"strands\":14,\"strandDiameterMm\":0.45,"
                + "\"twists\":35,\"braceMm\":228.6,\"targetMm\":222.25}")
        .post("/api/bench/twists")
        .then()
        .statusCode(200)
        .body(
            "reach", equalTo("longer-string"),
            "otherStringMm", greaterThan(5f),
            "basis", containsString("30 to 45 twists"));
  }

  @Test
  void whatStandsOnTheSlip_isTheClubs_andMayBeLeftOut() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/club");
    Map<String, String> form = form(before.version());
    form.put("telephone", "01632 960199");
    form.put("mail", "bows@fen.example");
    form.put("terms", "Back by the day.\r\n\r\nNobody <b>else</b> shoots it.");
    form.put("braceMayMove", "1/4 in");
    form.put("braceMayMoveSource", "Our own eye, over ten years.");
    officer.post("/rules/club", form).then().statusCode(303);
    officer
        .get("/rules")
        .then()
        .body(
            containsString("01632 960199, bows@fen.example"),
            containsString("Nobody &lt;b&gt;else&lt;/b&gt; shoots it."),
            containsString("1/4 in · 6.4 mm"),
            containsString("Our own eye, over ten years."));
    assertEquals(
        List.of("Back by the day.", "Nobody <b>else</b> shoots it."), club.rules().termLines());
    officer.get("/rules/club").then().body(containsString("value=\"6.35 mm\""));
    officer.post("/rules/club", form(club.rules().version())).then().statusCode(303);
    officer.get("/rules").then().body(containsString("has no number to call"));
    assertEquals(ClubRules.USUAL_TERMS, club.rules().termLines());
  }

  @ParameterizedTest(name = "{0}={1}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "telephone|ask Nell|that can be dialled",
        "mail|at the club|An e-mail address, please",
        "braceMayMove|60 mm|change of brace height",
        "braceMayMove|6 mm|Who stands behind it",
        "braceMayMoveSource|the maker says so|How far, please"
      })
  void whatNoSlipCanSay_isRefusedAtItsField(String field, String value, String says) {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/club");
    Map<String, String> form = form(before.version());
    form.put(field, value);
    officer
        .post("/rules/club", form)
        .then()
        .statusCode(422)
        .body(containsString(says), containsString(value));
    assertEquals(before.version(), club.rules().version());
  }

  @Test
  void twistsWithoutRoomBetweenThem_areRefusedAtTheirField() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/club");
    Map<String, String> form = form(before.version());
    form.put("fewestTwists", "40");
    form.put("mostTwists", "45");
    form.put("twistsSource", "");
    officer
        .post("/rules/club", form)
        .then()
        .statusCode(422)
        .body(
            containsString("At least 10 more than the fewest"),
            containsString("in print, or whose eye?"),
            containsString("value=\"45\""));
    assertEquals(before.version(), club.rules().version());
  }

  @Test
  void whoSavesSecond_isToldAndKeepsWhatWasTyped() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/club");
    officer.post("/rules/club", form(before.version())).then().statusCode(303);
    Map<String, String> late = form(before.version());
    late.put("name", "Late & Later Archers");
    officer
        .post("/rules/club", late)
        .then()
        .statusCode(422)
        .body(
            containsString("Someone changed these rules"),
            containsString("Late &amp; Later Archers"));
    assertEquals("Wherrybridge Archers", club.rules().name());
  }

  @Test
  void whatMakesNoSense_isRefusedAtItsField() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/club");
    Map<String, String> form = form(before.version());
    form.put("loanDays", "0");
    form.put("deposit", "lots");
    form.put("sessionsAWeek", "");
    officer
        .post("/rules/club", form)
        .then()
        .statusCode(422)
        .body(
            containsString("from 1 to 400"),
            containsString("lots"),
            containsString("How many, on average?"));
    assertEquals(before.version(), club.rules().version());
  }

  @Test
  void anUpkeepRule_isAddedChangedAndRemoved_andThePlanFollows() {
    long string =
        rows.number("SELECT id FROM item WHERE kind = 'STRING' AND retired_on IS NULL LIMIT 1");
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/upkeep/new").then().statusCode(200);
    Map<String, String> rule = new HashMap<>();
    rule.put("itemKind", "string");
    rule.put("work", "string-replacement");
    rule.put("everyDays", "1111");
    rule.put("source", "Common practice.");
    rule.put("once-key", "rule-" + System.nanoTime());
    officer.post("/rules/upkeep/new", rule).then().statusCode(303);
    officer.post("/rules/upkeep/new", rule).then().statusCode(303);
    assertEquals(1, rows.number("SELECT count(*) FROM upkeep_rule WHERE every_days = 1111"));
    long id = rows.number("SELECT id FROM upkeep_rule WHERE every_days = 1111");
    assertEquals(1, planned(string, id));

    officer.get("/rules").then().body(containsString("1,111 days"));
    officer.get("/rules/upkeep/" + id).then().statusCode(200).body(containsString("1111"));
    rule.put("version", "0");
    rule.put("everyDays", "1112");
    officer.post("/rules/upkeep/" + id, rule).then().statusCode(303);
    rule.put("once-key", "later-" + System.nanoTime());
    officer
        .post("/rules/upkeep/" + id, rule)
        .then()
        .statusCode(422)
        .body(containsString("Someone changed this rule"));
    assertEquals(1112, rows.number("SELECT every_days FROM upkeep_rule WHERE id = ?1", id));

    officer.post("/rules/upkeep/" + id + "/remove", Map.of()).then().statusCode(303);
    assertEquals(0, planned(string, id));
    officer.get("/rules/upkeep/" + id).then().statusCode(404);
  }

  @Test
  void aRuleThatAsksForNothing_orForTheWrongThing_isRefused() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules/upkeep/new");
    officer
        .post(
            "/rules/upkeep/new",
            Map.of("itemKind", "string", "work", "string-replacement", "source", "x"))
        .then()
        .statusCode(422)
        .body(containsString("One at least"));
    officer
        .post(
            "/rules/upkeep/new",
            Map.of(
                "itemKind",
                "string",
                "work",
                "bolt-inspection",
                "build",
                "screw-in",
                "everyDays",
                "9",
                "source",
                "x"))
        .then()
        .statusCode(422)
        .body(containsString("not done to such an item"), containsString("Only risers and limbs"));
  }

  @Test
  void theClubsOwnBand_isReadInAnyUnit_shown_andRemoved() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/rules");
    officer
        .post(
            "/rules/bands",
            Map.of(
                "bowLengthIn",
                "60",
                "low",
                "180 mm",
                "high",
                "7 3/4",
                "source",
                "the maker's leaflet"))
        .then()
        .statusCode(303);
    officer.get("/rules").then().body(containsString("7 1/16 to 7 3/4 in · 180 to 197 mm"));
    officer
        .post(
            "/rules/bands",
            Map.of("bowLengthIn", "60", "low", "200 mm", "high", "190 mm", "source", "x"))
        .then()
        .statusCode(422)
        .body(containsString("lies below the lowest"));
    officer.post("/rules/bands/60/remove", Map.of()).then().statusCode(303);
    assertEquals(0, rows.number("SELECT count(*) FROM club_brace_band WHERE bow_length_in = 60"));
  }

  @Test
  void volunteersAndCommittee_look_andChangeNothing() {
    for (String name : new String[] {"volunteer", "committee"}) {
      Visitor visitor = Visitor.signedInAs(name);
      visitor.get("/rules").then().statusCode(200).body(not(containsString("/rules/club")));
      visitor.get("/rules/club").then().statusCode(403);
      visitor.post("/rules/club", form(before.version())).then().statusCode(403);
      visitor.post("/rules/bands", Map.of()).then().statusCode(403);
      visitor.post("/rules/upkeep/new", Map.of()).then().statusCode(403);
    }
  }

  private long planned(long item, long rule) {
    return rows.number(
        "SELECT count(*) FROM work_due WHERE item_id = ?1 AND rule_id = ?2", item, rule);
  }

  private static Map<String, String> form(int version) {
    Map<String, String> form = new HashMap<>();
    form.put("version", Integer.toString(version));
    form.put("name", "Wherrybridge Archers");
    form.put("braceTable", "trade-outreach-2020");
    form.put("fullCheckEveryLooks", "6");
    form.put("loanDays", "28");
    form.put("deposit", "25.00");
    form.put("sessionsAWeek", "1.5");
    form.put("shotsASession", "60");
    form.put("keepNamesDays", "180");
    form.put("weighLimbsDays", "365");
    form.put("fewestTwists", "10");
    form.put("mostTwists", "60");
    form.put("twistsSource", "in print");
    return form;
  }
}
