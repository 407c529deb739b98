package club.ascham.story;

import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * Closes the entries of the record with their seals.
 *
 * <p>Closing them takes five or six statements, however many rows were changed, and one more for
 * each further sentence and each new personal value.
 */
@ApplicationScoped
class Seals {
  private final Rows rows;
  private final SealedEntries sealed;
  private final PersonalValues personal;
  private final Story story;
  private final ClubTime time;

  Seals(Rows rows, SealedEntries sealed, PersonalValues personal, Story story, ClubTime time) {
    this.rows = rows;
    this.sealed = sealed;
    this.personal = personal;
    this.story = story;
    this.time = time;
  }

  private record Ends(
      long lastTold, long lastSealed, String newestSeal, long lastChanged, boolean personal) {
    boolean anyLoose() {
      return lastChanged > lastTold;
    }
  }

  /** Rows that some other program wrote wait for a sentence: they get one that says just that. */
  void noteWhatOthersChanged() {
    if (rows.number(
            "SELECT (SELECT max(story_id) FROM change) > coalesce((SELECT max(id) FROM story), -1)")
        == 1) {
      story.tell(Story.Told.ofClub(time.now(), null, Story.OUTSIDE));
    }
  }

  void close() {
    Ends ends = ends();
    if (ends.anyLoose()) {
      if (ends.lastTold() == ends.lastSealed()) {
        throw new IllegalStateException(
            "changed without a sentence: "
                + rows.texts(
                    "SELECT table_name || ' ' || what FROM change WHERE story_id > ?1",
                    ends.lastTold()));
      }
      rows.change("UPDATE change SET story_id = ?1 WHERE story_id > ?1", ends.lastTold());
    }
    if (ends.lastTold() == ends.lastSealed()) {
      return;
    }
    if (ends.personal()) {
      personal.seal();
    }
    sealed.seal(ends.lastSealed(), ends.newestSeal(), (entry, seal) -> {});
  }

  private Ends ends() {
    return rows.one(
            Ends.class,
            """
            SELECT coalesce((SELECT max(id) FROM story), -1) AS last_told, coalesce(s.id, -1) AS last_sealed, coalesce(s.hash, '') AS newest_seal,
                   coalesce((SELECT max(story_id) FROM change), -1) AS last_changed,
                   EXISTS (SELECT 1 FROM personal WHERE hash IS NULL) AS personal
              FROM (SELECT 1) LEFT JOIN story s
                ON s.id = (SELECT id FROM story WHERE hash IS NOT NULL ORDER BY id DESC LIMIT 1)""")
        .orElseThrow();
  }
}
