package club.ascham.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A form whose token is no longer good comes back with what was typed, and can be sent again. */
@QuarkusTest
class StaleFormTest {
  private static final Pattern TOKEN = Pattern.compile("name=\"csrf-token\" value=\"([^\"]+)\"");

  @Test
  void itComesBackWithWhatWasTyped_andGoesThroughWhenSentAgain() {
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/check");
    Map<String, String> form = Map.of("code", "X-\"><b>0000", "csrf-token", "of-another-day");
    Response refused = volunteer.postWithoutToken("/find?from=home", form);
    refused
        .then()
        .statusCode(400)
        .body(containsString("nothing was saved"))
        .body(containsString("action=\"/find?from=home\""))
        .body(containsString("name=\"code\" value=\"X-&quot;&gt;&lt;b&gt;0000\""))
        .body(not(containsString("of-another-day")))
        .body(not(containsString("asked for again")));
    Response again =
        volunteer.postWithoutToken(
            "/find?from=home", Map.of("code", form.get("code"), "csrf-token", token(refused)));
    assertTrue(again.statusCode() != 400, again.asString());
  }

  @Test
  void secretsAreAskedForAgain() {
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .postWithoutToken(
            "/me/password",
            Map.of(
                "oldPassword", "demo-fleet", "newPassword", "wicket heron", "codesCode", "424242"))
        .then()
        .statusCode(400)
        .body(containsString("asked for again"))
        .body(not(containsString("demo-fleet")))
        .body(not(containsString("wicket heron")))
        .body(not(containsString("424242")));
  }

  @Test
  void withoutItsCookie_itGetsANewOne() {
    Visitor visitor = Visitor.unknown();
    Response refused =
        visitor.postWithoutToken("/sign-in", Map.of("name", "officer", "password", "demo-fleet"));
    refused.then().statusCode(400).body(containsString("name=\"name\" value=\"officer\""));
    visitor
        .postWithoutToken(
            "/sign-in",
            Map.of("name", "officer", "password", "demo-fleet", "csrf-token", token(refused)))
        .then()
        .statusCode(303);
  }

  private static String token(Response page) {
    Matcher token = TOKEN.matcher(page.asString());
    assertTrue(token.find(), page.asString());
    return token.group(1);
  }
}
