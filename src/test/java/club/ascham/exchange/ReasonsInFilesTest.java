package club.ascham.exchange;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.form.WholeWords;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the forms ask of a person, a file answers too; history is taken as it was written. */
@QuarkusTest
class ReasonsInFilesTest {
  private static final String WITHDRAWALS =
      "number,item,happenedAt,recordedAt,by,why,work,check,releasedAt,releasedBy,releaseWhy,"
          + "lookedAt,lookedBy,lookedByName,decidedAt,decidedBy,noWorkWhy\n";
  private static final String AT = "2026-03-01T10:00:00.000Z";

  @Inject ClubFixture fixture;
  @Inject Rows rows;
  @Inject ClubTime time;

  private ValidatableResponse post(String text) {
    return as("officer")
        .contentType("text/csv")
        .body(text.getBytes(StandardCharsets.UTF_8))
        .post("/api/import")
        .then();
  }

  private String withdrawal(Laid item, String why, String rest) {
    return WITHDRAWALS + ",%s,%s,%s,officer,%s,,,%s\n".formatted(item.code(), AT, AT, why, rest);
  }

  @Test
  void whatIsOutOfUseNow_needsItsReason_andWhatWasReleasedKeepsItsOwn() {
    Laid stringer = fixture.aStringer();
    post(withdrawal(stringer, "x", ",,,,,,,,"))
        .statusCode(422)
        .body("errors[0].field", containsString("why"))
        .body("errors[0].message", equalTo(WholeWords.WANTED));
    assertEquals("READY", fixture.state(stringer));

    post(withdrawal(stringer, "x", "2026-03-02T10:00:00.000Z,officer,ok,,,,,,")).statusCode(200);
    assertEquals("READY", fixture.state(stringer));

    post(withdrawal(stringer, "The cord is frayed.", ",,,,,,,,")).statusCode(200);
    assertEquals("WITHDRAWN", fixture.state(stringer));
  }

  @Test
  void anExport_isTakenBack_whateverAFormWouldAskOfItByNow() {
    Laid stringer = fixture.aStringer();
    rows.change(
        "INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why) VALUES (?1, ?2, ?2, 1, 'x')",
        stringer.id(),
        AT);
    String csv = as("officer").get("/api/export/withdrawals.csv").asString();
    post(csv).statusCode(200).body("lists[0].added", equalTo(0));
  }

  @ParameterizedTest
  @CsvSource({
    "'bowLengthIn,low,high,source\n47,140 mm,160 mm,x\n'",
    "'number,itemKind,build,material,work,everyDays,everyLoans,everyShots,soonDays,blocks,beyondPercent,source\n,riser,,,riser-inspection,900,,,,no,,x\n'"
  })
  void aRule_needsItsSource(String csv) {
    post(csv)
        .statusCode(422)
        .body("errors[0].field", containsString("source"))
        .body("errors[0].message", equalTo(WholeWords.WANTED));
  }

  @Test
  void workThatWaits_needsItsReason() {
    Laid stringer = fixture.aStringer();
    String tasks =
        "number,item,work,openedAt,by,why,blocks,cause,closedBy\n,%s,stringer-inspection,%s,officer,%s,yes,,\n";
    post(tasks.formatted(stringer.code(), AT, "x"))
        .statusCode(422)
        .body("errors[0].message", equalTo(WholeWords.WANTED));
    post(tasks.formatted(stringer.code(), AT, "It lay in the rain.")).statusCode(200);
    assertEquals("TO_BE_CHECKED", fixture.state(stringer));
  }

  @Test
  void noFile_bringsARetiredThingBack() {
    Laid stringer = fixture.aStringer();
    String row =
        "code,maker,model,batch,serial,boughtOn,price,notes,stringerKind,bowFromIn,bowToIn,"
            + "registeredOn,retiredOn,retiredWhy,retiredNote\n%s,Alderfen,Heron,,,,,,tip-to-tip,62,70,%s,%s\n";
    String registered =
        rows.texts("SELECT registered_on FROM item WHERE id = ?1", stringer.id()).get(0);
    rows.change(
        "UPDATE item SET retired_on = ?2, retired_why = 'SCRAPPED' WHERE id = ?1",
        stringer.id(),
        time.today());
    post(row.formatted(stringer.code(), registered, ",,"))
        .statusCode(422)
        .body("errors[0].message", containsString("An import adds and never changes."));
    assertEquals("RETIRED", fixture.state(stringer));
    post(row.formatted(stringer.code(), registered, time.today() + ",scrapped,"))
        .statusCode(200)
        .body("lists[0].unchanged", equalTo(1));
    assertEquals("RETIRED", fixture.state(stringer));
  }

  @Test
  void aFileDoesNotReleaseWhatIsOut() {
    Laid stringer = fixture.aStringer();
    rows.change(
        "INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why) VALUES (?1, ?2, ?2, 1, 'Cord frayed to a third.')",
        stringer.id(),
        AT);
    long number = rows.number("SELECT max(id) FROM withdrawal");
    post(WITHDRAWALS
            + "%d,%s,%s,%s,officer,Cord frayed to a third.,,,2026-03-02T10:00:00.000Z,officer,so,,,,,,\n"
                .formatted(number, stringer.code(), AT, AT))
        .statusCode(422)
        .body("errors[0].message", containsString("An import adds and never changes."));
    assertEquals("WITHDRAWN", fixture.state(stringer));
  }

  private ValidatableResponse line(long check, int place) {
    return post(
        "number,check,place,kind,saying,saidOf,step,byWhom,thousandths\n,%d,%d,reason,as-said,\"[\"\"Fine.\"\"]\",,,\n"
            .formatted(check, place));
  }

  @Test
  void aFile_addsNothingToWhatACheckDecided() {
    line(rows.number("SELECT min(check_id) FROM verdict_line"), 900)
        .statusCode(422)
        .body("errors[0].field", containsString("check"))
        .body("errors[0].message", containsString("none is added"));
  }

  @Test
  void ofACheckThatAFileBrought_theLinesComeOnce() {
    long check = rows.number("SELECT max(id) + 1 FROM bow_check");
    post("number,rig,kind,happenedAt,recordedAt,by,setUp,allAsListed,brace,braceTyped,braceFrom,tillerUpper,upperTyped,tillerLower,lowerTyped,dryLooseOrFall,cameBackStrung,verdict,corrects,correctionWhy,releasedAt,releasedBy\n%d,1,look,%s,%s,officer,,yes,,,,,,,,,,adjust,,,,\n"
            .formatted(check, "2024-12-01T10:00:00.000Z", "2024-12-01T10:00:00.000Z"))
        .statusCode(200);
    line(check, 1).statusCode(200);
    line(check, 2).statusCode(422).body("errors[0].message", containsString("none is added"));
  }
}
