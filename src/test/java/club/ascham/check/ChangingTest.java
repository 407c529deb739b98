package club.ascham.check;

import static club.ascham.web.Program.as;
import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A bow whose readings change by more than its readers differ, as people see it. */
@QuarkusTest
class ChangingTest {
  private static final String TASKS =
      "SELECT count(*) FROM upkeep_task WHERE item_id = ?1 AND work = ?2 AND closed_by_record IS NULL";

  @Inject ClubFixture fixture;
  @Inject Rows rows;

  private static long check(LaidBow bow, String brace, String upper, String lower) {
    return check("volunteer", bow, brace, upper, lower);
  }

  private static long check(String who, LaidBow bow, String brace, String upper, String lower) {
    return sending(who)
        .body(
            Map.of(
                "rig",
                Long.toString(bow.id().value()),
                "allAsListed",
                true,
                "brace",
                brace,
                "braceFrom",
                "grip-throat",
                "tillerUpper",
                upper,
                "tillerLower",
                lower,
                "answers",
                Map.of("string", "fine", "limbs", "fine", "bolts", "fine")))
        .post("/api/checks")
        .then()
        .statusCode(201)
        .extract()
        .jsonPath()
        .getLong("id");
  }

  private long asked(Laid item, String work) {
    return rows.number(TASKS, item.id(), work);
  }

  @Test
  void readingsThatScatter_areSteady_andAskForNothing() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    check(bow, "216.5 mm", "190 mm", "186 mm");
    long last = check(bow, "215.5 mm", "190.5 mm", "186 mm");

    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer
        .get("/check/" + bow.id().value() + "/" + last)
        .then()
        .body(containsString("Steady over 3 readings since"));
    volunteer
        .get("/rigs/" + bow.id().value())
        .then()
        .body(containsString("Steady over 3 readings"), containsString("class=\"limit\""));
    assertEquals(0, asked(bow.string(), "STRING_REPLACEMENT"));
  }

  @Test
  void aStringThatIsAskedForSinceReadingsChange_takesNoTwists() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    check(bow, "216 mm", "190 mm", "186 mm");
    check(bow, "209 mm", "183 mm", "179 mm");
    assertEquals(1, asked(bow.string(), "STRING_REPLACEMENT"));
    long low = check(bow, "199 mm", "173 mm", "169 mm");
    List<String> keys = verdict(low);
    assertTrue(keys.contains("other-string"), keys.toString());
    assertEquals("look-along", keys.get(0));
    assertTrue(!keys.contains("twists"), keys.toString());
  }

  @Test
  void afterAMereLook_theNextReadingGoesOnFromThoseBefore() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    long far = check(bow, "190 mm", "164 mm", "160 mm");
    assertEquals("look-along", verdict(far).get(0));
    sending("volunteer")
        .body("{}")
        .post("/api/checks/" + far + "/adjustment")
        .then()
        .statusCode(200)
        .body("id", nullValue());
    assertEquals(
        0, rows.number("SELECT count(*) FROM adjustment WHERE rig_id = ?1", bow.id().value()));
    long again = check(bow, "190 mm", "164 mm", "160 mm");
    Visitor.signedInAs("volunteer")
        .get("/check/" + bow.id().value() + "/" + again)
        .then()
        .body(not(containsString("one reading alone")), containsString("I have looked"));
  }

  private static List<String> verdict(long check) {
    return as("volunteer")
        .get("/api/checks/" + check)
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getList("verdict.steps.key");
  }

  @Test
  void braceThatFallsWithinItsBand_isChanging_andAsksOnceForTheString_untilSomeoneLooked() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    check(bow, "216 mm", "190 mm", "186 mm");
    check(bow, "209 mm", "183 mm", "179 mm");
    assertEquals(1, asked(bow.string(), "STRING_REPLACEMENT"));
    long last = check(bow, "209 mm", "183 mm", "179 mm");
    assertEquals(1, asked(bow.string(), "STRING_REPLACEMENT"), "asked for once");
    List<String> why =
        rows.texts("SELECT why FROM upkeep_task WHERE item_id = ?1", bow.string().id());
    assertTrue(why.get(0).contains("Likeliest the string stretches."), why.toString());

    Visitor officer = Visitor.signedInAs("officer");
    officer
        .get("/check/" + bow.id().value() + "/" + last)
        .then()
        .body(containsString("Changing"), containsString("brace 7."));
    officer.get("/upkeep").then().body(containsString(bow.string().code()));

    // Someone looks at the string and keeps it: readings begin anew from there.
    String work = "/upkeep/" + bow.string().code() + "/string-replacement";
    officer.get(work).then().statusCode(200).body(containsString("It was looked at and stays"));
    officer.post(work, Map.of("stays", "on", "once-key", "keep-1")).then().statusCode(422);
    officer
        .post(work, Map.of("stays", "on", "found", "All whole; five twists in.", "once-key", "k"))
        .then()
        .statusCode(303);
    assertEquals(0, asked(bow.string(), "STRING_REPLACEMENT"), "what was asked for is done");
    check(bow, "209 mm", "183 mm", "179 mm");
    check(bow, "209.5 mm", "183.5 mm", "179.5 mm");
    assertEquals(0, asked(bow.string(), "STRING_REPLACEMENT"));
  }

  @Test
  void tillerThatMovesAlone_asksForTheBolts() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    rows.change("UPDATE set_up SET tiller_upper = 19150000 WHERE rig_id = ?1", bow.id());
    check("officer", bow, "216 mm", "191.5 mm", "186 mm");
    check("officer", bow, "216 mm", "186.5 mm", "186 mm");
    assertEquals(1, asked(bow.body(), "BOLT_INSPECTION"));
  }

  @Test
  void programs_mayKeepAStringToo() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    check(bow, "209 mm", "183 mm", "179 mm");
    assertEquals(1, asked(bow.string(), "STRING_REPLACEMENT"));
    keep(Map.of("item", bow.string().code()))
        .statusCode(422)
        .body("errors.field", hasItem("found"));
    keep(Map.of("item", bow.body().code(), "found", "Strands and servings whole.")).statusCode(422);
    keep(Map.of("item", bow.string().code(), "found", "Strands and servings whole."))
        .statusCode(201);
    assertEquals(0, asked(bow.string(), "STRING_REPLACEMENT"));
  }

  private static ValidatableResponse keep(Map<String, String> body) {
    return sending("volunteer").body(body).post("/api/replacements/kept").then();
  }

  @Test
  void whatIsTyped_isJudgedBeforeItIsSaved() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    check(bow, "216 mm", "190 mm", "186 mm");
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String gauge = "/check/" + bow.id().value() + "/gauge?quantity=";
    volunteer
        .get(gauge + "brace&value=208&unit=mm")
        .then()
        .statusCode(200)
        .body(
            containsString("Changing: brace 8."),
            not(containsString("today")),
            not(containsString("class=\"limit\"")));
    volunteer.get(gauge + "brace&value=208&unit=mm&braceFrom=button").then().statusCode(204);
    volunteer
        .get(gauge + "tillerLower&value=186&unit=mm&tillerUpper=190&tillerUpper-unit=mm")
        .then()
        .body(not(containsString("Changing")));
    assertEquals(1, rows.number("SELECT count(*) FROM bow_check WHERE rig_id = ?1", bow.id()));
  }

  @Test
  void officers_seeHowReadersDiffer() {
    Visitor.signedInAs("officer")
        .get("/check/readers")
        .then()
        .statusCode(200)
        .body(containsString("One person again"), containsString("officer"));
    Visitor.signedInAs("volunteer").get("/check/readers").then().statusCode(403);
  }
}
