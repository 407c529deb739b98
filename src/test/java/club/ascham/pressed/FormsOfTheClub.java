package club.ascham.pressed;

import static club.ascham.pressed.FormsToPress.on;
import static club.ascham.pressed.FormsToPress.post;

import club.ascham.fixture.ClubFixture;
import club.ascham.pressed.FormsToPress.Form;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Those of the forms that are about accounts and about how this club does it. */
@ApplicationScoped
class FormsOfTheClub {
  private final ClubFixture fixture;
  private final ClubTime time;

  FormsOfTheClub(ClubFixture fixture, ClubTime time) {
    this.fixture = fixture;
    this.time = time;
  }

  Map<String, Supplier<Form>> all() {
    Map<String, Supplier<Form>> all = new LinkedHashMap<>();
    ofPeople(all);
    ofOneself(all);
    ofRules(all);
    return all;
  }

  private void ofPeople(Map<String, Supplier<Form>> all) {
    all.put(
        "/people",
        () ->
            on(
                "/people",
                "/people",
                Map.of("name", "vera-" + System.nanoTime(), "role", "volunteer"),
                "role",
                "committee"));
    all.put(
        "/people/second-step",
        () ->
            on(
                "/people",
                "/people/second-step",
                Map.of("secondStepFor", "nobody"),
                "secondStepFor",
                "everyone"));
    all.put(
        "/people/{id}",
        () -> {
          String page = "/people/" + account();
          return on(page, page, Map.of("role", "committee"), "role", "volunteer");
        });
    for (String press : List.of("link", "end-sessions", "close")) {
      all.put(
          "/people/{id}/" + press,
          () -> {
            String page = "/people/" + account();
            return on(page, page + "/" + press, Map.of());
          });
    }
    all.put(
        "/people/{id}/second-step/off",
        () -> {
          long account = account();
          fixture.change(
              "INSERT INTO second_step VALUES (?1, lower(hex(randomblob(48))), ?2)",
              account,
              time.now());
          return on(
              "/people/" + account,
              "/people/" + account + "/second-step/off",
              Map.of("why", "The phone is lost; they came to the range."),
              "why",
              "The phone was stolen; they came to the range.");
        });
    all.put(
        "/people/{id}/reopen",
        () -> {
          String page = "/people/" + closed();
          return on(page, page + "/reopen", Map.of());
        });
    all.put(
        "/people/{id}/erase",
        () -> {
          String page = "/people/" + closed() + "/erase";
          return on(page, page, Map.of("why", "They asked for it in a letter."));
        });
  }

  private void ofOneself(Map<String, Supplier<Form>> all) {
    all.put("/me/unit", () -> on("/me", "/me/unit", Map.of("unit", "inch"), "unit", "centimetre"));
    all.put(
        "/me/sessions/end",
        () -> {
          Visitor.signedInAs("officer");
          String other = Long.toString(fixture.number("SELECT max(id) FROM session"));
          return on("/me", "/me/sessions/end", Map.of("session", other));
        });
    all.put("/me/key", () -> on("/me", "/me/key", Map.of()));
    all.put(
        "/me/key/revoke",
        () -> {
          post("/me/key", Map.of());
          return on("/me", "/me/key/revoke", Map.of());
        });
  }

  private void ofRules(Map<String, Supplier<Form>> all) {
    all.put(
        "/rules/club",
        () -> on("/rules/club", "/rules/club", Map.of("loanDays", "30"), "loanDays", "31"));
    all.put("/rules/bands", () -> on("/rules", "/rules/bands", band(58), "high", "8 1/4 in"));
    all.put(
        "/rules/bands/{bowLengthIn}/remove",
        () -> {
          post("/rules/bands", band(60));
          return on("/rules", "/rules/bands/60/remove", Map.of());
        });
    all.put(
        "/rules/plan",
        () -> on("/rules/plan", "/rules/plan", Map.of("hoursAWeek", "5"), "hoursAWeek", "6"));
    all.put(
        "/rules/plan/{kind}",
        () -> {
          String page = "/rules/plan/string";
          return on(page, page, Map.of("leadDays", "9"), "leadDays", "10");
        });
    all.put(
        "/rules/upkeep/new",
        () -> on("/rules/upkeep/new", "/rules/upkeep/new", rule(), "everyDays", "901"));
    all.put(
        "/rules/upkeep/{id}",
        () -> {
          String page = newRule();
          return on(page, page, Map.of("everyDays", "800"), "everyDays", "801");
        });
    all.put(
        "/rules/upkeep/{id}/remove",
        () -> {
          String page = newRule();
          return on(page, page + "/remove", Map.of());
        });
  }

  private static Map<String, String> band(int bow) {
    return Map.of(
        "bowLengthIn", "" + bow, "low", "7 in", "high", "8 in", "source", "common practice");
  }

  private static Map<String, String> rule() {
    return Map.of(
        "itemKind", "string",
        "work", "string-replacement",
        "everyDays", "900",
        "soonDays", "14",
        "source", "common practice");
  }

  private String newRule() {
    post("/rules/upkeep/new", rule());
    return "/rules/upkeep/" + fixture.number("SELECT max(id) FROM upkeep_rule");
  }

  private long account() {
    fixture.change(
        "INSERT INTO account (name, password_hash, role) VALUES (?1, '', 'VOLUNTEER')",
        "fern-" + System.nanoTime());
    return fixture.number("SELECT max(id) FROM account");
  }

  private long closed() {
    long account = account();
    fixture.change("UPDATE account SET closed_on = ?2 WHERE id = ?1", account, time.today());
    return account;
  }
}
