package club.ascham.register;

import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** Puts a retired item back on the register: it was found, or was never gone. */
@ApplicationScoped
public class FindAgain {
  private final ItemRecords records;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  FindAgain(ItemRecords records, Story story, Actor actor, ClubTime time) {
    this.records = records;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** Whether it was retired; where it was not, nothing is changed. */
  @Writes
  public boolean found(ItemId id) {
    Item item = records.findById(id.value());
    Optional<Retirement> was = item.retirement();
    if (was.isEmpty()) {
      return false;
    }
    item.findAgain();
    records.flush();
    RetiredWhy why = was.get().why();
    story.tell(
        Story.Told.ofItem(
            time.now(),
            actor.id(),
            id,
            why == RetiredWhy.LOST
                ? "Found again."
                : "Back on the register: not " + Words.said(why) + " after all."));
    return true;
  }
}
