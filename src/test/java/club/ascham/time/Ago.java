package club.ascham.time;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;

/** What lies back by whole days of the club: 24 hours are no day where the clocks change. */
public final class Ago {
  private static final LocalTime MORNING = LocalTime.of(10, 0);

  private Ago() {}

  /** In the club's morning so many days ago. */
  public static Instant days(ClubTime time, int days) {
    if (days < 1) {
      throw new IllegalArgumentException("this morning may be still to come");
    }
    return morningOf(time, time.today().minusDays(days));
  }

  public static Instant morningOf(ClubTime time, LocalDate day) {
    return time.momentOf(day.atTime(MORNING));
  }
}
