package club.ascham.fleet;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.StatementCount;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class FleetPagesTest {
  private static final Pattern FIGURE =
      Pattern.compile(
          "href=\"(/fleet/rows\\?[^\"]+)\"[^>]*>(?:<span[^>]*>[^<]*</span>)?\\+?(\\d+)");

  @Inject Rack rack;
  @Inject ClubTime time;

  @ParameterizedTest
  @ValueSource(strings = {"officer", "volunteer", "committee"})
  void thePage_isForEveryRole(String name) {
    rack.readyRig("LEFT", 18);
    Visitor.signedInAs(name)
        .get("/fleet")
        .then()
        .statusCode(200)
        .body(containsString("Can we run the next course, and are we safe?"))
        .body(containsString("over 16 to 22 lb"));
  }

  @Test
  void everyFigureOnThePage_opensIntoExactlyItsRows() {
    somethingOfEverything();
    Visitor committee = Visitor.signedInAs("committee");
    Map<String, Integer> figures = figuresOn(committee.get("/fleet"));
    for (String list :
        List.of("rigs", "loans-overdue", "inspections-overdue", "strings-due", "withdrawals")) {
      String of = "/fleet/rows?list=" + list;
      assertTrue(figures.containsKey(of), "the page has a figure for " + list);
      assertTrue(figures.get(of) > 0, "the test has something of " + list);
    }
    assertTrue(figures.size() > 20, "figures of states, lengths, weights, hands and the course");
    figures.forEach(
        (address, figure) -> {
          Response page = committee.get(address);
          page.then().statusCode(200);
          assertEquals(figure, rowsOn(page), address);
        });
  }

  @Test
  void whoHasWhat_isNotForTheCommittee() {
    rack.lend(rack.readyRig("RIGHT", 20), "Isolde Quick", time.today().minusDays(3));
    String late = "/fleet/rows?list=loans-overdue";
    Visitor.signedInAs("volunteer")
        .get(late)
        .then()
        .statusCode(200)
        .body(containsString("Isolde Quick"))
        .body(containsString("3 days late"))
        .body(containsString("href=\"/receive/"));
    Visitor.signedInAs("committee")
        .get(late)
        .then()
        .statusCode(200)
        .body(containsString("3 days late"))
        .body(not(containsString("Isolde Quick")))
        .body(not(containsString("href=\"/receive/")));
  }

  @Test
  void withdrawals_standOnThePageWithTheirReason() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    rack.withdraw(rig.limbs(), "A crack at the lower tip & <more>.");
    Visitor.signedInAs("committee")
        .get("/fleet")
        .then()
        .body(containsString("A crack at the lower tip &amp; &lt;more&gt;."))
        .body(containsString("/items/" + rig.limbsCode()));
  }

  @Test
  void anInspectionAskedForToday_isNotSaidToBeLate() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    rack.asked(rig.limbs(), "LIMB_INSPECTION", "Reported: it creaks.");
    String rows =
        Visitor.signedInAs("committee").get("/fleet/rows?list=inspections-overdue").asString();
    String line = rows.substring(rows.indexOf("/items/" + rig.limbsCode()));
    line = line.substring(0, line.indexOf("</li>"));
    assertTrue(line.contains("asked for today"), line);
    rack.clear(List.of(rig));
  }

  @Test
  void aRigThatCostTrouble_standsOnThePage_withTheWayToEachTime() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    for (int i = 0; i < 30; i++) {
      rack.check(rig, i % 2 == 0 ? "ADJUST" : "WITHDRAW");
    }
    Visitor committee = Visitor.signedInAs("committee");
    String of = "/fleet/rows?list=trouble&rig=" + rig.id().value();
    assertEquals(30, figuresOn(committee.get("/fleet")).get(of));
    assertEquals(30, rowsOn(committee.get(of)));
    assertTrue(rowsOn(committee.get("/fleet/rows?list=trouble")) >= 30);
    rack.clear(List.of(rig));
  }

  @Test
  void theAnnualReport_bearsTheSeal_andIsForOfficersAndCommittee() {
    Visitor.signedInAs("committee")
        .get("/fleet/report")
        .then()
        .statusCode(200)
        .body(containsString("record’s seal"))
        .body(containsString("How bows came back"))
        .body(containsString("Next to replace"));
    Visitor.signedInAs("volunteer").get("/fleet/report").then().statusCode(403);
  }

  @Test
  void aListThatDoesNotExist_isNotFound_andAnUnknownWordMatchesNothing() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/fleet/rows?list=swords").then().statusCode(404);
    officer.get("/fleet/rows").then().statusCode(404);
    officer
        .get("/fleet/rows?list=rigs&state=<script>")
        .then()
        .statusCode(200)
        .body(not(containsString("<script>")))
        .body(containsString("Back to the fleet"));
  }

  @Test
  void thePage_needsTheSameFewStatements_withTenRigsAndWithFiveHundred() {
    List<Rack.Hung> ten = rack.readyRigs(10);
    Visitor officer = Visitor.signedInAs("officer");
    List<String> addresses = List.of("/fleet", "/fleet/rows?list=rigs", "/");
    addresses.forEach(officer::get);
    List<Long> withTen = addresses.stream().map(address -> statements(officer, address)).toList();
    List<Rack.Hung> more = rack.readyRigs(490);
    List<Long> withMany = addresses.stream().map(address -> statements(officer, address)).toList();
    rack.clear(more);
    rack.clear(ten);
    assertEquals(withTen, withMany);
    assertTrue(withMany.stream().allMatch(count -> count <= 16), withMany.toString());
  }

  private static long statements(Visitor visitor, String address) {
    long before = StatementCount.run();
    visitor.get(address).then().statusCode(200);
    return StatementCount.run() - before;
  }

  private void somethingOfEverything() {
    rack.readyRig("RIGHT", 14);
    rack.rigWithoutSetUp();
    rack.lend(rack.readyRig("RIGHT", 26), "Piers Ottery", time.today().minusDays(9));
    rack.lend(rack.readyRig("LEFT", 20), "Petra Ottery", time.today().plusDays(3));
    rack.lend(rack.readyRig("LEFT", 30), "Paul Ottery", time.today().plusDays(30));
    rack.takeBack(rack.lend(rack.readyRig("LEFT", 20), "Pia Ottery", time.today()));
    rack.withdraw(rack.readyRig("RIGHT", 20).riser(), "The grip is loose.");
    rack.neverInspected(rack.readyRig("RIGHT", 20).riser());
    rack.firstUsed(rack.readyRig("RIGHT", 20).string(), time.today().minusDays(720));
  }

  private static Map<String, Integer> figuresOn(Response page) {
    Map<String, Integer> figures = new TreeMap<>();
    Matcher matcher = FIGURE.matcher(page.asString());
    while (matcher.find()) {
      String address = matcher.group(1).replace("&amp;", "&");
      Integer other = figures.put(address, Integer.valueOf(matcher.group(2)));
      assertTrue(other == null || other.equals(figures.get(address)), "one address, one figure");
    }
    return figures;
  }

  private static int rowsOn(Response page) {
    String html = page.asString();
    int inTable = occurrences(html, "<td class=\"lead\"");
    int inList =
        html.contains("<ul class=\"ruled\">")
            ? occurrences(html.substring(html.indexOf("<ul class=\"ruled\">")), "<li>")
            : 0;
    return inTable + inList;
  }

  private static int occurrences(String text, String of) {
    return text.split(Pattern.quote(of), -1).length - 1;
  }
}
