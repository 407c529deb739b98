package club.ascham.worksheet;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.WorkId;
import club.ascham.people.Actor;
import club.ascham.standing.KeptAsItIs;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;

/**
 * Answers a replacement that was asked for out of turn: the string was looked at and stays. It
 * grows no younger by that, so the day that its rule asks for does not move.
 */
@ApplicationScoped
class KeepString {
  static final int LONGEST = 1000;
  static final String WHAT = "What did you see? Strands, servings, loops.";

  private final WorkRecords records;
  private final KeptAsItIs kept;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  KeepString(WorkRecords records, KeptAsItIs kept, Story story, Actor actor, ClubTime time) {
    this.records = records;
    this.kept = kept;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  Outcome<WorkId> keep(Subject string, String found) {
    Instant now = time.now();
    if (kept.keeps(string.id(), now)) {
      return Outcome.refused(Refusal.now("Not possible now", "item", KeptAsItIs.SAID));
    }
    long record =
        records.keep(
            string.id(),
            Work.STRING_REPLACEMENT,
            now,
            new Inspected.Outcome(Result.PASSED, found, null),
            null,
            null);
    story.tell(
        Story.Told.ofItem(now, actor.id(), string.id(), "String looked at, and kept on.")
            .because(found));
    return Outcome.done(
        new WorkId(record),
        string.code() + " stays on; its readings are held against the next one.");
  }
}
