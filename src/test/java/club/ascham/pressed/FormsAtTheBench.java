package club.ascham.pressed;

import static club.ascham.pressed.CallsToRepeat.done;
import static club.ascham.pressed.CallsToRepeat.item;
import static club.ascham.pressed.FormsToPress.on;
import static club.ascham.pressed.FormsToPress.post;
import static club.ascham.web.Program.sending;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.pressed.FormsToPress.Form;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Those of the forms that are pressed at the bench: rigs, checks, upkeep, what is told. */
@ApplicationScoped
class FormsAtTheBench {
  private static final Map<String, String> FIGURES =
      Map.of(
          "brace", "8 1/2 in",
          "braceFrom", "grip-throat",
          "tillerUpper", "190 mm",
          "tillerLower", "186 mm",
          "nocking", "4 mm",
          "screwsSeen", "on");

  private final ClubFixture fixture;
  private final CallsAtTheBench calls;

  FormsAtTheBench(ClubFixture fixture, CallsAtTheBench calls) {
    this.fixture = fixture;
    this.calls = calls;
  }

  Map<String, Supplier<Form>> all() {
    Map<String, Supplier<Form>> all = new LinkedHashMap<>();
    ofRigs(all);
    ofSetUps(all);
    ofChecks(all);
    ofUpkeep(all);
    ofWithdrawals(all);
    ofWhatIsTold(all);
    return all;
  }

  private void ofRigs(Map<String, Supplier<Form>> all) {
    all.put(
        "/rigs/new",
        () ->
            on(
                "/rigs/new?body=%s&limbs=%s&string=%s"
                    .formatted(item("risers"), item("limbs"), item("strings")),
                "/rigs/new",
                Map.of(),
                "level",
                "fuller"));
    all.put(
        "/rigs/{id}/change",
        () -> {
          String page = rig();
          return on(
              page + "/change?place=string",
              page + "/change",
              Map.of("string", item("strings"), "confirmed", "on"),
              "string",
              item("strings"));
        });
    all.put(
        "/rigs/{id}/change/style",
        () -> {
          String page = rig() + "/change";
          return on(page, page + "/style", Map.of("level", "fuller"), "style", "string-walking");
        });
    all.put(
        "/rigs/{id}/change/keep",
        () -> {
          String page = rig() + "/change";
          return on(
              page,
              page + "/keep",
              Map.of("item", fixture.aStringer(60, 70).code()),
              "item",
              fixture.aStringer(60, 70).code());
        });
    all.put(
        "/rigs/{id}/change/let-go",
        () -> {
          String page = rig() + "/change";
          post(page + "/keep", Map.of("item", fixture.aStringer(60, 70).code()));
          return on(page, page + "/let-go", Map.of());
        });
    all.put(
        "/rigs/{id}/dissolve",
        () -> {
          String page = rig() + "/dissolve";
          return on(page, page, Map.of());
        });
    all.put(
        "/rigs/{id}/weigh",
        () -> {
          String page = rig() + "/weigh";
          return on(page, page, Map.of("drawIn", "27", "forceLb", "19"), "forceLb", "19.5");
        });
  }

  private void ofSetUps(Map<String, Supplier<Form>> all) {
    all.put(
        "/rigs/{id}/set-up/begin",
        () -> {
          int rig = done("/api/rigs", calls.parts()).path("id");
          return on("/rigs/" + rig + "/set-up", "/rigs/" + rig + "/set-up/begin", Map.of());
        });
    all.put("/rigs/{id}/set-up/step", () -> atBegun("step", Map.of(), null, null));
    Map<String, String> paper = new HashMap<>(FIGURES);
    paper.put("everyStep", "on");
    all.put("/rigs/{id}/set-up/paper", () -> atBegun("paper", paper, "nocking", "5 mm"));
    all.put("/rigs/{id}/set-up/give-up", () -> atBegun("give-up", Map.of(), null, null));
    all.put(
        "/rigs/{id}/set-up/finish",
        () -> {
          int rig = calls.begun();
          Map<String, Object> figures = new HashMap<>(FIGURES);
          figures.put("screwsSeen", true);
          figures.put("stepsDone", "all");
          sending("officer")
              .body(figures)
              .put("/api/rigs/" + rig + "/set-ups/current")
              .then()
              .statusCode(200);
          return on("/rigs/" + rig + "/set-up", "/rigs/" + rig + "/set-up/finish", Map.of());
        });
  }

  private Form atBegun(String what, Map<String, String> typed, String field, String otherwise) {
    String page = "/rigs/" + calls.begun() + "/set-up";
    return on(page, page + "/" + what, typed, field, otherwise);
  }

  private void ofChecks(Map<String, Supplier<Form>> all) {
    all.put(
        "/check/{rig}",
        () -> {
          String page = "/check/" + fixture.aBowJustReceived().id().value();
          return on(
              page,
              page,
              Map.of(
                  "allAsListed", "on",
                  "brace", "216 mm",
                  "braceFrom", "grip-throat",
                  "tillerUpper", "190 mm",
                  "tillerLower", "186 mm",
                  "string", "fine",
                  "limbs", "fine",
                  "bolts", "fine"),
              "tillerLower",
              "187.5 mm");
        });
    all.put(
        "/check/{rig}/{check}/put-back",
        () -> {
          String page = checked(216);
          return on(page, page + "/put-back", Map.of());
        });
    all.put(
        "/check/{rig}/{check}/adjusted",
        () -> {
          String page = checked(198);
          return on(
              page, page + "/adjusted", Map.of("twistsAdded", "30"), "words", "It went well.");
        });
    all.put(
        "/check/{rig}/{check}/workshop",
        () -> {
          String page = checked(198);
          return on(page, page + "/workshop", Map.of());
        });
  }

  private void ofUpkeep(Map<String, Supplier<Form>> all) {
    all.put(
        "/upkeep/{code}/ask",
        () -> {
          String page = "/upkeep/" + fixture.aStringer(48, 60).code() + "/ask";
          return on(
              page,
              page,
              Map.of("work", "stringer-inspection", "why", "The cord looks worn."),
              "why",
              "The saddle looks worn.");
        });
    all.put(
        "/upkeep/{code}/{work}",
        () -> {
          String page = "/upkeep/" + fixture.aStringer(48, 60).code() + "/stringer-inspection";
          return on(
              page,
              page,
              Map.of("cord", "fine", "stitching", "fine", "saddle", "fine", "fit", "fine"),
              "words",
              "A little dusty.");
        });
  }

  private void ofWithdrawals(Map<String, Supplier<Form>> all) {
    all.put(
        "/withdrawals/{id}/decide",
        () -> {
          String page = "/withdrawals/" + calls.withdrawal() + "/decide";
          return on(
              page,
              page,
              Map.of("work", "none", "why", "The letter names another batch."),
              "why",
              "The letter names another maker.");
        });
    all.put(
        "/withdrawals/{id}/release",
        () -> {
          String withdrawal = "/withdrawals/" + calls.withdrawal();
          done(
              "/api" + withdrawal + "/decide",
              Map.of("work", "none", "why", "The letter names another batch."));
          String page = withdrawal + "/release";
          return on(
              page,
              page,
              Map.of(
                  "lookedAt", "Both limbs, end to end.",
                  "why", "Looked over: a scratch in the lacquer only."),
              "lookedAt",
              "Both limbs, tips and butts.");
        });
  }

  private void ofWhatIsTold(Map<String, Supplier<Form>> all) {
    all.put(
        "/reports/new",
        () ->
            on(
                "/reports/new?rig=" + fixture.aBowReadyToGoOut(20).id().value(),
                "/reports/new",
                Map.of("signs", "creak", "part", "not-known", "words", "At full draw."),
                "words",
                "At half draw."));
    all.put(
        "/reports/{id}/answer",
        () -> {
          int report =
              done(
                      "/api/reports",
                      Map.of(
                          "rig",
                          fixture.aBowReadyToGoOut(20).body().code(),
                          "signs",
                          List.of("creak"),
                          "part",
                          "not-known",
                          "words",
                          "At full draw."))
                  .path("id");
          return on(
              "/reports/" + report,
              "/reports/" + report + "/answer",
              Map.of("answer", "nothing-there", "words", "Both limbs looked over in daylight."),
              "words",
              "Both limbs looked over under a lamp.");
        });
    all.put(
        "/accidents/new",
        () ->
            on(
                "/accidents/new?rig=" + fixture.aBowReadyToGoOut(20).id().value(),
                "/accidents/new",
                Map.of("words", "A limb broke at full draw."),
                "words",
                "The string broke at full draw."));
    all.put(
        "/accidents/{id}/end",
        () -> {
          int accident =
              done(
                      "/api/accidents",
                      Map.of(
                          "rig",
                          fixture.aBowReadyToGoOut(20).id().value(),
                          "words",
                          "A limb broke at full draw."))
                  .path("id");
          return on(
              "/accidents/" + accident,
              "/accidents/" + accident + "/end",
              Map.of("why", "The insurer’s expert has seen all of it."),
              "why",
              "The coach has seen all of it.");
        });
  }

  private String rig() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    return "/rigs/" + rig.id().value();
  }

  private String checked(int braceMm) {
    LaidBow bow = fixture.aBowJustReceived();
    return "/check/" + bow.id().value() + "/" + CallsAtTheBench.check(bow, braceMm);
  }
}
