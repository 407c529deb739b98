package club.ascham.register;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.store.StatementCount;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class RegisterPagesTest {
  private static final String FITTED_STRING =
      """
      SELECT i.code FROM item i JOIN fitting f ON f.item_id = i.id AND f.until_at IS NULL
        JOIN bowstring b ON b.id = i.id JOIN rig r ON r.id = f.rig_id
       WHERE NOT EXISTS (SELECT 1 FROM loan_line l WHERE l.item_id = i.id AND l.back_at IS NULL)
       ORDER BY i.code LIMIT 1\
      """;

  @Inject Rows rows;
  @Inject ClubFixture fixture;
  @Inject ClubTime time;

  // ---- looking

  @Test
  void theList_narrowsByWordsKindStateAndHand_andCounts() {
    Visitor committee = Visitor.signedInAs("committee");
    long left =
        rows.number(
            "SELECT count(*) FROM riser r JOIN item i ON i.id = r.id WHERE r.hand = 'LEFT' AND"
                + " i.retired_on IS NULL");
    committee
        .get("/register?kind=riser&hand=left")
        .then()
        .statusCode(200)
        .body(containsString("<caption>" + left + " items</caption>"))
        .body(containsString("risers · left-handed"))
        .body(not(containsString("/register/new")));
    committee.get("/register?words=zzz").then().body(containsString("Nothing is like that"));
    committee.get("/register?words=R-0101-E").then().body(containsString("/items/R-0101-E"));
    committee.get("/register?state=ready&sort=-bought&page=2").then().statusCode(200);
    committee.get("/register?bowIn=66").then().statusCode(200);
    committee.get("/register?sort=state&state=any").then().statusCode(200);
    committee.get("/register?page=900").then().body(containsString("past the end"));
  }

  @Test
  void aFilterThatCantBeRead_isSaidAtItsField() {
    Visitor.signedInAs("volunteer")
        .get("/register?bowIn=1720")
        .then()
        .statusCode(200)
        .body(containsString("from 48 to 72"))
        .body(containsString("value=\"1720\""));
  }

  @Test
  void pages_needTheSameFewStatements_forTenItemsAndForFiveHundred() {
    Visitor officer = Visitor.signedInAs("officer");
    String code = added(officer, string("Few " + unique()));
    long listBefore = statements(officer, "/register?kind=string");
    long itemBefore = statements(officer, "/items/" + code);
    long formBefore = statements(officer, "/register/new?kind=string");
    for (int i = 0; i < 10; i++) {
      Map<String, String> fifty = string("Many " + unique());
      fifty.put("copies", "50");
      assertEquals(303, officer.post("/register/new", fifty).statusCode());
    }
    assertTrue(rows.number("SELECT count(*) FROM bowstring") > 500);
    assertEquals(listBefore, statements(officer, "/register?kind=string"), "the list");
    assertEquals(itemBefore, statements(officer, "/items/" + code), "an item");
    assertEquals(formBefore, statements(officer, "/register/new?kind=string"), "the form");
  }

  @Test
  void arrows_sayTheHeaviestBowTheyAreSoundFor_onceOneIsWeighed() {
    Visitor officer = Visitor.signedInAs("officer");
    Map<String, String> form = new HashMap<>();
    form.put("kind", "arrows");
    form.put("arrowLength", "28 in");
    form.put("arrowCount", "6");
    form.put("arrowMassGr", "20");
    form.put("once-key", unique());
    officer.get("/register/new?kind=arrows");
    officer
        .post("/register/new", form)
        .then()
        .statusCode(422)
        .body(containsString("name=\"take-arrowMassGr\" value=\"20 g\""));
    form.put("take-arrowMassGr", "20 g");
    officer
        .get("/items/" + added(officer, form))
        .then()
        .body(containsString("308.6 gr · 20 g"))
        // 5 gr to the pound, rounded down: a recurve maker's warnings.
        .body(containsString("61.7 lb on the fingers"));
    form.keySet().removeAll(Set.of("arrowMassGr", "take-arrowMassGr"));
    form.put("once-key", unique());
    officer
        .get("/items/" + added(officer, form))
        .then()
        .body(containsString("unknown until one is weighed"));
  }

  @Test
  void aPartOfARigWithoutABody_namesTheRigByItsNumber() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    fixture.change(
        "UPDATE fitting SET until_at = ?1 WHERE item_id = ?2", time.now(), bow.body().id());
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/items/" + bow.string().code())
        .then()
        .statusCode(200)
        .body(containsString("Fitted to the rig " + bow.id().value() + "<"));
    officer
        .get("/register?words=" + bow.string().code())
        .then()
        .body(containsString(">rig " + bow.id().value() + "<"));
    fixture.fit(bow.id(), bow.body());
  }

  @Test
  void anItem_saysWhereItIsAndWhatIsDue_andPricesOnlyToThoseWhoMay() {
    String code = display(rows.texts(FITTED_STRING).get(0));
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/items/" + code)
        .then()
        .statusCode(200)
        .body(containsString("Fitted to the rig"))
        .body(containsString("String replacement"))
        .body(containsString("Price"))
        .body(containsString("/items/" + code + "/edit"));
    Visitor.signedInAs("volunteer")
        .get("/items/" + code)
        .then()
        .body(not(containsString("Price")))
        .body(not(containsString("/edit")))
        .body(containsString("/items/" + code + "/withdraw"));
    Visitor.signedInAs("committee")
        .get("/items/" + code)
        .then()
        .body(containsString("Price"))
        .body(not(containsString("/withdraw\"")));
  }

  @Test
  void aCode_isReadWithAndWithoutHyphens_andASlipIsSaid() {
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/items/r0101e").then().statusCode(200).body(containsString("R-0101-E"));
    volunteer
        .get("/items/R-0101-F")
        .then()
        .statusCode(404)
        .body(containsString("code: one of its characters is mistyped"));
    volunteer.get("/items/nonsense").then().statusCode(404).body(containsString("A code is"));
    volunteer.get("/items/L-0101-L-U").then().statusCode(200).body(containsString("L-0101-L"));
  }

  // ---- adding

  @ParameterizedTest
  @ValueSource(
      strings = {
        "kind=riser&build=adjustable",
        "kind=riser&build=screw-in",
        "kind=limbs&build=adjustable",
        "kind=limbs&build=screw-in",
        "kind=bow",
        "kind=string",
        "kind=stringer",
        "kind=arrows",
        "kind=tab",
        "kind=quiver",
        "kind=none"
      })
  void everyKind_hasItsForm_forTheOfficerAlone(String query) {
    Visitor.signedInAs("officer")
        .get("/register/new?" + (query.isEmpty() ? "kind=" : query))
        .then()
        .statusCode(200);
    Visitor.signedInAs("volunteer")
        .get("/register/new?" + (query.isEmpty() ? "kind=" : query))
        .then()
        .statusCode(403);
    Visitor.signedInAs("committee")
        .get("/register/new?" + (query.isEmpty() ? "kind=" : query))
        .then()
        .statusCode(403);
  }

  @Test
  void aNewItem_getsTheNextCode_andItsStoryBegins() {
    Visitor officer = Visitor.signedInAs("officer");
    String code = added(officer, string("Fresh " + unique()));
    officer
        .get("/items/" + code)
        .then()
        .statusCode(200)
        .body(containsString("Registered."))
        .body(containsString("68 in"))
        .body(containsString("In the kit room"));
  }

  @Test
  void twelveAlike_getTwelveCodes_shownForTheLabels() {
    Visitor officer = Visitor.signedInAs("officer");
    String model = "Dozen " + unique();
    Map<String, String> form = string(model);
    form.put("copies", "12");
    officer.get("/register/new?kind=string");
    Response answer = officer.post("/register/new", form);
    assertEquals(303, answer.statusCode());
    assertEquals(12, rows.number("SELECT count(*) FROM item WHERE model = ?1", model));
    String page = path(answer);
    officer.get(page).then().statusCode(200).body(containsString("12 strings, each with its code"));
    String one = display(rows.texts("SELECT min(code) FROM item WHERE model = ?1", model).get(0));
    officer.get("/items/" + one).then().body(containsString("one of 12 alike"));
    officer
        .get("/items/" + one + "/like-this")
        .then()
        .statusCode(200)
        .body(containsString("value=\"" + model + "\""));
  }

  @Test
  void aFaultyForm_keepsWhatWasTyped_andChangesNothing() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/register/new?kind=string");
    long before = rows.number("SELECT count(*) FROM item");
    Map<String, String> form = string("Half <script>alert(1)</script>");
    form.put("measuredLength", "1650");
    form.put("strands", "many");
    officer
        .post("/register/new", form)
        .then()
        .statusCode(422)
        .body(containsString("Did you mean"))
        .body(containsString("name=\"take-measuredLength\" value=\"1650 mm\""))
        .body(containsString("value=\"many\""))
        .body(containsString("A whole number from 4 to 40"))
        .body(containsString("Half &lt;script&gt;"))
        .body(not(containsString("<script>alert")));
    assertEquals(before, rows.number("SELECT count(*) FROM item"));
  }

  @Test
  void aScriptInAName_isOnlyWords() {
    Visitor officer = Visitor.signedInAs("officer");
    String code = added(officer, string("<script>alert(" + unique() + ")</script>"));
    for (String page :
        new String[] {
          "/items/" + code,
          "/register?words=" + code,
          "/items/" + code + "/edit",
          "/items/" + code + "/like-this",
          "/items/" + code + "/retire",
          "/register/new?kind=string"
        }) {
      officer.get(page).then().statusCode(200).body(not(containsString("<script>alert")));
    }
  }

  @Test
  void aSecondPress_addsNothingMore() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/register/new?kind=string");
    Map<String, String> form = string("Once " + unique());
    String first = path(officer.post("/register/new", form));
    String second = path(officer.post("/register/new", form));
    assertEquals(first, second);
    assertEquals(1, rows.number("SELECT count(*) FROM item WHERE model = ?1", form.get("model")));
  }

  @Test
  void nobodyButTheOfficer_addsOrChanges() {
    Visitor officer = Visitor.signedInAs("officer");
    String code = added(officer, string("Guarded " + unique()));
    long before = rows.number("SELECT count(*) FROM item");
    for (String who : new String[] {"volunteer", "committee"}) {
      Visitor visitor = Visitor.signedInAs(who);
      visitor.get("/register");
      assertEquals(403, visitor.post("/register/new", string("Not")).statusCode(), who);
      for (String act : new String[] {"/edit", "/retire", "/found"}) {
        assertEquals(
            403, visitor.post("/items/" + code + act, Map.of("why", "sold")).statusCode(), who);
      }
    }
    assertEquals(before, rows.number("SELECT count(*) FROM item"));
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM item WHERE code = ?1 AND retired_on IS NOT NULL",
            code.replace("-", "")));
  }

  // ---- changing

  @Test
  void aChange_isTold_withoutThePrice() {
    Visitor officer = Visitor.signedInAs("officer");
    String code = added(officer, string("Plain " + unique()));
    Map<String, String> form = string("Better");
    form.put("version", "0");
    form.put("strands", "14");
    form.put("price", "99.50");
    officer.get("/items/" + code + "/edit").then().statusCode(200);
    officer.post("/items/" + code + "/edit", form).then().statusCode(303);
    officer
        .get("/items/" + code)
        .then()
        .body(containsString("to Better"))
        .body(containsString("strands from 12 to 14"));
    Visitor.signedInAs("volunteer")
        .get("/items/" + code)
        .then()
        .body(containsString("strands from 12 to 14"))
        .body(not(containsString("99.50")));
  }

  @Test
  void aStaleForm_showsWhatWasSavedFirst_keepsWhatWasTyped_andChangesNothing() {
    Visitor officer = Visitor.signedInAs("officer");
    String code = added(officer, string("Stale " + unique()));
    officer.get("/items/" + code + "/edit");
    Map<String, String> first = string("Theirs");
    first.put("version", "0");
    Map<String, String> second = string("Mine");
    second.put("version", "0");
    officer.post("/items/" + code + "/edit", first).then().statusCode(303);
    officer
        .post("/items/" + code + "/edit", second)
        .then()
        .statusCode(422)
        .body(containsString("Someone saved this first"))
        .body(containsString("you have “Mine”, they saved “Theirs”"))
        .body(containsString("value=\"Mine\""))
        .body(containsString("name=\"version\" value=\"1\""));
    assertEquals(
        "Theirs",
        rows.texts("SELECT model FROM item WHERE code = ?1", code.replace("-", "")).get(0));
  }

  @Test
  void aFittedPart_isNotChangedIntoAMisfit() {
    Visitor officer = Visitor.signedInAs("officer");
    String bare = rows.texts(FITTED_STRING).get(0);
    String code = display(bare);
    String version = rows.texts("SELECT version FROM item WHERE code = ?1", bare).get(0);
    officer.get("/items/" + code + "/edit");
    Map<String, String> form = string("Longer");
    long was =
        rows.number(
            "SELECT for_bow_in FROM bowstring b JOIN item i ON i.id = b.id WHERE i.code = ?1",
            bare);
    form.put("forBowIn", was >= 60 ? "48" : "72");
    form.put("version", version);
    officer
        .post("/items/" + code + "/edit", form)
        .then()
        .statusCode(422)
        .body(containsString("Take it off the rig first"));
    assertEquals(
        was,
        rows.number(
            "SELECT for_bow_in FROM bowstring b JOIN item i ON i.id = b.id WHERE i.code = ?1",
            bare));
  }

  // ---- retiring

  @Test
  void whatIsFittedOrLent_isNotRetired_andTheReasonIsSaid() {
    Visitor officer = Visitor.signedInAs("officer");
    String fitted = display(rows.texts(FITTED_STRING).get(0));
    officer.get("/items/" + fitted + "/retire").then().statusCode(200);
    officer
        .post("/items/" + fitted + "/retire", Map.of("why", "sold", "once-key", unique()))
        .then()
        .statusCode(422)
        .body(containsString("still fitted to a rig"))
        .body(containsString("/rigs/"));
    String lent =
        display(
            rows.texts(
                    """
                    SELECT i.code FROM item i JOIN loan_line l ON l.item_id = i.id AND l.back_at IS NULL
                     WHERE i.kind IN ('TAB', 'BRACER', 'QUIVER', 'CASE') LIMIT 1\
                    """)
                .get(0));
    officer
        .post("/items/" + lent + "/retire", Map.of("why", "lost", "once-key", unique()))
        .then()
        .statusCode(422)
        .body(containsString("out on loan"));
  }

  @Test
  void whatIsLost_isFoundAgain_withItsStory() {
    Visitor officer = Visitor.signedInAs("officer");
    String code = added(officer, string("Lost " + unique()));
    officer.get("/items/" + code + "/retire");
    officer
        .post("/items/" + code + "/retire", Map.of("note", "under the <b>shed</b>"))
        .then()
        .statusCode(422)
        .body(containsString("what became of it"))
        .body(containsString("under the &lt;b&gt;shed"));
    officer
        .post("/items/" + code + "/retire", Map.of("why", "lost", "note", "under the shed"))
        .then()
        .statusCode(303);
    officer
        .get("/items/" + code)
        .then()
        .body(containsString("Retired: lost."))
        .body(containsString("under the shed"))
        .body(containsString("Found again"));
    officer.get("/items/" + code + "/found").then().body(containsString("String replacement"));
    officer
        .post("/items/" + code + "/found", Map.of("why", "x"))
        .then()
        .statusCode(422)
        .body(containsString("A few whole words, please"))
        .body(containsString(">x</textarea>"));
    officer
        .post("/items/" + code + "/found", Map.of("why", "It lay under the shed."))
        .then()
        .statusCode(303);
    officer
        .get("/items/" + code)
        .then()
        .body(containsString("Found again."))
        .body(containsString("It lay under the shed."))
        .body(containsString("kept on"))
        .body(containsString("/items/" + code + "/retire"));
  }

  @Test
  void whatTheRecordSawLater_didNotLeaveBefore() {
    Visitor officer = Visitor.signedInAs("officer");
    String code = added(officer, string("Seen " + unique()));
    String bare = code.replace("-", "");
    officer.get("/items/" + code + "/retire");
    retiredOn(officer, code, "2026-03-15")
        .then()
        .statusCode(422)
        .body(containsString("It only came on the register on"))
        .body(containsString("value=\"2026-03-15\""));
    rows.change("UPDATE item SET registered_on = '2026-01-01' WHERE code = ?1", bare);
    rows.change(
        """
        INSERT INTO fitting (rig_id, item_id, place, from_at, until_at)
        VALUES ((SELECT min(id) FROM rig), (SELECT id FROM item WHERE code = ?1), 'STRING',
                '2026-02-01T10:00:00.000Z', '2026-03-16T10:00:00.000Z')\
        """,
        bare);
    retiredOn(officer, code, "2026-03-15")
        .then()
        .statusCode(422)
        .body(containsString("It was still fitted to a rig on Mon 16 Mar 2026."));
    rows.change(
        """
        INSERT INTO loan_line (loan_id, item_id, out_at, back_at, outcome)
        VALUES ((SELECT min(id) FROM loan), (SELECT id FROM item WHERE code = ?1),
                '2026-03-16T10:00:00.000Z', '2026-03-18T10:00:00.000Z', 'BACK')\
        """,
        bare);
    retiredOn(officer, code, "2026-03-17")
        .then()
        .statusCode(422)
        .body(containsString("It was still out on loan on Wed 18 Mar 2026."));
    rows.change(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)
        VALUES ((SELECT id FROM item WHERE code = ?1), 'STRING_REPLACEMENT',
                '2026-03-20T10:00:00.000Z', '2026-03-20T10:00:00.000Z', 1, 'PASSED')\
        """,
        bare);
    retiredOn(officer, code, "2026-03-19")
        .then()
        .statusCode(422)
        .body(containsString("It was still looked over or mended on Fri 20 Mar 2026."));
    assertEquals(
        0,
        rows.number("SELECT count(*) FROM item WHERE code = ?1 AND retired_on IS NOT NULL", bare));
    retiredOn(officer, code, "2026-03-20").then().statusCode(303);
  }

  private static Response retiredOn(Visitor officer, String code, String day) {
    return officer.post("/items/" + code + "/retire", Map.of("why", "sold", "on", day));
  }

  // ---- what the tests share

  private static Map<String, String> string(String model) {
    Map<String, String> form = new HashMap<>();
    form.put("kind", "string");
    form.put("forBowIn", "68");
    form.put("material", "polyester");
    form.put("strands", "12");
    form.put("maker", "Marlwick");
    form.put("model", model);
    form.put("once-key", unique());
    return form;
  }

  private static String added(Visitor officer, Map<String, String> form) {
    officer.get("/register/new?kind=string");
    Response answer = officer.post("/register/new", form);
    assertEquals(303, answer.statusCode(), answer.asString());
    return path(answer).substring("/items/".length());
  }

  private static String path(Response answer) {
    return answer.header("Location").replaceFirst("^https?://[^/]+", "");
  }

  private static String unique() {
    return Long.toString(System.nanoTime());
  }

  private static String display(String bare) {
    return bare.charAt(0) + "-" + bare.substring(1, 5) + "-" + bare.charAt(5);
  }

  private static long statements(Visitor visitor, String page) {
    visitor.get(page).then().statusCode(200);
    long before = StatementCount.run();
    visitor.get(page).then().statusCode(200);
    return StatementCount.run() - before;
  }
}
