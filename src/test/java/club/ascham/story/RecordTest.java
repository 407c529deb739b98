package club.ascham.story;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.web.Visitor;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The record holds every change and shows when anyone touched it. */
@QuarkusTest
class RecordTest {
  @Inject Rows rows;
  @Inject Story story;
  @Inject VerifyRecord verifyRecord;
  @Inject UseCases useCases;
  @Inject ObjectMapper json;

  /** Use cases as this test needs them. */
  @ApplicationScoped
  static class UseCases {
    @Inject Rows rows;
    @Inject Story story;

    @Writes
    void note(long setUp, String notes, String sentence) {
      rows.change("UPDATE set_up SET brace_typed = ?2 WHERE id = ?1", setUp, notes);
      if (sentence != null) {
        story.tell(Story.Told.ofClub(Instant.parse("2026-01-02T03:04:05Z"), null, sentence));
      }
    }

    @Writes
    void inTwoSteps(long setUp) {
      note(setUp, "first", "Wrote the first.");
      note(setUp, "second", "Wrote the second.");
    }
  }

  @BeforeEach
  void tellWhatIsLoose() {
    // Whatever another test wrote behind the record's back is told by this.
    useCases.note(setUp(), "noted " + System.nanoTime(), "Noted.");
  }

  private long setUp() {
    return rows.number("SELECT min(id) FROM set_up");
  }

  @Test
  void aChange_isRecordedFromAndTo_andSealed() {
    useCases.note(setUp(), "before", "Wrote before.");
    useCases.note(setUp(), "after", "Wrote after.");
    as("officer")
        .get("/api/record?size=1")
        .then()
        .statusCode(200)
        .body("items[0].sentence", equalTo("Wrote after."))
        .body("items[0].by", equalTo("Ascham"))
        .body("items[0].changes[0].thing", equalTo("set up"))
        .body(
            "items[0].changes[0].fields.find { it.field == 'brace typed' }.from", equalTo("before"))
        .body("items[0].changes[0].fields.find { it.field == 'brace typed' }.to", equalTo("after"))
        .body("items[0].seal.length()", equalTo(64))
        .body("older", greaterThan(0));
  }

  @Test
  void aChangeWithoutASentence_isTakenBack() {
    useCases.note(setUp(), "as it was", "Wrote it.");
    IllegalStateException refused =
        assertThrows(IllegalStateException.class, () -> useCases.note(setUp(), "untold", null));
    assertTrue(refused.getMessage().contains("changed without a sentence"), refused.getMessage());
    assertEquals(
        "as it was", rows.texts("SELECT brace_typed FROM set_up WHERE id = ?1", setUp()).get(0));
  }

  @Test
  void useCasesWithinAUseCase_areSealedOnce_eachChangeWithItsSentence() {
    useCases.inTwoSteps(setUp());
    assertEquals(
        List.of("second", "first"),
        rows.texts(
            """
            SELECT json_extract(c.what, '$.brace_typed[1]') FROM change c JOIN story s ON s.id = c.story_id
             ORDER BY s.id DESC LIMIT 2"""));
    assertTrue(verifyRecord.verify().whole());
  }

  @Test
  void everyTableOfFacts_isWatched() {
    Set<String> unwatched =
        Set.copyOf(
            rows.texts(
                """
                SELECT t.name FROM pragma_table_list t
                 WHERE t.schema = 'main' AND t.type = 'table'
                   AND t.name NOT GLOB 'sqlite_*' AND t.name NOT GLOB 'flyway_*'
                   AND 3 <> (SELECT count(*) FROM sqlite_master m
                              WHERE m.type = 'trigger' AND m.tbl_name = t.name AND m.name GLOB 'record_*')"""));
    assertEquals(Watched.LEFT_OUT, unwatched, "each of them is left out on purpose");
  }

  @Test
  void whatSomeOtherProgramWrites_isFound_andToldAtTheNextSave() {
    rows.change("UPDATE set_up SET brace_typed = 'by hand' WHERE id = ?1", setUp());
    assertTrue(
        verifyRecord.verify().faults().stream().anyMatch(f -> f.contains("have no sentence")));
    useCases.note(setUp(), "by a use case", "Wrote it.");
    assertEquals(
        List.of("Wrote it.", Story.OUTSIDE),
        rows.texts("SELECT sentence FROM story ORDER BY id DESC LIMIT 2"));
    assertTrue(verifyRecord.verify().whole());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "UPDATE story SET sentence = 'Nothing.' WHERE id = (SELECT max(id) - 3 FROM story) | Entry",
        "UPDATE story SET account_id = (SELECT max(id) FROM account) WHERE id = (SELECT max(id) FROM story) | Entry",
        "UPDATE story SET hash = printf('%064d', 0) WHERE id = (SELECT max(id) - 1 FROM story) | Entry",
        "DELETE FROM story WHERE id = (SELECT max(id) - 1 FROM story) | Entry",
        "DELETE FROM change WHERE id = (SELECT max(id) FROM change) | Entry",
        "UPDATE change SET what = json_set(what, '$.brace_typed[1]', 'other') WHERE id = (SELECT max(id) FROM change) | Entry",
        "UPDATE personal SET value = json_array(NULL, 'Somebody Else') WHERE id = (SELECT min(id) FROM personal WHERE value IS NOT NULL) | A personal value",
        "UPDATE story SET why = 'No reason.' WHERE id = (SELECT max(id) FROM story WHERE why IS NOT NULL) | The reason",
        "UPDATE story SET why_hash = printf('%064d', 0) WHERE id = (SELECT max(id) FROM story WHERE why IS NOT NULL) | Entry",
        "DELETE FROM personal WHERE id = (SELECT min(id) FROM personal) | Entry",
        "UPDATE set_up SET brace_typed = 'changed behind its back' WHERE id = (SELECT min(id) FROM set_up) | set_up",
        "UPDATE borrower SET name = 'Somebody Else' WHERE id = (SELECT min(id) FROM borrower WHERE erased_on IS NULL) | borrower",
        "UPDATE set_up SET brace = brace + 1 WHERE id = (SELECT min(id) FROM set_up WHERE brace IS NOT NULL) | set_up",
        "DELETE FROM check_sign WHERE rowid = (SELECT min(rowid) FROM check_sign) | check_sign",
        "INSERT INTO club_brace_band (bow_length_in, low, high, source) VALUES (61, 19000000, 20000000, 'nobody') | club_brace_band"
      })
  void whoGoesBehindItsBack_isFound(String tampering, String pointsTo) {
    VerifyRecord.Verified found;
    QuarkusTransaction.begin();
    try {
      for (String trigger : rows.texts("SELECT name FROM sqlite_master WHERE type = 'trigger'")) {
        rows.change("DROP TRIGGER " + trigger);
      }
      assertEquals(1, rows.change(tampering), tampering);
      found = verifyRecord.verify();
    } finally {
      QuarkusTransaction.rollback();
    }
    assertTrue(!found.whole(), tampering);
    assertTrue(
        found.faults().size() <= 8
            && found.faults().stream().anyMatch(fault -> fault.startsWith(pointsTo)),
        () -> "it points at the place: " + found.faults());
  }

  @Test
  void aShortenedTail_showsByASealKeptElsewhere() {
    String seal = rows.texts("SELECT hash FROM story ORDER BY id DESC LIMIT 1").get(0);
    var known =
        assertInstanceOf(
            VerifyRecord.SealSeen.Known.class, verifyRecord.seen(seal.substring(0, 12)));
    assertEquals(0, known.since());
    assertInstanceOf(VerifyRecord.SealSeen.Unknown.class, verifyRecord.seen("0123456789abcdef"));
  }

  @Test
  void theExport_chainsForAnyProgram() throws Exception {
    String lines =
        as("officer").get("/api/record/export").then().statusCode(200).extract().asString();
    String before = "";
    long entries = 0;
    for (String line : lines.split("\n")) {
      JsonNode entry = json.readTree(line);
      String covered =
          line.substring(line.indexOf(",\"entry\":") + ",\"entry\":".length(), line.length() - 1);
      assertEquals(entry.get("seal").asText(), sha256(before + "\n" + covered));
      before = entry.get("seal").asText();
      entries++;
    }
    assertEquals(rows.number("SELECT count(*) FROM story"), entries);
  }

  private static String sha256(String text) throws Exception {
    return String.format(
        "%064x",
        new BigInteger(
            1, MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8))));
  }

  @Test
  void noPersonalValue_standsInTheChain() {
    String name =
        rows.texts(
                "SELECT name FROM borrower WHERE name NOT GLOB '*[^A-Za-z ]*' ORDER BY length(name) DESC LIMIT 1")
            .get(0);
    assertEquals(0, rows.number("SELECT count(*) FROM change WHERE instr(what, ?1) > 0", name));
    assertTrue(rows.number("SELECT count(*) FROM personal WHERE instr(value, ?1) > 0", name) > 0);
  }

  @Test
  void noPassword_standsInTheRecord() {
    String hash = rows.texts("SELECT password_hash FROM account LIMIT 1").get(0);
    assertEquals(0, rows.number("SELECT count(*) FROM change WHERE instr(what, ?1) > 0", hash));
    assertTrue(rows.number("SELECT count(*) FROM change WHERE instr(what, 'secret') > 0") > 0);
  }

  @Test
  void anOfficer_verifiesOnThePage_andReadsWhatAnEntryChanged() {
    useCases.note(setUp(), "one <b>bold</b> note", "Wrote on the page.");
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/record").then().statusCode(200).body(containsString("Wrote on the page."));
    officer
        .post("/record/verify", Map.of("x", "y"))
        .then()
        .statusCode(200)
        .body(containsString("Whole:"));
    long entry = rows.number("SELECT max(id) FROM story");
    officer
        .get("/record/" + entry)
        .then()
        .statusCode(200)
        .body(containsString("one &lt;b&gt;bold&lt;/b&gt; note"));
    officer.get("/record/seal?seal=0123abcd").then().body(containsString("No entry has that seal"));
    officer.get("/record/seal?seal=xyz").then().statusCode(422);
    officer.get("/record/99999999").then().statusCode(404);
  }

  @ParameterizedTest
  @ValueSource(strings = {"volunteer", "committee"})
  void onlyOfficers_readTheRecord(String who) {
    Visitor.signedInAs(who).get("/record").then().statusCode(403);
    as(who).get("/api/record").then().statusCode(403);
  }
}
