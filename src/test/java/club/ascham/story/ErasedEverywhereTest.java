package club.ascham.story;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.Settings;
import club.ascham.backup.Backups;
import club.ascham.fixture.ClubFixture;
import club.ascham.store.DataFolder;
import club.ascham.store.OpenFile;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Whom the club erased is in no byte of its file, of a later backup or of any list. */
@QuarkusTest
class ErasedEverywhereTest {
  private static final String PAST = "Ottoline Fanshawe";
  private static final String NAME = "Ottoline Ravensworth";
  private static final Map<String, String> AS_ENTERED =
      Map.of(
          "name", PAST,
          "contact", "otto@fanshawe.example",
          "memberNo", "FAN-48213",
          "ageBand", "up-to-12",
          "guardian", "Percival Fanshawe");
  private static final Map<String, Object> AS_CORRECTED =
      Map.of(
          "name", NAME,
          "contact", "07700 900871",
          "memberNo", "RAV-59324",
          "ageBand", "up-to-12",
          "guardian", "Mortimer Ravensworth",
          "version", 0);
  private static final List<String> THEIRS =
      List.of(
          PAST,
          NAME,
          "otto@fanshawe.example",
          "07700 900871",
          "FAN-48213",
          "RAV-59324",
          "Percival Fanshawe",
          "Mortimer Ravensworth");

  private static final Set<String> NAMES_ALONE = Set.of("override_coach", "looked_by_name");

  @Inject Rows rows;
  @Inject Backups backups;
  @Inject Settings settings;
  @Inject VerifyRecord verifyRecord;
  @Inject Planted planted;
  @Inject ClubFixture fixture;

  @BeforeEach
  void holdsThePermit() {
    fixture.mayTurnBolts("officer", true);
  }

  /** Texts written as a use case writes them, into each column that may be taken away. */
  @ApplicationScoped
  static class Planted {
    @Inject Rows rows;
    @Inject Story story;
    @Inject ClubTime time;

    @Writes
    int into(FreeTexts.Column column, String words) {
      int changed =
          rows.change(
              "UPDATE %1$s SET %2$s = ?1%3$s WHERE rowid = (SELECT rowid FROM %1$s WHERE %4$s ORDER BY %2$s IS NULL, rowid DESC LIMIT 1)"
                  .formatted(
                      column.table(),
                      column.name(),
                      column.name().equals("looked_by_name") ? ", looked_by = NULL" : "",
                      switch (column.name()) {
                        case "override_coach" -> "override_why IS NOT NULL";
                        case "looked_by_name" -> "looked_by IS NOT NULL";
                        default -> "TRUE";
                      }),
              words);
      story.tell(Story.Told.ofClub(time.now(), null, "Planted.").because(words));
      return changed;
    }

    @Writes
    void anAccidentThatIsOver() {
      rows.change(
          """
          INSERT INTO accident (loan_id, happened_at, recorded_at, told_by, words, ended_at, ended_by, end_why)
          SELECT max(id), ?1, ?1, 1, 'A string broke.', ?1, 1, 'It was looked at.' FROM loan""",
          time.now());
      story.tell(Story.Told.ofClub(time.now(), null, "Told of an accident."));
    }

    @Writes
    void rename(long account, String name) {
      rows.change("UPDATE account SET name = ?2 WHERE id = ?1", account, name);
      story.tell(Story.Told.ofClub(time.now(), null, "Renamed."));
    }
  }

  private static long enter() {
    long id =
        as("officer")
            .contentType("application/json")
            .body(AS_ENTERED)
            .post("/api/borrowers")
            .then()
            .statusCode(201)
            .extract()
            .jsonPath()
            .getLong("id");
    as("officer")
        .contentType("application/json")
        .body(AS_CORRECTED)
        .put("/api/borrowers/" + id)
        .then()
        .statusCode(200);
    return id;
  }

  private void aWithdrawalThatNeededNoWork() {
    String code =
        rows.texts(
                "SELECT i.code FROM item i WHERE kind = 'STRINGER' AND retired_on IS NULL AND NOT EXISTS (SELECT 1 FROM withdrawal w WHERE w.item_id = i.id AND released_at IS NULL)")
            .get(0);
    does(
        "/api/withdrawals",
        Map.of("item", new ItemCode(code).display(), "why", "Left in the rain."),
        201);
    String withdrawal = "/api/withdrawals/" + rows.number("SELECT max(id) FROM withdrawal");
    does(withdrawal + "/decide", Map.of("work", "none", "why", "Nothing but wet: it dries."), 200);
    does(
        withdrawal + "/release",
        Map.of("lookedAt", "Cord and both pockets.", "why", "Dry again, and it holds."),
        200);
  }

  private static void does(String path, Map<String, String> body, int status) {
    as("officer").contentType("application/json").body(body).post(path).then().statusCode(status);
  }

  /** Everything that goes out, and the file with its log; by name. */
  private Map<String, String> everywhere() throws Exception {
    DataFolder folder = new DataFolder(settings.dataDir());
    Map<String, String> all = new TreeMap<>();
    all.put("the file", OpenFile.bytes(folder.file()));
    all.put("its log", OpenFile.bytes(folder.writeAheadLog()));
    Backups.Backup made = backups.make();
    all.put("a backup", OpenFile.bytes(backups.file(made.name().fileName()).orElseThrow()));
    byte[] zip = as("officer").get("/api/export/everything.zip").asByteArray();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        all.put(entry.getName(), text(in.readAllBytes()));
      }
    }
    return all;
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private static List<String> holding(Map<String, String> all, List<String> values) {
    List<String> found = new ArrayList<>();
    for (String value : values) {
      all.forEach(
          (where, bytes) -> {
            if (bytes.contains(value)) {
              found.add(value + " in " + where);
            }
          });
    }
    return found;
  }

  @Test
  void aRenamedBorrower_isInNoByte_onceErased() throws Exception {
    long borrower = enter();
    planted.anAccidentThatIsOver();
    aWithdrawalThatNeededNoWork();
    Map<String, String> notPlanted = new TreeMap<>();
    for (FreeTexts.Column column : FreeTexts.COLUMNS) {
      if (column.isKeptApart()) {
        try {
          if (planted.into(column, words(column)) != 1) {
            notPlanted.put(column.toString(), "no row");
          }
        } catch (RuntimeException refused) {
          notPlanted.put(column.toString(), refused + " " + refused.getCause());
        }
      }
    }
    assertEquals(Map.of(), notPlanted);
    assertNotEquals(List.of(), holding(everywhere(), THEIRS), "else this test shows nothing");
    String page = Visitor.signedInAs("officer").get("/borrowers/" + borrower + "/erase").asString();
    assertTrue(page.contains("The last of these backups goes on"), page);
    assertTrue(page.contains("told of " + PAST), "the earlier name is looked for");
    as("officer")
        .contentType("application/json")
        .post("/api/borrowers/" + borrower + "/erasure")
        .then()
        .statusCode(200);
    assertEquals(List.of(), holding(everywhere(), THEIRS));
    assertEquals(List.of(), verifyRecord.verify().faults());
    assertTrue(
        rows.number("SELECT count(*) FROM item WHERE notes LIKE '%[erased], [erased]%'") > 0);
  }

  private static String words(FreeTexts.Column column) {
    return NAMES_ALONE.contains(column.name())
        ? PAST + ", " + NAME
        : "%s was told of %s, otto@fanshawe.example, Percival Fanshawe, %s, 07700 900871 and Mortimer Ravensworth."
            .formatted(column.said(), PAST, NAME);
  }

  @Test
  void aRenamedAccount_isInNoByte_onceErased() throws Exception {
    Visitor officer = Visitor.signedInAs("officer");
    officer.get("/people");
    officer
        .post("/people", Map.of("name", "Barnaby Oldcastle", "role", "volunteer"))
        .then()
        .statusCode(303);
    long id = rows.number("SELECT max(id) FROM account");
    planted.into(FreeTexts.COLUMNS.get(0), "Barnaby Oldcastle oiled it.");
    planted.rename(id, "Barnaby Newbridge");
    backups.make();
    officer.get("/people/" + id);
    officer.post("/people/" + id + "/close", Map.of()).then().statusCode(303);
    officer
        .get("/people/" + id + "/erase")
        .then()
        .body(containsString("Barnaby Oldcastle oiled it."), containsString("backups goes on"));
    officer
        .post("/people/" + id + "/erase", Map.of("why", "They asked for it."))
        .then()
        .statusCode(303);
    assertEquals(
        List.of(), holding(everywhere(), List.of("Barnaby Oldcastle", "Barnaby Newbridge")));
    assertEquals(List.of(), verifyRecord.verify().faults());
  }
}
