package club.ascham.home;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;

import club.ascham.fleet.Rack;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class FindPagesTest {
  @Inject Rack rack;
  @Inject ClubTime time;

  @Test
  void aCode_inAnyWriting_leadsStraightToTheRig() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    String page = "/rigs/" + rig.id().value();
    leadsTo(asked("volunteer", rig.riserCode()), page);
    leadsTo(asked("volunteer", rig.riserCode().toLowerCase(Locale.ROOT).replace("-", "")), page);
    leadsTo(asked("volunteer", " " + rig.stringCode() + " "), page);
    leadsTo(asked("volunteer", rig.limbsCode() + "-u"), page);
    leadsTo(asked("committee", rig.limbsCode() + "L"), page);
  }

  @Test
  void aPartOfARigOnLoan_leadsToTakingItBack() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    var loan = rack.lend(rig, "Ada Lane", time.today().plusDays(9));
    leadsTo(asked("volunteer", rig.stringCode()), "/receive/" + loan.value());
    leadsTo(asked("committee", rig.stringCode()), "/rigs/" + rig.id().value());
    rack.withdraw(rig.limbs(), "Recalled by its maker.");
    leadsTo(asked("volunteer", rig.limbsCode()), "/receive/" + loan.value());
  }

  @Test
  void aRigThatCameBack_leadsToItsCheck() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    rack.takeBack(rack.lend(rig, "Ben Lane", time.today()));
    leadsTo(asked("volunteer", rig.riserCode()), "/check/" + rig.id().value());
    leadsTo(asked("committee", rig.riserCode()), "/rigs/" + rig.id().value());
  }

  @Test
  void aWrongCheckCharacter_saysSo_andOffersNothingElse() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    String right = rig.riserCode();
    char last = right.charAt(right.length() - 1);
    String wrong = right.substring(0, right.length() - 1) + (last == '3' ? '4' : '3');
    asked("volunteer", wrong)
        .statusCode(200)
        .body(containsString("nobody’s code".replace("’", "&#39;")))
        .body(not(containsString("class=\"ruled\"")))
        .body(containsString("value=\"" + wrong + "\""));
  }

  @Test
  void aCodeThatNoItemHas_saysSo() {
    asked("officer", "B-9998-" + ItemCode.checkCharacter("B9998"))
        .statusCode(200)
        .body(containsString("Nothing found"));
  }

  @Test
  void aName_leadsToTheLoan_forThoseWhoReceive_andToNothingForTheCommittee() {
    var loan =
        rack.lend(rack.readyRig("RIGHT", 20), "Quentin Osgathorpe", time.today().plusDays(9));
    leadsTo(asked("volunteer", "osgathorpe"), "/loans/" + loan.value());
    leadsTo(asked("officer", "Quentin  OSGA"), "/loans/" + loan.value());
    Visitor.signedInAs("volunteer")
        .get("/loans/" + loan.value())
        .then()
        .body(containsString("href=\"/receive/" + loan.value() + "\""))
        .body(containsString("href=\"/reports/new?loan=" + loan.value() + "\""));
    asked("committee", "Osgathorpe")
        .statusCode(200)
        .body(containsString("Nothing found"))
        .body(not(containsString("Quentin")));
  }

  @Test
  void aLeadersName_leadsToTheSessionThatIsOut() {
    var loan = rack.lendToSession(rack.readyRig("RIGHT", 20), "Marguerite Ferrybank");
    leadsTo(asked("volunteer", "ferrybank"), "/loans/" + loan.value());
  }

  @Test
  void aFewWords_findByMakerModelSerialAndKind() {
    Rack.Hung rig = rack.readyRig("LEFT", 20);
    Rack.Hung other = rack.readyRig("LEFT", 20);
    rack.called(rig.riser(), "Thistlewaite", "Heronmere", "TH-77%_");
    rack.called(other.riser(), "Thistlewaite", "Heronmere", "TH-78");
    leadsTo(asked("volunteer", "th-77%_"), "/rigs/" + rig.id().value());
    leadsTo(asked("volunteer", "riser heronmere TH-78"), "/rigs/" + other.id().value());
    asked("committee", "Thistlewaite left")
        .statusCode(200)
        .body(containsString(rig.riserCode()))
        .body(containsString(other.riserCode()))
        .body(containsString("href=\"/rigs/" + other.id().value() + "\""));
    asked("committee", "stringer heronmere").statusCode(200).body(containsString("Nothing found"));
  }

  @Test
  void nothingTyped_saysWhatTheBoxTakes_andMarkupStaysText() {
    asked("officer", " ").statusCode(200).body(containsString("Type a code, a name"));
    asked("officer", "<script>alert(1)</script>")
        .statusCode(200)
        .body(not(containsString("<script>alert")))
        .body(containsString("&lt;script&gt;alert"));
    Visitor.signedInAs("officer").get("/find").then().statusCode(200);
  }

  @Test
  void whatIsTyped_neverStandsInAnAddress_andTheButtonBackShowsItAgain() {
    rack.lend(rack.readyRig("RIGHT", 20), "Isolde Marchbanks", time.today().plusDays(9));
    rack.lend(rack.readyRig("RIGHT", 20), "Ingram Marchbanks", time.today().plusDays(9));
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/");
    volunteer
        .post("/find", Map.of("q", "Marchbanks"))
        .then()
        .statusCode(303)
        .header("Location", endsWith("/find"));
    for (int again = 0; again < 2; again++) {
      volunteer
          .get("/find")
          .then()
          .statusCode(200)
          .body(containsString("Isolde Marchbanks"), containsString("Ingram Marchbanks"))
          .body(containsString("value=\"Marchbanks\""))
          .body(not(containsString("q=Marchbanks")));
    }
    volunteer
        .get("/find?q=Marchbanks")
        .then()
        .statusCode(303)
        .header("Location", endsWith("/find"));
  }

  @Test
  void whatOneAccountTyped_isNotShownToTheNext() {
    Visitor tablet = Visitor.signedInAs("volunteer");
    tablet.look("/find", Map.of("q", "Marchbanks-Thrale"));
    tablet.post("/sign-out", Map.of()).then().statusCode(303);
    tablet.get("/sign-in");
    tablet.post("/sign-in", Map.of("name", "committee", "password", "demo-fleet"));
    tablet.get("/find").then().statusCode(200).body(not(containsString("Thrale")));
  }

  @Test
  void aCodeInAnAddress_leadsOn_sinceALabelIsNobodysName() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    leadsTo(
        Visitor.signedInAs("volunteer").get("/find?q=" + rig.riserCode()).then(),
        "/rigs/" + rig.id().value());
  }

  private static ValidatableResponse asked(String who, String typed) {
    return Visitor.signedInAs(who).look("/find", Map.of("q", typed)).then();
  }

  private static void leadsTo(ValidatableResponse answer, String path) {
    answer.statusCode(303).header("Location", endsWith(path));
  }
}
