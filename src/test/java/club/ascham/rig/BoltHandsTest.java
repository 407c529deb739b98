package club.ascham.rig;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;

import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Limbs that slot in turn no bolt; those of a screw-in bow are held by it. */
@QuarkusTest
class BoltHandsTest {
  @Inject Bench bench;
  @Inject Rows rows;
  @Inject ClubTime time;

  @AfterEach
  void asTheDemoClubHasIt() {
    permit("officer", time.today().plusYears(1));
    permit("volunteer", null);
  }

  private void permit(String name, LocalDate until) {
    rows.change("UPDATE account SET permit_until = ?2 WHERE name = ?1", name, until);
  }

  private static ValidatableResponse assemble(
      String who, Bench.Laid body, Bench.Laid limbs, Bench.Laid string) {
    return given()
        .auth()
        .preemptive()
        .basic(who, "demo-fleet")
        .contentType("application/json")
        .body(
            Map.of(
                "body", body.code(),
                "limbs", limbs.code(),
                "string", string.code(),
                "style", "split-finger",
                "level", "beginner"))
        .post("/api/rigs")
        .then();
  }

  private ValidatableResponse assembleScrewIn(String who) {
    String model = "Thatch" + System.nanoTime();
    return assemble(
        who, bench.screwInRiser(model), bench.screwInLimbs(model, 66), bench.polyesterString(66));
  }

  private ValidatableResponse assembleSlotIn(String who) {
    return assemble(
        who,
        bench.adjustableRiser("RIGHT", 25),
        bench.slotInLimbs("MEDIUM", 22),
        bench.polyesterString(68));
  }

  @Test
  void anOfficerWithoutThePermit_slotsLimbsIn_butScrewsNoneIn() {
    permit("officer", null);
    assembleSlotIn("officer").statusCode(201);
    assembleScrewIn("officer")
        .statusCode(422)
        .body("errors.message", hasItem(containsString("held by their limb bolts")));
  }

  @Test
  void whoHoldsThePermit_mayBoth_toItsLastDay() {
    permit("volunteer", time.today());
    assembleSlotIn("volunteer").statusCode(201);
    assembleScrewIn("volunteer").statusCode(201);
    permit("volunteer", time.today().minusDays(1));
    assembleSlotIn("volunteer").statusCode(422);
    assembleScrewIn("volunteer").statusCode(422);
  }

  @Test
  void aScrewInBow_isTakenApartByTheSameHands_andItsStringChangedByAny() {
    String model = "Thatch" + System.nanoTime();
    Bench.Laid riser = bench.screwInRiser(model);
    Bench.Laid limbs = bench.screwInLimbs(model, 66);
    long rig = bench.assembled(riser, limbs, bench.polyesterString(66));
    permit("officer", null);
    Map<String, String> otherString =
        Map.of(
            "body",
            riser.code(),
            "limbs",
            limbs.code(),
            "string",
            bench.polyesterString(66).code());
    Map<String, String> otherLimbs =
        Map.of(
            "body",
            riser.code(),
            "limbs",
            bench.screwInLimbs(model, 66).code(),
            "string",
            otherString.get("string"));
    put(rig, otherLimbs).statusCode(422).body("errors.message", hasItem(containsString("permit")));
    put(rig, otherString).statusCode(200);
    dissolve(rig).statusCode(422);
    permit("officer", time.today());
    put(rig, otherLimbs).statusCode(200);
    dissolve(rig).statusCode(204);
  }

  private static ValidatableResponse put(long rig, Map<String, String> parts) {
    return given()
        .auth()
        .preemptive()
        .basic("officer", "demo-fleet")
        .contentType("application/json")
        .body(parts)
        .put("/api/rigs/" + rig + "/parts")
        .then();
  }

  private static ValidatableResponse dissolve(long rig) {
    return given()
        .auth()
        .preemptive()
        .basic("officer", "demo-fleet")
        .contentType("application/json")
        .body("{}")
        .post("/api/rigs/" + rig + "/dissolve")
        .then();
  }
}
