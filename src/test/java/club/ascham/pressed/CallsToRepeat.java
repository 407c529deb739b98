package club.ascham.pressed;

import static club.ascham.web.Program.sending;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.time.ClubTime;
import io.restassured.response.Response;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** One call of each kind that saves and takes a key, each ready to be done now and once only. */
@ApplicationScoped
class CallsToRepeat {
  static final Map<String, Map<String, Object>> ITEMS =
      Map.of(
          "risers",
              Map.of(
                  "build",
                  "adjustable",
                  "hand",
                  "right",
                  "lengthIn",
                  25,
                  "limbFitting",
                  "ILF",
                  "maxTurnsOut",
                  4),
          "limbs",
              Map.of("build", "adjustable", "size", "medium", "markedLb", 20, "limbFitting", "ILF"),
          "bows", Map.of("bowLengthIn", 54, "markedLb", 12, "markedAtIn", 24),
          "strings", Map.of("forBowIn", 68, "material", "polyester", "strands", 12),
          "stringers", Map.of("stringerKind", "tip-to-tip", "bowFromIn", 48, "bowToIn", 60),
          "kit-items", Map.of("kind", "tab", "hand", "right", "size", "M"));

  private final ClubFixture fixture;
  private final CallsAtTheBench bench;
  private final ClubTime time;

  CallsToRepeat(ClubFixture fixture, CallsAtTheBench bench, ClubTime time) {
    this.fixture = fixture;
    this.bench = bench;
    this.time = time;
  }

  /**
   * A call and its body.
   *
   * @param other a body that differs; null: it holds nothing beside the key
   */
  record Sent(String address, Object body, Object other) {}

  static Sent sent(String address, Map<String, ?> body, String field, Object otherwise) {
    Map<String, Object> other = new HashMap<>(body);
    other.put(field, otherwise);
    return new Sent(address, body, other);
  }

  /** By method and path, as the description names them. */
  Map<String, Supplier<Sent>> all() {
    Map<String, Supplier<Sent>> all = new LinkedHashMap<>();
    ITEMS.forEach((list, details) -> ofItems(list, details, all));
    ofLoans(all);
    ofSessions(all);
    ofWhatIsTold(all);
    all.putAll(bench.all());
    all.put("post /api/backups", () -> new Sent("/api/backups", Map.of(), null));
    all.put("post /api/import", this::aFile);
    return all;
  }

  private void ofItems(String list, Map<String, Object> details, Map<String, Supplier<Sent>> all) {
    String at = "/api/" + list;
    all.put("post " + at, () -> sent(at, details, "maker", "Kestrow"));
    all.put(
        "post " + at + "/{code}/like-this",
        () -> sent(at + "/" + item(list) + "/like-this", Map.of("copies", 2), "copies", 3));
    all.put(
        "put " + at + "/{code}",
        () -> {
          Map<String, Object> changed = new HashMap<>(details);
          changed.remove("kind");
          changed.put("version", 0);
          changed.put("maker", "Kestrow");
          return sent(at + "/" + item(list), changed, "maker", "Thornsea");
        });
    all.put(
        "post " + at + "/{code}/retire",
        () -> sent(at + "/" + item(list) + "/retire", Map.of("why", "lost"), "why", "sold"));
    all.put(
        "post " + at + "/{code}/found",
        () -> {
          String lost = at + "/" + item(list);
          done(lost + "/retire", Map.of("why", "lost"));
          return sent(
              lost + "/found",
              Map.of("why", "It lay behind the nets in the shed."),
              "why",
              "It hung on the wrong hook all the time.");
        });
  }

  private void ofLoans(Map<String, Supplier<Sent>> all) {
    all.put(
        "post /api/loans",
        () ->
            sent(
                "/api/loans",
                Map.of(
                    "hand", "right",
                    "drawLength", "27 in",
                    "ageBand", "adult",
                    "experience", "beginner",
                    "rig", fixture.aBowReadyToGoOut(20).id().value(),
                    "name", "Orla Wensum",
                    "contact", "07700 900333",
                    "termsAccepted", true,
                    "briefingGiven", true),
                "name",
                "Ada Wensum"));
    all.put(
        "post /api/loans/{id}/extend",
        () ->
            sent(
                "/api/loans/" + loan(fixture.aBowReadyToGoOut(20)) + "/extend",
                Map.of("dueOn", time.today().plusDays(50).toString()),
                "dueOn",
                time.today().plusDays(60).toString()));
    all.put(
        "post /api/loans/{id}/items",
        () ->
            sent(
                "/api/loans/" + loan(fixture.aBowReadyToGoOut(20)) + "/items",
                Map.of("item", fixture.aKitItem("TAB", "RIGHT", "M").code()),
                "item",
                fixture.aKitItem("TAB", "RIGHT", "L").code()));
    all.put(
        "post /api/loans/{id}/lost",
        () -> {
          long loan = loan(fixture.aBowReadyToGoOut(20));
          done(
              "/api/loans/" + loan + "/items",
              Map.of("item", fixture.aKitItem("TAB", "RIGHT", "M").code()));
          long line = fixture.number("SELECT max(id) FROM loan_line WHERE loan_id = ?1", loan);
          return sent(
              "/api/loans/" + loan + "/lost",
              Map.of("lines", List.of(line), "words", "left on a bus"),
              "words",
              "left on a train");
        });
    all.put(
        "post /api/borrowers",
        () ->
            sent(
                "/api/borrowers",
                Map.of("name", "Ivy Marram", "contact", "07700 900777", "ageBand", "adult"),
                "contact",
                "07700 900778"));
    all.put(
        "put /api/borrowers/{id}",
        () -> {
          loan(fixture.aBowReadyToGoOut(20));
          return sent(
              "/api/borrowers/" + fixture.number("SELECT max(id) FROM borrower"),
              Map.of("name", "Ivy Sedge", "contact", "07700 900779", "ageBand", "adult"),
              "contact",
              "07700 900780");
        });
    all.put(
        "post /api/receipts",
        () ->
            sent(
                "/api/receipts",
                Map.of("loanId", loan(fixture.aBowReadyToGoOut(20))),
                "cameBackStrung",
                true));
    all.put(
        "post /api/moves/{id}/undo",
        () -> {
          long loan = loan(fixture.aBowReadyToGoOut(20));
          done("/api/receipts", Map.of("loanId", loan));
          return new Sent(
              "/api/moves/" + fixture.number("SELECT max(id) FROM move") + "/undo", Map.of(), null);
        });
  }

  private void ofSessions(Map<String, Supplier<Sent>> all) {
    all.put(
        "post /api/sessions",
        () ->
            sent(
                "/api/sessions",
                Map.of(
                    "leader",
                    "Ottoline",
                    "rigIds",
                    List.of(fixture.aBowReadyToGoOut(20).id().value())),
                "leader",
                "Wilhelmina"));
    all.put(
        "post /api/sessions/{id}/return",
        () -> {
          LaidBow rig = fixture.aBowReadyToGoOut(20);
          return sent(
              "/api/sessions/" + session(rig) + "/return",
              Map.of("rigs", List.of(Map.of("rigId", rig.id().value()))),
              "rigs",
              List.of(Map.of("rigId", rig.id().value(), "signs", List.of("serving"))));
        });
    all.put(
        "post /api/sessions/{id}/archers",
        () -> {
          LaidBow rig = fixture.aBowReadyToGoOut(14);
          return sent(
              "/api/sessions/" + session(rig) + "/archers",
              Map.of("rig", rig.id().value(), "ageBand", "adult", "draw", "26 in"),
              "draw",
              "27 in");
        });
  }

  private void ofWhatIsTold(Map<String, Supplier<Sent>> all) {
    all.put("post /api/reports", () -> sent("/api/reports", report(), "words", "At half draw."));
    all.put(
        "post /api/reports/{id}/answer",
        () ->
            sent(
                "/api/reports/" + done("/api/reports", report()).path("id") + "/answer",
                Map.of("answer", "nothing-there", "words", "Both limbs looked over in daylight."),
                "words",
                "Both limbs looked over under a lamp."));
    all.put(
        "post /api/accidents",
        () ->
            sent(
                "/api/accidents",
                Map.of(
                    "loan",
                    loan(fixture.aBowReadyToGoOut(20)),
                    "words",
                    "A limb broke at full draw."),
                "words",
                "The string broke at full draw."));
    all.put(
        "post /api/accidents/{id}/end",
        () ->
            sent(
                "/api/accidents/"
                    + done(
                            "/api/accidents",
                            Map.of(
                                "loan",
                                loan(fixture.aBowReadyToGoOut(20)),
                                "words",
                                "A limb broke at full draw."))
                        .path("id")
                    + "/end",
                Map.of("why", "The insurer’s expert has seen all of it."),
                "why",
                "The coach has seen all of it."));
  }

  private Sent aFile() {
    String line = "number,name,contact,memberNo,ageBand,guardian\n,%s,07700 900444,,adult,\n";
    return new Sent("/api/import", line.formatted("Bryony Reed"), line.formatted("Bryony Rushes"));
  }

  // ---- what they need

  static String item(String list) {
    return done("/api/" + list, ITEMS.get(list)).path("code");
  }

  private long loan(LaidBow rig) {
    return fixture.lend(
        rig,
        "Nell Harker",
        time.today().minusDays(14).toString(),
        time.today().plusDays(7).toString());
  }

  private int session(LaidBow rig) {
    return done("/api/sessions", Map.of("leader", "Otto", "rigIds", List.of(rig.id().value())))
        .path("id");
  }

  private Map<String, Object> report() {
    return Map.of(
        "rig",
        fixture.aBowReadyToGoOut(20).body().code(),
        "signs",
        List.of("creak"),
        "part",
        "not-known",
        "words",
        "At full draw.");
  }

  static Response done(String address, Map<String, ?> body) {
    Response answer = sending("officer").body(body).post(address);
    if (answer.statusCode() / 100 != 2) {
      throw new AssertionError(address + " " + body + ": " + answer.asString());
    }
    return answer;
  }
}
