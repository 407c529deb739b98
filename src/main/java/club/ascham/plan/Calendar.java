package club.ascham.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;

/**
 * The 24 months from a day on: month k begins on the day of the month that the first began on, a
 * week every seven days.
 */
final class Calendar {
  static final int MONTHS = 24;
  static final int MONTHS_A_YEAR = 12;
  static final int DAYS_A_WEEK = 7;

  private final LocalDate from;
  private final int[] monthOfDay;

  Calendar(LocalDate from) {
    this.from = from;
    monthOfDay = new int[(int) ChronoUnit.DAYS.between(from, from.plusMonths(MONTHS))];
    for (int month = 0; month < MONTHS; month++) {
      Arrays.fill(monthOfDay, day(month), day(month + 1), month);
    }
  }

  private int day(int month) {
    return (int) ChronoUnit.DAYS.between(from, from.plusMonths(month));
  }

  int days() {
    return monthOfDay.length;
  }

  int weeks() {
    return (days() + DAYS_A_WEEK - 1) / DAYS_A_WEEK;
  }

  int monthOf(int day) {
    return monthOfDay[day];
  }

  LocalDate week(int week) {
    return from.plusDays((long) week * DAYS_A_WEEK);
  }

  LocalDate month(int month) {
    return from.plusMonths(month);
  }
}
