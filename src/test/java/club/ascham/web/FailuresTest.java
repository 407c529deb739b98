package club.ascham.web;

import static club.ascham.web.Program.as;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.oneOf;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever goes wrong says so in words. */
@QuarkusTest
class FailuresTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"rigs", "checks", "receipts", "sessions", "withdrawals", "loans", "risers"})
  void aPageThatIsNoNumber_isNamed(String list) {
    as("officer")
        .get("/api/" + list + "?page=second")
        .then()
        .statusCode(422)
        .contentType(Problem.MEDIA_TYPE)
        .body("errors[0].field", equalTo("page"));
  }

  @Test
  void anAddressWithAWordForItsNumber_isStillNotFound() {
    as("officer").get("/api/checks/last?page=1").then().statusCode(404);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/api/borrowers| GET, HEAD, OPTIONS, POST",
        "/api/borrowers/1| GET, HEAD, OPTIONS, PUT",
        "/api/borrowers/1/erasure| GET, HEAD, OPTIONS, POST",
        "/api/import| OPTIONS, POST",
        "/api/server| GET, HEAD, OPTIONS",
        "/api/rigs/1| GET, HEAD, OPTIONS"
      })
  void whatAnAddressTakes_isToldOfItAlone(String path, String allowed) {
    as("officer").options(path).then().statusCode(200).header("Allow", equalTo(allowed));
    as("officer")
        .contentType("application/json")
        .body("{}")
        .delete(path)
        .then()
        .statusCode(405)
        .header("Allow", equalTo(allowed));
  }

  @Test
  void whereNothingIs_nothingIsToldToBeTaken() {
    as("officer").options("/api/borrowers/1/nothing").then().header("Allow", nullValue());
  }

  @ParameterizedTest
  @CsvSource({"borrowers, name", "borrowers, guardian", "stringers, maker", "risers, serial"})
  void aLineBreakWhereOneLineHasRoom_isRefusedAtItsField(String list, String field) {
    as("officer")
        .contentType("application/json")
        .body("{\"" + field + "\": \"Marlwick\\r\\nand Sons\"}")
        .post("/api/" + list)
        .then()
        .statusCode(422)
        .body(
            "errors.find { it.field == '" + field + "' }.message",
            equalTo("On one line, please: it holds a line break."));
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "7"})
  void jsonOfAnotherShape_isAProblemWithDetails(String body) {
    as("officer")
        .contentType("application/json")
        .body(body)
        .post("/api/risers")
        .then()
        .statusCode(400)
        .contentType(Problem.MEDIA_TYPE)
        .body("detail", containsString("one JSON object"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"words=%zz", "words=%", "=&&&==", "="})
  void aFormThatCantBeRead_isSaidToBeJustThat(String form) {
    Visitor officer = Visitor.signedInAs("officer");
    officer
        .postRaw("/recall", form)
        .then()
        .statusCode(400)
        .body(containsString("not a form that can be read"));
  }

  @ParameterizedTest
  // What a well-behaved client would escape itself is tried on the rule alone (AddressesTest).
  @ValueSource(strings = {"a;b", "a,b"})
  void aStrangersAddressThatNoCookieHolds_isAskedAgainPlainly(String words) {
    String plain =
        given()
            .redirects()
            .follow(false)
            .urlEncodingEnabled(false)
            .get("/find?q=" + words)
            .then()
            .statusCode(308)
            .extract()
            .header("Location");
    given()
        .redirects()
        .follow(false)
        .urlEncodingEnabled(false)
        .get(plain)
        .then()
        .statusCode(302)
        .header("Location", containsString("/sign-in"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"*", "a;b;c", "text/html;q=x", "nonsense"})
  void aWishForNoKnownKind_isAWishForAny(String wish) {
    given().header("Accept", wish).get("/sign-in").then().statusCode(200);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Accept-Language", "Accept-Charset", "Accept-Encoding"})
  void aWishThatNobodyCanRead_isNotHeard(String header) {
    given().header(header, "'; q=x(; no").get("/sign-in").then().statusCode(200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/checks",
        "/api/checks/1/adjustment",
        "/api/inspections",
        "/api/receipts",
        "/api/sessions"
      })
  void noBody_isRefusedInWords(String call) {
    for (String body : new String[] {"null", ""}) {
      as("officer")
          .contentType("application/json")
          .body(body)
          .post(call)
          .then()
          .statusCode(oneOf(400, 404, 409, 422))
          .contentType("application/problem+json");
    }
  }

  @Test
  void anUploadThatNeverEnds_isSaidToBeUnreadable() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/exchange");
    officer
        .postBytes(
            "/exchange/try",
            "multipart/form-data; boundary=x",
            "--x\r\nContent-Disposition: form-data; name=\"files\"; filename=\"a.csv\"\r\n\r\ncode")
        .then()
        .statusCode(400);
  }

  /** Without a kind the platform would look for no token. */
  @ParameterizedTest
  @ValueSource(strings = {"/me/key", "/sign-out", "/record/verify"})
  void aChangeThatIsNoForm_isRefused(String page) {
    Visitor.signedInAs("officer").postBytes(page, null, "").then().statusCode(415);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "json", "application/"})
  void whatIsSentAsNoKindAtAll_isRefused(String kind) {
    Visitor officer = Visitor.signedInAs("officer");
    officer.postBytes("/me/key", kind, "{}").then().statusCode(415);
  }

  @Test
  void programs_getNoCookies() {
    as("officer")
        .get("/api/risers?size=1")
        .then()
        .statusCode(200)
        .header("Set-Cookie", nullValue());
  }
}
