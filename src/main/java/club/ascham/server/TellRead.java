package club.ascham.server;

import club.ascham.id.AccountId;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** Tells in the record who read what. */
@ApplicationScoped
class TellRead {
  private final Story story;
  private final ClubTime time;

  TellRead(Story story, ClubTime time) {
    this.story = story;
    this.time = time;
  }

  /**
   * @param what each the end of a sentence
   */
  @Writes
  void tell(List<String> what, AccountId officer) {
    what.forEach(
        one -> story.tell(Story.Told.ofClub(time.now(), officer, "Read that " + one + ".")));
  }
}
