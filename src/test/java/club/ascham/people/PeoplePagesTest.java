package club.ascham.people;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

@QuarkusTest
class PeoplePagesTest {
  private static final Pattern SECRET = Pattern.compile("<span class=\"code big\">([^<]+)</span>");

  @Inject Rows rows;

  @Test
  void anAccountIsMade_itsPasswordShownOnce_andOpensTheApi() {
    String name = "petra-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people").then().statusCode(200);
    String password = secret(add(officer, name, "volunteer"));
    assertEquals(200, api(name, password));
    officer.get("/people").then().body(containsString(name), not(containsString(password)));
    add(officer, name.toUpperCase(), "volunteer");
    assertEquals(
        1, rows.number("SELECT count(*) FROM account WHERE lower(name) = ?1", name), "once only");
  }

  @Test
  void thePermit_isGivenUntilADay() {
    String name = "pim-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    add(officer, name, "volunteer");
    long id = id(name);
    officer.get("/people/" + id).then().statusCode(200);
    officer
        .post(
            "/people/" + id,
            Map.of("role", "volunteer", "permitUntil", "31/12/2099", "version", "0"))
        .then()
        .statusCode(422)
        .body(containsString("At most five years"));
    officer
        .post(
            "/people/" + id,
            Map.of("role", "committee", "permitUntil", "2027-03-01", "version", "0"))
        .then()
        .statusCode(422);
    officer
        .post(
            "/people/" + id,
            Map.of("role", "volunteer", "permitUntil", "2027-03-01", "version", "0"))
        .then()
        .statusCode(303);
    officer
        .post("/people/" + id, Map.of("role", "committee", "version", "0"))
        .then()
        .statusCode(422)
        .body(containsString("Someone changed this account"));
    assertEquals(
        java.util.List.of("2027-03-01"),
        rows.texts("SELECT permit_until FROM account WHERE id = ?1", id));
  }

  @Test
  void aResetPassword_shutsTheOldOne_andAClosedAccountOpensNothing() {
    String name = "paul-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    String first = secret(add(officer, name, "committee"));
    long id = id(name);
    String second = secret(officer.post("/people/" + id + "/password", Map.of()));
    assertEquals(401, api(name, first));
    assertEquals(200, api(name, second));
    officer.post("/people/" + id + "/close", Map.of()).then().statusCode(303);
    assertEquals(401, api(name, second));
    officer.post("/people/" + id + "/reopen", Map.of()).then().statusCode(303);
    assertEquals(200, api(name, second));
  }

  @Test
  void theLastOfficer_staysOne() {
    Visitor officer = Visitor.signedInAs("officer");
    long id = id("officer");
    officer.get("/people/" + id);
    long others =
        rows.number(
            "SELECT count(*) FROM account WHERE role = 'OFFICER' AND closed_on IS NULL AND id <> ?1",
            id);
    assertEquals(0, others, "the demo club has one officer");
    officer
        .post("/people/" + id + "/close", Map.of())
        .then()
        .statusCode(422)
        .body(containsString("last officer"));
    long version = rows.number("SELECT version FROM account WHERE id = ?1", id);
    officer
        .post("/people/" + id, Map.of("role", "volunteer", "version", Long.toString(version)))
        .then()
        .statusCode(422)
        .body(containsString("last officer"));
  }

  @Test
  void onesOwnPassword_isChangedOnlyByWhoKnowsIt() {
    String name = "pia-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    String password = secret(add(officer, name, "committee"));
    Visitor pia = Visitor.unknown();
    pia.get("/sign-in");
    pia.post("/sign-in/go", Map.of("name", name, "password", password)).then().statusCode(302);
    pia.get("/me").then().statusCode(200);
    pia.post("/me/password", Map.of("oldPassword", "wrong", "newPassword", "long enough now"))
        .then()
        .statusCode(422)
        .body(containsString("not the password until now"));
    pia.post("/me/password", Map.of("oldPassword", password, "newPassword", "short"))
        .then()
        .statusCode(422)
        .body(containsString("At least 10"));
    pia.post("/me/password", Map.of("oldPassword", password, "newPassword", "long enough now"))
        .then()
        .statusCode(303);
    assertEquals(401, api(name, password));
    assertEquals(200, api(name, "long enough now"));
    pia.post("/me/unit", Map.of("unit", "millimetre")).then().statusCode(303);
    assertEquals(
        java.util.List.of("MILLIMETRE"),
        rows.texts("SELECT length_unit FROM account WHERE name = ?1", name));
  }

  @Test
  void anAccessKey_opensTheApi_untilItIsRevoked() {
    String name = "prue-" + System.nanoTime();
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    String password = secret(add(officer, name, "committee"));
    Visitor prue = Visitor.unknown();
    prue.get("/sign-in");
    prue.post("/sign-in/go", Map.of("name", name, "password", password));
    prue.get("/me");
    String key = secret(prue.post("/me/key", Map.of()));
    assertTrue(key.length() >= 32);
    assertEquals(200, api(name, key));
    prue.get("/me").then().body(not(containsString(key)), containsString("There is a key"));
    prue.post("/me/key/revoke", Map.of()).then().statusCode(303);
    assertEquals(401, api(name, key));
  }

  @Test
  void onlyOfficers_lookAfterPeople() {
    for (String name : new String[] {"volunteer", "committee"}) {
      Visitor visitor = Visitor.signedInAs(name);
      visitor.get("/me").then().statusCode(200);
      visitor.get("/people").then().statusCode(403);
      visitor.post("/people", Map.of("name", "x", "role", "officer")).then().statusCode(403);
    }
  }

  private static Response add(Visitor officer, String name, String role) {
    return officer.post("/people", Map.of("name", name, "role", role));
  }

  private static String secret(Response shown) {
    shown.then().statusCode(200);
    Matcher secret = SECRET.matcher(shown.asString());
    assertTrue(secret.find(), "a secret is shown");
    return secret.group(1);
  }

  private long id(String name) {
    return rows.number("SELECT id FROM account WHERE name = ?1", name);
  }

  private static int api(String name, String secret) {
    return given().auth().preemptive().basic(name, secret).get("/api/upkeep?size=1").statusCode();
  }
}
