package club.ascham.drift;

import static club.ascham.web.Program.as;
import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

@QuarkusTest
class ReadersApiTest {
  private static Response readers(String name) {
    return as(name).get("/api/readers");
  }

  @Test
  void howReadingsDiffer_isTheSameInJsonAsOnThePage() {
    String page = Visitor.signedInAs("officer").get("/check/readers").asString();
    JsonPath json = readers("officer").then().statusCode(200).extract().jsonPath();
    assertTrue(page.contains("from " + json.getInt("readings") + " readings"));
    for (String figure : List.of("brace", "tiller")) {
      for (String of : List.of("repeatability", "between", "reproducibility", "changeFrom")) {
        String mm = String.format(Locale.UK, "%.1f mm", json.getDouble(figure + "." + of));
        assertTrue(page.contains(">" + mm + "<"), figure + " " + of + ": " + mm);
      }
    }
    List<String> names = json.getList("readers.name");
    assertTrue(names.size() >= 2, names.toString());
    for (int i = 0; i < names.size(); i++) {
      assertTrue(page.contains(">" + names.get(i) + "<"), names.get(i));
      String reader = "readers[" + i + "].brace.";
      assertEquals(
          json.getDouble(reader + "offset"),
          (json.getDouble(reader + "low") + json.getDouble(reader + "high")) / 2,
          1e-4);
    }
  }

  @Test
  void whoReadsHighOrLow_isForOfficersAlone() {
    readers("volunteer").then().statusCode(403);
    readers("committee").then().statusCode(403);
    given().get("/api/readers").then().statusCode(401);
  }
}
