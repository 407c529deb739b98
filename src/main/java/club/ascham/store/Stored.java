package club.ascham.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Locale;

/** How moments and days are written in the file: ISO text that sorts as time does. */
public final class Stored {
  private static final DateTimeFormatter MOMENT =
      new DateTimeFormatterBuilder().appendInstant(3).toFormatter(Locale.ROOT);

  private Stored() {}

  public static String moment(Instant moment) {
    return MOMENT.format(moment);
  }

  public static Instant moment(String text) {
    return Instant.parse(text);
  }

  public static String day(LocalDate day) {
    return day.toString();
  }

  public static LocalDate day(String text) {
    return LocalDate.parse(text);
  }
}
