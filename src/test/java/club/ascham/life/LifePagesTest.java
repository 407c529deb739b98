package club.ascham.life;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.register.ItemKind;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * How long parts last, as people see it: over the demo club, and with stringers of a known life.
 */
@QuarkusTest
class LifePagesTest {
  private static final String STRINGERS = "/upkeep/life/stringer";

  @Inject Rows rows;
  @Inject PartLives lives;
  @Inject ClubTime time;

  @Test
  void everyKind_isToldOf_orItIsSaidWhyNot() {
    Visitor committee = Visitor.signedInAs("committee");
    committee
        .get("/upkeep/life")
        .then()
        .statusCode(200)
        .body(containsString("Strings"), containsString("failed,"));
    for (ItemKind kind : LifePages.KINDS) {
      for (String in : new String[] {"days", "loans", "shots"}) {
        committee
            .get("/upkeep/life/" + kind.name().toLowerCase() + "?in=" + in)
            .then()
            .statusCode(200)
            .body(containsString("what all this rests on"), not(containsString("NaN")));
      }
    }
    committee.get("/upkeep/life/tab").then().statusCode(404);
    as("committee")
        .get("/api/lives/string?in=loans")
        .then()
        .statusCode(200)
        .body("in", equalTo("loans"), "groups.name", hasItem("polyester"), "rules", empty());
  }

  @Test
  void whatLeftOtherwise_isKeptApart_andARecallIsNoFault() {
    LocalDate today = time.today();
    String failed = item("STRINGER", today.minusDays(300), today.minusDays(10), "SCRAPPED");
    fault(failed, "The cord is frayed.", 10);
    String recalled = item("STRINGER", today.minusDays(300), today.minusDays(10), "SCRAPPED");
    fault(recalled, "Recalled: a bad batch.", 10);
    String lost = item("STRINGER", today.minusDays(300), today.minusDays(10), "LOST");
    String inUse = item("STRINGER", today.minusDays(300), null, null);

    Map<String, End> ends = new HashMap<>();
    lives.of(ItemKind.STRINGER).forEach(part -> ends.put(part.bareCode(), part.end()));
    assertEquals(End.FAILED, ends.get(failed));
    assertEquals(End.SCRAPPED, ends.get(recalled));
    assertEquals(End.LOST, ends.get(lost));
    assertEquals(End.IN_USE, ends.get(inUse));
  }

  /** Stringers that wear out fast, under a rule that would replace them late. */
  @Test
  void whatTheRecordProposes_anOfficerTakesOver_onceAndEarlierOnly() {
    rows.change(
        """
        INSERT INTO upkeep_rule (item_kind, work, every_days, blocks, source)
        VALUES ('STRING', 'STRING_REPLACEMENT', 1400, 0, 'for this test')""");
    long rule = rows.number("SELECT max(id) FROM upkeep_rule");
    Random random = new Random(3);
    LocalDate today = time.today();
    for (int i = 0; i < 60; i++) {
      int age = 20 + (int) (300 * Math.sqrt(-Math.log(1 - random.nextDouble())));
      String code = item("STRING", today.minusDays(age + 30), today.minusDays(30), "SCRAPPED");
      rows.change(
          """
          INSERT INTO bowstring (id, for_bow_in, material, first_used)
          SELECT id, 68, 'POLYESTER', registered_on FROM item WHERE code = ?1""",
          code);
      fault(code, "A strand is cut.", 30);
    }
    String page = "/upkeep/life/string";
    Visitor.signedInAs("committee")
        .get(page)
        .then()
        .statusCode(200)
        .body(containsString("They wear out"), not(containsString("Replace after")));
    Visitor officer = Visitor.signedInAs("officer");
    String body = officer.get(page).then().statusCode(200).extract().asString();
    Matcher form =
        Pattern.compile(
                "name=\"rule\" value=\""
                    + rule
                    + "\"><input type=\"hidden\" name=\"days\" value=\"(\\d+)\"")
            .matcher(body);
    assertTrue(form.find(), body);
    int days = Integer.parseInt(form.group(1));
    assertTrue(days > 50 && days < 1400, days + " days");

    Map<String, String> accept =
        Map.of("rule", "" + rule, "days", "" + days, "version", "0", "once-key", "life-1");
    Map<String, String> other =
        Map.of("rule", "" + rule, "days", "" + (days + 5), "version", "0", "once-key", "life-2");
    officer
        .post(page + "/shorten", other)
        .then()
        .statusCode(422)
        .body(containsString("no longer what the record proposes"));
    officer.post(page + "/shorten", accept).then().statusCode(303);
    assertEquals(days, rows.number("SELECT every_days FROM upkeep_rule WHERE id = ?1", rule));
    assertTrue(
        rows.texts("SELECT source FROM upkeep_rule WHERE id = " + rule)
            .get(0)
            .contains("failed; " + days + " days cost least"));
    officer.post(page + "/shorten", accept).then().statusCode(303);
    assertEquals(1, rows.number("SELECT version FROM upkeep_rule WHERE id = ?1", rule), "once");
    Visitor.signedInAs("volunteer").post(page + "/shorten", accept).then().statusCode(403);
    rows.change("DELETE FROM upkeep_rule WHERE id = ?1", rule);
  }

  private String item(String kind, LocalDate since, LocalDate retiredOn, String why) {
    char letter = kind.equals("STRING") ? 'S' : 'T';
    long last =
        rows.number(
            "SELECT coalesce(max(CAST(substr(code, 2, 4) AS INTEGER)), 0) FROM item WHERE code LIKE ?1",
            letter + "%");
    int number = ItemCode.nextIssuable(letter, (int) last + 1).orElseThrow();
    String code = ItemCode.of(letter, number).orElseThrow().bare();
    rows.change(
        """
        INSERT INTO item (code, kind, registered_on, bought_on, retired_on, retired_why)
        VALUES (?1, ?2, ?3, ?3, ?4, ?5)""",
        code,
        kind,
        since,
        retiredOn,
        why);
    if (kind.equals("STRINGER")) {
      rows.change(
          "INSERT INTO stringer (id, stringer_kind, bow_from_in, bow_to_in) SELECT max(id), 'TIP_TO_TIP', 60, 70 FROM item");
    }
    return code;
  }

  private void fault(String code, String why, int daysAgo) {
    rows.change(
        """
        INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why, released_at, released_by, release_why)
        SELECT id, ?2, ?2, 1, ?3, ?2, 1, 'Scrapped.' FROM item WHERE code = ?1""",
        code,
        time.momentOf(time.today().minusDays(daysAgo).atTime(12, 0)),
        why);
  }
}
