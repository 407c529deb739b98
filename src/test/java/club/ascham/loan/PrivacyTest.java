package club.ascham.loan;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.Settings;
import club.ascham.borrower.EraseBorrower;
import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.store.DataFolder;
import club.ascham.store.OpenFile;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.story.VerifyRecord;
import club.ascham.time.Ago;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is kept of a person is little, theirs to see, and gone when it is not needed. */
@QuarkusTest
class PrivacyTest {
  @Inject Settings settings;
  @Inject Rows rows;
  @Inject ClubFixture fixture;
  @Inject EraseBorrower eraseBorrower;
  @Inject VerifyRecord verifyRecord;
  @Inject ClubTime time;

  private long enter(String name) {
    return as("officer")
        .contentType("application/json")
        .body(Map.of("name", name, "contact", name + "@wherry.example", "ageBand", "adult"))
        .post("/api/borrowers")
        .then()
        .statusCode(201)
        .extract()
        .jsonPath()
        .getLong("id");
  }

  /** A loan of theirs; null: it is not back. */
  private long lend(long borrower, Instant back, long depositMinor) {
    Laid arrows = fixture.arrows(30);
    rows.change(
        """
        INSERT INTO loan (kind, borrower_id, issued_at, due_on, issued_by, recorded_at, terms_accepted, deposit_minor, deposit_how)
        VALUES ('KIT', ?1, '2025-01-02T10:00:00.000Z', '2025-02-02', 1, '2025-01-02T10:00:00.000Z', 1, ?2, 'CASH')""",
        borrower,
        depositMinor);
    long loan = rows.number("SELECT max(id) FROM loan");
    rows.change(
        "INSERT INTO loan_line (loan_id, item_id, out_at, back_at, outcome) VALUES (?1, ?2, '2025-01-02T10:00:00.000Z', ?3, iif(?3 IS NULL, NULL, 'BACK'))",
        loan,
        arrows.id(),
        back);
    return loan;
  }

  private String nameOf(long borrower) {
    return rows.texts("SELECT name FROM borrower WHERE id = ?1", borrower).get(0);
  }

  @Test
  void whoAsksToBeForgotten_isANumber_andTheRecordStaysWhole() {
    long borrower = enter("Ottoline Quill");
    long loan = lend(borrower, Instant.parse("2025-02-01T10:00:00Z"), 0);
    as("officer")
        .contentType("application/json")
        .post("/api/borrowers/" + borrower + "/erasure")
        .then()
        .statusCode(200);
    assertEquals("Borrower " + borrower, nameOf(borrower));
    assertEquals(
        0,
        rows.number("SELECT count(*) FROM personal WHERE value LIKE '%Ottoline%'"),
        "nothing is left beside the chain");
    assertEquals(0, rows.number("SELECT count(*) FROM change WHERE what LIKE '%Ottoline%'"));
    VerifyRecord.Verified verified = verifyRecord.verify();
    assertEquals(List.of(), verified.faults());
    assertTrue(verified.erased() >= 2);
    as("officer")
        .get("/api/record?size=1")
        .then()
        .body("items[0].sentence", equalTo("Erased what was kept of a borrower."))
        .body("items[0].changes[0].fields.from", hasItem("erased"));
    assertEquals(
        borrower, rows.number("SELECT borrower_id FROM loan WHERE id = ?1", loan), "history stays");
    Visitor.signedInAs("officer")
        .get("/borrowers/" + borrower)
        .then()
        .statusCode(200)
        .body(containsString("Erased on"), not(containsString("Ottoline")));
  }

  @Test
  void freeTexts_thatNameThem_areShownBeforeThePress_andTheFullNameGoesWithIt() {
    fixture.mayTurnBolts("officer", true);
    long borrower = enter("Tamsin Thornbury");
    String code = rows.texts("SELECT min(code) FROM item WHERE kind = 'STRINGER'").get(0);
    String label = new ItemCode(code).display();
    Visitor officer = Visitor.signedInAs("officer");
    as("officer")
        .contentType("application/json")
        .body(Map.of("item", label, "why", "Left in the rain by TAMSIN  thornbury."))
        .post("/api/withdrawals")
        .then()
        .statusCode(201);
    long withdrawal = rows.number("SELECT max(id) FROM withdrawal");
    as("officer")
        .contentType("application/json")
        .body(Map.of("work", "none", "why", "Nothing but wet: it dries."))
        .post("/api/withdrawals/" + withdrawal + "/decide")
        .then()
        .statusCode(200);
    as("officer")
        .contentType("application/json")
        .body(
            Map.of(
                "lookedAt",
                "Cord and both pockets.",
                "why",
                "Dry; Thornbury’s brother looked at it."))
        .post("/api/withdrawals/" + withdrawal + "/release")
        .then()
        .statusCode(200);
    String page = officer.get("/borrowers/" + borrower + "/erase").asString();
    assertTrue(page.contains("Left in the rain by TAMSIN"), page);
    assertTrue(page.contains("value=\"withdrawal.release_why." + withdrawal + "\""), page);
    assertTrue(page.contains("href=\"/items/" + code + "\""), page);
    officer.post("/borrowers/" + borrower + "/erase", Map.of("x", "y")).then().statusCode(303);
    assertEquals(
        List.of("Left in the rain by [erased].", "Dry; Thornbury’s brother looked at it."),
        rows.texts(
            "SELECT why FROM withdrawal WHERE id = ?1 UNION ALL SELECT release_why FROM withdrawal WHERE id = ?1",
            withdrawal));
    for (String place :
        List.of(
            "SELECT count(*) FROM personal WHERE lower(value) LIKE '%tamsin%'",
            "SELECT count(*) FROM change WHERE lower(what) LIKE '%tamsin%'",
            "SELECT count(*) FROM story WHERE lower(why) LIKE '%tamsin%' OR lower(sentence) LIKE '%tamsin%'")) {
      assertEquals(0, rows.number(place), place);
    }
    assertEquals(
        List.of("Erased what was kept of a borrower, and the name in 2 texts."),
        rows.texts("SELECT sentence FROM story ORDER BY id DESC LIMIT 1"));
    assertEquals(List.of(), verifyRecord.verify().faults());
  }

  @Test
  void aFamilyNameAlone_goesOnlyWhereTheOfficerTicksIt() {
    long borrower = enter("Una Quickthorn");
    long item = rows.number("SELECT min(id) FROM item WHERE kind = 'QUIVER'");
    String other = "Quickthornley made it.";
    notes.write(item, "Dyed by Quickthorn.");
    notes.write(item + 1, other);
    Visitor officer = Visitor.signedInAs("officer");
    String page = officer.get("/borrowers/" + borrower + "/erase").asString();
    assertTrue(page.contains("value=\"item.notes." + item + "\""), page);
    assertTrue(!page.contains(other), "a longer word is another name");
    officer
        .post("/borrowers/" + borrower + "/erase", Map.of("text", "item.notes." + item))
        .then()
        .statusCode(303);
    assertEquals(
        List.of("Dyed by [erased].", other),
        rows.texts("SELECT notes FROM item WHERE id IN (?1, ?2) ORDER BY id", item, item + 1));
    assertEquals(0, rows.number("SELECT count(*) FROM personal WHERE value LIKE '%Quickthorn.%'"));
    assertEquals(List.of(), verifyRecord.verify().faults());
  }

  @Test
  void whatStays_theApiTellsAsThePageDoes() {
    long borrower = enter("Wilmot Underhedge");
    long item = rows.number("SELECT min(id) FROM item WHERE kind = 'QUIVER'");
    notes.write(item, "Dyed by Underhedge.");
    notes.write(item + 1, "Mended by Wilmot Underhedge.");
    notes.write(item + 2, "Under the Underhedge shelf.");
    notes.say("Told of Wilmot Underhedge by an earlier version.");
    long entry = rows.number("SELECT max(id) FROM story");
    String page = Visitor.signedInAs("officer").get("/borrowers/" + borrower + "/erase").asString();
    List<Map<String, Object>> before =
        as("officer").get("/api/borrowers/" + borrower + "/erasure").jsonPath().getList("items");
    assertEquals(4, before.size(), before.toString());
    before.forEach(hit -> assertTrue(page.contains(hit.get("words").toString()), page));
    var answer =
        as("officer")
            .contentType("application/json")
            .queryParam("text", "item.notes." + item)
            .post("/api/borrowers/" + borrower + "/erasure")
            .then()
            .statusCode(200)
            .body("borrower.name", equalTo("Borrower " + borrower))
            .extract()
            .jsonPath();
    assertEquals(
        List.of("story.sentence." + entry, "item.notes." + (item + 2)),
        answer.getList("stays.key"));
    assertEquals(
        List.of("Dyed by [erased].", "Mended by [erased].", "Under the Underhedge shelf."),
        rows.texts(
            "SELECT notes FROM item WHERE id BETWEEN ?1 AND ?2 ORDER BY id", item, item + 2));
    as("officer")
        .get("/api/borrowers/" + borrower + "/erasure")
        .then()
        .body("items.size()", equalTo(0));
    as("volunteer").get("/api/borrowers/" + borrower + "/erasure").then().statusCode(403);
    assertEquals(answer.getList("stays"), eraseAgain(borrower));
    notes.write(item + 2, null);
    assertEquals(answer.getList("stays").subList(0, 1), eraseAgain(borrower));
    notes.age(borrower);
    assertNull(eraseAgain(borrower), "what names a number is not kept for ever");
    assertEquals(
        0, rows.number("SELECT count(*) FROM name_stays WHERE borrower_id = ?1", borrower));
  }

  private static List<Object> eraseAgain(long borrower) {
    return as("officer")
        .contentType("application/json")
        .post("/api/borrowers/" + borrower + "/erasure")
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getList("stays");
  }

  @Test
  void whatIsKeptOfAnother_isShown_andStaysWithThem() {
    long borrower = enter("Alban Fennimore");
    as("officer")
        .contentType("application/json")
        .body(
            Map.of(
                "name", "Piers Fennimore",
                "contact", "07700 900688",
                "ageBand", "up-to-12",
                "guardian", "Alban Fennimore"))
        .post("/api/borrowers")
        .then()
        .statusCode(201);
    long junior = rows.number("SELECT max(id) FROM borrower");
    assertEquals(
        List.of("borrower.guardian." + junior, "borrower.name." + junior),
        as("officer")
            .get("/api/borrowers/" + borrower + "/erasure")
            .jsonPath()
            .getList("items.key"));
    as("officer")
        .contentType("application/json")
        .queryParam("text", "borrower.name." + junior)
        .post("/api/borrowers/" + borrower + "/erasure")
        .then()
        .statusCode(200)
        .body("stays.size()", equalTo(2));
    assertEquals(
        List.of("Piers Fennimore", "Alban Fennimore"),
        rows.texts(
            "SELECT name FROM borrower WHERE id = ?1 UNION ALL SELECT guardian FROM borrower WHERE id = ?1",
            junior));
  }

  /** Notes, written as a use case writes them. */
  @ApplicationScoped
  static class Notes {
    @Inject Rows rows;
    @Inject Story story;
    @Inject ClubTime time;

    @Writes
    void write(long item, String words) {
      rows.change("UPDATE item SET notes = ?2 WHERE id = ?1", item, words);
      say("Noted.");
    }

    /** As if they had been erased two months ago. */
    @Writes
    void age(long borrower) {
      rows.change(
          "UPDATE name_stays SET at = ?2 WHERE borrower_id = ?1", borrower, Ago.days(time, 60));
      rows.change(
          "UPDATE borrower SET erased_on = ?2 WHERE id = ?1",
          borrower,
          time.dayOf(Ago.days(time, 60)));
      say("Aged.");
    }

    @Writes
    void say(String sentence) {
      story.tell(Story.Told.ofClub(time.now(), null, sentence));
    }
  }

  @Inject Notes notes;

  @Test
  void whoStillHasSomething_isKeptByName() {
    long borrower = enter("Perrin Slate");
    lend(borrower, null, 0);
    as("officer")
        .contentType("application/json")
        .post("/api/borrowers/" + borrower + "/erasure")
        .then()
        .statusCode(409)
        .body("detail", containsString("receive it first"));
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/borrowers/" + borrower);
    officer
        .post("/borrowers/" + borrower + "/erase", Map.of("x", "y"))
        .then()
        .statusCode(422)
        .body(containsString("receive it first"));
    assertEquals("Perrin Slate", nameOf(borrower));
  }

  @Test
  void anUnsettledDeposit_keepsTheName() {
    long borrower = enter("Sorrel Tamsin");
    lend(borrower, Instant.parse("2025-02-01T10:00:00Z"), 2500);
    as("officer")
        .contentType("application/json")
        .post("/api/borrowers/" + borrower + "/erasure")
        .then()
        .statusCode(409);
    assertEquals("Sorrel Tamsin", nameOf(borrower));
  }

  @Test
  void theirData_isHandedOutWhole_toOfficersAlone() {
    long borrower = enter("Ursel Vane");
    long loan = lend(borrower, Instant.parse("2025-02-01T10:00:00Z"), 0);
    as("officer")
        .get("/api/borrowers/" + borrower + "/data")
        .then()
        .statusCode(200)
        .body("person.name", equalTo("Ursel Vane"))
        .body("loans.number", hasItem((int) loan))
        .body("loans[0].things.size()", equalTo(1))
        .body("changes.field", hasItem("contact"));
    as("volunteer").get("/api/borrowers/" + borrower + "/data").then().statusCode(403);
    as("volunteer").post("/api/borrowers/" + borrower + "/erasure").then().statusCode(403);
    as("committee").get("/api/borrowers/" + borrower + "/data").then().statusCode(403);
  }

  @Test
  void afterTheClubsTime_aReturnedBorrowerIsANumber_andNoSooner() throws Exception {
    // The record of a test's own borrowers is new, so only those the demo came with can be over.
    long demo =
        rows.number(
            """
            SELECT b.id FROM borrower b WHERE b.erased_on IS NULL
               AND EXISTS (SELECT 1 FROM loan l WHERE l.borrower_id = b.id)
               AND NOT EXISTS (SELECT 1 FROM loan l JOIN loan_line x ON x.loan_id = l.id
                    WHERE l.borrower_id = b.id AND (x.back_at IS NULL OR x.back_at > ?1))
               AND NOT EXISTS (SELECT 1 FROM loan l WHERE l.borrower_id = b.id AND l.deposit_minor > 0 AND l.deposit_back_minor IS NULL)
             ORDER BY b.id LIMIT 1""",
            Ago.days(time, 400));
    List<String> theirs =
        rows.texts(
            "SELECT name FROM borrower WHERE id = ?1 UNION SELECT contact FROM borrower WHERE id = ?1",
            demo);
    long recent = enter("Wystan Yarrow");
    lend(recent, Ago.days(time, 3), 0);
    long out = enter("Zephyr Ash");
    lend(out, null, 0);
    assertTrue(eraseBorrower.whoseTimeIsOver() > 0);
    assertEquals("Borrower " + demo, nameOf(demo));
    String file = OpenFile.bytes(new DataFolder(settings.dataDir()).file());
    assertEquals(List.of(), theirs.stream().filter(file::contains).toList());
    assertEquals("Wystan Yarrow", nameOf(recent));
    assertEquals("Zephyr Ash", nameOf(out));
    assertEquals(0, eraseBorrower.whoseTimeIsOver(), "once is enough");
    assertEquals(List.of(), verifyRecord.verify().faults());
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM loan WHERE kind = 'SESSION' AND leader <> 'a leader' AND issued_at < ?1 AND id NOT IN (SELECT loan_id FROM loan_line WHERE back_at IS NULL OR back_at > ?1)",
            Ago.days(time, 181)));
  }

  @Test
  void aJunior_mayStayUnnamed_whereTheGuardianAnswers() {
    as("officer")
        .contentType("application/json")
        .body(Map.of("contact", "07700 900555", "ageBand", "up-to-12", "guardian", "Mira Holt"))
        .post("/api/borrowers")
        .then()
        .statusCode(201)
        .body("name", equalTo("Junior of Mira Holt"));
    as("officer")
        .contentType("application/json")
        .body(Map.of("contact", "07700 900556", "ageBand", "adult"))
        .post("/api/borrowers")
        .then()
        .statusCode(422);
  }

  @Test
  void someoneKeptAlready_isNotEnteredWithOtherParticulars_andNothingIsLostUnsaid() {
    Map<String, String> grown =
        Map.of("name", "Linnet Fane", "contact", "07700 900557", "ageBand", "adult");
    Map<String, String> young =
        Map.of(
            "name", "Linnet Fane",
            "contact", "07700 900557",
            "ageBand", "from-13-to-14",
            "guardian", "Mira Holt");
    int kept =
        as("officer").contentType("application/json").body(grown).post("/api/borrowers").path("id");
    as("officer")
        .contentType("application/json")
        .body(grown)
        .post("/api/borrowers")
        .then()
        .statusCode(201)
        .body("id", equalTo(kept));
    as("officer")
        .contentType("application/json")
        .body(young)
        .post("/api/borrowers")
        .then()
        .statusCode(409)
        .body("detail", containsString("number " + kept));
  }

  @Test
  void noList_thatDoesNotNeedThem_holdsNames() {
    long borrower = enter("Xanthe Brook");
    lend(borrower, null, 0);
    for (String list :
        List.of(
            "/api/rigs",
            "/api/kit-items",
            "/api/upkeep",
            "/api/checks",
            "/api/withdrawals",
            "/api/fleet")) {
      as("committee").get(list).then().statusCode(200).body(not(containsString("Xanthe")));
    }
  }
}
