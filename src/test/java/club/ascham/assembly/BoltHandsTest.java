package club.ascham.assembly;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.hasItem;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
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
  @Inject ClubFixture fixture;
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

  private static ValidatableResponse assemble(String who, Laid body, Laid limbs, Laid string) {
    return sending(who)
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
        who, fixture.aScrewInRiser(model), fixture.screwInLimbs(model, 66), fixture.aString(66));
  }

  private ValidatableResponse assembleSlotIn(String who) {
    return assemble(
        who, fixture.aRiser("RIGHT", 25), fixture.limbs("MEDIUM", 22), fixture.aString(68));
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
    Laid riser = fixture.aScrewInRiser(model);
    Laid limbs = fixture.screwInLimbs(model, 66);
    long rig = fixture.assembled(riser, limbs, fixture.aString(66));
    permit("officer", null);
    Map<String, String> otherString =
        Map.of("body", riser.code(), "limbs", limbs.code(), "string", fixture.aString(66).code());
    Map<String, String> otherLimbs =
        Map.of(
            "body",
            riser.code(),
            "limbs",
            fixture.screwInLimbs(model, 66).code(),
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
    return sending("officer").body(parts).put("/api/rigs/" + rig + "/parts").then();
  }

  private static ValidatableResponse dissolve(long rig) {
    return sending("officer").body("{}").post("/api/rigs/" + rig + "/dissolve").then();
  }
}
