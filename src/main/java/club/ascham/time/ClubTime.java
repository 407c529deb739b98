package club.ascham.time;

import club.ascham.Settings;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** The club's clock: moments to the millisecond, days in the club's own time zone. */
@ApplicationScoped
public class ClubTime {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.UK);

  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.UK);

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

  /** The moment at which a day of the club begins. */
  public Instant beginOf(LocalDate day) {
    return day.atStartOfDay(zone).toInstant();
  }

  /** A day as people say it: {@code Tue 9 Jun 2026}. */
  public static String said(LocalDate day) {
    return DAY.format(day);
  }

  /** A moment on the club's clocks: {@code Tue 9 Jun 2026, 18:05}. */
  public String said(Instant moment) {
    return MOMENT.format(moment.atZone(zone));
  }

  public ZoneId zone() {
    return zone;
  }
}
