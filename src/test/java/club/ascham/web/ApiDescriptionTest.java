package club.ascham.web;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** {@code /q/openapi} is what a program's author has: it says what each call is for, and how. */
@QuarkusTest
class ApiDescriptionTest {
  private static final Set<String> METHODS = Set.of("get", "post", "put", "delete", "patch");
  private static final ObjectMapper JSON = new ObjectMapper();

  private record Call(String name, JsonNode described) {}

  private final List<Call> calls = new ArrayList<>();

  @BeforeEach
  void read() throws Exception {
    JsonNode paths = JSON.readTree(given().get("/q/openapi?format=json").asString()).path("paths");
    for (Map.Entry<String, JsonNode> path : paths.properties()) {
      for (Map.Entry<String, JsonNode> call : path.getValue().properties()) {
        if (path.getKey().startsWith("/api") && METHODS.contains(call.getKey())) {
          calls.add(new Call(call.getKey() + " " + path.getKey(), call.getValue()));
        }
      }
    }
    assertTrue(calls.size() > 60, calls.size() + " calls described");
  }

  @Test
  void eachCall_saysWhatItIsFor() {
    assertEquals(
        List.of(),
        calls.stream()
            .filter(call -> call.described().path("summary").asText().isBlank())
            .map(Call::name)
            .toList());
  }

  @Test
  void eachBody_hasAnExample() {
    List<String> without = new ArrayList<>();
    int bodies = 0;
    for (Call call : calls) {
      for (JsonNode content : call.described().path("requestBody").path("content")) {
        bodies++;
        if (content.path("example").isMissingNode() && content.path("examples").isEmpty()) {
          without.add(call.name());
        }
      }
    }
    assertEquals(List.of(), without);
    assertTrue(bodies > 30, bodies + " bodies");
  }

  @Test
  void eachJsonExample_canBeRead() {
    List<String> unreadable = new ArrayList<>();
    for (Call call : calls) {
      for (JsonNode example :
          call.described()
              .path("requestBody")
              .path("content")
              .path("application/json")
              .findValues("value")) {
        if (example.isTextual() && !isJson(example.asText())) {
          unreadable.add(call.name() + ": " + example.asText());
        }
      }
    }
    assertEquals(List.of(), unreadable);
  }

  private static boolean isJson(String text) {
    try {
      JSON.readTree(text);
      return true;
    } catch (java.io.IOException unreadable) {
      return false;
    }
  }
}
