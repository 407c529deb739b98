package club.ascham.journey;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.time.ClubTime;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/**
 * The main job over the API, told as what happens to one bow: from the crate its parts came in to
 * the maker's recall, and at every step what the upkeep list and the committee's figures say.
 */
@QuarkusTest
@Order(1)
class MainJobApiTest {
  private static final List<String> LOOKS =
      List.of("turns", "alike", "thread", "lockingScrew", "washer", "seat");

  @Inject ClubTime time;

  private LocalDate today;
  private String batch;
  private Map<String, Integer> figures;
  private String riser;
  private String limbs;
  private String string;
  private String stringer;
  private String arrows;
  private String tab;
  private int rig;
  private int loan;

  @BeforeEach
  void lookAround() {
    today = time.today();
    batch = "MJ-" + System.nanoTime();
    figures = figures();
  }

  @Test
  void aBow_fromItsParts_throughALoanAndItsUpkeep_toTheMakersRecall() {
    partsAreRegistered();
    theOldRiser_waitsForItsBolts();
    aRigIsAssembled();
    itIsSetUp_andReady();
    aNewcomerIsFitted();
    theKitIsIssued();
    theLoanIsExtended();
    theKitIsReceived();
    aLowBraceAsksForTwists_andTheSecondMeasurementIsFit();
    itIsPutBack();
    itsLimbsAreWithdrawn_andReleased();
    itsOldStringIsReplaced_andItIsSetUpAnew();
    theMakerRecallsTheLimbs();
  }

  private void partsAreRegistered() {
    riser =
        registered(
            "risers",
            """
            {"build": "adjustable", "hand": "right", "lengthIn": 25, "limbFitting": "ILF",
             "maxTurnsOut": 4, "boughtOn": "%s"}"""
                .formatted(today.minusDays(181)));
    limbs =
        registered(
            "limbs",
            """
            {"build": "adjustable", "size": "medium", "markedLb": 20, "limbFitting": "ILF",
             "batch": "%s", "boughtOn": "%s"}"""
                .formatted(batch, today.minusDays(100)));
    string =
        registered(
            "strings",
            """
            {"forBowIn": 68, "material": "polyester", "firstUsed": "%s"}"""
                .formatted(today.minusDays(700)));
    stringer =
        registered(
            "stringers",
            """
            {"stringerKind": "tip-and-saddle", "bowFromIn": 60, "bowToIn": 70}""");
    arrows =
        registered(
            "kit-items",
            """
            {"kind": "arrows", "arrowLength": "30 in", "arrowCount": 8, "pool": false}""");
    tab =
        registered(
            "kit-items",
            """
            {"kind": "tab", "hand": "right", "size": "M"}""");

    sending("volunteer").get("/api/limbs/" + limbs).then().body("state", equalTo("ready"));
    sending("volunteer").get("/api/risers/" + riser).then().body("state", equalTo("to-be-checked"));
    assertEquals("overdue", due(riser, "bolt-inspection").get("status"));
    assertEquals("due-soon", due(string, "string-replacement").get("status"));
    assertEquals("later", due(limbs, "limb-inspection").get("status"));
    figuresMoved(Map.of("inspections-overdue", 1, "strings-due", 1));
  }

  private void theOldRiser_waitsForItsBolts() {
    send("officer", parts(), "POST", "/api/rigs")
        .statusCode(422)
        .body("errors.field", contains("body"));

    Map<String, String> seen = new HashMap<>();
    LOOKS.forEach(look -> seen.put(look, "fine"));
    Map<String, Object> inspection =
        Map.of("item", riser, "work", "bolt-inspection", "seen", seen, "upperTurnsOut", "2");
    send("volunteer", inspection, "POST", "/api/inspections").statusCode(403);
    send("officer", inspection, "POST", "/api/inspections")
        .statusCode(201)
        .body("result", equalTo("passed"));

    sending("volunteer").get("/api/risers/" + riser).then().body("state", equalTo("ready"));
    assertEquals("later", due(riser, "bolt-inspection").get("status"));
    assertEquals(today.plusDays(180).toString(), due(riser, "bolt-inspection").get("dueOn"));
    figuresMoved(Map.of("inspections-overdue", -1));
  }

  private void aRigIsAssembled() {
    rig =
        send("officer", parts(), "POST", "/api/rigs")
            .statusCode(201)
            .body("state", equalTo("in-the-workshop"))
            .body("bowLengthIn", equalTo(68))
            .body("setUp", nullValue())
            .body("targets.brace.inner.low", notNullValue())
            .extract()
            .path("id");

    figuresMoved(Map.of("rigs", 1, "in-the-workshop", 1));
    send("officer", aKit(), "POST", "/api/loans")
        .statusCode(422)
        .body("errors.message", hasItem(containsString("set-up is finished")));
  }

  private void itIsSetUp_andReady() {
    setUp();

    assertState("ready");
    figuresMoved(Map.of("in-the-workshop", -1, "ready", 1, "fielded", 1));
  }

  private void aNewcomerIsFitted() {
    send(
            "volunteer",
            """
            {"hand": "right", "drawLength": "27 in", "ageBand": "adult",
             "experience": "beginner"}""",
            "POST",
            "/api/fit")
        .statusCode(200)
        .body("bowFromIn", notNullValue())
        .body("shortestArrow", containsString("mm"))
        .body("rigs.rig", hasItem(rig))
        .body("rigs.find { it.rig == " + rig + " }.why", not(hasSize(0)));
    figuresMoved(Map.of());
  }

  private void theKitIsIssued() {
    loan =
        send("officer", aKit(), "POST", "/api/loans")
            .statusCode(201)
            .body("open", equalTo(true))
            .body("lines", hasSize(6))
            .body("lines.code", hasItem(stringer))
            .extract()
            .path("id");

    assertState("on-loan");
    figuresMoved(Map.of("ready", -1, "on-loan", 1, "fielded", -1));
    send("officer", aKit(), "POST", "/api/loans")
        .statusCode(422)
        .body("errors.field", hasItem("rig"));
    sending("committee").get("/api/loans/" + loan).then().body("name", nullValue());
  }

  private void theLoanIsExtended() {
    String later = today.plusDays(60).toString();
    send("officer", Map.of("dueOn", later), "POST", "/api/loans/" + loan + "/extend")
        .statusCode(200)
        .body("dueOn", equalTo(later));
    figuresMoved(Map.of());
  }

  private void theKitIsReceived() {
    send("volunteer", Map.of("loanId", loan), "POST", "/api/receipts")
        .statusCode(201)
        .body("back", hasSize(6));

    sending("volunteer").get("/api/loans/" + loan).then().body("open", equalTo(false));
    assertState("to-be-checked");
    figuresMoved(Map.of("on-loan", -1, "to-be-checked", 1));
  }

  private void aLowBraceAsksForTwists_andTheSecondMeasurementIsFit() {
    Map<String, Object> reading = reading(198);
    int low =
        send("volunteer", reading, "POST", "/api/checks")
            .statusCode(201)
            .body("verdict.kind", equalTo("adjust"))
            .body("verdict.steps[0].key", equalTo("look-along"))
            .body("verdict.steps.key", hasItem("twists"))
            .extract()
            .path("id");
    assertState("to-be-checked");
    send("volunteer", Map.of(), "POST", "/api/checks/" + low + "/release").statusCode(409);
    figuresMoved(Map.of());

    int adjustment =
        send("volunteer", Map.of("twistsAdded", 20), "POST", "/api/checks/" + low + "/adjustment")
            .statusCode(201)
            .extract()
            .path("id");
    Map<String, Object> again = reading(215.9);
    again.put("adjustment", adjustment);
    int fit =
        send("volunteer", again, "POST", "/api/checks")
            .statusCode(201)
            .body("verdict.kind", equalTo("fit"))
            .extract()
            .path("id");
    assertState("to-be-checked");
    figuresMoved(Map.of());
    sending("committee")
        .get("/api/checks?rig=" + rig)
        .then()
        .body("items.id", contains(fit, low))
        .body("items.verdict", contains("fit", "adjust"));
  }

  private void itIsPutBack() {
    int last =
        sending("volunteer").get("/api/checks?rig=" + rig).then().extract().path("items[0].id");
    send("volunteer", Map.of(), "POST", "/api/checks/" + last + "/release")
        .statusCode(200)
        .body("state", equalTo("ready"));
    assertState("ready");
    figuresMoved(Map.of("to-be-checked", -1, "ready", 1, "fielded", 1));
  }

  private void itsLimbsAreWithdrawn_andReleased() {
    int withdrawal =
        send(
                "volunteer",
                Map.of("item", limbs, "why", "A line across the lower limb."),
                "POST",
                "/api/withdrawals")
            .statusCode(201)
            .extract()
            .path("id");
    assertState("withdrawn");
    figuresMoved(Map.of("ready", -1, "withdrawn", 1, "withdrawals", 1, "fielded", -1));
    send("officer", aKit(), "POST", "/api/loans")
        .statusCode(422)
        .body("errors.message", hasItem(containsString("withdrawn")));

    Map<String, Object> why =
        Map.of(
            "lookedAt",
            "Both limbs from butt to tip.",
            "why",
            "Looked at in daylight: a scratch in the lacquer.");
    String release = "/api/withdrawals/" + withdrawal + "/release";
    send("officer", why, "POST", release)
        .statusCode(409)
        .body("detail", containsString("/withdrawals/" + withdrawal + "/decide"));
    send(
            "officer",
            Map.of("work", "none", "why", "Only the lacquer is scratched."),
            "POST",
            "/api/withdrawals/" + withdrawal + "/decide")
        .statusCode(200)
        .body("noWorkWhy", equalTo("Only the lacquer is scratched."));
    send("volunteer", why, "POST", release).statusCode(403);
    send("officer", why, "POST", release).statusCode(200).body("releasedBy", equalTo("officer"));
    assertState("ready");
    figuresMoved(Map.of("ready", 1, "withdrawn", -1, "withdrawals", -1, "fielded", 1));
  }

  private void itsOldStringIsReplaced_andItIsSetUpAnew() {
    String fresh =
        registered(
            "strings",
            """
            {"forBowIn": 68, "material": "polyester", "boughtOn": "%s"}"""
                .formatted(today));
    send(
            "volunteer",
            Map.of("item", string, "newString", fresh, "oldString", "scrapped"),
            "POST",
            "/api/replacements")
        .statusCode(201)
        .body("result", equalTo("replaced"))
        .body("replacedBy", equalTo(fresh));

    sending("officer").get("/api/strings/" + string).then().body("state", equalTo("retired"));
    assertNotPlanned(string);
    assertEquals(today.plusDays(730).toString(), due(fresh, "string-replacement").get("dueOn"));
    assertState("in-the-workshop");
    figuresMoved(Map.of("ready", -1, "in-the-workshop", 1, "strings-due", -1, "fielded", -1));

    setUp();
    assertState("ready");
    figuresMoved(Map.of("ready", 1, "in-the-workshop", -1, "fielded", 1));
  }

  private void theMakerRecallsTheLimbs() {
    sending("officer")
        .get("/api/recalls?batch=" + batch)
        .then()
        .statusCode(200)
        .body("items", hasSize(1))
        .body("items[0].code", equalTo(limbs))
        .body("items[0].rigs", hasItem(riser))
        .body("items[0].holders.until", everyItem(notNullValue()));
    send("officer", Map.of("batch", batch, "why", "The maker's notice."), "POST", "/api/recalls")
        .statusCode(200)
        .body("withdrawn", equalTo(1))
        .body("out", equalTo(0));
    assertState("withdrawn");
    figuresMoved(Map.of("ready", -1, "withdrawn", 1, "withdrawals", 1, "fielded", -1));
  }

  // ---- what is sent

  private static ValidatableResponse send(String who, Object body, String method, String path) {
    return sending(who).body(body).request(method, path).then();
  }

  private static String registered(String list, String body) {
    return send("officer", body, "POST", "/api/" + list).statusCode(201).extract().path("code");
  }

  private void setUp() {
    String setUps = "/api/rigs/" + rig + "/set-ups";
    send("officer", "{}", "POST", setUps).statusCode(200);
    send(
            "officer",
            """
            {"stepsDone": "all", "brace": "8 1/2 in", "braceFrom": "grip-throat",
             "tillerUpper": "190 mm", "tillerLower": "186 mm", "nocking": "4 mm",
             "screwsSeen": true}""",
            "PUT",
            setUps + "/current")
        .statusCode(200)
        .body("openSetUp.stepsToDo", hasSize(0));
    send("officer", "{}", "POST", setUps + "/current/finish")
        .statusCode(200)
        .body("setUp.brace", equalTo("215.9 mm"));
  }

  private Map<String, Object> parts() {
    return Map.of("body", riser, "limbs", limbs, "string", string);
  }

  private Map<String, Object> aKit() {
    Map<String, Object> kit = new HashMap<>();
    kit.put("name", "Nell Harker");
    kit.put("contact", "07700 900417");
    kit.put("hand", "right");
    kit.put("drawLength", "27 in");
    kit.put("ageBand", "adult");
    kit.put("experience", "beginner");
    kit.put("rig", rig);
    kit.put(
        "items", List.of(Map.of("code", stringer), Map.of("code", arrows), Map.of("code", tab)));
    kit.put("termsAccepted", true);
    kit.put("briefingGiven", true);
    return kit;
  }

  /** Both distances change by what brace changes from the set-up's 215.9 mm. */
  private Map<String, Object> reading(double braceMm) {
    Map<String, Object> reading = new HashMap<>();
    reading.put("rig", riser);
    reading.put("allAsListed", true);
    reading.put("brace", braceMm + " mm");
    reading.put("braceFrom", "grip-throat");
    reading.put("tillerUpper", Math.round(10 * (190 + braceMm - 215.9)) / 10.0 + " mm");
    reading.put("tillerLower", Math.round(10 * (186 + braceMm - 215.9)) / 10.0 + " mm");
    reading.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    return reading;
  }

  // ---- what is seen

  private void assertState(String state) {
    sending("committee").get("/api/rigs/" + rig).then().body("state", equalTo(state));
  }

  /** The figures that a step moves, by how much; every other one stands where it stood. */
  private void figuresMoved(Map<String, Integer> by) {
    Map<String, Integer> expected = new TreeMap<>(figures);
    by.forEach((figure, more) -> expected.merge(figure, more, Integer::sum));
    Map<String, Integer> now = figures();
    expected.keySet().removeIf(figure -> expected.get(figure) == 0 && !now.containsKey(figure));
    assertEquals(expected, now);
    figures = now;
  }

  private static Map<String, Integer> figures() {
    JsonPath fleet =
        sending("committee").get("/api/fleet").then().statusCode(200).extract().jsonPath();
    Map<String, Integer> figures = new TreeMap<>();
    List<Map<String, Object>> states = fleet.getList("byState");
    states.forEach(state -> figures.put((String) state.get("value"), (Integer) state.get("count")));
    figures.put("rigs", fleet.getInt("rigs.count"));
    figures.put("loans-overdue", fleet.getInt("loansOverdue.count"));
    figures.put("inspections-overdue", fleet.getInt("inspectionsOverdue.count"));
    figures.put("strings-due", fleet.getInt("stringsDue.count"));
    figures.put("withdrawals", fleet.getInt("withdrawals.count"));
    figures.put("fielded", fleet.getInt("course.asTheyAre.count"));
    return figures;
  }

  /** The row of the upkeep list for one work of an item. */
  private static Map<String, Object> due(String code, String work) {
    for (int page = 1; ; page++) {
      JsonPath list =
          sending("committee")
              .get("/api/upkeep?size=200&work=" + work + "&page=" + page)
              .then()
              .statusCode(200)
              .extract()
              .jsonPath();
      Map<String, Object> row = list.getMap("items.find { it.code == '" + code + "' }");
      if (row != null || list.getList("items").isEmpty()) {
        return row;
      }
    }
  }

  private static void assertNotPlanned(String code) {
    assertEquals(null, due(code, "string-replacement"));
  }
}
