package club.ascham.receive;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A code in the hand that is not on the list of the loan, asked about as at the check. */
@QuarkusTest
class StrangerInHandTest {
  @Inject ClubFixture fixture;
  @Inject Rows rows;

  private Visitor volunteer;

  @BeforeEach
  void signIn() {
    volunteer = Visitor.signedInAs("volunteer");
  }

  @Test
  void itIsAskedWhatIsToBeDone_andWhatWasTypedStays() {
    LaidBow bow = fixture.aBowLentTo("Pella Orme");
    LaidBow other = fixture.aBowLentTo("Robin Ashdown");
    receive(bow, Map.of("stranger", other.limbs().code(), "words", "no time"))
        .statusCode(422)
        .body(containsString("belongs to the rig " + other.body().code()))
        .body(containsString("on loan to Robin Ashdown"))
        .body(containsString("Put it right"))
        .body(containsString("Withdraw both"))
        .body(containsString("Correct the record"))
        .body(containsString("no time"));
    assertEquals("ON_LOAN", fixture.state(bow));

    receive(bow, Map.of("stranger", bow.string().code()))
        .statusCode(422)
        .body(containsString(bow.string().code() + " is on the list of this loan."));
    String tab =
        rows.texts(
                "SELECT code FROM item i WHERE kind = 'TAB' AND retired_on IS NULL AND NOT EXISTS"
                    + " (SELECT 1 FROM loan_line x WHERE x.item_id = i.id AND x.back_at IS NULL)"
                    + " AND NOT EXISTS (SELECT 1 FROM withdrawal w WHERE w.item_id = i.id"
                    + " AND w.released_at IS NULL) LIMIT 1")
            .get(0);
    receive(bow, Map.of("stranger", tab))
        .statusCode(422)
        .body(containsString("By the record it is in the store."));
    assertEquals("ON_LOAN", fixture.state(bow));
  }

  @Test
  void putRight_stands_untilTheCheckAnswersIt() {
    LaidBow bow = fixture.aBowLentTo("Pella Orme");
    LaidBow other = fixture.aBowReadyToGoOut();
    receive(bow, Map.of("stranger", other.string().code(), "strangerAnswer", "put-right"))
        .statusCode(303);
    assertEquals("TO_BE_CHECKED", fixture.state(bow));
    assertEquals("READY", fixture.state(other));
    volunteer
        .get("/check/" + bow.id().value())
        .then()
        .body(
            containsString(other.string().code() + " is on it instead of " + bow.string().code()));
  }

  @Test
  void putRight_isToldOfTheBowItBelongsTo_too() {
    LaidBow bow = fixture.aBowLentTo("Pella Orme");
    LaidBow other = fixture.aBowReadyToGoOut();
    receive(bow, Map.of("stranger", other.limbs().code(), "strangerAnswer", "put-right"))
        .statusCode(303);
    String found = other.limbs().code() + " was found on " + bow.body().code();
    volunteer.get("/rigs/" + other.id().value()).then().body(containsString(found));
    Visitor.signedInAs("officer")
        .get("/rigs/" + other.id().value())
        .then()
        .body(containsString(found));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM report WHERE rig_id = ?1 AND loan_id IS NULL AND answer IS NULL",
            other.id()));
  }

  @Test
  void withdrawBoth_takesBothOutOfUse_whoeverHasTheOther() {
    LaidBow bow = fixture.aBowLentTo("Pella Orme");
    LaidBow other = fixture.aBowLentTo("Robin Ashdown");
    receive(bow, Map.of("stranger", other.limbs().code(), "strangerAnswer", "withdraw-both"))
        .statusCode(303);
    assertEquals(
        2,
        fixture.number(
            "SELECT count(*) FROM withdrawal WHERE item_id IN (?1, ?2) AND released_at IS NULL"
                + " AND why LIKE '%find out which is which%'",
            bow.limbs().id(), other.limbs().id()));
    assertEquals(0, out(bow, bow.body()));
  }

  @Test
  void correctTheRecord_comesOnceTheBowIsBack_andWhatIsMissingStaysWithTheBorrower() {
    LaidBow bow = fixture.aBowLentTo("Pella Orme");
    LaidBow other = fixture.aBowReadyToGoOut();
    Map<String, String> form =
        new LinkedHashMap<>(
            Map.of("stranger", other.string().code(), "strangerAnswer", "correct-record"));
    for (Laid part : new Laid[] {bow.body(), bow.limbs()}) {
      form.put("back-" + line(bow, part), "on");
    }
    send(bow, form).statusCode(303);

    assertEquals("IN_THE_WORKSHOP", fixture.state(bow), "set up anew before it is checked");
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE until_at IS NULL AND rig_id = ?1 AND item_id = ?2",
            bow.id(),
            other.string().id()));
    assertEquals(1, out(bow, bow.string()), "the string that went out did not come back");
    assertEquals(0, out(bow, other.string()));
  }

  @Test
  void aCorrectionThatCannotBe_takesNothingBack() {
    LaidBow bow = fixture.aBowLentTo("Pella Orme");
    LaidBow other = fixture.aBowLentTo("Robin Ashdown");
    receive(bow, Map.of("stranger", other.string().code(), "strangerAnswer", "correct-record"))
        .statusCode(422)
        .body(containsString("Receive it first."))
        .body(containsString("value=\"correct-record\" checked"));
    assertEquals("ON_LOAN", fixture.state(bow));
    assertEquals(0, fixture.number("SELECT count(*) FROM receipt WHERE loan_id = ?1", loan(bow)));
  }

  @Test
  void overTheApi_theSameQuestionIsAsked_andTheSameAnswersAreTaken() {
    LaidBow bow = fixture.aBowLentTo("Pella Orme");
    LaidBow other = fixture.aBowReadyToGoOut();
    Map<String, Object> body = new LinkedHashMap<>();
    body.put("loanId", loan(bow));
    body.put("stranger", other.string().code());
    api(body).statusCode(422).body(containsString("What is to be done about it?"));
    body.put("strangerAnswer", "exchanged");
    api(body).statusCode(201);
    assertEquals("IN_THE_WORKSHOP", fixture.state(bow));
    assertEquals(
        1,
        fixture.number(
            "SELECT count(*) FROM fitting WHERE until_at IS NULL AND rig_id = ?1 AND item_id = ?2",
            other.id(),
            bow.string().id()));
  }

  private ValidatableResponse receive(LaidBow bow, Map<String, String> answers) {
    Map<String, String> form = new LinkedHashMap<>(answers);
    for (Laid part : new Laid[] {bow.body(), bow.limbs(), bow.string()}) {
      form.put("back-" + line(bow, part), "on");
    }
    return send(bow, form);
  }

  private ValidatableResponse send(LaidBow bow, Map<String, String> answers) {
    Map<String, String> form = new LinkedHashMap<>(answers);
    form.put("once-key", "back-" + System.nanoTime());
    volunteer.get("/receive/" + loan(bow));
    return volunteer.post("/receive/" + loan(bow), form).then();
  }

  private static ValidatableResponse api(Map<String, ?> body) {
    return sending("volunteer").body(body).post("/api/receipts").then();
  }

  private long loan(LaidBow bow) {
    return fixture.number("SELECT max(loan_id) FROM loan_line WHERE item_id = ?1", bow.body().id());
  }

  private long line(LaidBow bow, Laid part) {
    return fixture.number(
        "SELECT max(id) FROM loan_line WHERE loan_id = ?1 AND item_id = ?2", loan(bow), part.id());
  }

  private long out(LaidBow bow, Laid part) {
    return fixture.number(
        "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND item_id = ?2 AND back_at IS NULL",
        loan(bow),
        part.id());
  }
}
