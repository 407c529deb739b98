package club.ascham.time;

import club.ascham.Settings;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/** The club's clock: moments to the millisecond, days in the club's own time zone. */
@ApplicationScoped
public class ClubTime {
  private final Clock clock;
  private final ZoneId zone;

  ClubTime(Clock clock, Settings settings) {
    this.clock = clock;
    this.zone = settings.zone();
  }

  public Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }

  public LocalDate today() {
    return dayOf(now());
  }

  public LocalDate dayOf(Instant moment) {
    return LocalDate.ofInstant(moment, zone);
  }

  /** The moment meant by a date and time that a person typed. */
  public Instant momentOf(LocalDateTime typed) {
    return typed.atZone(zone).toInstant();
  }

  public ZoneId zone() {
    return zone;
  }
}
