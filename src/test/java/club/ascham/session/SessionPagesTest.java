package club.ascham.session;

import static club.ascham.web.Program.as;
import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class SessionPagesTest {
  @Inject Rows rows;
  @Inject ClubTime time;

  @Test
  void onePressLends_andOneListTakesBack() {
    List<String> rigs = readyRigs(3);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = lend(volunteer, rigs);
    rigs.forEach(rig -> assertEquals("ON_LOAN", state(rig)));

    Map<String, String> back = new LinkedHashMap<>();
    back.put("once-key", "back-" + System.nanoTime());
    back.put("words-" + rigs.get(1), "serving loose at the top");
    back.put("out-" + rigs.get(2), "on");
    volunteer.get(page);
    volunteer.post(page, back).then().statusCode(303);

    assertEquals("READY", state(rigs.get(0)), "looked over, fine");
    assertEquals("TO_BE_CHECKED", state(rigs.get(1)), "something seen");
    assertEquals("ON_LOAN", state(rigs.get(2)), "not back yet");

    volunteer.get(page);
    volunteer.post(page, Map.of("once-key", "rest-" + System.nanoTime())).then().statusCode(303);
    assertEquals("READY", state(rigs.get(2)));
  }

  @Test
  void pastTheClubsRule_aLookNoLongerSuffices() {
    String rig = readyRigs(1).get(0);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    int evenings = 0;
    while (state(rig).equals("READY") && evenings < 20) {
      String page = lend(volunteer, List.of(rig));
      volunteer.get(page);
      volunteer.post(page, Map.of("once-key", "look-" + System.nanoTime())).then().statusCode(303);
      evenings++;
    }
    assertEquals("TO_BE_CHECKED", state(rig));
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM bow_check WHERE rig_id = ?1 AND released_at IS NOT NULL AND"
                + " happened_at = (SELECT max(happened_at) FROM bow_check WHERE rig_id = ?1)",
            rig));
  }

  @Test
  void aRigLentAMomentAgo_isRefusedClearly_andNothingOfTheSetGoesOut() {
    List<String> rigs = readyRigs(2);
    Visitor first = Visitor.signedInAs("volunteer");
    Visitor second = Visitor.signedInAs("officer");
    second.get("/sessions/new");
    lend(first, rigs.subList(0, 1));

    second
        .post("/sessions/new", set(rigs))
        .then()
        .statusCode(422)
        .body(containsString("not ready any more"));

    assertEquals("READY", state(rigs.get(1)));
    Visitor tidy = first;
    String page =
        "/sessions/"
            + rows.number("SELECT max(loan_id) FROM loan_line WHERE rig_id = ?1", rigs.get(0));
    tidy.get(page);
    tidy.post(page, Map.of("once-key", "tidy-" + System.nanoTime())).then().statusCode(303);
  }

  @Test
  void arrowsTooShortForAnArcher_areRefusedWithTheShortestThatIsSafe() {
    String rig = readyRigs(1).get(0);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = lend(volunteer, List.of(rig));
    String arrows =
        rows.texts(
"""
SELECT i.code FROM item i JOIN kit_item k ON k.id = i.id
 WHERE i.kind = 'ARROWS' AND i.retired_on IS NULL AND k.arrow_length IS NOT NULL ORDER BY k.arrow_length LIMIT 1""")
            .get(0);
    volunteer.get(page);
    volunteer
        .post(page + "/archers", archer(rig, "31 in", Map.of("arrows", arrows)))
        .then()
        .statusCode(422)
        .body(containsString("Too short for this archer"))
        .body(containsString("31 in"));
    volunteer.post(page + "/archers", archer(rig, "26 in", Map.of())).then().statusCode(303);
    volunteer.get(page).then().body(containsString("draws 26 in"));
    volunteer.post(page, Map.of("once-key", "end-" + System.nanoTime())).then().statusCode(303);
  }

  @Test
  void arrowsTooLightForTheBow_areRefused_andUnknownOnesAreSaidToBeUnchecked() {
    String rig = readyRigs(1).get(0);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = lend(volunteer, List.of(rig));
    String pool =
        rows.texts(
                "SELECT i.code FROM item i JOIN kit_item k ON k.id = i.id WHERE k.pool = 1 AND"
                    + " k.arrow_length > 75000000 ORDER BY i.code LIMIT 1")
            .get(0);
    String mass =
        "UPDATE kit_item SET arrow_mass_gr = ?2 WHERE id = (SELECT id FROM item WHERE code = ?1)";
    Map<String, String> archer = archer(rig, "26 in", Map.of("arrows", pool));
    double before =
        Double.parseDouble(
            rows.texts(
                    "SELECT k.arrow_mass_gr FROM item i JOIN kit_item k ON k.id = i.id WHERE i.code"
                        + " = ?1",
                    pool)
                .get(0));
    rows.change(mass, pool, 50.0);
    volunteer.get(page);
    volunteer
        .post(page + "/archers", archer)
        .then()
        .statusCode(422)
        .body(containsString("Too light for this archer: 50 gr an arrow"));
    rows.change(mass, pool, null);
    Map<String, String> withReason = new LinkedHashMap<>(archer);
    withReason.put("overrideWhy", "the only long ones in the room tonight");
    volunteer.post(page + "/archers", withReason).then().statusCode(303);
    volunteer.get(page).then().body(containsString("The mass of the arrows is not recorded"));
    rows.change(mass, pool, before);
    volunteer.post(page, Map.of("once-key", "end-" + System.nanoTime())).then().statusCode(303);
  }

  @Test
  void anArcherNotedByADoublePress_isNotedOnce() {
    String rig = readyRigs(1).get(0);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = lend(volunteer, List.of(rig));
    String key = "archer-" + System.nanoTime();
    volunteer.get(page).then().body(containsString("name=\"draw\""));
    Map<String, String> form = archer(rig, "26 in", Map.of("once-key", key));
    volunteer.post(page + "/archers", form).then().statusCode(303);
    volunteer.post(page + "/archers", form).then().statusCode(303);
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM session_archer WHERE loan_id = ?1",
            page.substring(page.lastIndexOf('/') + 1)));
    volunteer.post(page, Map.of("once-key", "end-" + System.nanoTime())).then().statusCode(303);
  }

  @Test
  void withdrawnArrows_areRefusedAtTheirField() {
    String rig = readyRigs(1).get(0);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = lend(volunteer, List.of(rig));
    String arrows =
        rows.texts(
"""
SELECT i.code FROM item i JOIN kit_item k ON k.id = i.id
 WHERE i.kind = 'ARROWS' AND i.retired_on IS NULL AND k.pool = 1 AND k.arrow_length >= 70000000 LIMIT 1""")
            .get(0);
    volunteer.get("/items/" + arrows + "/withdraw");
    volunteer
        .post(
            "/items/" + arrows + "/withdraw",
            Map.of("once-key", "out-" + System.nanoTime(), "why", "nocks are cracked"))
        .then()
        .statusCode(303);
    volunteer.get(page);
    volunteer
        .post(page + "/archers", archer(rig, "24 in", Map.of("arrows", arrows)))
        .then()
        .statusCode(422)
        .body(containsString("is withdrawn: nocks are cracked"))
        .body(containsString("value=\"24 in\""));
    rows.change(
        "UPDATE withdrawal SET released_at = happened_at, released_by = 1, release_why = 'new"
            + " nocks', looked_at = 'every nock', looked_by = 1, decided_at = happened_at,"
            + " decided_by = 1, no_work_why = 'new nocks are in' WHERE released_at IS NULL AND item_id = (SELECT id FROM item WHERE code ="
            + " ?1)",
        arrows);
    volunteer.post(page, Map.of("once-key", "end-" + System.nanoTime())).then().statusCode(303);
  }

  @Test
  void overTheApi_aSetGoesOutAndComesBack_andTheCommitteeOnlyReads() {
    String rig = readyRigs(1).get(0);
    int id =
        sending("volunteer")
            .body("{\"leader\": \"Ottoline\", \"rigIds\": [%s]}".formatted(rig))
            .post("/api/sessions")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    sending("committee")
        .body("{\"rigs\": []}")
        .post("/api/sessions/" + id + "/return")
        .then()
        .statusCode(403);
    sending("volunteer")
        .body("{\"rigs\": [{\"rigId\": %s, \"seen\": \"a noise\"}]}".formatted(rig))
        .post("/api/sessions/" + id + "/return")
        .then()
        .statusCode(200);
    assertEquals("TO_BE_CHECKED", state(rig));
    as("committee")
        .get("/api/sessions?size=1")
        .then()
        .statusCode(200)
        .body("items[0].rigsOut", equalTo(0));
  }

  private String lend(Visitor who, List<String> rigs) {
    who.get("/sessions/new").then().statusCode(200);
    String location =
        who.post("/sessions/new", set(rigs)).then().statusCode(303).extract().header("Location");
    return location.substring(location.indexOf("/sessions"));
  }

  private static Map<String, String> set(List<String> rigs) {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("once-key", "set-" + System.nanoTime());
    form.put("leader", "Quenby");
    rigs.forEach(rig -> form.put("rig-" + rig, "on"));
    return form;
  }

  /** Ready rigs that have a look left before their full check, and against which nothing stands. */
  /** A grown-up for whom a coach agreed to any bow's weight: whatever lies ready is lent here. */
  private static Map<String, String> archer(String rig, String draw, Map<String, String> more) {
    Map<String, String> form =
        new LinkedHashMap<>(Map.of("rig", rig, "ageBand", "adult", "draw", draw));
    form.put("overrideWhy", "shoots this weight every week");
    form.put("overrideCoach", "Bo Tarn");
    form.putAll(more);
    return form;
  }

  private List<String> readyRigs(int many) {
    return rows.texts(
        "SELECT s.rig_id FROM rig_standing s WHERE "
            + Standing.STATE_TODAY
            +
"""
= 'READY' AND (SELECT count(*) FROM bow_check c WHERE c.rig_id = s.rig_id AND c.kind = 'LOOK' AND c.happened_at >
 max(coalesce((SELECT max(f.happened_at) FROM bow_check f WHERE f.rig_id = s.rig_id AND f.kind = 'CHECK' AND f.released_at IS NOT NULL), ''),
     coalesce((SELECT max(u.finished_at) FROM set_up u WHERE u.rig_id = s.rig_id), ''))) < 5
   AND NOT EXISTS (SELECT 1 FROM fitting f JOIN report_against a ON a.item_id = f.item_id WHERE f.rig_id = s.rig_id AND f.until_at IS NULL)
   AND NOT EXISTS (SELECT 1 FROM fitting f JOIN upkeep_task k ON k.item_id = f.item_id AND k.closed_by_record IS NULL
                    WHERE f.rig_id = s.rig_id AND f.until_at IS NULL)
   AND NOT EXISTS (SELECT 1 FROM fitting f JOIN work_due d ON d.item_id = f.item_id AND d.due_on < ?1
                    WHERE f.rig_id = s.rig_id AND f.until_at IS NULL)
ORDER BY random() LIMIT """
            + " "
            + many,
        time.today());
  }

  private String state(String rig) {
    return rows.texts(
            "SELECT " + Standing.STATE_TODAY + " FROM rig_standing s WHERE s.rig_id = ?2",
            time.today(),
            rig)
        .get(0);
  }
}
