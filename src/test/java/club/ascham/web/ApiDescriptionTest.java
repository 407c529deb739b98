package club.ascham.web;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** {@code /q/openapi} is what a program's author has: it says what each call is for, and how. */
@QuarkusTest
class ApiDescriptionTest {
  private static final Set<String> METHODS = Set.of("get", "post", "put", "delete", "patch");
  private static final ObjectMapper JSON = new ObjectMapper();

  private record Call(String name, JsonNode described) {}

  /** What a page is made of, and what the platform hands about: nothing that a caller sends. */
  private static final Pattern INSIDE =
      Pattern.compile(
          "(?i).*(template|fragment|engine|qute|instance|evalcontext|resolver|variant|uriinfo"
              + "|httpheaders|multivaluedmap|response|completionstage|publisher).*|Uni.*|Multi.*");

  private final List<Call> calls = new ArrayList<>();
  private JsonNode description;

  @BeforeEach
  void read() throws Exception {
    description = JSON.readTree(given().get("/q/openapi?format=json").asString());
    for (Map.Entry<String, JsonNode> path : description.path("paths").properties()) {
      for (Map.Entry<String, JsonNode> call : path.getValue().properties()) {
        if (METHODS.contains(call.getKey())) {
          calls.add(new Call(call.getKey() + " " + path.getKey(), call.getValue()));
        }
      }
    }
    assertTrue(calls.size() > 60, calls.size() + " calls described");
  }

  @Test
  void pages_areNotDescribed() {
    assertEquals(
        List.of(),
        description.path("paths").properties().stream()
            .map(Map.Entry::getKey)
            .filter(path -> !path.startsWith("/api/"))
            .toList());
    assertEquals(
        List.of(),
        calls.stream()
            .filter(call -> call.described().toString().contains("text/html"))
            .map(Call::name)
            .toList());
  }

  @Test
  void shapes_areThoseOfCalls_andNothingOfTheProgramsInside() {
    Set<String> named = new TreeSet<>();
    description.path("components").path("schemas").fieldNames().forEachRemaining(named::add);
    assertTrue(named.size() > 60, named.size() + " shapes");
    assertEquals(List.of(), named.stream().filter(name -> INSIDE.matcher(name).matches()).toList());
    Set<String> used = new TreeSet<>();
    meet(description.path("paths"), used);
    assertEquals(used, named, "each shape belongs to a call");
  }

  @Test
  void whatStandsInAnAddress_isANumberOrAText() {
    List<String> other = new ArrayList<>();
    int met = 0;
    for (Call call : calls) {
      for (JsonNode parameter : call.described().path("parameters")) {
        if (parameter.path("in").asText().equals("path")) {
          met++;
          String type = parameter.path("schema").path("type").asText();
          if (!Set.of("integer", "string").contains(type)) {
            other.add(call.name() + ": " + parameter);
          }
        }
      }
    }
    assertEquals(List.of(), other);
    assertTrue(met > 40, met + " met");
  }

  private void meet(JsonNode node, Set<String> used) {
    for (JsonNode reference : node.findValues("$ref")) {
      String name = reference.asText().replaceFirst("^#/components/schemas/", "");
      if (!name.startsWith("#") && used.add(name)) {
        meet(description.path("components").path("schemas").path(name), used);
      }
    }
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
    } catch (IOException unreadable) {
      return false;
    }
  }
}
