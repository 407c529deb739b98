package club.ascham.time;

import club.ascham.Settings;
import java.time.Clock;

/** A club's time by any clock. */
public final class ClubTimeOf {
  private ClubTimeOf() {}

  public static ClubTime clock(Clock clock, Settings settings) {
    return new ClubTime(clock, settings);
  }
}
