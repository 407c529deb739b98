package club.ascham.pressed;

import static club.ascham.pressed.CallsToRepeat.ITEMS;
import static club.ascham.pressed.CallsToRepeat.done;
import static club.ascham.pressed.CallsToRepeat.item;
import static club.ascham.pressed.CallsToRepeat.sent;
import static club.ascham.web.Program.sending;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.pressed.CallsToRepeat.Sent;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** Those of the calls that are made at the bench: rigs, checks, upkeep, withdrawals. */
@ApplicationScoped
class CallsAtTheBench {
  private static final Map<String, Object> EVERYTHING =
      Map.of(
          "stepsDone", "all",
          "brace", "8 1/2 in",
          "braceFrom", "grip-throat",
          "tillerUpper", "190 mm",
          "tillerLower", "186 mm",
          "nocking", "4 mm",
          "screwsSeen", true);

  private final ClubFixture fixture;

  CallsAtTheBench(ClubFixture fixture) {
    this.fixture = fixture;
  }

  Map<String, Supplier<Sent>> all() {
    Map<String, Supplier<Sent>> all = new LinkedHashMap<>();
    ofRigs(all);
    ofChecks(all);
    ofUpkeep(all);
    ofWithdrawals(all);
    return all;
  }

  private void ofRigs(Map<String, Supplier<Sent>> all) {
    all.put("post /api/rigs", () -> sent("/api/rigs", parts(), "level", "intermediate"));
    all.put(
        "put /api/rigs/{id}/parts",
        () -> {
          LaidBow rig = fixture.aBowReadyToGoOut(20);
          return sent(
              "/api/rigs/" + rig.id().value() + "/parts",
              Map.of(
                  "body", rig.body().code(),
                  "limbs", rig.limbs().code(),
                  "string", item("strings")),
              "string",
              item("strings"));
        });
    all.put(
        "post /api/rigs/{id}/corrections",
        () ->
            sent(
                "/api/rigs/" + fixture.aBowReadyToGoOut(20).id().value() + "/corrections",
                Map.of("found", item("strings")),
                "exchanged",
                true));
    all.put(
        "put /api/rigs/{id}/set-ups/current",
        () -> sent("/api/rigs/" + begun() + "/set-ups/current", EVERYTHING, "brace", "8 5/8 in"));
    all.put(
        "post /api/rigs/{id}/set-ups/current/finish",
        () -> {
          String at = "/api/rigs/" + begun() + "/set-ups/current";
          sending("officer").body(EVERYTHING).put(at).then().statusCode(200);
          return sent(at + "/finish", Map.of(), "version", 7);
        });
    all.put(
        "post /api/rigs/{id}/dissolve",
        () ->
            sent(
                "/api/rigs/" + fixture.aBowReadyToGoOut(20).id().value() + "/dissolve",
                Map.of(),
                "version",
                7));
    all.put(
        "post /api/rigs/{id}/weight",
        () ->
            sent(
                "/api/rigs/" + fixture.aBowReadyToGoOut(20).id().value() + "/weight",
                Map.of("drawIn", 27, "forceLb", 19),
                "forceLb",
                19.5));
  }

  private void ofChecks(Map<String, Supplier<Sent>> all) {
    all.put(
        "post /api/checks",
        () -> sent("/api/checks", checked(fixture.aBowJustReceived(), 216), "brace", "217 mm"));
    all.put(
        "post /api/checks/{id}/release",
        () ->
            new Sent(
                "/api/checks/" + check(fixture.aBowJustReceived(), 216) + "/release",
                Map.of(),
                null));
    all.put(
        "post /api/checks/{id}/adjustment",
        () ->
            sent(
                "/api/checks/" + check(fixture.aBowJustReceived(), 198) + "/adjustment",
                Map.of("twistsAdded", 30),
                "twistsAdded",
                20));
  }

  private void ofUpkeep(Map<String, Supplier<Sent>> all) {
    all.put(
        "post /api/inspections",
        () ->
            sent(
                "/api/inspections",
                Map.of(
                    "item", fixture.aStringer(48, 60).code(),
                    "work", "stringer-inspection",
                    "seen",
                        Map.of(
                            "cord", "fine", "stitching", "fine", "saddle", "fine", "fit", "fine")),
                "words",
                "A little dusty."));
    all.put(
        "post /api/replacements",
        () ->
            sent(
                "/api/replacements",
                Map.of(
                    "item",
                    fixture.aBowReadyToGoOut(20).string().code(),
                    "newString",
                    item("strings"),
                    "oldString",
                    "scrapped",
                    "words",
                    "Due by its age; servings worn."),
                "words",
                "Servings worn through."));
    all.put(
        "post /api/replacements/kept",
        () ->
            sent(
                "/api/replacements/kept",
                Map.of(
                    "item",
                    fixture.aBowReadyToGoOut(20).string().code(),
                    "found",
                    "All whole; five twists in."),
                "found",
                "All whole; four twists in."));
    all.put(
        "post /api/recalls",
        () -> {
          Map<String, Object> string = new HashMap<>(ITEMS.get("strings"));
          String batch = "B" + System.nanoTime();
          string.put("maker", "Marlwick");
          string.put("batch", batch);
          done("/api/strings", string);
          return sent(
              "/api/recalls",
              Map.of("batch", batch, "why", "Maker's notice of 3 May: the serving may slip."),
              "why",
              "Maker's notice of 4 May: the serving may slip.");
        });
  }

  private void ofWithdrawals(Map<String, Supplier<Sent>> all) {
    all.put(
        "post /api/withdrawals",
        () ->
            sent(
                "/api/withdrawals",
                Map.of("item", item("limbs"), "why", "Upper limb looks twisted."),
                "why",
                "Lower limb looks twisted."));
    all.put(
        "post /api/withdrawals/{id}/decide",
        () ->
            sent(
                "/api/withdrawals/" + withdrawal() + "/decide",
                Map.of("work", "limb-inspection"),
                "work",
                "none"));
    all.put(
        "post /api/withdrawals/{id}/release",
        () -> {
          String at = "/api/withdrawals/" + withdrawal();
          done(at + "/decide", Map.of("work", "none", "why", "The letter names another batch."));
          return sent(
              at + "/release",
              Map.of(
                  "lookedAt", "Both limbs, end to end.",
                  "why", "Looked over: a scratch in the lacquer only."),
              "lookedAt",
              "Both limbs, tips and butts.");
        });
  }

  Map<String, Object> parts() {
    return Map.of("body", item("risers"), "limbs", item("limbs"), "string", item("strings"));
  }

  int begun() {
    int rig = done("/api/rigs", parts()).path("id");
    sending("officer").post("/api/rigs/" + rig + "/set-ups").then().statusCode(200);
    return rig;
  }

  int withdrawal() {
    return done("/api/withdrawals", Map.of("item", item("limbs"), "why", "It looks twisted."))
        .path("id");
  }

  private static Map<String, Object> checked(LaidBow bow, int braceMm) {
    return Map.of(
        "rig",
        bow.body().code(),
        "allAsListed",
        true,
        "brace",
        braceMm + " mm",
        "braceFrom",
        "grip-throat",
        "tillerUpper",
        190 + braceMm - 216 + " mm",
        "tillerLower",
        186 + braceMm - 216 + " mm",
        "answers",
        Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
  }

  static int check(LaidBow bow, int braceMm) {
    return done("/api/checks", checked(bow, braceMm)).path("id");
  }
}
