package club.ascham.concern;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fleet.Rack;
import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** At the bench nobody is led to string or draw a bow that a danger stands against. */
@QuarkusTest
class UnstrungTest {
  private static final String UNSTRUNG = "Leave it unstrung";

  @Inject Rack rack;
  @Inject Told told;
  @Inject Rows rows;

  static Stream<Arguments> dangers() {
    return Stream.of(
        danger("told", (test, rig) -> test.told.bang(rig, rig.limbs())),
        danger("withdrawn", (test, rig) -> test.rack.withdraw(rig.limbs(), "crack at the butt")));
  }

  private static Arguments danger(String name, BiConsumer<UnstrungTest, Rack.Hung> laid) {
    return Arguments.of(name, laid);
  }

  private static String said(String danger, Rack.Hung rig) {
    return danger.equals("told")
        ? rig.limbsCode() + ", told and not answered yet: a bang or a crack was heard"
        : rig.limbsCode() + " is withdrawn: crack at the butt.";
  }

  private static ValidatableResponse post(String path, String body) {
    return sending("officer").body(body.replace('\'', '"')).post(path).then();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("dangers")
  void everyPageOfTheBench_saysWhatStandsAgainstIt_andNotToStringIt(
      String danger, BiConsumer<UnstrungTest, Rack.Hung> laid) {
    Rack.Hung rig = rack.rigWithoutSetUp();
    laid.accept(this, rig);
    Visitor officer = Visitor.signedInAs("officer");
    String at = "/rigs/" + rig.id().value();
    for (String page :
        List.of(
            at + "/set-up",
            at + "/weigh",
            at + "/change",
            at + "/change?place=string",
            at + "/sheet",
            "/check/" + rig.id().value())) {
      officer
          .get(page)
          .then()
          .statusCode(200)
          .body(containsString(said(danger, rig)))
          .body(containsString(UNSTRUNG));
    }
    officer.get(at + "/set-up").then().body(not(containsString("Begin the set-up")));
    officer.get(at + "/weigh").then().body(not(containsString("Keep it</button>")));
    officer
        .get("/check/" + rig.id().value())
        .then()
        .body(containsString("There is nothing to judge this bow by yet"))
        .body(not(containsString("Open its set-up")));
    told.forget(List.of(rig));
    rack.clear(List.of(rig));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("dangers")
  void settingUp_isRefused_byPageAndProgram(
      String danger, BiConsumer<UnstrungTest, Rack.Hung> laid) {
    Rack.Hung rig = rack.rigWithoutSetUp();
    // Other tests take the permit, and without it the tiller would be refused first.
    rows.change("UPDATE account SET permit_until = '2099-01-01' WHERE name = 'officer'");
    String api = "/api/rigs/" + rig.id().value() + "/set-ups";
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/rigs/" + rig.id().value() + "/set-up";
    officer.get(page);
    laid.accept(this, rig);

    officer.post(page + "/begin", Map.of()).then().statusCode(422).body(containsString(UNSTRUNG));
    post(api, "{}").statusCode(422).body(containsString(UNSTRUNG));
    assertEquals(0, setUps(rig));

    rows(rig);
    officer.get(page).then().body(not(containsString("Stand on the cord")));
    String figures =
        "{'stepsDone': 'all', 'brace': '8 1/2 in', 'braceFrom': 'grip-throat', 'tillerUpper': '190 mm',"
            + " 'tillerLower': '186 mm', 'nocking': '4 mm', 'screwsSeen': true}";
    sending("officer")
        .body(figures.replace('\'', '"'))
        .put(api + "/current")
        .then()
        .statusCode(422)
        .body(containsString(UNSTRUNG));
    sending("officer")
        .body("{\"stepsDone\": \"limbs\"}")
        .put(api + "/current")
        .then()
        .statusCode(200);
    post(api + "/current/finish", "{}").statusCode(422).body(containsString(UNSTRUNG));
    told.forget(List.of(rig));
  }

  /** Begun before anything was known. */
  private void rows(Rack.Hung rig) {
    QuarkusTransaction.requiringNew()
        .run(
            () ->
                rows.change(
                    "INSERT INTO set_up (rig_id, begun_at, begun_by, steps_done)"
                        + " SELECT id, assembled_at, 1, '' FROM rig WHERE id = ?1",
                    rig.id()));
  }

  private long setUps(Rack.Hung rig) {
    return rows.number("SELECT count(*) FROM set_up WHERE rig_id = ?1", rig.id());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("dangers")
  void weighing_isRefused_byPageAndProgram(
      String danger, BiConsumer<UnstrungTest, Rack.Hung> laid) {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    laid.accept(this, rig);
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/rigs/" + rig.id().value() + "/weigh";
    officer.get(page);
    officer
        .post(page, Map.of("drawIn", "28", "forceLb", "20"))
        .then()
        .statusCode(422)
        .body(containsString(UNSTRUNG))
        .body(containsString(said(danger, rig)));
    post("/api/rigs/" + rig.id().value() + "/weight", "{'drawIn': 28, 'forceLb': 20}")
        .statusCode(422)
        .body(containsString(UNSTRUNG));
    assertEquals(0, rows.number("SELECT count(*) FROM scale_reading WHERE rig_id = ?1", rig.id()));
    told.forget(List.of(rig));
    rack.clear(List.of(rig));
  }

  @Test
  void whatIsNoDanger_isToldAtTheBench_andForbidsNothing() {
    Rack.Hung rig = rack.rigWithoutSetUp();
    told.furred(rig, rig.string());
    Visitor officer = Visitor.signedInAs("officer");
    String page = officer.get("/rigs/" + rig.id().value() + "/set-up").asString();
    assertTrue(page.contains(rig.stringCode() + ", told and not answered yet"), page);
    assertTrue(page.contains("Begin the set-up") && !page.contains(UNSTRUNG), page);
    officer
        .get("/check/" + rig.id().value())
        .then()
        .body(containsString("Open its set-up"))
        .body(containsString("Answer what was told"));
    post("/api/rigs/" + rig.id().value() + "/set-ups", "{}").statusCode(200);
    told.forget(List.of(rig));
  }
}
