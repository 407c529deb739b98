package club.ascham.server;

import club.ascham.form.Outcome;
import club.ascham.id.AccountId;
import club.ascham.id.ClubId;
import club.ascham.store.Writes;
import club.ascham.story.HighWater;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** An officer has read what can't be undone, and it is told no more. */
@ApplicationScoped
class ReadWorry {
  private final HighWater highWater;
  private final ClockWatch clock;
  private final Story story;
  private final ClubTime time;

  ReadWorry(HighWater highWater, ClockWatch clock, Story story, ClubTime time) {
    this.highWater = highWater;
    this.clock = clock;
    this.story = story;
    this.time = time;
  }

  /** Tells the record who read it. */
  @Writes
  Outcome<ClubId> tell(Worries.About about, AccountId officer) {
    List<String> what = what(about);
    what.forEach(one -> story.tell(officer, "Read that " + one + "."));
    return Outcome.done(
        ClubId.ONE,
        what.isEmpty() ? "It was read before." : "Noted in the record that you have read it.");
  }

  /** Once the record is told: cut off in between, it is merely asked again. */
  void end(Worries.About about) {
    switch (about) {
      case RECORD -> highWater.allRead();
      case CLOCK -> clock.read();
      default -> {}
    }
  }

  private List<String> what(Worries.About about) {
    return switch (about) {
      case RECORD -> highWater.unread().stream().map(loss -> loss.what(time)).toList();
      case CLOCK ->
          clock.jump().stream()
              .map(
                  jump ->
                      "the server’s clock was "
                          + jump.said()
                          + ", seen on "
                          + time.said(jump.noticed()))
              .toList();
      default -> List.of();
    };
  }
}
