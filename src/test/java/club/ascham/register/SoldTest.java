package club.ascham.register;

import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What something keeps in is nobody else's to buy unwarned. */
@QuarkusTest
class SoldTest {
  @Inject ClubFixture fixture;
  @Inject Rows rows;
  @Inject ClubTime time;

  private static ValidatableResponse retire(Laid stringer, String why) {
    return sending("officer")
        .body(Map.of("why", why))
        .post("/api/stringers/" + stringer.code() + "/retire")
        .then();
  }

  private void withdraw(Laid item) {
    rows.change(
        "INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why)"
            + " VALUES (?1, ?2, ?2, 1, 'The cord is frayed.')",
        item.id(),
        time.now());
  }

  private void keepIn(String how, Laid item) {
    switch (how) {
      case "withdrawn" -> withdraw(item);
      case "failed" ->
          rows.change(
              "INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result, found)"
                  + " VALUES (?1, 'STRINGER_INSPECTION', ?2, ?2, 1, 'FAILED', 'The cord is frayed.')",
              item.id(),
              time.now());
      default -> {
        rows.change(
            "INSERT INTO report (told_at, happened_at, recorded_at, told_to, part_known, dangerous, words)"
                + " VALUES ('BOW', ?1, ?1, 1, 1, 1, 'The cord is frayed.')",
            time.now());
        rows.change(
            "INSERT INTO report_part (report_id, item_id) VALUES ((SELECT max(id) FROM report), ?1)",
            item.id());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"withdrawn", "failed", "reported"})
  void whatSomethingKeepsIn_isNotSold_butMayBeScrapped(String how) {
    Laid stringer = fixture.aStringer();
    keepIn(how, stringer);
    retire(stringer, "sold")
        .statusCode(422)
        .body("errors[0].field", equalTo("why"))
        .body("errors[0].message", containsString("The cord is frayed."))
        .body("errors[0].message", containsString("not sold or given away"));
    Visitor officer = Visitor.signedInAs("officer");
    String page = "/items/" + stringer.code() + "/retire";
    officer
        .get(page)
        .then()
        .statusCode(200)
        .body(containsString("class=\"against\""), containsString("The cord is frayed."));
    officer
        .post(page, Map.of("why", "sold"))
        .then()
        .statusCode(422)
        .body(containsString("not sold or given away"));
    assertEquals(
        0,
        rows.number(
            "SELECT count(*) FROM item WHERE id = ?1 AND retired_on IS NOT NULL", stringer.id()));
    retire(stringer, "scrapped").statusCode(200);
  }

  @Test
  void whatNothingKeepsIn_isSold() {
    retire(fixture.aStringer(), "sold").statusCode(200);
  }

  @Test
  void theDatabaseItself_sellsNothingThatIsWithdrawn() {
    Laid stringer = fixture.aStringer();
    withdraw(stringer);
    DatabaseRefusal refusal =
        assertThrows(
            DatabaseRefusal.class,
            () ->
                rows.change(
                    "UPDATE item SET retired_on = ?2, retired_why = 'SOLD' WHERE id = ?1",
                    stringer.id(),
                    time.today()));
    assertEquals("sold-item-is-withdrawn", refusal.rule());
  }
}
