package club.ascham.backup;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Collection;

/** When the daily backup is due: once after half past three in the club's night. */
final class QuietHour {
  static final LocalTime AT = LocalTime.of(3, 30);
  private static final Duration TRY_AGAIN_AFTER = Duration.ofHours(1);

  private QuietHour() {}

  /**
   * Whether one is to be made now: none was since the last quiet hour, and the last try, if it
   * failed, lies an hour back. What seems to be from the future (the clock was set back) does not
   * count.
   *
   * @param made moments of the backups there are
   * @param failed the last try that failed; null: none did
   */
  static boolean calls(Collection<Instant> made, Instant failed, Instant now, ZoneId zone) {
    Instant since = lastBefore(now, zone);
    boolean madeSince =
        made.stream().anyMatch(moment -> !moment.isBefore(since) && !moment.isAfter(now));
    boolean justFailed =
        failed != null && !failed.isAfter(now) && failed.plus(TRY_AGAIN_AFTER).isAfter(now);
    return !madeSince && !justFailed;
  }

  /** The last quiet hour that is not after this moment; names are to the second, so is it. */
  static Instant lastBefore(Instant now, ZoneId zone) {
    LocalDate today = LocalDate.ofInstant(now, zone);
    // Where the clocks skip the hour, Java takes the hour after.
    Instant ofToday = ZonedDateTime.of(today, AT, zone).toInstant();
    return ofToday.isAfter(now)
        ? ZonedDateTime.of(today.minusDays(1), AT, zone).toInstant()
        : ofToday;
  }
}
