package club.ascham.accident;

import club.ascham.form.Typed;
import club.ascham.time.ClubTime;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/**
 * What is told of an accident.
 *
 * @param words what happened
 */
record AccidentDetails(Instant happened, String words) {
  private static final int LONGEST = 2000;
  static final String WHAT = "What happened? Whoever reads it later was not there.";
  static final String WHEN =
      "At about what time, such as 18:30? What was in hand then is looked up by it.";

  /**
   * Reads {@code happenedOn}, {@code happenedTime} and {@code words}. A day and time left empty are
   * now; a time alone is today's.
   */
  static Optional<AccidentDetails> parse(Typed typed, ClubTime time) {
    String words = typed.reason("words", LONGEST, WHAT);
    LocalDate day = typed.day("happenedOn");
    LocalTime at = time(typed);
    LocalDate today = time.today();
    if (at == null && day != null && !day.equals(today)) {
      typed.fault("happenedTime", WHEN);
    }
    Instant happened =
        at == null ? time.now() : time.momentOf((day == null ? today : day).atTime(at));
    if (happened.isAfter(time.now())) {
      typed.fault(
          day != null && day.isAfter(today) ? "happenedOn" : "happenedTime",
          "That is still to come.");
    }
    return typed.sound() ? Optional.of(new AccidentDetails(happened, words)) : Optional.empty();
  }

  private static LocalTime time(Typed typed) {
    String text = typed.value("happenedTime");
    if (text.isEmpty()) {
      return null;
    }
    try {
      if (text.matches("\\d{1,2}[:.]\\d{2}")) {
        String[] parts = text.split("[:.]");
        return LocalTime.of(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
      }
    } catch (DateTimeException noSuchTime) {
      typed.fault("happenedTime", "There is no such time.");
      return null;
    }
    typed.fault("happenedTime", "A time such as 18:30, please.");
    return null;
  }
}
