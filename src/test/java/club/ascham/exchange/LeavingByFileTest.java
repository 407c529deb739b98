package club.ascham.exchange;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.check.CheckBench;
import club.ascham.check.CheckBench.Bow;
import club.ascham.check.CheckBench.Laid;
import club.ascham.store.Rows;
import club.ascham.store.Stored;
import club.ascham.time.ClubTime;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** By a file a bow leaves no easier than over the desk. */
@QuarkusTest
class LeavingByFileTest {
  private static final String A_REASON = "The string lasts until the new one comes.";

  @Inject CheckBench bench;
  @Inject Rows rows;
  @Inject ClubTime time;

  private Bow bow;

  @AfterEach
  void backAgain() {
    rows.change(
        "UPDATE loan_line SET back_at = out_at, outcome = 'BACK' WHERE back_at IS NULL AND rig_id = ?1",
        bow.rig());
  }

  @Test
  void whatNothingStandsAgainst_leaves() {
    bow = bench.ready();
    lend(null, parts()).statusCode(200);
    assertEquals(3, out());
  }

  @Test
  void aBowThatNobodyHasPutBack_staysIn() {
    bow = bench.received();
    staysIn(parts(), "nobody has put it back since");
  }

  @Test
  void aBowWithoutItsLimbs_staysIn() {
    bow = bench.ready();
    rows.change(
        "UPDATE fitting SET until_at = ?2 WHERE item_id = ?1", bow.limbs().id(), time.now());
    staysIn(List.of(bow.body(), bow.string()), "It lacks limbs.");
  }

  @Test
  void aPartOfSuchABow_leavesNoEasierWithoutIt() {
    bow = bench.received();
    long loan = session(null);
    file(lines(loan, List.of(bow.limbs()), "")).statusCode(422);
    assertEquals(0, out(loan));
  }

  private void staysIn(List<Laid> parts, String why) {
    lend(A_REASON, parts)
        .statusCode(422)
        .body("errors.size()", equalTo(1))
        .body("errors[0].field", containsString("item"))
        .body("errors[0].message", containsString(bow.body().code() + " can’t leave today."))
        .body("errors[0].message", containsString(why));
    assertEquals(0, out());
  }

  @Test
  void whatSpeaksAgainstIt_needsTheLoansReason_inWholeWords() {
    bow = bench.ready();
    rows.change(
        """
        INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks)
        VALUES (?1, 'STRING_REPLACEMENT', ?2, 1, 'The serving looks thin.', 0)""",
        bow.string().id(),
        time.now());
    for (String no : new String[] {null, "x"}) {
      lend(no, parts())
          .statusCode(422)
          .body("errors.size()", equalTo(1))
          .body("errors[0].field", containsString("loan"))
          .body("errors[0].message", containsString("The serving looks thin."))
          .body("errors[0].message", containsString("overrideWhy"));
      assertEquals(0, out());
    }
    lend(A_REASON, parts()).statusCode(200);
    assertEquals(3, out());
  }

  private List<Laid> parts() {
    return List.of(bow.body(), bow.limbs(), bow.string());
  }

  private long out() {
    return rows.number(
        "SELECT count(*) FROM loan_line WHERE back_at IS NULL AND rig_id = ?1", bow.rig());
  }

  private long out(long loan) {
    return rows.number("SELECT count(*) FROM loan_line WHERE loan_id = ?1", loan);
  }

  private ValidatableResponse lend(String why, List<Laid> parts) {
    return file(lines(session(why), parts, Long.toString(bow.rig().value())));
  }

  private long session(String why) {
    long loan = 1 + rows.number("SELECT max(id) FROM loan");
    String now = Stored.moment(time.now());
    file("number,kind,borrower,leader,issuedAt,dueOn,by,recordedAt,hand,drawLength,drawEstimated,"
            + "experience,overrideWhy,deposit,depositHow,depositBack,depositKeptWhy,termsAccepted,overrideCoach,briefedAt,briefedBy\n"
            + "%d,session,,Quenby,%s,%s,officer,%s,,,,,%s,,,,,,,,\n"
                .formatted(loan, now, time.today(), now, why == null ? "" : why))
        .statusCode(200);
    return loan;
  }

  private String lines(long loan, List<Laid> parts, String rig) {
    StringBuilder lines =
        new StringBuilder(
            "number,loan,item,rig,outAt,arrowCount,backAt,receipt,outcome,backCount,shots,missingCount\n");
    String now = Stored.moment(time.now());
    parts.forEach(
        part -> lines.append(",%d,%s,%s,%s,,,,,,,\n".formatted(loan, part.code(), rig, now)));
    return lines.toString();
  }

  private static ValidatableResponse file(String csv) {
    return given()
        .auth()
        .preemptive()
        .basic("officer", "demo-fleet")
        .contentType("text/csv")
        .body(csv)
        .post("/api/import")
        .then();
  }
}
