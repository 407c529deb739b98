package club.ascham.story;

import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads entries as their seals cover them, and seals them one upon the other. */
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

  /** Those after this number, oldest first; a few at a time are in memory. */
  public Iterable<Entry> after(long id) {
    return () ->
        Stream.iterate(few(id), some -> !some.isEmpty(), this::following)
            .flatMap(List::stream)
            .iterator();
  }

  private List<Entry> following(List<Entry> some) {
    return some.size() < AT_A_TIME ? List.of() : few(some.get(some.size() - 1).id());
  }

  /**
   * Seals those after this number, each upon the one before it.
   *
   * @param before the seal of the one so numbered, or {@link Chain#START}
   * @param each is handed each entry as it was, and its new seal
   * @return the newest seal there is then
   */
  String seal(long id, String before, BiConsumer<Entry, String> each) {
    String newest = before;
    for (Entry entry : after(id)) {
      newest = Chain.seal(newest, entry.entry());
      rows.change("UPDATE story SET hash = ?2 WHERE id = ?1", entry.id(), newest);
      each.accept(entry, newest);
    }
    return newest;
  }

  private record Told(EntryText.Head entry, EntryText.About about) {}

  private record Row(EntryText.Changed changed, EntryText.Personal personal) {}

  /** Two statements, since every save reads back what it told; in the order of their indexes. */
  private List<Entry> few(long after) {
    Map<EntryText.Head, List<Told>> told =
        rows
            .list(
                Told.class,
                """
                SELECT s.id, s.hash AS seal, s.happened_at AS happened, s.recorded_at AS recorded, s.account_id, s.sentence, %s AS why, s.loan_id,
                       a.item_id, a.rig_id
                  FROM story s LEFT JOIN story_about a ON a.story_id = s.id
                 WHERE s.id > ?1 AND s.id < coalesce((SELECT id FROM story WHERE id > ?1 ORDER BY id LIMIT 1 OFFSET %d), %d)
                 ORDER BY s.id, a.%s"""
                    .formatted(why, AT_A_TIME, Long.MAX_VALUE, aboutNumber),
                after)
            .stream()
            .collect(Collectors.groupingBy(Told::entry, LinkedHashMap::new, Collectors.toList()));
    List<EntryText.Head> heads = List.copyOf(told.keySet());
    if (heads.isEmpty()) {
      return List.of();
    }
    Map<Long, List<Row>> changed =
        rows
            .list(
                Row.class,
                """
                SELECT c.story_id AS entry, c.id, c.table_name AS "table", c.row_id, c.what AS fields, p.change_id, p.field, p.hash
                  FROM change c LEFT JOIN personal p ON p.change_id = c.id
                 WHERE c.story_id > ?1 AND c.story_id <= ?2 ORDER BY c.story_id, c.id, p.id""",
                after,
                heads.get(heads.size() - 1).id())
            .stream()
            .collect(Collectors.groupingBy(row -> row.changed().entry()));
    return heads.stream()
        .map(head -> entry(head, told.get(head), changed.getOrDefault(head.id(), List.of())))
        .toList();
  }

  private Entry entry(EntryText.Head head, List<Told> told, List<Row> changed) {
    return new Entry(
        head.id(),
        head.seal(),
        writing.of(
            head,
            told.stream().map(Told::about).filter(Objects::nonNull).toList(),
            changed.stream().map(Row::changed).distinct().toList(),
            changed.stream().map(Row::personal).filter(Objects::nonNull).toList()));
  }

  /** The newest seal; empty where nothing was told yet. */
  public Optional<String> newest() {
    return rows
        .texts("SELECT hash FROM story WHERE hash IS NOT NULL ORDER BY id DESC LIMIT 1")
        .stream()
        .findFirst();
  }
}
