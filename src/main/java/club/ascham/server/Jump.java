package club.ascham.server;

import java.time.Duration;
import java.time.Instant;

/**
 * The clock went on by more or less than time did.
 *
 * @param noticed by the clock as it is then
 * @param by how much further it went; negative: it was set back
 */
record Jump(Instant noticed, Duration by) {
  /** Clocks are set right by seconds all the time. */
  static final Duration NOT_WORTH_A_WORD = Duration.ofMinutes(2);

  private static final Duration HALF_A_MINUTE = Duration.ofSeconds(30);

  /** A clock and the time that only goes on, read together. */
  record Reading(Instant clock, Duration elapsed) {
    /** How much further the clock went than time did since an earlier reading. */
    Duration aheadSince(Reading earlier) {
      return Duration.between(earlier.clock, clock).minus(elapsed.minus(earlier.elapsed));
    }
  }

  static boolean isWorthAWord(Duration by) {
    return by.abs().compareTo(NOT_WORTH_A_WORD) > 0;
  }

  /** {@code set back by 1 h 5 min}. */
  String said() {
    return (by.isNegative() ? "set back by " : "set forward by ")
        + said(by.abs().plus(HALF_A_MINUTE));
  }

  private static String said(Duration length) {
    if (length.toDays() > 0) {
      return length.toDays() + " d " + length.toHoursPart() + " h";
    }
    return length.toHours() > 0
        ? length.toHours() + " h " + length.toMinutesPart() + " min"
        : length.toMinutes() + " min";
  }
}
