package club.ascham.exchange;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.Laid;
import club.ascham.id.AccountId;
import club.ascham.store.Rows;
import club.ascham.story.VerifyRecord;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An entry that a file brought says so wherever it is shown, whoever it says told it. */
@QuarkusTest
class EntriesFromFilesTest {
  private static final String AT = "2026-01-02T18:30:00.000Z";
  private static final String SAYS_SO = "from a file that officer brought on ";

  @Inject Import door;
  @Inject ClubFixture fixture;
  @Inject Rows rows;
  @Inject VerifyRecord verifyRecord;

  /** All of them at once, as the page does. */
  private void take(String... texts) {
    List<Import.CsvFile> files = new ArrayList<>();
    for (String text : texts) {
      files.add(EmptyClub.file("a.csv", text));
    }
    assertEquals(List.of(), door.take(door.read(files), new AccountId(account("officer"))).bad());
  }

  private static String stories(long number, String sentence) {
    return "number,happenedAt,recordedAt,by,sentence,why,loan,takenInWith\n%d,%s,%s,volunteer,%s,,,\n"
        .formatted(number, AT, AT, sentence);
  }

  private long account(String name) {
    return rows.number("SELECT id FROM account WHERE name = ?1", name);
  }

  /** Once whatever another test wrote behind the record's back is told. */
  private long next() {
    take("number,name,contact,memberNo,ageBand,guardian\n");
    return rows.number("SELECT max(id) + 1 FROM story");
  }

  @Test
  void itSaysSo_inTheRecord_inTheThingsStory_inTheApi_andInTheExport() {
    Laid stringer = fixture.aStringer();
    long number = next();
    take(
        stories(number, "Looked at the cord and found it sound."),
        "number,story,item,rig\n,%d,%s,\n".formatted(number, stringer.code()));
    long took = number + 1;
    as("officer")
        .get("/api/record?size=2")
        .then()
        .body("items[0].sentence", equalTo("Took in a file."))
        .body("items[0].takenIn", nullValue())
        .body("items[1].by", equalTo("volunteer"))
        .body("items[1].takenIn.entry", equalTo((int) took))
        .body("items[1].takenIn.by", equalTo("officer"));
    Visitor visitor = Visitor.signedInAs("officer");
    for (String page : new String[] {"/record", "/record/" + number, "/items/" + stringer.code()}) {
      String shown = visitor.get(page).asString();
      assertTrue(shown.contains(SAYS_SO), page + ": " + shown);
      assertTrue(shown.contains("(entry " + took + ")"), page + ": " + shown);
    }
    String csv = as("officer").get("/api/export/stories.csv").asString();
    assertTrue(
        csv.contains("Looked at the cord and found it sound.,,," + took + "\r\n"),
        csv.substring(csv.length() - 500));
    assertTrue(
        visitor
            .get("/people/" + account("volunteer") + "/data")
            .jsonPath()
            .getList("told.takenIn.entry")
            .contains((int) took));
    take(csv);
    assertEquals(took + 1, rows.number("SELECT max(id) FROM story"), "nothing was added to it");
    assertEquals(List.of(), verifyRecord.verify().faults());
  }

  @Test
  void itsSealCoversThatItCame_andNobodyTakesItAway() {
    long number = next();
    take(stories(number, "Told elsewhere."));
    for (String change :
        new String[] {
          "DELETE FROM change WHERE table_name = 'story' AND row_id = ?1",
          "UPDATE change SET what = '{}' WHERE table_name = 'story' AND row_id = ?1"
        }) {
      assertThrows(IllegalStateException.class, () -> rows.change(change, number));
    }
    String sealed = as("officer").get("/api/record/export").asString();
    assertTrue(
        sealed.contains("{\"taken_in_with\":[null," + (number + 1) + "]}"),
        sealed.substring(sealed.length() - 500));
  }

  @Test
  void whatTheFileChanges_isTheEntrysOwnThatTookItIn() {
    long number = next();
    take(
        stories(number, "Said to have entered somebody."),
        "number,name,contact,memberNo,ageBand,guardian\n,Hester Quillwort,07700 900611,,adult,\n");
    as("officer")
        .get("/api/record?size=2")
        .then()
        .body("items[0].sentence", equalTo("Took in a file."))
        .body("items[0].changes.size()", equalTo(1))
        .body("items[1].changes.size()", equalTo(1))
        .body("items[1].changes[0].fields[0].field", equalTo("taken in with"));
  }
}
