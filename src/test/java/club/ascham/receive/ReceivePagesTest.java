package club.ascham.receive;

import static club.ascham.web.Program.as;
import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class ReceivePagesTest {
  private static final String AN_OPEN_KIT =
      """
      SELECT l.id FROM loan l JOIN loan_line x ON x.loan_id = l.id
       WHERE l.kind = 'KIT' AND x.rig_id IS NOT NULL
         AND EXISTS (SELECT 1 FROM loan_line o
                      WHERE o.loan_id = l.id AND o.rig_id IS NULL AND o.arrow_count IS NULL)
       GROUP BY l.id HAVING sum(x.back_at IS NOT NULL) = 0 ORDER BY l.id DESC LIMIT 1""";

  @Inject Rows rows;

  @Test
  void allBack_freesTheBorrower_andTheRigIsToBeChecked_andASecondPressChangesNothing() {
    long loan = rows.number(AN_OPEN_KIT);
    long rig =
        rows.number("SELECT rig_id FROM loan_line WHERE loan_id = ?1 AND rig_id IS NOT NULL", loan);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/receive/" + loan).then().statusCode(200);
    Map<String, String> form = everythingTicked(loan);

    String done =
        volunteer
            .post("/receive/" + loan, form)
            .then()
            .statusCode(303)
            .extract()
            .header("Location");
    String again =
        volunteer
            .post("/receive/" + loan, form)
            .then()
            .statusCode(303)
            .extract()
            .header("Location");

    assertEquals(done, again, "the second press is led to what the first one did");
    assertEquals(1, rows.number("SELECT count(*) FROM receipt WHERE loan_id = ?1", loan));
    assertEquals(
        0,
        rows.number("SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL", loan));
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM rig_standing WHERE rig_id = ?1 AND state_if_inspected = 'TO_BE_CHECKED'",
            rig));
    volunteer
        .get(done.substring(done.indexOf("/receive")))
        .then()
        .body(containsString("all back"))
        .body(containsString("/check/" + rig));
  }

  @Test
  void aCallSentAgainWithItsKey_isAnsweredAsTheFirst() {
    long loan = rows.number(AN_OPEN_KIT);
    int first = received(loan);

    assertEquals(first, received(loan));
    assertEquals(1, rows.number("SELECT count(*) FROM receipt WHERE loan_id = ?1", loan));
  }

  private static int received(long loan) {
    return sending("volunteer")
        .body(Map.of("loanId", loan, "onceKey", "again-" + loan))
        .post("/api/receipts")
        .then()
        .statusCode(201)
        .extract()
        .path("id");
  }

  @Test
  void whatIsMissing_keepsTheLoanOpen_andTheDepositUnsettled() {
    long loan = rows.number(AN_OPEN_KIT);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/receive/" + loan);
    Map<String, String> form = everythingTicked(loan);
    form.remove(
        form.keySet().stream()
            .filter(field -> field.startsWith("back-"))
            .findFirst()
            .orElseThrow());

    volunteer.post("/receive/" + loan, form).then().statusCode(303);

    assertEquals(
        1,
        rows.number("SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL", loan));
    assertEquals(
        1,
        rows.number(
            "SELECT count(*) FROM loan WHERE id = ?1 AND deposit_back_minor IS NULL", loan));
  }

  @Test
  void arrowsComeBackByCount_theSetHoldsThatMany_andWhatIsMissingStandsOnTheLoan() {
    long line =
        rows.number(
            """
            SELECT max(x.id) FROM loan_line x JOIN loan l ON l.id = x.loan_id JOIN kit_item k ON k.id = x.item_id
             WHERE l.kind = 'KIT' AND x.back_at IS NULL AND k.pool = 0 AND k.arrow_count > 2
               AND NOT EXISTS (SELECT 1 FROM loan_line m WHERE m.loan_id = l.id AND m.missing_count > 0)""");
    long loan = rows.number("SELECT loan_id FROM loan_line WHERE id = ?1", line);
    long set = rows.number("SELECT item_id FROM loan_line WHERE id = ?1", line);
    long held = rows.number("SELECT arrow_count FROM kit_item WHERE id = ?1", set);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    String page = volunteer.get("/receive/" + loan).asString();
    assertTrue(page.contains("Arrows back, of " + held));
    int deposit = page.indexOf("<legend>Deposit");
    assertTrue(
        deposit < 0 || page.indexOf("name=\"count-" + line) < deposit,
        "counted before it is settled");
    Map<String, String> form = everythingTicked(loan);
    form.put("count-" + line, Long.toString(held - 2));

    String done =
        volunteer
            .post("/receive/" + loan, form)
            .then()
            .statusCode(303)
            .extract()
            .header("Location");

    volunteer
        .get(done.substring(done.indexOf("/receive")))
        .then()
        .body(containsString("back but for 2 arrows"));
    assertEquals(held - 2, rows.number("SELECT arrow_count FROM kit_item WHERE id = ?1", set));
    volunteer
        .get("/loans/" + loan)
        .then()
        .body(
            containsString(held - 2 + " of " + held + " back"),
            containsString("Back, but for 2 arrows."));
    String code = rows.texts("SELECT code FROM item WHERE id = ?1", set).get(0);
    String note = held - 2 + " of " + held + " arrows came back with loan " + loan + ".";
    volunteer.get("/items/" + code).then().body(containsString(note));
    rows.change("UPDATE kit_item SET arrow_count = ?2 WHERE id = ?1", set, held);
    volunteer.get("/items/" + code).then().body(not(containsString(note)));
  }

  @Test
  void aDamagedThing_isWithdrawnAtOnce_withItsWords() {
    long line =
        rows.number(
            """
            SELECT max(x.id) FROM loan_line x JOIN loan l ON l.id = x.loan_id
             WHERE l.kind = 'KIT' AND x.back_at IS NULL AND x.rig_id IS NULL AND x.arrow_count IS NULL
               AND x.item_id NOT IN (SELECT item_id FROM withdrawal WHERE released_at IS NULL)""");
    long loan = rows.number("SELECT loan_id FROM loan_line WHERE id = ?1", line);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/receive/" + loan);
    Map<String, String> form = everythingTicked(loan);
    form.put("damage-" + line, "buckle <script>alert(1)</script> torn");

    volunteer.post("/receive/" + loan, form).then().statusCode(303);

    assertEquals(
        1,
        rows.number(
            """
            SELECT count(*) FROM withdrawal w JOIN loan_line x ON x.item_id = w.item_id
             WHERE x.id = ?1 AND w.released_at IS NULL AND w.why LIKE 'Came back damaged: buckle%'""",
            line));
    // A sentence is sealed as it is: words that may name someone stand where erasing finds them.
    String sentence =
        rows.texts(
                "SELECT sentence FROM story WHERE loan_id = ?1 AND sentence LIKE 'Received from%'"
                    + " ORDER BY id DESC LIMIT 1",
                loan)
            .get(0);
    assertTrue(sentence.contains("; damaged: "), sentence);
    assertFalse(sentence.contains("buckle"), sentence);
  }

  @Test
  void aFaultyForm_keepsWhatWasTyped_andChangesNothing() {
    long loan = rows.number(AN_OPEN_KIT);
    Visitor volunteer = Visitor.signedInAs("volunteer");
    volunteer.get("/receive/" + loan);
    long before = rows.number("SELECT count(*) FROM receipt");
    Map<String, String> form = everythingTicked(loan);
    form.put("on", "yesterday-ish");
    form.put("words", "a <b>note</b>");

    volunteer
        .post("/receive/" + loan, form)
        .then()
        .statusCode(422)
        .body(containsString("yesterday-ish"))
        .body(containsString("a &lt;b&gt;note"))
        .body(not(containsString("<b>note</b>")));

    assertEquals(before, rows.number("SELECT count(*) FROM receipt"));
  }

  @Test
  void theCommittee_readsReceipts_butReceivesNothing() {
    Visitor.signedInAs("committee").get("/receive").then().statusCode(403);
    as("committee")
        .get("/api/receipts?size=3")
        .then()
        .statusCode(200)
        .body("items.size()", equalTo(3));
    sending("committee").body("{\"loanId\": 1}").post("/api/receipts").then().statusCode(403);
  }

  @Test
  void overTheApi_aLineThatIsNotOut_isNamed() {
    long loan = rows.number(AN_OPEN_KIT);
    sending("volunteer")
        .body("{\"loanId\": %d, \"lines\": [{\"code\": \"nonsense\"}]}".formatted(loan))
        .post("/api/receipts")
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors[0].field", equalTo("lines[0].code"));
  }

  @Test
  void overTheApi_aWholeLoanComesBack() {
    long loan = rows.number(AN_OPEN_KIT);
    assertTrue(loan > 0, "the demo club has kits out");
    sending("volunteer")
        .body("{\"loanId\": %d, \"cameBackStrung\": true}".formatted(loan))
        .post("/api/receipts")
        .then()
        .statusCode(201)
        .header("Location", containsString("/api/receipts/"))
        .body("loanId", equalTo((int) loan))
        .body("cameBackStrung", equalTo(true));
  }

  @Test
  void aLoanThatDoesNotExist_isSaidSo() {
    Visitor.signedInAs("volunteer")
        .get("/receive/999999")
        .then()
        .statusCode(404)
        .body(containsString("no loan 999999"));
  }

  private Map<String, String> everythingTicked(long loan) {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("once-key", "test-" + loan + "-" + System.nanoTime());
    rows.texts("SELECT id FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL", loan)
        .forEach(line -> form.put("back-" + line, "on"));
    return form;
  }
}
