package club.ascham.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Behind a proxy that speaks TLS, as the README sets it up. */
@QuarkusTest
@TestProfile(BehindProxyTest.Proxied.class)
class BehindProxyTest {
  /** The settings of a club behind a proxy, with a pace that a test can outrun. */
  public static class Proxied implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("ascham.behind-proxy", "true", "ascham.requests-a-second", "3");
    }
  }

  private static RequestSpecification from(String address) {
    return given()
        .redirects()
        .follow(false)
        .header("X-Forwarded-Proto", "https")
        .header("X-Forwarded-For", address)
        .header("Host", "bows.example.org");
  }

  @Test
  void overTls_everyCookieIsSecure_theSessionBoundToTheHost_andTlsIsAskedForFromThenOn() {
    Map<String, String> cookies = new HashMap<>();
    Response form = from("203.0.113.1").get("/sign-in");
    assertTrue(form.header("Strict-Transport-Security").startsWith("max-age=31536000"));
    keep(form, cookies);
    assertNotNull(cookies.get("__Host-ascham-csrf"));
    Response in =
        from("203.0.113.1")
            .cookies(cookies)
            .header("Origin", "https://bows.example.org")
            .formParam("csrf-token", token(form))
            .formParam("name", "officer")
            .formParam("password", "demo-fleet")
            .post("/sign-in");
    in.then().statusCode(303).header("Location", startsWith("https://bows.example.org/"));
    keep(in, cookies);
    assertNotNull(cookies.get("__Host-ascham-session"));
    from("203.0.113.1").cookies(cookies).get("/me").then().statusCode(200);
    from("203.0.113.1").get("/me").then().statusCode(302).header("Location", endsWith("/sign-in"));
  }

  @Test
  void anAddressThatNeverPauses_mustWait_anotherNeedNot() {
    Response last = from("203.0.113.2").get("/api/risers");
    for (int i = 0; i < 20 * Limits.SECONDS_AT_ONCE && last.statusCode() != 429; i++) {
      last = from("203.0.113.2").get("/api/risers");
    }
    assertEquals(429, last.statusCode());
    assertEquals("1", last.header("Retry-After"));
    HeadersTest.guarded(last);
    from("203.0.113.3").get("/ascham.css").then().statusCode(200);
  }

  private static void keep(Response answer, Map<String, String> cookies) {
    for (String cookie : answer.headers().getValues("Set-Cookie")) {
      assertTrue(cookie.contains("Secure"), cookie);
      assertTrue(cookie.toLowerCase(Locale.ROOT).contains("httponly"), cookie);
      assertTrue(cookie.contains("SameSite=Strict"), cookie);
    }
    cookies.putAll(answer.cookies());
  }

  private static String token(Response form) {
    String page = form.asString();
    String before = "name=\"csrf-token\" value=\"";
    int start = page.indexOf(before) + before.length();
    return page.substring(start, page.indexOf('"', start));
  }
}
