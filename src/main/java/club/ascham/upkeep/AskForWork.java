package club.ascham.upkeep;

import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;

/** Asks for work out of turn. */
@ApplicationScoped
public class AskForWork {
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  AskForWork(Rows rows, Story story, Actor actor, ClubTime time) {
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /**
   * Asks for it, and answers whether it was not asked for already; what waits already gets the new
   * reason added and keeps its item in if this one says so: from then on, since what was looked at
   * before does not answer it. May be called inside another use case.
   */
  @Writes
  public boolean ask(ItemId item, Request request, Instant happened) {
    boolean added =
        rows.change(
                """
                INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks, cause)
                SELECT ?1, ?2, ?3, ?4, ?5, ?6, ?7
                 WHERE NOT EXISTS (SELECT 1 FROM upkeep_task
                                    WHERE item_id = ?1 AND work = ?2 AND closed_by_record IS NULL)""",
                item,
                request.work(),
                happened,
                actor.id(),
                request.why(),
                request.blocks(),
                request.cause())
            == 1;
    if (!added) {
      rows.change(
          """
          UPDATE upkeep_task
             SET why = CASE WHEN instr(why, ?3) = 0 THEN why || ' ' || ?3 ELSE why END,
                 blocks = max(blocks, ?4),
                 opened_at = CASE WHEN ?4 THEN max(opened_at, ?5) ELSE opened_at END
           WHERE item_id = ?1 AND work = ?2 AND closed_by_record IS NULL""",
          item,
          request.work(),
          request.why(),
          request.blocks(),
          happened);
    }
    story.tell(
        Story.Told.ofItem(
                happened,
                actor.id(),
                item,
                request.work().capital()
                    + " asked for"
                    + (request.blocks() ? "; stays in until it is done." : "."))
            .because(request.why()));
    return added;
  }
}
