package club.ascham.accident;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.AccidentId;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.people.Actor;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;

/**
 * Ends the keeping: nobody has to see the things as they were any more. They stay withdrawn until
 * the permit holder releases each of them.
 */
@ApplicationScoped
class EndKeeping {
  static final String WHY = "Why need nobody see it as it was any more? Who looked at it?";
  static final String SAID =
      "No longer kept as it is. Each thing stays withdrawn until the permit holder releases it.";
  static final String ENDED = "The keeping was ended already.";

  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  EndKeeping(Rows rows, Story story, Actor actor, ClubTime time) {
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  private record About(LoanId loan) {}

  private record Kept(ItemId item) {}

  @Writes
  Outcome<AccidentId> end(long accident, String why) {
    Instant now = time.now();
    boolean ended =
        rows.change(
                """
                UPDATE accident SET ended_at = max(?2, recorded_at), ended_by = ?3, end_why = ?4
                 WHERE id = ?1 AND ended_at IS NULL""",
                accident,
                now,
                actor.id(),
                why)
            == 1;
    if (ended) {
      About about =
          rows.one(About.class, "SELECT loan_id FROM accident WHERE id = ?1", accident)
              .orElseThrow();
      List<ItemId> items =
          rows
              .list(
                  Kept.class, "SELECT item_id FROM accident_item WHERE accident_id = ?1", accident)
              .stream()
              .map(Kept::item)
              .toList();
      story.tell(
          new Story.Told(
              now,
              actor.id(),
              "Accident " + accident + ": no longer kept as it is; withdrawn still.",
              null,
              about.loan(),
              items,
              List.of()));
    }
    return ended
        ? Outcome.done(new AccidentId(accident), SAID)
        : Outcome.refused(Refusal.now("Ended already", "why", ENDED));
  }
}
