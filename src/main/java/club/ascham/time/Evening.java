package club.ascham.time;

import club.ascham.form.Typed;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

/** When an entry of a past day is taken to have happened: in its evening, after what came back. */
public final class Evening {
  private static final LocalTime EVENING = LocalTime.of(21, 0);

  private Evening() {}

  /** Reads the day at {@code on}; null: now. */
  public static Instant read(Typed typed, Instant now, ZoneId zone) {
    LocalDate on = typed.day("on");
    if (on == null || on.equals(LocalDate.ofInstant(now, zone))) {
      return null;
    }
    Instant evening = on.atTime(EVENING).atZone(zone).toInstant();
    if (evening.isAfter(now)) {
      typed.fault("on", "That day is still to come.");
    }
    return evening;
  }
}
