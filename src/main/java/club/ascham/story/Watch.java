package club.ascham.story;

import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Watches every table: whatever writes a row, triggers put each changed field into the record, from
 * and to. The triggers are made from the schema when the data folder is opened, so that a new table
 * or column is watched without a word.
 */
@ApplicationScoped
public class Watch {
  private final Rows rows;
  private final Story story;
  private final SealedEntries sealed;
  private final ClubTime time;

  Watch(Rows rows, Story story, SealedEntries sealed, ClubTime time) {
    this.rows = rows;
    this.story = story;
    this.sealed = sealed;
    this.time = time;
  }

  private record Made(String name, String sql) {}

  /**
   * Makes the triggers that are missing or out of date, and records what was there before a table
   * was first watched.
   */
  @Writes
  public void begin() {
    Map<String, String> made =
        rows
            .list(
                Made.class,
                "SELECT name, sql FROM sqlite_master WHERE type = 'trigger' AND name GLOB 'record_*'")
            .stream()
            .collect(Collectors.toMap(Made::name, Made::sql));
    boolean anythingBefore = false;
    for (Watched table : Watched.all(rows)) {
      List<Watched.Trigger> wanted = table.triggers();
      if (!made.containsKey(wanted.get(0).name()) && !isRecorded(table)) {
        anythingBefore |= rows.change(table.recordOfWhatIsThere()) > 0;
        table.personalRecordOfWhatIsThere().forEach(rows::change);
      }
      for (Watched.Trigger trigger : wanted) {
        if (!trigger.sql().equals(made.get(trigger.name()))) {
          rows.change("DROP TRIGGER IF EXISTS " + trigger.name());
          rows.change(trigger.sql());
        }
      }
    }
    if (anythingBefore) {
      tellWhatWasThere();
    }
  }

  /** Its triggers went with a column that a migration took away; what stands in it is recorded. */
  private boolean isRecorded(Watched table) {
    return rows.number("SELECT EXISTS (SELECT 1 FROM change WHERE table_name = ?1)", table.table())
        > 0;
  }

  /**
   * Of a new club this is entry 0, before the numbers that entries taken in from files may bring.
   */
  private void tellWhatWasThere() {
    String sentence =
        "Began to record every change; what was here before is recorded as it was found.";
    if (sealed.newest().isPresent()) {
      story.tell(Story.Told.ofClub(time.now(), null, sentence));
    } else {
      rows.change(
          "INSERT INTO story (id, happened_at, recorded_at, sentence) VALUES (0, ?1, ?1, ?2)",
          time.now(),
          sentence);
      rows.change("UPDATE change SET story_id = 0");
    }
  }
}
