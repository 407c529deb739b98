package club.ascham.story;

import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;

/**
 * Reckons the whole record again: every seal, every personal value that is still there, and every
 * row of every table against what was last recorded of it. It changes nothing and holds up nobody.
 */
@ApplicationScoped
public class VerifyRecord {
  private static final int AT_A_TIME = 2_000;
  private static final int SHOWN_OF_A_KIND = 10;

  private final Rows rows;
  private final SealedEntries sealed;

  VerifyRecord(Rows rows, SealedEntries sealed) {
    this.rows = rows;
    this.sealed = sealed;
  }

  /**
   * What was found.
   *
   * @param entries how many sentences were reckoned again
   * @param newest the seal of the last; empty where there is none
   * @param erased how many personal values were erased
   * @param faults one sentence each; none: the record is whole
   */
  public record Verified(long entries, String newest, long erased, List<String> faults) {
    public boolean whole() {
      return faults.isEmpty();
    }
  }

  /** A field that is not what was last recorded of it. */
  record Differs(long row, String field, String recorded, String found) {
    String said(String table) {
      return "%s %d: %s is %s, recorded was %s."
          .formatted(table, row, field, shown(found), shown(recorded));
    }

    private static String shown(String value) {
      return value == null ? "nothing" : "“" + value + "”";
    }
  }

  public Verified verify() {
    List<String> faults = new ArrayList<>();
    Chained chained = chained(faults);
    long loose =
        rows.number(
            "SELECT count(*) FROM change WHERE story_id > (SELECT coalesce(max(id), 0) FROM story)");
    if (loose > 0) {
      faults.add(loose + " changed rows have no sentence: some other program wrote them.");
    }
    personalValues(faults);
    reasons(faults);
    for (Watched table : Watched.all(rows)) {
      rowsOf(table, faults);
    }
    return new Verified(
        chained.entries(),
        chained.newest(),
        rows.number("SELECT count(*) FROM personal WHERE value IS NULL"),
        faults);
  }

  /** The entries that were reckoned again, and the seal of the last. */
  record Chained(long entries, String newest) {}

  Chained chained(List<String> faults) {
    String before = Chain.START;
    long entries = 0;
    for (SealedEntries.Entry entry : sealed.after(SealedEntries.BEFORE_ALL)) {
      if (entry.seal() == null) {
        fault(faults, "Entry " + entry.id() + " is not sealed.");
      } else if (!Chain.seal(before, entry.entry()).equals(entry.seal())) {
        fault(
            faults,
            "Entry " + entry.id() + " was changed, or what stood just before it is missing.");
      }
      before = entry.seal() == null ? Chain.START : entry.seal();
      entries++;
    }
    return new Chained(entries, before);
  }

  private record Personal(
      long id, long entry, String field, String salt, String value, String hash) {}

  private void personalValues(List<String> faults) {
    long last = 0;
    List<Personal> some;
    do {
      some =
          rows.list(
              Personal.class,
              """
              SELECT p.id, c.story_id AS entry, p.field, p.salt, p.value, p.hash
                FROM personal p JOIN change c ON c.id = p.change_id
               WHERE p.value IS NOT NULL AND p.id > ?1 ORDER BY p.id LIMIT\s"""
                  + AT_A_TIME,
              last);
      for (Personal value : some) {
        if (!Chain.ofPersonal(value.salt(), value.value()).equals(value.hash())) {
          fault(
              faults,
              "A personal value ("
                  + value.field()
                  + ") of entry "
                  + value.entry()
                  + " was changed.");
        }
        last = value.id();
      }
    } while (some.size() == AT_A_TIME);
  }

  private record Reason(long entry, String salt, String why, String hash) {}

  private void reasons(List<String> faults) {
    for (Reason reason :
        rows.list(
            Reason.class,
            "SELECT id AS entry, why_salt AS salt, why, why_hash AS hash FROM story WHERE why_hash IS NOT NULL AND why IS NOT NULL")) {
      if (reason.salt() == null
          || !Chain.ofPersonal(reason.salt(), reason.why()).equals(reason.hash())) {
        fault(faults, "The reason of entry " + reason.entry() + " was changed.");
      }
    }
  }

  private void rowsOf(Watched table, List<String> faults) {
    List<Differs> differing =
        rows.list(Differs.class, table.differences() + " LIMIT " + (SHOWN_OF_A_KIND + 1));
    for (Differs cell : differing) {
      fault(faults, cell.said(table.table()));
    }
  }

  private static void fault(List<String> faults, String fault) {
    if (faults.size() < 10 * SHOWN_OF_A_KIND) {
      faults.add(fault);
    }
  }

  /** What a seal seen elsewhere, on paper or in a backup's name, says of this record. */
  public sealed interface SealSeen {
    /** It is entry number so; so many were told since. */
    record Known(long entry, long since) implements SealSeen {}

    /** No entry has it: the record was shortened or changed since, or the seal was misread. */
    record Unknown() implements SealSeen {}
  }

  /**
   * @param start the seal's first characters, eight or more
   */
  public SealSeen seen(String start) {
    long entry =
        numbered("SELECT id FROM story WHERE substr(hash, 1, ?2) = ?1 ORDER BY id LIMIT 1", start);
    if (entry == 0) {
      entry = numbered(CarriedRecord.SEALED_BEFORE, start);
    }
    return entry == 0
        ? new SealSeen.Unknown()
        : new SealSeen.Known(entry, rows.number("SELECT count(*) FROM story WHERE id > ?1", entry));
  }

  private long numbered(String sql, String start) {
    return rows.number(sql, start, start.length());
  }
}
