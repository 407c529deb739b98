package club.ascham.home;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fleet.Rack;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.junit.jupiter.api.Test;

@QuarkusTest
class HomePagesTest {
  @Inject Rack rack;
  @Inject ClubTime time;

  @Test
  void anOfficer_seesWhatGoesOut_andMayIssue() {
    rack.readyRig("LEFT", 18);
    Visitor.signedInAs("officer")
        .get("/")
        .then()
        .statusCode(200)
        .body(containsString("Left-handed"))
        .body(containsString("68 in ×"))
        .body(containsString("href=\"/issue\""))
        .body(containsString("href=\"/sessions/new\""));
  }

  @Test
  void aVolunteer_seesWhatComesBack_dueTodayFirst_eachReadyToReceive() {
    rack.takeBackWhatIsDue(time.today());
    rack.lend(rack.readyRig("RIGHT", 20), "Wilf Late", time.today().minusDays(400));
    var today = rack.lend(rack.readyRig("RIGHT", 20), "Tess Today", time.today());
    String page =
        Visitor.signedInAs("volunteer").get("/").then().statusCode(200).extract().asString();
    assertTrue(page.contains("href=\"/receive/" + today.value() + "\""));
    assertTrue(page.contains("due today"));
    assertTrue(page.indexOf("Tess Today") < page.indexOf("Wilf Late"), "due today comes first");
    assertTrue(!page.contains("href=\"/issue\">Issue a kit"), "a volunteer does not issue kits");
  }

  @Test
  void theBench_saysWhatEachRigWaitsFor() {
    Rack.Hung adjust = rack.readyRig("RIGHT", 20);
    rack.check(adjust, "ADJUST");
    rack.rigWithoutSetUp();
    Visitor.signedInAs("volunteer")
        .get("/")
        .then()
        .body(containsString("href=\"/check/"))
        .body(containsString("In the workshop"));
  }

  @Test
  void theCommittee_isLedToTheFleetPage_andOfferedNothingToDo() {
    rack.lend(rack.readyRig("RIGHT", 20), "Hugo Hidden", time.today());
    Visitor.signedInAs("committee")
        .get("/")
        .then()
        .statusCode(200)
        .body(containsString("href=\"/fleet\""))
        .body(not(containsString("Hugo Hidden")))
        .body(not(containsString("href=\"/receive/")));
  }

  @Test
  void aStranger_isSentToSignIn() {
    Visitor.unknown().get("/").then().statusCode(302);
  }
}
