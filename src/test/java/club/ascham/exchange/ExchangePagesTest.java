package club.ascham.exchange;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.Rows;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class ExchangePagesTest {
  private static final String BANDS = "bowLengthIn,low,high,source\n";
  private static final String STRINGERS =
      "code,maker,model,batch,serial,boughtOn,price,notes,stringerKind,bowFromIn,bowToIn,"
          + "registeredOn,retiredOn,retiredWhy,retiredNote\n";
  private static final Pattern KEY = Pattern.compile("name=\"once-key\" value=\"([^\"]+)\"");

  @Inject Rows rows;

  @Test
  void anOfficer_takesEveryListAsAFile() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/exchange").then().statusCode(200).body(containsString("/exchange/risers.csv"));
    for (CsvList list : Lists.all()) {
      officer
          .get("/exchange/" + list.name() + ".csv")
          .then()
          .statusCode(200)
          .contentType(startsWith("text/csv"))
          .header("Content-Disposition", containsString(list.name() + ".csv"))
          .body(startsWith(String.join(",", list.header()) + "\r\n"));
    }
    officer.get("/exchange/secrets.csv").then().statusCode(404);
    assertEquals(
        String.join(",", Lists.named("bows").orElseThrow().header()) + "\r\n",
        officer.get("/exchange/columns/bows.csv").asString());
  }

  @Test
  void filesAreTriedOut_thenImportedOnce_andTheItemsSaySo() {
    String model = "Tried cord";
    String file = STRINGERS + (",Marlwick," + model + ",,,,,,tip-to-tip,62,70,,,,\n").repeat(2);
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/exchange");

    String tried =
        officer
            .postFile("/exchange/try", "files", "twelve like it.csv", utf8(file))
            .then()
            .statusCode(200)
            .body(containsString("twelve like it.csv"))
            .body(containsString("these 2 rows"))
            .extract()
            .asString();
    assertEquals(0, stringers(model), "a dry run changes nothing");

    Map<String, String> form = Map.of("once-key", key(tried));
    officer.post("/exchange/import", form).then().statusCode(303);
    officer.get("/exchange").then().body(containsString("2 rows are in."));
    officer.post("/exchange/import", form).then().statusCode(303);

    assertEquals(2, stringers(model), "the second press changed nothing");
    assertEquals(
        2,
        rows.number(
            """
            SELECT count(*) FROM story s JOIN story_about a ON a.story_id = s.id JOIN item i ON i.id = a.item_id
             WHERE i.model = ?1 AND s.sentence = 'Registered from a file.'""",
            model));
  }

  @Test
  void aFileWithBadRows_isAnsweredWithEachOfThem_andNothingOfItIsKept() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/exchange");
    officer
        .postFile(
            "/exchange/try",
            "files",
            "bad.csv",
            utf8(
                STRINGERS
                    + ",Marlwick,Bad cord,,,,,,tip-to-tip,62,70,,,,\n"
                    + ",Marlwick,Bad cord,,,,,<script>alert(1)</script>,sling,62,7,,,,\n"))
        .then()
        .statusCode(422)
        .body(containsString("Nothing was changed"))
        .body(containsString("2 things are not right"))
        .body(containsString("“sling” is none of tip-to-tip, tip-and-saddle"))
        .body(containsString("7 is outside 40 to 72"))
        .body(not(containsString("<script>alert")));
    assertEquals(0, stringers("Bad cord"));
  }

  @Test
  void noFileChosen_isSaidAtTheField() {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/exchange");
    officer
        .postFile("/exchange/try", "files", "", new byte[0])
        .then()
        .statusCode(422)
        .body(containsString("Choose at least one file."));
  }

  @ParameterizedTest
  @CsvSource({"../../ascham", "00000000-0000-0000-0000-000000000000", "''"})
  void aKeyOfNoFiles_isRefused(String key) {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/exchange");
    officer
        .post("/exchange/import", Map.of("once-key", key))
        .then()
        .statusCode(422)
        .body(containsString("no longer kept"));
  }

  @ParameterizedTest
  @CsvSource({"volunteer", "committee"})
  void namesAndPrices_areTheOfficers(String name) {
    Visitor visitor = Visitor.signedInAs(name);
    visitor.get("/exchange").then().statusCode(403);
    visitor.get("/exchange/borrowers.csv").then().statusCode(403);
    as(name).get("/api/export/risers.csv").then().statusCode(403);
    as(name).contentType("text/csv").body(BANDS).post("/api/import").then().statusCode(403);
  }

  @Test
  void theApi_listsWhatThereIs_andExportsIt() {
    as("officer")
        .get("/api/export")
        .then()
        .statusCode(200)
        .body("items", hasSize(Lists.all().size()))
        .body("items.find { it.name == 'risers' }.columns[0]", equalTo("code"));
    as("officer")
        .get("/api/export/risers.csv")
        .then()
        .statusCode(200)
        .contentType(startsWith("text/csv"))
        .body(startsWith("code,maker,model"));
    as("officer").get("/api/export/none.csv").then().statusCode(404);
  }

  @Test
  void theApi_triesOut_imports_andNamesEachBadCell() {
    String row = "47,5 1/2 in,160 mm,Measured here\n";
    post(BANDS + row, "?dryRun=true")
        .body("dryRun", equalTo(true))
        .body("lists[0].added", equalTo(1));
    assertEquals(0, bands(47));

    for (String slip : new String[] {"1", "yes", "", "banana", "TRUE", "false&dryRun=true"}) {
      sent(BANDS + row, "?dryRun=" + slip).statusCode(422);
    }
    post(BANDS + row, "").body("dryRun", equalTo(false)).body("lists[0].added", equalTo(1));
    post(BANDS + row, "").body("lists[0].unchanged", equalTo(1));
    assertEquals(1, bands(47));

    as("officer")
        .contentType("text/csv")
        .body(utf8(BANDS + "46,5,160 mm,Measured\n"))
        .post("/api/import")
        .then()
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors[0].field", equalTo("file, line 2, “low”"))
        .body("errors[0].message", containsString("Did you mean"));
  }

  @Test
  void aRuleChangedByAFile_saysWhoChangedIt() {
    String rules = as("officer").get("/api/export/upkeep-rules.csv").asString();
    assertTrue(rules.contains(",90,no,"), rules);
    long version = rows.number("SELECT version FROM upkeep_rule WHERE soon_days = 90");
    long rule = rows.number("SELECT id FROM upkeep_rule WHERE soon_days = 90");

    post(rules.replace(",90,no,", ",91,no,"), "").body("lists[0].changed", equalTo(1));

    assertEquals(
        1,
        rows.number(
            """
            SELECT count(*) FROM upkeep_rule r JOIN account a ON a.id = r.changed_by
             WHERE r.id = ?1 AND a.name = 'officer' AND r.changed_at IS NOT NULL AND r.version = ?2""",
            rule,
            version + 1));
    post(rules, "").body("lists[0].changed", equalTo(1));
  }

  private ValidatableResponse post(String text, String query) {
    return sent(text, query).statusCode(200);
  }

  private ValidatableResponse sent(String text, String query) {
    return as("officer")
        .contentType("text/csv")
        .body(utf8(text))
        .post("/api/import" + query)
        .then();
  }

  private long stringers(String model) {
    return rows.number("SELECT count(*) FROM item WHERE model = ?1", model);
  }

  private long bands(int bowLengthIn) {
    return rows.number(
        "SELECT count(*) FROM club_brace_band WHERE bow_length_in = ?1", bowLengthIn);
  }

  private static String key(String page) {
    Matcher key = KEY.matcher(page);
    assertTrue(key.find(), page);
    return key.group(1);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
