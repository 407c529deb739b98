package club.ascham.pressed;

import static club.ascham.web.Program.as;
import static club.ascham.web.Program.sending;
import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import club.ascham.pressed.CallsToRepeat.Sent;
import club.ascham.store.Rows;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every call that saves: sent again with its key it is answered as before and does nothing more.
 * All of them are sent with one and the same key, so that each must be known by its own call.
 */
@QuarkusTest
@TestProfile(OwnClub.class)
class RepeatedCallTest {
  private static final Set<String> SAVING = Set.of("post", "put", "patch", "delete");
  private static final String KEY = "one-key-for-all";
  private static final String ANOTHER = "other-officer";

  /** Nothing is made twice by these: they reckon, or what they do is the same done again. */
  private static final Set<String> WITHOUT_A_KEY =
      Set.of(
          "post /api/fit",
          "post /api/plan/stop/{run}",
          "post /api/borrowers/{id}/erasure",
          "post /api/server/read/{about}",
          "post /api/rigs/{id}/set-ups");

  @Inject CallsToRepeat calls;
  @Inject Rows rows;

  @BeforeEach
  void anotherOfficer() {
    rows.change(
        """
        INSERT INTO account (name, password_hash, role, permit_until)
        SELECT ?1, password_hash, role, permit_until FROM account WHERE name = 'officer'
        ON CONFLICT (name) DO NOTHING""",
        ANOTHER);
  }

  @Test
  void everyCallThatSaves_isAmongThem() throws Exception {
    JsonNode paths =
        new ObjectMapper().readTree(given().get("/q/openapi?format=json").asString()).path("paths");
    Set<String> saving = new TreeSet<>();
    paths
        .properties()
        .forEach(
            path ->
                path.getValue()
                    .fieldNames()
                    .forEachRemaining(
                        method -> {
                          if (SAVING.contains(method)) {
                            saving.add(method + " " + path.getKey());
                          }
                        }));
    saving.removeIf(call -> WITHOUT_A_KEY.contains(call) || call.startsWith("post /api/bench/"));
    assertEquals(saving, new TreeSet<>(calls.all().keySet()));
  }

  @TestFactory
  Stream<DynamicTest> eachCall_sentAgain_isAnsweredAsBefore_andOnlyTheVerySame() {
    return calls.all().entrySet().stream()
        .map(
            call ->
                DynamicTest.dynamicTest(
                    call.getKey(), () -> sendAgain(call.getKey(), call.getValue().get())));
  }

  private void sendAgain(String call, Sent sent) {
    String method = call.substring(0, call.indexOf(' '));
    String before = newest();
    Response first = send("officer", method, sent.address(), sent.body());
    assertEquals(2, first.statusCode() / 100, first.asString());
    String done = newest();
    assertNotEquals(before, done, "it did something");

    Response again = send("officer", method, sent.address(), sent.body());
    assertEquals(first.statusCode(), again.statusCode(), again.asString());
    assertEquals(first.header("Location"), again.header("Location"));
    assertEquals(read(first), read(again));
    assertEquals(done, newest(), "nothing was made twice");

    if (sent.other() != null) {
      send("officer", method, sent.address(), sent.other())
          .then()
          .statusCode(422)
          .body("errors.field", hasItem("onceKey"));
      assertEquals(done, newest(), "another body changed nothing");
    }

    Response another = send(ANOTHER, method, sent.address(), sent.body());
    boolean theirs = another.statusCode() / 100 == 2;
    // Whatever came of it, it was theirs to do: what was done before is not kept once more.
    assertEquals(theirs ? 1 : 0, kept(ANOTHER, method, sent.address()), another.asString());
    assertEquals(1, kept("officer", method, sent.address()));
  }

  @Test
  void anEmptyKey_bindsNothing_andALongOneIsRefusedAtItsField() {
    Map<String, Object> borrower =
        Map.of("name", "Fern Mallow", "contact", "07700 900555", "ageBand", "adult");
    for (String key : new String[] {"", "  "}) {
      sending("officer").body(with(borrower, key)).post("/api/borrowers").then().statusCode(201);
    }
    for (String key : new String[] {"k".repeat(201), "\0", "a\0b"}) {
      sending("officer")
          .body(with(borrower, key))
          .post("/api/borrowers")
          .then()
          .statusCode(422)
          .body("errors.field", hasItem("onceKey"));
    }
  }

  @Test
  void whatWasRefused_mayBeSentAgainWithBetterAnswers_underTheSameKey() {
    Map<String, Object> lacking = Map.of("name", "Fern Mallow", "ageBand", "adult");
    sending("officer").body(with(lacking, "better")).post("/api/borrowers").then().statusCode(422);
    Map<String, Object> whole = new HashMap<>(lacking);
    whole.put("contact", "07700 900666");
    sending("officer").body(with(whole, "better")).post("/api/borrowers").then().statusCode(201);
  }

  @Test
  void twoAtOnce_makeOne() throws Exception {
    Sent sent = calls.all().get("post /api/loans").get();
    long loans = rows.number("SELECT count(*) FROM loan");
    List<CompletableFuture<Response>> sending = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      sending.add(
          CompletableFuture.supplyAsync(
              () ->
                  sending("officer")
                      .body(with((Map<?, ?>) sent.body(), "at-once"))
                      .post(sent.address())));
    }
    Set<String> made = new TreeSet<>();
    for (CompletableFuture<Response> each : sending) {
      assertEquals(201, each.get().statusCode(), each.get().asString());
      made.add(each.get().header("Location"));
    }
    assertEquals(1, made.size(), made.toString());
    assertEquals(loans + 1, rows.number("SELECT count(*) FROM loan"));
  }

  /** All of an answer but when it was read. */
  private static String read(Response answer) {
    return answer.asString().replaceAll("\"readAt\":\"[^\"]*\"", "");
  }

  private Response send(String who, String method, String address, Object body) {
    if (body instanceof String file) {
      return as(who).contentType("text/csv").queryParam("onceKey", KEY).body(file).post(address);
    }
    RequestSpecification call = sending(who).body(with((Map<?, ?>) body, KEY));
    return method.equals("put") ? call.put(address) : call.post(address);
  }

  private static Map<Object, Object> with(Map<?, ?> body, String key) {
    Map<Object, Object> keyed = new HashMap<>(body);
    assertNull(keyed.put("onceKey", key));
    return keyed;
  }

  private long kept(String who, String method, String address) {
    return rows.number(
        """
        SELECT count(*) FROM idempotency_key k JOIN account a ON a.id = k.account_id
         WHERE a.name = ?1 AND k.call = ?2 AND k.key = ?3""",
        who,
        method.toUpperCase() + " " + address,
        KEY);
  }

  /** How far the record goes: it takes each change, and a sentence for each press. */
  private String newest() {
    return rows.number("SELECT max(id) FROM change")
        + " "
        + rows.texts("SELECT id || ' ' || sentence FROM story ORDER BY id DESC LIMIT 1");
  }
}
