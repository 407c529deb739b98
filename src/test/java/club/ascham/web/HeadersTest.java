package club.ascham.web;

import static club.ascham.web.Program.as;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.Header;
import io.restassured.response.Response;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class HeadersTest {
  @TestHTTPResource("/")
  URI home;

  @ParameterizedTest
  @CsvSource({
    "/, 302",
    "/sign-in, 200",
    "/first-officer, 200",
    "/join/none, 404",
    "/ascham.css, 200",
    "/ascham.js, 200",
    "/drawings.svg, 200",
    "/mark.svg, 200",
    "/q/health/ready, 200",
    "/q/health/live, 200",
    "/q/openapi, 200",
    "/api/risers, 401",
    "/api/no-such-thing, 401",
    "/no-such-page, 302"
  })
  void everyAnswer_whoeverGivesIt_carriesTheHeadersOnce(String path, int status) {
    Response answer = given().redirects().follow(false).get(path);
    assertEquals(status, answer.statusCode());
    guarded(answer);
  }

  @Test
  void aRequestWithoutAHost_isAnsweredWithThemToo() throws IOException {
    String answer = raw("GET / HTTP/1.1\r\nConnection: close\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 400"), answer);
    assertTrue(answer.contains("\r\nContent-Security-Policy: default-src 'none'"), answer);
    assertTrue(answer.contains("\r\nX-Content-Type-Options: nosniff"), answer);
    assertTrue(
        answer.endsWith("\r\n\r\nNo host. Say with one Host header which server is meant.\n"),
        answer);
  }

  @Test
  void aRequestWithTwoHosts_isRefused() throws IOException {
    String answer = raw("GET /sign-in HTTP/1.1\r\nHost: localhost\r\nHost: other\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 400"), answer);
  }

  @Test
  void aFormOfManyParts_isNotForPrograms_whichIsSaid() {
    as("officer")
        .multiPart("files", "b.csv", "number,name\n".getBytes(StandardCharsets.US_ASCII))
        .post("/api/import")
        .then()
        .statusCode(415)
        .contentType("application/problem+json");
  }

  @Test
  void aCallWithoutAHost_isToldSoAsAProblem() throws IOException {
    String answer = raw("GET /api/risers HTTP/1.1\r\nConnection: close\r\n\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 400"), answer);
    assertTrue(answer.contains("\r\nContent-Type: application/problem+json\r\n"), answer);
    assertTrue(answer.contains("Say with one Host header which server is meant."), answer);
  }

  /** Such an answer can't carry them; it has nothing that they would guard. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "GARBAGE",
        "GET /%zz HTTP/1.1\r\nHost: localhost",
        "OPTIONS * HTTP/1.1\r\nHost: localhost",
        "GET /LONG HTTP/1.1\r\nHost: localhost",
        "GET / HTTP/1.1\r\nHost: localhost\r\nX: LONG"
      })
  void whatTheServerRefusesBeforeAnyRoute_hasNoBody(String sent) throws IOException {
    String answer = raw(sent.replace("LONG", "x".repeat(20_000)) + "\r\n\r\n");
    assertTrue(answer.matches("(?s)HTTP/1\\.[01] 4\\d\\d .*"), answer);
    assertTrue(answer.endsWith("content-length: 0\r\n\r\n"), answer);
  }

  private String raw(String sent) throws IOException {
    try (Socket socket = new Socket(home.getHost(), home.getPort())) {
      socket.setSoTimeout(5000);
      socket.getOutputStream().write(sent.getBytes(StandardCharsets.US_ASCII));
      StringBuilder answer = new StringBuilder();
      byte[] some = new byte[8192];
      // The server does not close each such connection.
      while (!answer.toString().endsWith("content-length: 0\r\n\r\n")) {
        int read = socket.getInputStream().read(some);
        if (read < 0) {
          break;
        }
        answer.append(new String(some, 0, read, StandardCharsets.ISO_8859_1));
      }
      return answer.toString();
    }
  }

  @Test
  void anAnswerToSomeoneSignedIn_andARefusal_carryThemToo() {
    Visitor officer = Visitor.signedInAs("officer");
    guarded(officer.get("/"));
    guarded(officer.get("/no-such-page"));
    guarded(officer.post("/people", Map.of()));
    guarded(officer.postWithoutToken("/sign-out", Map.of("x", "y")));
    guarded(Visitor.signedInAs("committee").get("/people"));
  }

  @Test
  void whatChangesSeldom_mayBeKept_andNothingElse() {
    given().get("/ascham.css").then().header("Cache-Control", containsString("max-age"));
    for (String page : List.of("/", "/sign-in", "/api/risers", "/q/openapi")) {
      assertEquals(
          "no-store", given().redirects().follow(false).get(page).header("Cache-Control"), page);
    }
  }

  @Test
  void everyCookie_isForRequestsAloneAndForThisSite() {
    Visitor visitor = Visitor.unknown();
    Response asked = visitor.get("/rigs");
    Response form = visitor.get("/sign-in");
    Response signedIn =
        visitor.post("/sign-in", Map.of("name", "committee", "password", "demo-fleet"));
    Response saved = visitor.get("/me");
    Response unit = visitor.post("/me/unit", Map.of("unit", "inch"));
    Response shown = visitor.get("/me");
    Response out = visitor.post("/sign-out", Map.of());
    int seen = 0;
    for (Response answer : List.of(asked, form, signedIn, saved, unit, shown, out)) {
      for (String cookie : answer.headers().getValues("Set-Cookie")) {
        assertTrue(cookie.toLowerCase(Locale.ROOT).contains("httponly"), cookie);
        assertTrue(cookie.contains("SameSite=Strict"), cookie);
        assertFalse(cookie.contains("Secure"), "not over TLS: " + cookie);
        seen++;
      }
    }
    assertTrue(seen >= 6, "location, token, session, browser, flash and its end: " + seen);
  }

  @Test
  void aCookieThatCameWithTheRequest_isNotSentBack() {
    for (String page : List.of("/sign-in", "/join/x/y", "/no-such")) {
      given()
          .redirects()
          .follow(false)
          .header("Cookie", "ascham-said=Saved; ascham-known=some.thing; ascham-sought=1+Ann")
          .get(page)
          .headers()
          .getValues("Set-Cookie")
          .forEach(
              cookie ->
                  assertFalse(
                      cookie.contains("Saved")
                          || cookie.contains("thing")
                          || cookie.contains("Ann"),
                      cookie));
    }
  }

  @Test
  void whoClaimsToComeByTls_isNotBelieved_withoutAProxyThatWeKnow() {
    Response answer =
        given()
            .header("X-Forwarded-Proto", "https")
            .header("X-Forwarded-For", "203.0.113.9")
            .get("/sign-in");
    assertNull(answer.header("Strict-Transport-Security"));
    answer.then().header("Set-Cookie", not(containsString("Secure")));
  }

  static void guarded(Response answer) {
    for (String name :
        List.of(
            "Content-Security-Policy",
            "X-Content-Type-Options",
            "Referrer-Policy",
            "Cross-Origin-Opener-Policy",
            "Cross-Origin-Resource-Policy",
            "Permissions-Policy",
            "Cache-Control")) {
      List<Header> found = answer.headers().getList(name);
      assertEquals(1, found.size(), name);
    }
    String policy = answer.header("Content-Security-Policy");
    assertTrue(policy.startsWith("default-src 'none'"), policy);
    assertFalse(policy.contains("unsafe"), policy);
  }
}
