package club.ascham.form;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import club.ascham.worksheet.LooksOf;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** One letter is no reason, wherever one is asked: by every page and every call. */
@QuarkusTest
class ReasonsTest {
  private static final Pattern ASKED =
      Pattern.compile(
          "\\.(?:reason|reasonIfAny|source)\\(\\s*\"(\\w+)\""
              + "|AdviceOverridden\\.(?:parse|why)\\(");

  /** Who asks for a reason, and where below its route is tried. */
  private static final Set<String> TRIED =
      new TreeSet<>(
          Set.of(
              "AccidentApi.why",
              "AccidentDetails.words",
              "AccidentPages.why",
              "AssemblyApi.overrideWhy",
              "ChangeKitCommand.overrideWhy",
              "CheckEntry.correctionWhy",
              "CheckPages.overrideWhy",
              "ClubRulesDetails.braceMayMoveSource",
              "ClubRulesDetails.twistsSource",
              "Decision.why",
              "ExtendCommand.overrideWhy",
              "FindAgain.why",
              "Inspection.words",
              "IssueCommand.overrideWhy",
              "OwnBand.source",
              "PartsWish.overrideWhy",
              "PeoplePages.why",
              "PlanRuleDetails.source",
              "Reason.why",
              "ReceiptDetails.depositKeptWhy",
              "RecallItems.why",
              "Release.lookedAt",
              "Release.why",
              "ReplacementsApi.found",
              "Request.why",
              "RuleDetails.source",
              "SessionDetails.overrideWhy",
              "SharedBow.overrideWhy",
              "WorkPages.found"));

  @Inject Rows rows;
  @Inject ClubTime time;
  @Inject ClubFixture fixture;

  private Visitor officer;

  @BeforeEach
  void anOfficerWithThePermit() {
    fixture.mayTurnBolts("officer", true);
    officer = Visitor.signedInAs("officer");
    officer.get("/me");
  }

  @Test
  void whoeverAsksForAReason_isTriedHere() throws IOException {
    Set<String> asking = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String name = file.getFileName().toString().replace(".java", "");
        Matcher asked = ASKED.matcher(Files.readString(file));
        while (asked.find()) {
          asking.add(name + "." + (asked.group(1) == null ? "overrideWhy" : asked.group(1)));
        }
      }
    }
    assertEquals(TRIED, asking);
  }

  /** A form or call, and the field of its reason. */
  private record Try(String path, String field, Map<String, Object> more) {
    Try(String path, String field) {
      this(path, field, Map.of());
    }

    Map<String, Object> body() {
      Map<String, Object> body = new HashMap<>(more);
      body.put(field, "x");
      return body;
    }
  }

  @Test
  void aLetter_isRefusedAtItsField_byEveryPage() {
    LaidBow bow = fixture.aBowJustReceived();
    String limbs = bow.limbs().code();
    long withdrawal = withdrawn(fixture.aBowReadyToGoOut(), "limb-inspection");
    long undecided = withdrawn(fixture.aBowReadyToGoOut(), null);
    long account = account();
    List<Try> tries =
        new ArrayList<>(
            List.of(
                new Try("/items/" + limbs + "/withdraw", "why"),
                new Try("/withdrawals/" + withdrawal + "/release", "why"),
                new Try("/withdrawals/" + undecided + "/decide", "why", Map.of("work", "none")),
                new Try("/items/" + retired() + "/found", "why"),
                new Try("/upkeep/" + limbs + "/ask", "why", Map.of("work", "limb-inspection")),
                new Try("/people/" + account + "/second-step/off", "why"),
                new Try("/recall", "why", Map.of("maker", "Alderfen")),
                new Try("/rules/club", "braceMayMoveSource", Map.of("braceMayMove", "6 mm")),
                new Try("/rules/club", "twistsSource"),
                new Try("/rules/bands", "source"),
                new Try("/rules/upkeep/new", "source"),
                new Try("/rules/plan", "source"),
                new Try("/rules/plan/riser", "source"),
                new Try(
                    "/check/" + bow.id().value(),
                    "correctionWhy",
                    Map.of("corrects", check(bow)))));
    // Its page shows these two only where there is something to say: a string's, and a deposit's.
    tries.add(
        new Try(
            "/upkeep/" + asked(bow.string().code()) + "/string-replacement",
            "found",
            Map.of("stays", "on")));
    tries.add(
        new Try(
            "/receive/" + lent(), "depositKeptWhy", Map.of("allBack", "on", "depositKept", "5")));
    tries.add(new Try("/withdrawals/" + withdrawal + "/release", "lookedAt"));
    for (String answer : List.of("note", "stop")) {
      tries.add(new Try("/upkeep/" + limbs + "/limb-inspection", "words", seen(answer)));
    }
    long loan = lent();
    tries.add(new Try("/loans/" + loan + "/items", "overrideWhy"));
    tries.add(new Try("/loans/" + loan + "/extend", "overrideWhy"));
    tries.add(new Try("/accidents/new", "words", Map.of("loan", loan)));
    tries.add(new Try("/accidents/" + accident(loan) + "/end", "why"));
    LaidBow spokenAgainst = fixture.aBowReadyToGoOut();
    asked(spokenAgainst.string().code());
    tries.add(
        new Try(
            "/sessions/new",
            "overrideWhy",
            Map.of("leader", "Quenby", "rig-" + spokenAgainst.id().value(), "yes")));
    LaidBow changed = fixture.aBowReadyToGoOut();
    tries.add(
        new Try(
            "/rigs/" + changed.id().value() + "/change",
            "overrideWhy",
            Map.of(
                "place", "limbs",
                "body", changed.body().code(),
                "limbs", changed.limbs().code(),
                "string", changed.string().code())));
    tries.add(
        new Try(
            "/check/" + bow.id().value(),
            "overrideWhy",
            Map.of(
                "stranger",
                fixture.aBowReadyToGoOut().string().code(),
                "strangerAnswer",
                "correct-record")));
    LaidBow out = fixture.aBowReadyToGoOut();
    tries.add(
        new Try(
            "/sessions/" + session(out) + "/archers",
            "overrideWhy",
            Map.of("rig", out.id().value(), "ageBand", "adult", "draw", "24 in")));
    closed(account);
    tries.add(new Try("/people/" + account + "/erase", "why"));
    for (Try one : tries) {
      if (one.path().endsWith("/second-step/off")) {
        rows.change("UPDATE account SET closed_on = NULL WHERE id = ?1", account);
      } else {
        closed(account);
      }
      String before = told();
      officer
          .post(one.path(), one.body())
          .then()
          .log()
          .ifValidationFails()
          .statusCode(422)
          .body(containsString("id=\"" + one.field() + "-error\">" + WholeWords.WANTED));
      assertEquals(before, told(), one.path());
    }
    assertTrue(tries.size() > 15);
  }

  @Test
  void aLetter_isRefusedAtItsField_byEveryCall() {
    LaidBow bow = fixture.aBowJustReceived();
    long withdrawal = withdrawn(fixture.aBowReadyToGoOut(), "limb-inspection");
    long undecided = withdrawn(fixture.aBowReadyToGoOut(), null);
    List<Try> tries =
        List.of(
            new Try("/api/withdrawals", "why", Map.of("item", bow.limbs().code())),
            new Try("/api/withdrawals/" + withdrawal + "/release", "why"),
            new Try("/api/withdrawals/" + withdrawal + "/release", "lookedAt"),
            new Try("/api/withdrawals/" + undecided + "/decide", "why", Map.of("work", "none")),
            new Try("/api/stringers/" + retired() + "/found", "why"),
            new Try("/api/replacements/kept", "found", Map.of("item", asked(bow.string().code()))),
            new Try(
                "/api/checks",
                "correctionWhy",
                Map.of("rig", bow.id().value(), "corrects", check(bow))),
            new Try(
                "/api/receipts", "depositKeptWhy", Map.of("loanId", lent(), "depositKept", "5")),
            new Try("/api/recalls", "why", Map.of("maker", "Alderfen")),
            new Try(
                "/api/rigs/" + bow.id().value() + "/corrections",
                "overrideWhy",
                Map.of("found", fixture.aBowReadyToGoOut().string().code())),
            new Try(
                "/api/inspections",
                "words",
                Map.of(
                    "item", bow.limbs().code(), "work", "limb-inspection", "seen", seen("stop"))),
            new Try(
                "/api/inspections",
                "words",
                Map.of(
                    "item", bow.limbs().code(), "work", "limb-inspection", "seen", seen("note"))),
            new Try("/api/loans", "overrideWhy"),
            new Try("/api/loans/" + lent() + "/items", "overrideWhy"),
            new Try("/api/loans/" + lent() + "/extend", "overrideWhy"),
            new Try("/api/sessions", "overrideWhy"),
            new Try("/api/accidents", "words", Map.of("loan", lent())),
            new Try("/api/accidents/" + accident(lent()) + "/end", "why"));
    for (Try one : tries) {
      String before = told();
      Response answer = sending("officer").body(one.body()).post(one.path());
      answer
          .then()
          .log()
          .ifValidationFails()
          .statusCode(422)
          .body(
              "errors.find { it.field == '" + one.field() + "' }.message",
              equalTo(WholeWords.WANTED));
      assertEquals(before, told(), one.path());
    }
  }

  private static Map<String, Object> seen(String first) {
    Map<String, Object> seen = new HashMap<>();
    LooksOf.keys("limb-inspection").forEach(key -> seen.put(key, "fine"));
    seen.put(LooksOf.keys("limb-inspection").get(0), first);
    return seen;
  }

  /** What the record holds; a press that is refused adds nothing. */
  private String told() {
    return rows.number("SELECT max(id) FROM story")
        + "/"
        + rows.number("SELECT max(id) FROM change");
  }

  private long withdrawn(LaidBow bow, String work) {
    Map<String, Object> body = new HashMap<>();
    body.put("item", bow.limbs().code());
    body.put("why", "A line across the lower limb.");
    body.put("work", work);
    return sending("officer")
        .body(body)
        .post("/api/withdrawals")
        .then()
        .statusCode(201)
        .extract()
        .jsonPath()
        .getLong("id");
  }

  private long accident(long loan) {
    return sending("officer")
        .body(Map.of("loan", loan, "words", "A bracer strap broke and cut the arm."))
        .post("/api/accidents")
        .then()
        .statusCode(201)
        .extract()
        .jsonPath()
        .getLong("id");
  }

  private long session(LaidBow bow) {
    return sending("officer")
        .body(Map.of("leader", "Quenby", "rigIds", List.of(bow.id().value())))
        .post("/api/sessions")
        .then()
        .statusCode(201)
        .extract()
        .jsonPath()
        .getLong("id");
  }

  private String retired() {
    Laid stringer = fixture.aStringer();
    rows.change(
        "UPDATE item SET retired_on = ?2, retired_why = 'LOST' WHERE id = ?1",
        stringer.id(),
        time.today());
    return stringer.code();
  }

  private String asked(String string) {
    rows.change(
        """
        INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks)
        SELECT id, 'STRING_REPLACEMENT', ?2, 1, 'Its readings change.', 0 FROM item WHERE code = ?1\
        """,
        string.replace("-", ""),
        time.now());
    return string;
  }

  private long check(LaidBow bow) {
    rows.change(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict)
        VALUES (?1, 'LOOK', ?2, ?2, 1, 1, 'ADJUST')\
        """,
        bow.id(),
        time.now());
    return rows.number("SELECT max(id) FROM bow_check");
  }

  private long lent() {
    rows.change(
        "INSERT INTO borrower (name, contact, age_band) VALUES ('Wystan Holt', '07700 900003',"
            + " 'ADULT')");
    rows.change(
        """
        INSERT INTO loan (kind, borrower_id, issued_at, due_on, issued_by, recorded_at, terms_accepted,
                          deposit_minor, deposit_how)
        VALUES ('KIT', (SELECT max(id) FROM borrower), ?1, ?2, 1, ?1, 1, 2000, 'CASH')\
        """,
        time.now().minusSeconds(3600),
        time.today().plusDays(90));
    long loan = rows.number("SELECT max(id) FROM loan");
    rows.change(
        """
        INSERT INTO loan_line (loan_id, item_id, out_at)
        SELECT ?1, min(i.id), ?2 FROM item i
         WHERE i.kind = 'BRACER' AND i.retired_on IS NULL
           AND NOT EXISTS (SELECT 1 FROM loan_line x WHERE x.item_id = i.id AND x.back_at IS NULL)
           AND NOT EXISTS (SELECT 1 FROM withdrawal w WHERE w.item_id = i.id AND w.released_at IS NULL)\
        """,
        loan,
        time.now().minusSeconds(3600));
    return loan;
  }

  private long account() {
    rows.change(
        "INSERT INTO account (name, role, password_hash) VALUES (?1, 'VOLUNTEER', '')",
        "wulf-" + System.nanoTime());
    long id = rows.number("SELECT max(id) FROM account");
    rows.change(
        "INSERT INTO second_step (account_id, sealed_secret, turned_on_at) VALUES (?1, ?3, ?2)",
        id,
        time.now(),
        "0".repeat(96));
    return id;
  }

  private void closed(long account) {
    rows.change(
        "UPDATE account SET closed_on = ?2 WHERE id = ?1 AND closed_on IS NULL",
        account,
        time.today());
  }
}
