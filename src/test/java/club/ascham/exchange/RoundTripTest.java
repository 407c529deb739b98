package club.ascham.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.check.VerdictsOf;
import club.ascham.exchange.Import.CsvFile;
import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundTripTest {
  @TempDir Path one;
  @TempDir Path other;

  @Test
  void theDemoClub_exportedAsItWasLoaded_byteForByte() throws Exception {
    try (EmptyClub club = EmptyClub.in(one)) {
      List<CsvFile> demo = EmptyClub.demoFiles();
      assertEquals(List.of(), club.take(demo, 0).bad());

      for (CsvFile file : demo) {
        assertEquals(text(file), club.csv(file.name().replace(".csv", "")), file.name());
      }
    }
  }

  @Test
  void everything_exportedAndImportedElsewhere_isExportedTheSame() throws Exception {
    List<CsvFile> exported = everythingOfTheDemoClub();
    try (EmptyClub elsewhere = EmptyClub.in(other)) {
      List<CsvFile> shuffled = new ArrayList<>(exported);
      Collections.shuffle(shuffled, new Random(7));

      assertEquals(List.of(), elsewhere.take(shuffled, 0).bad());

      List<CsvFile> again = elsewhere.everything();
      for (int i = 0; i < exported.size(); i++) {
        assertEquals(text(exported.get(i)), text(again.get(i)), exported.get(i).name());
      }
    }
  }

  @Test
  void whatVerdictsSay_isSaidElsewhereToo() throws Exception {
    try (EmptyClub club = EmptyClub.in(one);
        EmptyClub elsewhere = EmptyClub.in(other)) {
      club.take(EmptyClub.demoFiles(), 0);
      Rows rows = RowsOf.connection(club.connection());
      List<Long> checks = new ArrayList<>();
      for (long seed = 0; checks.size() < 60; seed++) {
        long check =
            rows.number(
                """
                INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict)
                VALUES (1, 'LOOK', '2026-01-02T18:30:00.000Z', '2026-01-02T18:30:00.000Z', 1, 1, 'ADJUST')
                RETURNING id""");
        if (VerdictsOf.keep(rows, check, seed)) {
          checks.add(check);
        }
      }
      // Held to the bounds of what a verdict says: all of it is within them.
      Sheets exported =
          Sheets.read(
              club.everything(),
              new Surroundings(EmptyClub.POUNDS, 0),
              Map.of("verdict-lines", new SayingRules()));
      assertEquals(List.of(), elsewhere.take(exported).bad());
      assertEquals(
          VerdictsOf.file(rows).of(checks),
          VerdictsOf.file(RowsOf.connection(elsewhere.connection())).of(checks));
      assertEquals(club.csv("verdict-lines"), elsewhere.csv("verdict-lines"));
    }
  }

  @Test
  void whatIsKeptAfterAnAccident_isKeptElsewhereToo() throws Exception {
    try (EmptyClub club = EmptyClub.in(one);
        EmptyClub elsewhere = EmptyClub.in(other)) {
      club.take(EmptyClub.demoFiles(), 0);
      try (var insert = club.connection().createStatement()) {
        insert.executeUpdate(
            """
            INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why)
            SELECT f.item_id, '2026-01-02T18:30:00.000Z', '2026-01-02T18:30:00.000Z', 1, 'Kept as it is.'
              FROM fitting f WHERE f.until_at IS NULL AND f.place = 'LIMBS'
               AND NOT EXISTS (SELECT 1 FROM withdrawal w WHERE w.item_id = f.item_id AND w.released_at IS NULL) LIMIT 1""");
        insert.executeUpdate(
            """
            INSERT INTO accident (rig_id, happened_at, recorded_at, told_by, words)
            SELECT f.rig_id, w.happened_at, w.recorded_at, 1, '=1+1, said "the archer"'
              FROM withdrawal w JOIN fitting f ON f.item_id = w.item_id AND f.until_at IS NULL ORDER BY w.id DESC LIMIT 1""");
        insert.executeUpdate(
            """
            INSERT INTO accident_item (accident_id, item_id, rig_id, withdrawal_id)
            SELECT a.id, w.item_id, a.rig_id, w.id FROM accident a, (SELECT * FROM withdrawal ORDER BY id DESC LIMIT 1) w""");
      }
      List<CsvFile> exported = club.everything();
      assertEquals(List.of(), elsewhere.take(exported, 0).bad());
      List<CsvFile> again = elsewhere.everything();
      for (int i = 0; i < exported.size(); i++) {
        assertEquals(text(exported.get(i)), text(again.get(i)), exported.get(i).name());
      }
      try (var change = elsewhere.connection().createStatement()) {
        SQLException refused =
            assertThrows(
                SQLException.class,
                () ->
                    change.executeUpdate(
                        "UPDATE fitting SET until_at = '2026-01-03T00:00:00.000Z' WHERE until_at IS"
                            + " NULL AND item_id = (SELECT max(item_id) FROM accident_item)"));
        assertTrue(refused.getMessage().contains("kept-as-it-is"), refused.getMessage());
      }
    }
  }

  @Test
  void whatWasUndone_isUndoneElsewhereToo_andNothingReopensThere() throws Exception {
    try (EmptyClub club = EmptyClub.in(one);
        EmptyClub elsewhere = EmptyClub.in(other)) {
      club.take(EmptyClub.demoFiles(), 0);
      String look =
          "(SELECT max(c.id) FROM bow_check c WHERE c.kind = 'LOOK' AND c.released_at IS NOT NULL)";
      try (var insert = club.connection().createStatement()) {
        insert.executeUpdate(
            """
            INSERT INTO move (kind, loan_id, made_at, made_by, undone_at, undone_by)
            SELECT 'SESSION_RETURN', max(id), '2026-01-02T18:30:00.000Z', 1, '2026-01-02T18:31:00.000Z', 1
              FROM loan WHERE kind = 'SESSION'""");
        insert.executeUpdate(
            "INSERT INTO move (kind, check_id, made_at, made_by) SELECT 'PUT_BACK', max(id),"
                + " '2026-01-02T18:30:00.000Z', 1 FROM bow_check WHERE kind = 'CHECK' AND released_at IS NOT NULL");
        insert.executeUpdate("INSERT INTO taking_in (id) VALUES (1)");
        insert.executeUpdate("INSERT INTO moved (move_id, check_id) SELECT 1, " + look);
        insert.executeUpdate(
            "INSERT INTO moved (move_id, line_id, went, kept_with) SELECT 1, max(id), 'OUT', max(rig_id)"
                + " FROM loan_line WHERE rig_id IS NOT NULL");
        insert.executeUpdate("DELETE FROM taking_in");
      }
      List<CsvFile> exported = club.everything();
      assertEquals(List.of(), elsewhere.take(exported, 0).bad());
      List<CsvFile> again = elsewhere.everything();
      for (int i = 0; i < exported.size(); i++) {
        assertEquals(text(exported.get(i)), text(again.get(i)), exported.get(i).name());
      }
      assertEquals(1, elsewhere.count("SELECT count(*) FROM undone_look"));
      assertEquals(1, elsewhere.count("SELECT count(*) FROM undone_line"));
      try (var change = elsewhere.connection().createStatement()) {
        for (var refused :
            Map.of(
                    "UPDATE loan_line SET back_at = NULL, outcome = NULL WHERE back_at IS NOT NULL",
                    "reopened-without-an-undo",
                    "UPDATE fitting SET until_at = NULL WHERE until_at IS NOT NULL",
                    "reopened-without-an-undo",
                    "UPDATE bow_check SET released_at = NULL WHERE kind = 'CHECK' AND released_at IS NOT NULL",
                    "reopened-without-an-undo",
                    "UPDATE move SET undone_at = NULL, undone_by = NULL WHERE undone_at IS NOT NULL",
                    "undone-once",
                    "UPDATE move SET made_by = 2 WHERE undone_at IS NULL",
                    "undone-once",
                    "DELETE FROM move",
                    "a-press-is-never-deleted",
                    "DELETE FROM moved",
                    "a-press-is-never-deleted",
                    "UPDATE moved SET went = 'IN', kept_with = NULL WHERE went = 'OUT'",
                    "a-press-is-never-changed",
                    "INSERT INTO moved (move_id, receipt_id) SELECT 1, max(id) FROM receipt",
                    "a-press-is-never-changed")
                .entrySet()) {
          SQLException answer =
              assertThrows(SQLException.class, () -> change.executeUpdate(refused.getKey()));
          assertTrue(
              answer.getMessage().contains(refused.getValue()),
              refused.getKey() + ": " + answer.getMessage());
        }
      }
    }
  }

  @Test
  void everything_importedIntoTheClubItCameFrom_changesNothing() throws Exception {
    try (EmptyClub club = EmptyClub.in(one)) {
      club.take(EmptyClub.demoFiles(), 0);
      List<CsvFile> before = club.everything();

      ImportReport report = club.take(before, 0);

      assertEquals(List.of(), report.bad());
      assertEquals(0, report.rows());
      for (int i = 0; i < before.size(); i++) {
        assertEquals(text(before.get(i)), text(club.everything().get(i)));
      }
    }
  }

  @Test
  void thePlanOfUpkeep_isWhatIsReckoned_whetherFilesComeAtOnceOrOneByOne() throws Exception {
    String columns = "SELECT item_id, rule_id, due_on, because, beyond_on FROM ";
    String kept = columns + "upkeep_plan";
    String reckoned = columns + "upkeep_reckoned";
    try (EmptyClub atOnce = EmptyClub.in(one);
        EmptyClub oneByOne = EmptyClub.in(other)) {
      atOnce.take(EmptyClub.demoFiles(), 0);
      for (CsvFile file : EmptyClub.demoFiles()) {
        assertEquals(List.of(), oneByOne.take(file).bad());
      }
      for (EmptyClub club : List.of(atOnce, oneByOne)) {
        assertTrue(club.count("SELECT count(*) FROM upkeep_plan WHERE due_on IS NOT NULL") > 100);
        assertEquals(0, club.count("SELECT count(*) FROM (" + kept + " EXCEPT " + reckoned + ")"));
        assertEquals(0, club.count("SELECT count(*) FROM (" + reckoned + " EXCEPT " + kept + ")"));
      }
    }
  }

  @Test
  void everyColumnOfTheDatabase_isInSomeFile_orLeftOutOnPurpose() throws Exception {
    Set<String> leftOut =
        Set.of(
            // How far an open form may be out of date; of no use elsewhere.
            "version",
            // The item's own id, for which its code stands.
            "item.id",
            // A number has no name to erase elsewhere.
            "borrower.erased_on",
            // The record's seals are this club's own.
            "story.hash",
            "story.why_salt",
            "story.why_hash",
            "upkeep_rule.changed_by",
            "upkeep_rule.changed_at");
    Set<String> tablesLeftOut =
        // Settings, accounts and secrets stay here; the plan follows from the rest.
        Set.of(
            "club",
            "replacement_terms",
            "work_time",
            "plan_rule",
            "account",
            "idempotency_key",
            "kept_answer",
            "upkeep_plan",
            "change",
            "personal",
            "session",
            "clock_offset",
            "taking_in",
            "password_link",
            "second_step",
            "code_taken",
            "recovery_code",
            "door_rule",
            "name_stays",
            "flyway_schema_history");
    Set<String> inFiles = new TreeSet<>();
    for (CsvList list : Lists.all()) {
      list.columns().forEach(c -> inFiles.add(c.table() + "." + c.field()));
      list.fixed().forEach((place, value) -> inFiles.add(place));
      list.tables().stream().skip(1).forEach(table -> inFiles.add(table + ".id"));
    }
    List<String> missing = new ArrayList<>();
    try (EmptyClub club = EmptyClub.in(one);
        var columns =
            club.connection()
                .createStatement()
                .executeQuery(
                    "SELECT t.name, c.name FROM sqlite_master t JOIN pragma_table_info(t.name) c"
                        + " WHERE t.type = 'table' AND t.name NOT LIKE 'sqlite%'")) {
      while (columns.next()) {
        String place = columns.getString(1) + "." + columns.getString(2);
        if (!tablesLeftOut.contains(columns.getString(1))
            && !leftOut.contains(columns.getString(2))
            && !leftOut.contains(place)
            && !inFiles.contains(place)) {
          missing.add(place);
        }
      }
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void awkwardTexts_comeBackAsTheyWere() throws Exception {
    try (EmptyClub club = EmptyClub.in(one);
        EmptyClub elsewhere = EmptyClub.in(other)) {
      try (var insert =
          club.connection()
              .prepareStatement(
                  "INSERT INTO borrower (name, contact, member_no, age_band) VALUES (?, ?, ?,"
                      + " 'ADULT')")) {
        for (String name :
            List.of(
                "Said \"Bow\", quietly",
                "two\tstops",
                "=HYPERLINK(1)",
                "'=quoted formula",
                "'plain apostrophe",
                "-1/8",
                "<script>alert(1)</script>",
                "Żółć; Ωμέγα | 弓",
                " spaces around ")) {
          insert.setString(1, name);
          insert.setString(2, "@" + name);
          insert.setString(3, name);
          insert.executeUpdate();
        }
      }
      String exported = club.csv("borrowers");
      assertFalse(exported.contains("\n10,"), "nine rows");

      assertEquals(List.of(), elsewhere.take(EmptyClub.file("b.csv", exported)).bad());

      assertEquals(exported, elsewhere.csv("borrowers"));
      assertEquals(
          0,
          elsewhere.count("SELECT count(*) FROM borrower WHERE '@' || name <> contact"),
          "what is stored is what was typed");
    }
  }

  @Test
  void aNoteOfSeveralLines_comesBackAsItWas() throws Exception {
    try (EmptyClub club = EmptyClub.in(one);
        EmptyClub elsewhere = EmptyClub.in(other)) {
      String columns =
          "code,maker,model,batch,serial,boughtOn,price,notes,stringerKind,bowFromIn,bowToIn,"
              + "registeredOn,retiredOn,retiredWhy,retiredNote\n";
      club.take(EmptyClub.file("s.csv", columns + ",,,,,,,\"two\nlines\",tip-to-tip,62,70,,,,\n"));
      String exported = club.csv("stringers");
      assertTrue(exported.contains("\"two\nlines\""), exported);
      assertEquals(List.of(), elsewhere.take(EmptyClub.file("s.csv", exported)).bad());
      assertEquals(exported, elsewhere.csv("stringers"));
    }
  }

  @Test
  void spreadsheets_findNoFormulaInAnExport() throws Exception {
    try (EmptyClub club = EmptyClub.in(one)) {
      club.take(
          EmptyClub.file(
              "b.csv", "number,name,contact,memberNo,ageBand,guardian\n1,A,'=1+1,,adult,\n"));
      assertEquals(1, club.count("SELECT count(*) FROM borrower WHERE contact = '=1+1'"));
      assertEquals(
          "number,name,contact,memberNo,ageBand,guardian\r\n1,A,'=1+1,,adult,\r\n",
          club.csv("borrowers"));
    }
  }

  private List<CsvFile> everythingOfTheDemoClub() throws SQLException, IOException {
    try (EmptyClub club = EmptyClub.in(one)) {
      club.take(EmptyClub.demoFiles(), 0);
      return club.everything();
    }
  }

  private static String text(CsvFile file) {
    return new String(file.bytes(), StandardCharsets.UTF_8);
  }
}
