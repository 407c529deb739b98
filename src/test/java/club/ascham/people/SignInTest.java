package club.ascham.people;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;

import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
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
        .post("/sign-in/go", Map.of("name", "officer", "password", "guess"))
        .then()
        .statusCode(302)
        .header("Location", containsString("failed"));
    visitor.get("/sign-in?failed=yes").then().body(containsString("do not belong together"));
  }

  @Test
  void aSignedOutVisitor_isUnknownAgain() {
    Visitor visitor = Visitor.signedInAs("officer");
    visitor.get("/");
    visitor.post("/sign-out", Map.of()).then().statusCode(303);
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
    given()
        .auth()
        .preemptive()
        .basic("officer", "demo-fleet")
        .get("/api/no-such-list")
        .then()
        .statusCode(404)
        .contentType("application/problem+json")
        .body("status", equalTo(404));
  }

  @Test
  void aChangeAskedForByAnotherSite_isRefused() {
    given()
        .auth()
        .preemptive()
        .basic("officer", "demo-fleet")
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
