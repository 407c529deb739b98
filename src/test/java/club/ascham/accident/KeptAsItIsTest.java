package club.ascham.accident;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.concern.Concern;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.fixture.ClubFixture;
import club.ascham.fleet.Rack;
import club.ascham.id.LoanId;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Visitor;
import club.ascham.worksheet.LooksOf;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** While a thing is kept as it is, the database itself refuses what would change it. */
@QuarkusTest
class KeptAsItIsTest {
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

  private static final String WORDS = "The lower limb broke at full draw; a cut on the forearm.";

  @Inject Rack rack;
  @Inject ClubFixture fixture;
  @Inject Concerns concerns;
  @Inject Rows rows;
  @Inject ClubTime time;

  private static Response post(String path, Map<String, ?> body) {
    return sending("officer").body(body).post(path);
  }

  private void refuses(String sql, Object... parameters) {
    DatabaseRefusal refusal =
        assertThrows(DatabaseRefusal.class, () -> rows.change(sql, parameters), sql);
    assertEquals("kept-as-it-is", refusal.rule(), sql);
  }

  @Test
  void whileItIsKept_theDatabaseRefusesWhatWouldChangeIt_untilAnOfficerEndsThatInWholeWords() {
    Rack.Hung rig = aRig();
    Rack.Hung other = aRig();
    long accident =
        post("/api/accidents", Map.of("rig", rig.id().value(), "words", WORDS))
            .then()
            .statusCode(201)
            .extract()
            .jsonPath()
            .getLong("id");
    Instant now = time.now();
    refuses("UPDATE fitting SET until_at = ?2 WHERE item_id = ?1", rig.limbs(), now);
    refuses("DELETE FROM fitting WHERE item_id = ?1", rig.limbs());
    refuses(
        "UPDATE item SET retired_on = ?2, retired_why = 'SCRAPPED' WHERE id = ?1",
        rig.riser(),
        time.today());
    refuses(
        "UPDATE withdrawal SET released_at = ?2, released_by = 1, release_why = 'fine' WHERE item_id = ?1",
        rig.limbs(),
        now);
    refuses(
        "INSERT INTO fitting (rig_id, item_id, place, from_at) VALUES (?1, ?2, 'STRING', ?3)",
        rig.id(),
        other.string(),
        now);
    refuses(
        "INSERT INTO adjustment (rig_id, happened_at, recorded_at, done_by, twists_added) VALUES (?1, ?2, ?2, 1, 2)",
        rig.id(),
        now);
    refuses("INSERT INTO set_up (rig_id, begun_at, begun_by) VALUES (?1, ?2, 1)", rig.id(), now);
    refuses(
        "INSERT INTO scale_reading (rig_id, item_id, happened_at, recorded_at, weighed_by, draw_in, force_lb)"
            + " VALUES (?1, ?2, ?3, ?3, 1, 28, 20)",
        rig.id(),
        rig.limbs(),
        now);
    assertEquals(
        1,
        rows.change(
            "INSERT INTO adjustment (rig_id, happened_at, recorded_at, done_by, twists_added) VALUES (?1, ?2, ?3, 1, 2)",
            rig.id(),
            now.minus(3, ChronoUnit.DAYS),
            now),
        "what was done before is a fact like any other");
    assertEquals(
        1,
        rows.change("UPDATE item SET notes = 'In the left cupboard.' WHERE id = ?1", rig.riser()));

    long withdrawal = rows.number("SELECT max(id) FROM withdrawal WHERE item_id = ?1", rig.limbs());
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/withdrawals/" + withdrawal + "/release");
    officer
        .post(
            "/withdrawals/" + withdrawal + "/release",
            Map.of(
                "why",
                "Looked at, nothing was found.",
                "lookedAt",
                "Both limbs along their whole length."))
        .then()
        .statusCode(422)
        .body(containsString("kept as it is after an accident"));
    post("/api/accidents/" + accident + "/end", Map.of("why", "ok"))
        .then()
        .statusCode(422)
        .body("errors[0].field", equalTo("why"));
    officer.get("/accidents/" + accident);
    officer
        .post(
            "/accidents/" + accident + "/end",
            Map.of("why", "The insurer’s expert has seen all of it."))
        .then()
        .statusCode(303);
    post("/api/accidents/" + accident + "/end", Map.of("why", "The expert has seen all of it."))
        .then()
        .statusCode(409);
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM withdrawal WHERE item_id = ?1 AND released_at IS NULL",
            rig.limbs()),
        "it stays withdrawn");
    assertEquals(
        1,
        rows.change(
            """
            UPDATE withdrawal SET released_at = ?2, released_by = 1, release_why = 'Looked at.', looked_at = 'all of it',
                   looked_by = 1, decided_at = ?2, decided_by = 1, no_work_why = 'nothing was found in it'
             WHERE id = ?1""",
            withdrawal,
            time.now()));
    rows.change("UPDATE fitting SET until_at = ?2 WHERE item_id = ?1", rig.limbs(), time.now());
  }

  @Test
  void whatIsKept_isNotLookedOverDecidedOnOrExchanged_andSaysSo() {
    fixture.mayTurnBolts("officer", true);
    Rack.Hung rig = aRig();
    LoanId loan = rack.lend(rig, "Isolde Keep", time.today().plusDays(5));
    post("/api/accidents", Map.of("loan", loan.value(), "words", WORDS)).then().statusCode(201);
    String kept = "It is kept as it is after an accident, until an officer ends that.";
    Concern concern = concerns.of(rig.limbs()).heaviest().orElseThrow();
    assertEquals(Matter.WITHDRAWN, concern.matter());
    assertTrue(concern.ends().startsWith("Kept as it is after an accident: until"), concern.ends());

    Map<String, String> seen = new HashMap<>();
    LooksOf.keys("limb-inspection").forEach(key -> seen.put(key, "fine"));
    Map<String, Object> inspection =
        new HashMap<>(Map.of("item", rig.limbsCode(), "work", "limb-inspection", "seen", seen));
    long records = rows.number("SELECT count(*) FROM upkeep_record");
    post("/api/inspections", inspection)
        .then()
        .statusCode(422)
        .body("errors[0].message", equalTo(kept));
    post(
            "/api/replacements/kept",
            Map.of("item", rig.stringCode(), "found", "All strands of it are whole."))
        .then()
        .statusCode(409)
        .body("detail", equalTo(kept));
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/upkeep/" + rig.limbsCode() + "/limb-inspection");
    officer
        .post("/upkeep/" + rig.limbsCode() + "/limb-inspection", seen)
        .then()
        .statusCode(422)
        .body(containsString(kept));
    assertEquals(records, rows.number("SELECT count(*) FROM upkeep_record"));

    long withdrawal = rows.number("SELECT max(id) FROM withdrawal WHERE item_id = ?1", rig.limbs());
    Map<String, String> decision = Map.of("work", "limb-inspection");
    post("/api/withdrawals/" + withdrawal + "/decide", decision)
        .then()
        .statusCode(409)
        .body("detail", equalTo(kept));
    officer
        .post("/withdrawals/" + withdrawal + "/decide", decision)
        .then()
        .statusCode(422)
        .body(containsString(kept));

    Map<String, Object> check = new HashMap<>();
    check.put("rig", Long.toString(rig.id().value()));
    check.put("allAsListed", true);
    check.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    check.putAll(
        Map.of(
            "brace",
            "216 mm",
            "braceFrom",
            "grip-throat",
            "tillerUpper",
            "190 mm",
            "tillerLower",
            "186 mm"));
    post("/api/checks", check).then().statusCode(409).body("detail", equalTo(kept));

    String arrows =
        new ItemCode(
                rows.texts("SELECT code FROM item WHERE kind = 'ARROWS' AND retired_on IS NULL")
                    .get(0))
            .display();
    post("/api/loans/" + loan.value() + "/items", Map.of("item", arrows))
        .then()
        .statusCode(422)
        .body("errors[0].field", equalTo("item"))
        .body("errors[0].message", containsString("kept as it is after an accident"));

    Instant now = time.now();
    refuses(
        "INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)"
            + " VALUES (?1, 'LIMB_INSPECTION', ?2, ?2, 1, 'PASSED')",
        rig.limbs(),
        now);
    refuses(
        "UPDATE withdrawal SET decided_at = ?2, decided_by = 1, no_work_why = 'None fits it.' WHERE id = ?1",
        withdrawal,
        now);
    refuses(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict)
        VALUES (?1, 'CHECK', ?2, ?2, 1, 1, 'FIT')""",
        rig.id(),
        now);
    refuses(
        "INSERT INTO loan_line (loan_id, item_id, out_at) SELECT ?1, id, ?2 FROM item WHERE code = ?3",
        loan,
        now,
        aTab());

    // What was done before, and is typed in late, is a fact like any other.
    rows.change(
        "UPDATE item SET bought_on = ?2, registered_on = ?2 WHERE id = ?1",
        rig.limbs(),
        time.today().minusDays(30));
    inspection.put("on", time.today().minusDays(1).toString());
    post("/api/inspections", inspection).then().log().ifValidationFails().statusCode(201);
    fixture.mayTurnBolts("officer", false);
  }

  private String aTab() {
    return rows.texts(
            """
            SELECT i.code FROM item i WHERE i.kind = 'TAB' AND i.retired_on IS NULL
               AND NOT EXISTS (SELECT 1 FROM loan_line x WHERE x.item_id = i.id AND x.back_at IS NULL)""")
        .get(0);
  }
}
