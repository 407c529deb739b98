package club.ascham.story;

import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads entries as their seals cover them. */
@ApplicationScoped
public class SealedEntries {
  /** A number before that of every entry. */
  public static final long BEFORE_ALL = -1;

  private static final int AT_A_TIME = 1_000;

  private final Rows rows;

  /** The columns that files from before 1.0.0 had otherwise, and how entries were written then. */
  private final String why;

  private final String aboutNumber;
  private final Writing writing;

  private interface Writing {
    String of(
        EntryText.Head entry,
        List<EntryText.About> about,
        List<EntryText.Changed> changes,
        List<EntryText.Personal> personal);
  }

  @Inject
  SealedEntries(Rows rows) {
    this(rows, "coalesce(why_hash, why)", "id", EntryText::of);
  }

  private SealedEntries(Rows rows, String why, String aboutNumber, Writing writing) {
    this.rows = rows;
    this.why = why;
    this.aboutNumber = aboutNumber;
    this.writing = writing;
  }

  /** Of a file from before 1.0.0. */
  static SealedEntries before(Rows rows) {
    boolean apart =
        rows.number("SELECT count(*) FROM pragma_table_info('story') WHERE name = 'why_hash'") == 1;
    return new SealedEntries(
        rows, apart ? "coalesce(why_hash, why)" : "why", "rowid", EntryText::before);
  }

  /**
   * @param seal null: not sealed
   * @param entry as JSON ({@link EntryText})
   */
  public record Entry(long id, String seal, String entry) {}

  /** The next few after this number, oldest first; none: that was the last. */
  public List<Entry> after(long id) {
    List<EntryText.Head> heads =
        rows.list(
            EntryText.Head.class,
            "SELECT id, hash AS seal, happened_at AS happened, recorded_at AS recorded, account_id, sentence, %s AS why, loan_id FROM story WHERE id > ?1 ORDER BY id LIMIT %d"
                .formatted(why, AT_A_TIME),
            id);
    if (heads.isEmpty()) {
      return List.of();
    }
    long first = heads.get(0).id();
    long last = heads.get(heads.size() - 1).id();
    Map<Long, List<EntryText.About>> about =
        rows
            .list(
                EntryText.About.class,
                "SELECT story_id AS entry, item_id, rig_id FROM story_about WHERE story_id BETWEEN ?1 AND ?2 ORDER BY "
                    + aboutNumber,
                first,
                last)
            .stream()
            .collect(Collectors.groupingBy(EntryText.About::entry));
    List<Change> changed =
        rows.list(
            Change.class,
            """
            SELECT c.story_id AS entry, c.id, c.table_name AS "table", c.row_id, c.what AS fields,
                   EXISTS (SELECT 1 FROM personal p WHERE p.change_id = c.id) AS personal
              FROM change c WHERE c.story_id BETWEEN ?1 AND ?2 ORDER BY c.id""",
            first,
            last);
    Map<Long, List<EntryText.Changed>> changes =
        changed.stream()
            .map(Change::value)
            .collect(Collectors.groupingBy(EntryText.Changed::entry));
    Map<Long, List<Personal>> personal =
        changed.stream().anyMatch(Change::personal) ? personal(first, last) : Map.of();
    return heads.stream()
        .map(
            head ->
                new Entry(
                    head.id(),
                    head.seal(),
                    writing.of(
                        head,
                        about.getOrDefault(head.id(), List.of()),
                        changes.getOrDefault(head.id(), List.of()),
                        personal.getOrDefault(head.id(), List.of()).stream()
                            .map(Personal::value)
                            .toList())))
        .toList();
  }

  private Map<Long, List<Personal>> personal(long first, long last) {
    return rows
        .list(
            Personal.class,
            """
                SELECT c.story_id AS entry, p.change_id, p.field, p.hash FROM change c JOIN personal p ON p.change_id = c.id
                 WHERE c.story_id BETWEEN ?1 AND ?2 ORDER BY p.change_id, p.id""",
            first,
            last)
        .stream()
        .collect(Collectors.groupingBy(Personal::entry));
  }

  private record Change(EntryText.Changed value, boolean personal) {}

  private record Personal(long entry, EntryText.Personal value) {}

  /** Whoever wants to know of each entry what it is sealed with now. */
  interface Sealed {
    void with(Entry entry, String seal);
  }

  /**
   * Seals each entry after this one, one upon the other.
   *
   * @param before the seal that the first of them stands upon
   * @return the newest seal there is then
   */
  String seal(long after, String before, Sealed each) {
    String seal = before;
    long last = after;
    List<Entry> some;
    do {
      some = after(last);
      for (Entry entry : some) {
        seal = Chain.seal(seal, entry.entry());
        each.with(entry, seal);
        rows.change("UPDATE story SET hash = ?2 WHERE id = ?1", entry.id(), seal);
        last = entry.id();
      }
    } while (some.size() == AT_A_TIME);
    return seal;
  }

  /** The newest seal; empty where nothing was told yet. */
  public Optional<String> newest() {
    return rows
        .texts("SELECT hash FROM story WHERE hash IS NOT NULL ORDER BY id DESC LIMIT 1")
        .stream()
        .findFirst();
  }
}
