package club.ascham.server;

import club.ascham.time.ClubTime;
import club.ascham.time.Elapsed;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.Optional;

/**
 * Holds the server's clock against time that only goes on, from the start or from when an officer
 * last read of a jump. A clock that is put right again within that time is no news.
 *
 * <p>A jump is told until it is read, or until the server starts again; after that the newest
 * entries of the record tell.
 */
@ApplicationScoped
class ClockWatch {
  private final ClubTime time;
  private final Elapsed elapsed;
  private Jump.Reading since;
  private Jump known;

  ClockWatch(ClubTime time, Elapsed elapsed) {
    this.time = time;
    this.elapsed = elapsed;
    this.since = reading();
  }

  private Jump.Reading reading() {
    return new Jump.Reading(time.now(), elapsed.now());
  }

  synchronized Optional<Jump> jump() {
    Jump.Reading now = reading();
    Duration by = now.aheadSince(since);
    if (!Jump.isWorthAWord(by)) {
      known = null;
    } else if (known == null || Jump.isWorthAWord(by.minus(known.by()))) {
      known = new Jump(now.clock(), by);
    }
    return Optional.ofNullable(known);
  }

  synchronized void read() {
    if (jump().isPresent()) {
      since = reading();
      known = null;
    }
  }

  /** What an officer has to know; empty: it went on as time did. */
  Optional<String> worry() {
    return jump()
        .map(
            jump ->
                "The server’s clock was %s while it ran (seen on %s). See that it is right; what was entered around then may bear a wrong time."
                    .formatted(jump.said(), time.said(jump.noticed())));
  }
}
