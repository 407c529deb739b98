package club.ascham.story;

import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;

/** Reads entries as their seals cover them. */
@ApplicationScoped
public class SealedEntries {
  /**
   * An entry as its seal covers it: number, happened, recorded, account, sentence, hash of why,
   * loan, what it is about as [item, rig], and the changed rows as [number, table, row, fields from
   * and to, personal fields with their hashes].
   */
  static final String ENTRY =
      """
      json_array(s.id, s.happened_at, s.recorded_at, s.account_id, s.sentence, coalesce(s.why_hash, s.why), s.loan_id,
        (SELECT json_group_array(json_array(a.item_id, a.rig_id) ORDER BY a.rowid)
           FROM story_about a WHERE a.story_id = s.id),
        (SELECT json_group_array(json_array(c.id, c.table_name, c.row_id, json(c.what),
                  (SELECT json_group_object(p.field, p.hash ORDER BY p.id) FROM personal p WHERE p.change_id = c.id))
                ORDER BY c.id)
           FROM change c WHERE c.story_id = s.id))""";

  /** A number before that of every entry. */
  public static final long BEFORE_ALL = -1;

  private static final int AT_A_TIME = 1_000;

  private final Rows rows;

  SealedEntries(Rows rows) {
    this.rows = rows;
  }

  /**
   * @param seal null: not sealed
   * @param entry as JSON
   */
  public record Entry(long id, String seal, String entry) {}

  /** The next few after this number, oldest first; none: that was the last. */
  public List<Entry> after(long id) {
    return rows.list(
        Entry.class,
        "SELECT s.id, s.hash AS seal, "
            + ENTRY
            + " AS entry FROM story s WHERE s.id > ?1 ORDER BY s.id LIMIT "
            + AT_A_TIME,
        id);
  }

  /** The newest seal; empty where nothing was told yet. */
  public Optional<String> newest() {
    return rows
        .texts("SELECT hash FROM story WHERE hash IS NOT NULL ORDER BY id DESC LIMIT 1")
        .stream()
        .findFirst();
  }
}
