package club.ascham.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/** How moments and days are written in the file: ISO text that sorts as time does. */
public final class Stored {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);

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
