package club.ascham.door;

import static club.ascham.web.Program.as;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.store.StatementCount;
import club.ascham.time.TestClock;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.time.Clock;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class SignInTest {
  @ParameterizedTest
  @ValueSource(strings = {"officer", "volunteer", "committee"})
  void eachDemoPerson_signsIn_andSeesTheirNameAndTheWordDemo(String name) {
    Visitor.signedInAs(name)
        .get("/")
        .then()
        .statusCode(200)
        .body(containsString(name))
        .body(containsString("<strong>demo</strong>"));
  }

  @Test
  void anUnknownVisitor_isLedToTheSignInPage() {
    Visitor.unknown().get("/").then().statusCode(302).header("Location", endsWith("/sign-in"));
  }

  @Test
  void aWrongPassword_isToldSoOnTheSamePage() {
    Visitor visitor = Visitor.unknown();
    visitor.get("/sign-in");
    visitor
        .post("/sign-in", Map.of("name", "officer", "password", "guess"))
        .then()
        .statusCode(422)
        .body(containsString("do not belong together"), containsString("value=\"officer\""));
    visitor.get("/").then().statusCode(302);
  }

  @Test
  void anUnknownName_isToldTheSameAsAWrongPassword() {
    Visitor visitor = Visitor.unknown();
    visitor.get("/sign-in");
    String known =
        visitor.post("/sign-in", Map.of("name", "officer", "password", "guess")).asString();
    String unknown =
        visitor.post("/sign-in", Map.of("name", "nobodys", "password", "guess")).asString();
    assertEquals(known.replace("value=\"officer\"", "value=\"nobodys\""), unknown);
  }

  @Test
  void aSignInWithoutItsToken_isRefused() {
    Visitor visitor = Visitor.unknown();
    visitor.get("/sign-in");
    visitor
        .postWithoutToken("/sign-in", Map.of("name", "officer", "password", "demo-fleet"))
        .then()
        .statusCode(400);
    visitor.get("/").then().statusCode(302);
    given()
        .redirects()
        .follow(false)
        .formParams("j_username", "officer", "j_password", "demo-fleet")
        .post("/j_security_check")
        .then()
        .statusCode(302)
        .header("Location", endsWith("/sign-in"));
  }

  @Test
  void whoAskedForAPage_isLedThereAfterSigningIn() {
    Visitor visitor = Visitor.unknown();
    visitor.get("/rigs?state=ready").then().statusCode(302);
    visitor.get("/sign-in");
    visitor
        .post("/sign-in", Map.of("name", "volunteer", "password", "demo-fleet"))
        .then()
        .statusCode(303)
        .header("Location", endsWith("/rigs?state=ready"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https%3A%2F%2Felsewhere.example%2F",
        "%2F%2Felsewhere.example%2F",
        "javascript%3Aalert(1)",
        "%2F%5Celsewhere.example",
        "elsewhere",
        "%ZZ"
      })
  void aPlantedLocation_leadsToTheFirstPage(String planted) {
    assertEquals("/", SessionCookie.ownPage(planted));
  }

  @Test
  void signingOut_endsEveryOtherBrowsersSession() {
    Visitor here = Visitor.signedInAs("volunteer");
    Visitor there = Visitor.signedInAs("volunteer");
    Visitor someoneElse = Visitor.signedInAs("committee");
    here.get("/me").then().statusCode(200);
    there.get("/me").then().statusCode(200);
    here.post("/sign-out", Map.of()).then().statusCode(303);
    there.get("/me").then().statusCode(302).header("Location", endsWith("/sign-in"));
    someoneElse.get("/me").then().statusCode(200);
    there.get("/sign-in").then().statusCode(200);
    Visitor.signedInAs("volunteer").get("/me").then().statusCode(200);
  }

  @Test
  void aSession_isOneStatementARequest() {
    Visitor visitor = Visitor.signedInAs("committee");
    visitor.get("/first-officer").then().statusCode(200);
    long before = StatementCount.run();
    visitor.get("/ascham.css").then().statusCode(200);
    assertEquals(1, StatementCount.run() - before, "who is signed in is asked once");
  }

  @Test
  void manyWrongPasswords_mustWait_butNotInABrowserWhereTheNameSignedInBefore() {
    String name = "committee";
    // However long this machine takes, the tries come at once.
    Clock now = Clock.fixed(TestClock.running().instant(), TestClock.running().getZone());
    QuarkusMock.installMockForType(now, Clock.class);
    Visitor known = Visitor.signedInAs(name);
    known.get("/me");
    known.post("/sign-out", Map.of());
    Visitor guesser = Visitor.unknown();
    guesser.get("/sign-in");
    Response last = null;
    for (int i = 0; i <= SignInRateLimit.FREE; i++) {
      last = guesser.post("/sign-in", Map.of("name", name, "password", "guess " + i));
    }
    last.then()
        .statusCode(429)
        .header("Retry-After", matchesPattern("[0-9]+"))
        .body(containsString("Too many wrong tries"));
    given()
        .auth()
        .preemptive()
        .basic(name, "guess")
        .get("/api/upkeep?size=1")
        .then()
        .statusCode(429)
        .header("Retry-After", matchesPattern("[0-9]+"));
    Visitor.signedInAs("officer").get("/me").then().statusCode(200);
    known.get("/sign-in");
    known.post("/sign-in", Map.of("name", name, "password", "demo-fleet")).then().statusCode(303);
    QuarkusMock.installMockForType(Clock.offset(now, SignInRateLimit.LONGEST_WAIT), Clock.class);
    guesser.post("/sign-in", Map.of("name", name, "password", "demo-fleet")).then().statusCode(303);
  }

  @Test
  void aSignedOutVisitor_isUnknownAgain() {
    Visitor visitor = Visitor.signedInAs("officer");
    visitor.get("/");
    visitor
        .post("/sign-out", Map.of())
        .then()
        .statusCode(303)
        .header("Clear-Site-Data", "\"cache\"");
    visitor.get("/").then().statusCode(302);
  }

  @Test
  void aFormWithoutItsToken_isRefused() {
    Visitor.signedInAs("officer")
        .postWithoutToken("/sign-out", Map.of("x", "y"))
        .then()
        .statusCode(400);
  }

  @Test
  void theApi_wantsNameAndPassword_andTakesNoCookie() {
    given().get("/api/risers").then().statusCode(401);
    Visitor.signedInAs("officer").get("/api/risers").then().statusCode(401);
  }

  @Test
  void anAddressThatDoesNotExist_saysSoAsProblemDetails_underTheApi() {
    as("officer")
        .get("/api/no-such-list")
        .then()
        .statusCode(404)
        .contentType("application/problem+json")
        .body("status", equalTo(404));
  }

  @Test
  void aChangeAskedForByAnotherSite_isRefused() {
    as("officer")
        .header("Origin", "https://elsewhere.example")
        .contentType("application/json")
        .body("{}")
        .post("/api/risers")
        .then()
        .statusCode(403);
  }

  @Test
  void theFirstOfficersPage_offersNothing_onceAnAccountExists() {
    Visitor.unknown()
        .get("/first-officer")
        .then()
        .statusCode(200)
        .body(not(containsString("One-time code")));
  }

  @Test
  void theDescription_holdsWhatStandsUnderTheApiAlone() {
    given().get("/q/openapi").then().statusCode(200).body(not(containsString("/sign-out")));
    given().get("/q/health/ready").then().statusCode(200);
  }
}
