package club.ascham.web;

import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Days and moments as people say them, for templates: {@code {inject:days.from(loan.dueOn)}}. */
@Named("days")
@ApplicationScoped
public class Days {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.UK);

  private final ClubTime time;

  Days(ClubTime time) {
    this.time = time;
  }

  /** {@code Tue 9 Jun 2026}. */
  public String said(LocalDate day) {
    return ClubTime.said(day);
  }

  /** {@code Tue 9 Jun 2026, 18:30}, in the club's time zone. */
  public String moment(Instant moment) {
    return MOMENT.format(moment.atZone(time.zone()));
  }

  public LocalDate of(Instant moment) {
    return time.dayOf(moment);
  }

  /** How far a day lies from today: {@code today}, {@code in 5 days}, {@code 3 weeks ago}. */
  public String from(LocalDate day) {
    return between(time.today(), day);
  }

  /**
   * How late something is that was due: {@code due in 5 days}, {@code due today}, {@code 3 days
   * late}.
   */
  public String due(LocalDate day) {
    long late = ChronoUnit.DAYS.between(day, time.today());
    return late > 0 ? span(late) + " late" : "due " + from(day);
  }

  public boolean past(LocalDate day) {
    return day.isBefore(time.today());
  }

  static String between(LocalDate today, LocalDate day) {
    long days = ChronoUnit.DAYS.between(today, day);
    if (days == 0) {
      return "today";
    }
    if (days == 1) {
      return "tomorrow";
    }
    if (days == -1) {
      return "yesterday";
    }
    return days > 0 ? "in " + span(days) : span(-days) + " ago";
  }

  private static String span(long days) {
    if (days < 21) {
      return days == 1 ? "1 day" : days + " days";
    }
    return days < 90
        ? days / 7 + " weeks"
        : days < 730 ? days / 30 + " months" : days / 365 + " years";
  }
}
