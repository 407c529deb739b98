package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import club.ascham.store.Schema;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever is erased is looked for in every column of the schema that can hold a name. */
class FreeTextColumnsTest {
  /** Days and moments: whoever reads them in, writes them as such. */
  private static final Pattern WHEN = Pattern.compile(".*(_at|_on|_until|_local)|at|first_used");

  /** What the program or a list of words puts there, and never a person in words of their own. */
  private static final Set<String> NO_NAMES =
      Set.of(
          // Words of a list that the parsers read, as the lists of files do.
          "check_sign.part",
          "club.brace_table",
          "report_sign.sign",
          "upkeep_rule.item_kind",
          "verdict_line.saying",
          "withdrawal.work",
          // Reckoned.
          "upkeep_plan.because",
          // A label's characters.
          "item.code",
          // Secrets, hashes and salts.
          "account.access_key_hash",
          "account.password_hash",
          "password_link.digest",
          "recovery_code.digest",
          "second_step.sealed_secret",
          "idempotency_key.digest",
          "story.hash",
          "story.why_hash",
          "story.why_salt",
          "personal.hash",
          "personal.salt",
          // What the record has of the columns that are looked into: erased with them, or sealed.
          "change.table_name",
          "change.what",
          "personal.field",
          "personal.value",
          // Of a press, for thirty days: its address, its key, and numbers of what it did.
          "idempotency_key.call",
          "idempotency_key.key",
          "idempotency_key.made_kind",
          "kept_answer.answer",
          "name_stays.text_key");

  @TempDir Path folder;

  @Test
  void everyColumnOfText_isLookedInto_orHoldsNoNames() throws Exception {
    Set<String> lookedInto =
        FreeTexts.COLUMNS.stream().map(c -> c.table() + "." + c.name()).collect(Collectors.toSet());
    List<String> forgotten = new ArrayList<>();
    Set<String> stated = new TreeSet<>();
    String url = "jdbc:sqlite:" + folder.resolve("club.db");
    Schema.of(url).load().migrate();
    try (Connection file = DriverManager.getConnection(url);
        Statement statement = file.createStatement();
        ResultSet column =
            statement.executeQuery(
                """
                SELECT t.name, c.name, t.sql FROM sqlite_master t JOIN pragma_table_info(t.name) c
                 WHERE t.type = 'table' AND c.type NOT IN ('INTEGER', 'REAL')
                   AND t.name NOT GLOB 'sqlite_*' AND t.name NOT GLOB 'flyway_*'""")) {
      while (column.next()) {
        String name = column.getString(2);
        String place = column.getString(1) + "." + name;
        if (NO_NAMES.contains(place)) {
          stated.add(place);
        } else if (!lookedInto.contains(place)
            && !WHEN.matcher(name).matches()
            && !column.getString(3).contains("(" + name + " IN ('")) {
          forgotten.add(place);
        }
      }
    }
    assertEquals(List.of(), forgotten);
    assertEquals(new TreeSet<>(NO_NAMES), stated, "each is there still");
    assertTrue(NO_NAMES.stream().noneMatch(lookedInto::contains));
  }

  @Test
  void whoMadeAThing_andWhatAVerdictSays_areShownWithTheirWords() throws Exception {
    String url = "jdbc:sqlite:" + folder.resolve("other.db");
    Schema.of(url).load().migrate();
    try (Connection file = DriverManager.getConnection(url);
        Statement insert = file.createStatement()) {
      insert.execute(
          "INSERT INTO item (code, kind, maker, registered_on) VALUES ('T00017', 'STRINGER', 'Barnaby Oldcastle', '2026-01-01')");
      insert.execute(
          "INSERT INTO bow_check (id, rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict) VALUES (1, 7, 'LOOK', 't', 't', 1, 1, 'FIT')");
      insert.execute(
          "INSERT INTO verdict_line (check_id, place, kind, saying, said_of) VALUES (1, 1, 'REASON', 'SIGN', '[\"LIMBS\", \"Barnaby Oldcastle saw it\"]')");
      insert.execute(
          "INSERT INTO account (id, name, password_hash, role) VALUES (3, 'Barnaby Oldcastle', 'x', 'OFFICER')");
      Rows rows = RowsOf.connection(file);
      FreeTexts texts = new FreeTexts(rows, new PersonalValues(rows));
      Forgotten person = Forgotten.of("Barnaby Oldcastle");
      assertEquals(
          List.of(
              "item.maker.1 /items/T00017 Barnaby Oldcastle true",
              "verdict_line.said_of.1 /rigs/7 Barnaby Oldcastle saw it false"),
          texts.naming(person, "/people/3").stream().map(FreeTextColumnsTest::said).toList());
      assertEquals(
          List.of("account.name.3 /people/3 Barnaby Oldcastle false"),
          texts.naming(person, "/borrowers/1").stream()
              .map(FreeTextColumnsTest::said)
              .filter(one -> one.startsWith("account"))
              .toList());
    }
  }

  private static String said(FreeTexts.Hit hit) {
    return "%s %s %s %s".formatted(hit.key(), hit.page(), hit.words(), hit.erasable());
  }
}
