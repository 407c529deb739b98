package club.ascham.setup;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.fleet.Rack;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Who lacks the permit is told where a set-up stops them before anything is strung. */
@QuarkusTest
class PermitAheadPagesTest {
  private static final String AHEAD =
      "Step 6, Tiller, is only for someone who holds the permit for limb bolts.";
  private static final Pattern VERSION = Pattern.compile("name=\"version\" value=\"(\\d+)\"");

  @Inject Rack rack;
  @Inject ClubFixture fixture;

  @BeforeEach
  void noPermit() {
    fixture.mayTurnBolts("volunteer", false);
    fixture.mayTurnBolts("officer", true);
  }

  @AfterEach
  void stillNone() {
    fixture.mayTurnBolts("volunteer", false);
  }

  @Test
  void beforeASetUp_andAtEachStepOnTheWay_andWhereItEndsTheStringComesOff() {
    Rack.Hung rig = rack.rigWithoutSetUp();
    String page = "/rigs/" + rig.id().value() + "/set-up";
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get(page).then().body(containsString(AHEAD), containsString("Begin the set-up"));
    Visitor.signedInAs("officer").get(page).then().body(not(containsString(AHEAD)));
    volunteer.post(page + "/begin", Map.of()).then().statusCode(303);
    for (String step : new String[] {"limbs", "loops", "string-on", "string-line", "brace"}) {
      String now = volunteer.get(page).asString();
      Matcher version = VERSION.matcher(now);
      version.find();
      volunteer.get(page).then().body(containsString(AHEAD));
      volunteer
          .post(
              page + "/step",
              Map.of("step", step, "version", version.group(1), "once-key", rig.id() + step))
          .then()
          .statusCode(303);
    }
    volunteer
        .get(page)
        .then()
        .body(
            containsString("String off, with the stringer. Then leave the bow here"),
            not(containsString("Save, and on")));
    Visitor.signedInAs("officer")
        .get(page)
        .then()
        .body(
            containsString("If it waited here unstrung: string on with the stringer"),
            containsString("Save, and on"));
  }

  @Test
  void beforeAStringOrALimbIsChanged() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String change = "/rigs/" + bow.id().value() + "/change?place=string";
    volunteer.get(change).then().body(containsString(AHEAD));
    Visitor.signedInAs("officer").get(change).then().body(not(containsString(AHEAD)));
    fixture.aString(68);
    volunteer
        .get("/upkeep/" + bow.string().code() + "/string-replacement")
        .then()
        .statusCode(200)
        .body(containsString(AHEAD));
  }
}
