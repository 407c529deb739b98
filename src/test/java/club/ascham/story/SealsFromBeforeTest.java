package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.Rows;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Before 1.0.0 an entry was written by SQLite's functions. What is reckoned in Java is the same,
 * character by character, over a whole club: so that a seal on paper, or in the name of a backup,
 * holds as long as there is somebody to compare it.
 */
@QuarkusTest
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

  @Inject Rows rows;
  @Inject SealedEntries sealed;

  @Test
  void everyEntryOfAClub_isTheTextThatItsSealAlwaysCovered() {
    List<String> now = new ArrayList<>();
    List<SealedEntries.Entry> some;
    long last = SealedEntries.BEFORE_ALL;
    while (!(some = sealed.after(last)).isEmpty()) {
      some.forEach(entry -> now.add(entry.entry()));
      last = some.get(some.size() - 1).id();
    }
    assertTrue(now.size() > 100, now.size() + " entries");
    assertEquals(
        rows.texts("SELECT " + BY_SQLITE + " FROM story s WHERE s.id <= ?1 ORDER BY s.id", last),
        now);
  }
}
