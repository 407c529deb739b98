package club.ascham.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
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
    officer()
        .get("/api/" + list + "?page=second")
        .then()
        .statusCode(422)
        .contentType(Problem.MEDIA_TYPE)
        .body("errors[0].field", equalTo("page"));
  }

  @Test
  void anAddressWithAWordForItsNumber_isStillNotFound() {
    officer().get("/api/checks/last?page=1").then().statusCode(404);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"[] | one JSON object", "{\"maker\": {\"name\": 1}} | maker", "7 | one JSON object"})
  void jsonOfAnotherShape_isAProblemWithDetails(String body, String said) {
    officer()
        .contentType("application/json")
        .body(body)
        .post("/api/risers")
        .then()
        .statusCode(400)
        .contentType(Problem.MEDIA_TYPE)
        .body("detail", containsString(said));
  }

  @Test
  void programs_getNoCookies() {
    officer().get("/api/risers?size=1").then().statusCode(200).header("Set-Cookie", nullValue());
  }

  @Test
  void aFileBeyondAllLimits_isRefusedInWords() {
    Visitor visitor = Visitor.signedInAs("officer");
    visitor.get("/exchange");
    byte[] large = "a,b\n".repeat(9 << 18).getBytes(StandardCharsets.US_ASCII);
    visitor
        .postFile("/exchange/try", "files", "large.csv", large)
        .then()
        .statusCode(413)
        .body(containsString("At most 8 MB at once"));
    officer()
        .contentType("text/csv")
        .body(large)
        .post("/api/import")
        .then()
        .statusCode(413)
        .body("detail", containsString("Split the file"));
  }

  private static RequestSpecification officer() {
    return given().auth().preemptive().basic("officer", "demo-fleet");
  }
}
