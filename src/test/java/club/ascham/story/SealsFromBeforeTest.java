package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.store.DataFolder;
import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import club.ascham.store.SqliteFile;
import java.nio.file.Path;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Before 1.0.0 an entry was written by SQLite's functions. What Java writes of a file from before
 * is the same, character by character: else no record from before would be found whole.
 */
class SealsFromBeforeTest {
  private static final String BY_SQLITE =
      """
      json_array(s.id, s.happened_at, s.recorded_at, s.account_id, s.sentence, coalesce(s.why_hash, s.why), s.loan_id,
        (SELECT json_group_array(json_array(a.item_id, a.rig_id) ORDER BY a.rowid)
           FROM story_about a WHERE a.story_id = s.id),
        (SELECT json_group_array(json_array(c.id, c.table_name, c.row_id, json(c.what),
                  (SELECT json_group_object(p.field, p.hash ORDER BY p.id) FROM personal p WHERE p.change_id = c.id))
                ORDER BY c.id)
           FROM change c WHERE c.story_id = s.id))""";

  @TempDir Path tmp;

  @Test
  void everyEntryOfAClub_isTheTextThatItsSealCovered() throws Exception {
    DataFolder folder = new DataFolder(tmp.resolve("club"));
    OlderClub.in(folder, "046", "hash", "Wystan \"W\" Holt\\\n\u0001é😀");
    OlderClub.change(
        folder,
        "Registered “two”.",
        "INSERT INTO item (id, code, kind, maker, notes, registered_on) VALUES (1, 'L01011', 'LIMBS', 'Reed', 'a \"b\"', '2026-01-01')",
        "INSERT INTO limbs (id, build, size, marked_lb, marked_at_in, limb_fitting) VALUES (1, 'ADJUSTABLE', 'SHORT', 24.5, 28, 'x')",
        "INSERT INTO item (id, code, kind, registered_on) VALUES (2, 'T00017', 'STRINGER', '2026-01-01')",
        "INSERT INTO story (id, happened_at, recorded_at, account_id, sentence, why) VALUES (2, 't', 't', 1, 'Said.', 'as it was')",
        "INSERT INTO story_about (story_id, item_id) VALUES (2, 2), (2, 1)");
    try (Connection file = SqliteFile.open(folder.file())) {
      Rows rows = RowsOf.connection(file);
      List<String> entries = new ArrayList<>();
      SealedEntries.before(rows)
          .after(SealedEntries.BEFORE_ALL)
          .forEach(entry -> entries.add(entry.entry()));
      assertEquals(4, entries.size());
      assertEquals(rows.texts("SELECT " + BY_SQLITE + " FROM story s ORDER BY s.id"), entries);
    }
  }
}
