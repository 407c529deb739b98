package club.ascham.worksheet;

import club.ascham.people.Actor;
import club.ascham.store.Pressed;
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
  private final Story story;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  KeepString(WorkRecords records, Story story, Pressed pressed, Actor actor, ClubTime time) {
    this.records = records;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  /** Answers the page that shows it. */
  @Writes
  String keep(Subject string, String found, String formKey) {
    var led = pressed.ledTo(formKey);
    if (led.isPresent()) {
      return led.get();
    }
    Instant now = time.now();
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
    String page = "/upkeep/records/" + record;
    pressed.leads(formKey, page);
    return page;
  }
}
