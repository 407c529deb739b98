package club.ascham.server;

import club.ascham.id.AccountId;
import club.ascham.story.HighWater;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** An officer has read what can't be undone, and it is told no more. */
@ApplicationScoped
class ReadWorry {
  private final HighWater highWater;
  private final ClockWatch clock;
  private final TellRead tellRead;
  private final ClubTime time;

  ReadWorry(HighWater highWater, ClockWatch clock, TellRead tellRead, ClubTime time) {
    this.highWater = highWater;
    this.clock = clock;
    this.tellRead = tellRead;
    this.time = time;
  }

  /**
   * The record is told first: cut off in between, it is merely asked again.
   *
   * @return whether there was anything to read
   */
  boolean read(Worries.About about, AccountId officer) {
    List<String> what = what(about);
    if (what.isEmpty()) {
      return false;
    }
    tellRead.tell(what, officer);
    switch (about) {
      case RECORD -> highWater.allRead();
      case CLOCK -> clock.read();
      default -> throw new IllegalStateException(about.toString());
    }
    return true;
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
