package club.ascham.record;

import club.ascham.store.Rows;
import club.ascham.store.Stored;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/** Holds the server's clock against the record: it can't be earlier than what was recorded. */
@ApplicationScoped
public class ClockCheck {
  /** So many entries later it is no news any more. */
  private static final int LATEST = 100;

  /** Clocks are set right by seconds all the time. */
  private static final Duration NOT_WORTH_A_WORD = Duration.ofMinutes(2);

  private final Rows rows;
  private final ClubTime time;

  ClockCheck(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /** What an officer has to know of the clock; empty: it may be right. */
  public Optional<String> worry() {
    Instant now = time.now();
    return rows
        .texts(
            "SELECT max(recorded_at) FROM (SELECT recorded_at FROM story ORDER BY id DESC LIMIT "
                + LATEST
                + ")")
        .stream()
        .filter(Objects::nonNull)
        .findFirst()
        .map(Stored::moment)
        .filter(latest -> latest.isAfter(now.plus(NOT_WORTH_A_WORD)))
        .map(
            latest ->
                "The server’s clock says %s, but an entry of the record was written on %s: the clock is wrong now, or was then. Set it right; the record keeps its order."
                    .formatted(time.said(now), time.said(latest)));
  }
}
